/** @type {import("jest").Config} */
export default {
  testEnvironment: "node",
  testMatch: ["<rootDir>/test/**/*.test.ts", "<rootDir>/test/**/*.test.tsx"],
  testSequencer: "<rootDir>/test/longestFirst.mjs",
  maxWorkers: "100%",
  moduleNameMapper: { "^mathjs$": "<rootDir>/test/mathjs.cjs" },
  transform: { "\\.(tsx?|m?js)$": "<rootDir>/test/transform.mjs" },
  transformIgnorePatterns: ["node_modules/(?!(d3-[a-z-]+|hucre|internmap|jsep)/)"],
  // each of them a search through the sandbox where it is not handed in: a third of the time of the long runs
  sandboxInjectedGlobals: [
    "Math",
    "Number",
    "Object",
    "Map",
    "Set",
    "Array",
    "String",
    "Infinity",
    "Error",
    "JSON",
    "RegExp",
  ],
  testTimeout: 60000,
};
