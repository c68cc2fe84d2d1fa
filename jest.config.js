/** @type {import("jest").Config} */
export default {
  testEnvironment: "node",
  testMatch: ["<rootDir>/test/**/*.test.ts", "<rootDir>/test/**/*.test.tsx"],
  transform: {
    "^.+\\.tsx?$": [
      "ts-jest",
      {
        tsconfig: {
          module: "CommonJS",
          moduleResolution: "node10",
          ignoreDeprecations: "6.0",
          isolatedModules: true,
          esModuleInterop: true,
          jsx: "react-jsx",
          resolveJsonModule: true,
          rootDir: ".",
        },
      },
    ],
    "node_modules/.*\\.m?js$": [
      "ts-jest",
      {
        tsconfig: {
          allowJs: true,
          module: "CommonJS",
          moduleResolution: "node10",
          ignoreDeprecations: "6.0",
          isolatedModules: true,
          esModuleInterop: true,
        },
      },
    ],
  },
  transformIgnorePatterns: ["node_modules/(?!(d3-[a-z]+|hucre|internmap|jsep)/)"],
  testTimeout: 60000,
};
