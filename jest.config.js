/** @type {import("jest").Config} */
export default {
  testEnvironment: "node",
  testMatch: ["<rootDir>/test/**/*.test.ts", "<rootDir>/test/**/*.test.tsx"],
  testSequencer: "<rootDir>/test/longestFirst.mjs",
  maxWorkers: "100%",
  moduleNameMapper: { "^mathjs$": "<rootDir>/test/mathjs.cjs" },
  transform: { "\\.(tsx?|m?js)$": "<rootDir>/test/transform.mjs" },
  transformIgnorePatterns: ["node_modules/(?!(d3-[a-z-]+|hucre|internmap|jsep)/)"],
  testTimeout: 60000,
};
