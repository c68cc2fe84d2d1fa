/** Of data/sources.json a page shows the citations; what was read of them is for the docs and the tests. */
export const citationsOf = (/** @type {string} */ text) =>
  Object.fromEntries(Object.entries(JSON.parse(text)).map(([key, { citation }]) => [key, { citation }]));
