/**
 * The generic library for functions.js, read whole before the first cell answers: the same object, held by property instead of
 * by family, so that it compresses to two thirds.
 */
import path from "node:path";

const unpacking = path.join(import.meta.dirname, "unpacked.mjs");

export const byColumn = (text) =>
  `import { unpacked } from ${JSON.stringify(unpacking)};
export default unpacked(JSON.parse(${JSON.stringify(JSON.stringify(packed(JSON.parse(text))))}));
`;

/** The demo grades, each figure a number or a word: the same object, each property named once. */
export function byKey(/** @type {string} */ text) {
  const { kind, grades } = JSON.parse(text);
  const keys = [...new Set(grades.flatMap(({ values }) => Object.keys(values)))];
  const rows = grades.map(({ values, ...grade }) => [grade, keys.map((key) => values[key] ?? null)]);
  return `const keys = ${JSON.stringify(keys)};
const grades = ${JSON.stringify(rows)}.map(([grade, all]) => {
  const values = {};
  all.forEach((value, i) => { if (value !== null) values[keys[i]] = value; });
  return { ...grade, values };
});
export default { kind: ${JSON.stringify(kind)}, grades };
`;
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
    // each word once, with the grades it is said of where those are not all
    const told = (part) =>
      [...new Set(held.flatMap((entry) => entry?.[part] ?? []))].map((word) =>
        held.every((entry) => !entry || entry[part] === word)
          ? [word]
          : [word, held.flatMap((entry, i) => (entry?.[part] === word ? [i] : []))],
      );
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
