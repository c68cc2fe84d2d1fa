import js from "@eslint/js";
import { importX } from "eslint-plugin-import-x";
import hooks from "eslint-plugin-react-hooks";
import globals from "globals";
import tseslint from "typescript-eslint";

const sources = [".ts", ".tsx"];
/** Imports run one way: faces → book → port → files → edge → core → data. Faces meet in the built functions.json and functions.js; the local sheet loads the pane, whole. */
const faces = ["functions", "taskpane", "workbench", "sheets", "cli"];
const oneWay = (folder, forbidden) => ({
  files: [`src/${folder}/**/*.{ts,tsx}`],
  rules: {
    "no-restricted-imports": [
      "error",
      {
        patterns: forbidden.map((name) => ({
          regex: `^(\\.\\./)+${name}(/|$)`,
          message: `src/${folder} must not import src/${name}.`,
        })),
      },
    ],
  },
});

export default tseslint.config(
  { ignores: ["dist", "dist.new-*", "lib", "coverage", "node_modules"] },
  js.configs.recommended,
  tseslint.configs.recommended,
  { languageOptions: { globals: globals.node } },
  oneWay("core", ["edge", "files", "port", "book", ...faces]),
  oneWay("edge", ["files", "port", "book", ...faces]),
  oneWay("files", ["port", "book", ...faces]),
  oneWay("port", ["book", ...faces]),
  oneWay("book", faces),
  ...faces.map((face) =>
    oneWay(
      face,
      faces.filter((other) => other !== face),
    ),
  ),
  {
    files: ["src/core/**/*.ts"],
    rules: {
      "no-restricted-globals": [
        "error",
        "window",
        "document",
        "process",
        "Office",
        "Excel",
        "CustomFunctions",
        "fetch",
        "Date",
        "setTimeout",
      ],
    },
  },
  // what our own logic promises is asked for by `present`, which says so where it is missing
  { files: ["src/**/*.{ts,tsx}"], rules: { "@typescript-eslint/no-non-null-assertion": "error" } },
  // the oldest web views of Excel for the Mac leave a whole script out for one lookbehind; tsconfig.hosts.json keeps the library calls to ES2020
  {
    files: ["src/**/*.{ts,tsx}"],
    rules: {
      "no-restricted-syntax": [
        "error",
        { selector: "Literal[regex.pattern=/\\(\\?<[=!]/]", message: "A lookbehind stops the pane on older Macs." },
        {
          selector: ":matches(NewExpression, CallExpression)[callee.name='RegExp'] Literal[value=/\\(\\?<[=!]/]",
          message: "A lookbehind stops the pane on older Macs.",
        },
      ],
    },
  },
  // what is taken off an object so that the rest remains is named _
  {
    rules: {
      "@typescript-eslint/no-unused-vars": [
        "error",
        { varsIgnorePattern: "^_", argsIgnorePattern: "^_", ignoreRestSiblings: true },
      ],
    },
  },
  {
    files: ["{src,scripts,bench}/**/*.{ts,tsx,mjs}"],
    rules: { "@typescript-eslint/no-shadow": ["error", { allow: ["_"] }], complexity: ["error", 12] },
  },
  // rules that ask the compiler
  {
    files: ["{src,test,scripts}/**/*.{ts,tsx}"],
    languageOptions: { parserOptions: { projectService: true } },
    rules: {
      "@typescript-eslint/await-thenable": "error",
      "@typescript-eslint/no-floating-promises": "error",
      "@typescript-eslint/no-for-in-array": "error",
      "@typescript-eslint/no-implied-eval": "error",
      "@typescript-eslint/no-misused-promises": "error",
      "@typescript-eslint/no-unnecessary-type-assertion": "error",
      "@typescript-eslint/restrict-plus-operands": "error",
    },
  },
  // no two files need each other; what only a type is imported for is gone when it runs
  {
    files: ["src/**/*.{ts,tsx}"],
    plugins: { "import-x": importX },
    settings: {
      "import-x/extensions": sources,
      "import-x/parsers": { "@typescript-eslint/parser": sources },
      "import-x/resolver": { node: { extensions: sources } },
    },
    rules: { "import-x/no-cycle": ["error", { ignoreExternal: true }] },
  },
  {
    files: ["src/{taskpane,workbench}/**/*.{ts,tsx}"],
    plugins: { "react-hooks": hooks },
    rules: { "react-hooks/rules-of-hooks": "error", "react-hooks/exhaustive-deps": "error" },
  },
);
