import js from "@eslint/js";
import globals from "globals";
import tseslint from "typescript-eslint";

/** Imports run one way: faces → book → port → edge → core → data. Faces meet only in the built functions.json and functions.js. */
const faces = ["functions", "taskpane", "workbench", "sheets", "cli"];
const oneWay = (folder, forbidden) => ({
  files: [`src/${folder}/**/*.{ts,tsx}`],
  rules: {
    "no-restricted-imports": [
      "error",
      { patterns: forbidden.map((name) => ({ regex: `^(\\.\\./)+${name}(/|$)`, message: `src/${folder} must not import src/${name}.` })) },
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
    rules: { "no-restricted-globals": ["error", "window", "document", "process", "Office", "Excel", "CustomFunctions", "fetch", "Date", "setTimeout"] },
  },
  // the oldest web views of Excel for the Mac leave a whole script out for one lookbehind; tsconfig.hosts.json keeps the library calls to ES2020
  {
    files: ["src/**/*.{ts,tsx}"],
    rules: {
      "no-restricted-syntax": [
        "error",
        { selector: "Literal[regex.pattern=/\\(\\?<[=!]/]", message: "A lookbehind stops the pane on older Macs." },
        { selector: ":matches(NewExpression, CallExpression)[callee.name='RegExp'] Literal[value=/\\(\\?<[=!]/]", message: "A lookbehind stops the pane on older Macs." },
      ],
    },
  },
  // what is taken off an object so that the rest remains is named _
  {
    rules: {
      "@typescript-eslint/no-unused-vars": ["error", { varsIgnorePattern: "^_", argsIgnorePattern: "^_", ignoreRestSiblings: true }],
    },
  },
  // the host's contract is any[][] on both sides
  { files: ["src/functions/*.ts"], rules: { "@typescript-eslint/no-explicit-any": "off" } },
);
