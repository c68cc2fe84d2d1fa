/** Tables of rising numbers for functions.js: each number as its step from the one before, in tenths, which compresses better. */
export const bySteps = (/** @type {string} */ text) => {
  const { source: _, ...tables } = JSON.parse(text);
  return `const summed = ${String(summed)};
export default summed(${JSON.stringify(stepsOf(tables))});
`;
};

/** @returns {any} */
export function stepsOf(/** @type {any} */ held) {
  if (!Array.isArray(held)) return Object.fromEntries(Object.entries(held).map(([key, one]) => [key, stepsOf(one)]));
  let last = 0;
  return held.map((value) => {
    if (value === null) return null;
    const step = Math.round(value * 10) - last;
    last += step;
    if (last / 10 !== value) throw new Error(`${value} is no number of tenths`);
    return step;
  });
}

/** @returns {any} */
export function summed(/** @type {any} */ held) {
  if (!Array.isArray(held)) return Object.fromEntries(Object.entries(held).map(([key, one]) => [key, summed(one)]));
  let sum = 0;
  return held.map((step) => (step === null ? null : (sum += step) / 10));
}
