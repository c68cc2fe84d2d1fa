/**
 * webpack's loader for the generic library in functions.js, read whole before the first cell answers: the same object, held by
 * property instead of by family, so that it compresses to two thirds.
 */
export default function byColumn(text) {
  const data = JSON.stringify(JSON.stringify(packed(JSON.parse(text))));
  return `${unpacked}\nexport default unpacked(JSON.parse(${data}));\n`;
}

export function packed({ kind, grades }) {
  const origins = [];
  const placeOf = ({ source, at, label }) => {
    const found = origins.findIndex((other) => other.source === source && other.at === at && other.label === label);
    return found < 0 ? origins.push({ source, at, label }) - 1 : found;
  };
  const keys = [...new Set(grades.flatMap(({ values }) => Object.keys(values)))];
  const columns = keys.map((key) => {
    const held = grades.map(({ values }) => values[key]);
    // each word once, with the grades it is said of
    const told = (part) =>
      [...new Set(held.flatMap((entry) => entry?.[part] ?? []))].map((word) => [
        word,
        held.flatMap((entry, i) => (entry?.[part] === word ? [i] : [])),
      ]);
    const places = held.map((entry) => entry && placeOf(entry));
    return [key, held.map((entry) => entry?.value), places, held.map(otherEnd), told("unit"), told("condition")];
  });
  return {
    kind,
    names: grades.map(({ grade, family, description }) => [grade, family, description]),
    media: grades.map(({ media }) => media.map((group) => [placeOf(group), group.ratings, group.to])),
    columns,
    origins,
  };
}

/** A value is mostly one end of its band. */
const otherEnd = (/** @type {{ value: number, band?: number[] } | undefined} */ entry) =>
  entry?.band?.includes(entry.value) ? entry.band.find((end) => end !== entry.value) : entry?.band;

export function unpacked({ kind, names, media, columns, origins }) {
  const grades = names.map(([grade, family, description], i) => {
    const values = {};
    for (const [key, all, places, ends, ...parts] of columns) {
      const value = all[i];
      const end = ends[i];
      if (value === null) continue;
      const [unit, condition] = parts.map((part) => part.find(([, of]) => of.includes(i))?.[0]);
      const band = end === null ? undefined : end[0] >= 0 ? end : [end, value].sort((a, b) => a - b);
      values[key] = { value, ...origins[places[i]], band, unit, condition };
    }
    const rated = media[i].map(([place, ratings, to]) => ({ ratings, ...origins[place], to: to ?? undefined }));
    return { grade, family, description, values, media: rated };
  });
  return { kind, grades };
}
