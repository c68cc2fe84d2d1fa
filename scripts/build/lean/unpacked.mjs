/** What byColumn packed, in functions.js. */
export function unpacked({ kind, names, media, columns, origins }) {
  const grades = names.map(([grade, family, description], i) => {
    const values = {};
    for (const [key, all, places, ends, ...parts] of columns) {
      const value = all[i];
      const end = ends[i];
      if (value === null) continue;
      const [unit, condition] = parts.map((part) => part.find(([, of]) => !of || of.includes(i))?.[0]);
      const band = end === null ? undefined : end[0] >= 0 ? end : [end, value].sort((a, b) => a - b);
      values[key] = { value, ...origins[places[i]], band, unit, condition };
    }
    const rated = media[i].map(([place, ratings, to]) => ({ ratings, ...origins[place], to: to ?? undefined }));
    return { grade, family, description, values, media: rated };
  });
  return { kind, grades };
}
