/** @type {import("jest").Config} */
export default {
  testEnvironment: "node",
  testMatch: ["<rootDir>/test/**/*.test.ts", "<rootDir>/test/**/*.test.tsx"],
  testSequencer: "<rootDir>/test/longestFirst.mjs",
  maxWorkers: "100%",
  moduleNameMapper: { "^mathjs$": "<rootDir>/test/mathjs.cjs" },
  transform: {
    // the suites of types are compiled with their types checked; esbuild, which strips them, is many times faster for the others
    "/test/types/.*\\.ts$": ["ts-jest", { tsconfig: "<rootDir>/test/types/tsconfig.json" }],
    "\\.(tsx?|m?js)$": "<rootDir>/test/transform.mjs",
  },
  transformIgnorePatterns: ["node_modules/(?!(d3-[a-z-]+|hucre|internmap|jsep)/)"],
  testTimeout: 60000,
};
