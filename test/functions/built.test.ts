import { readFileSync } from "node:fs";
import path from "node:path";
import vm from "node:vm";
import { gzipSync } from "node:zlib";
import { Linter } from "eslint";
import { all, create } from "mathjs";
import { catalogue, functions as core } from "../../src/core";
import type { Formula } from "../../src/core/formula";
import { gathered } from "../../src/edge/gathered";
import { answer } from "../../src/edge/sheet";
import { CellError, host } from "../support";

/** The built functions.js as any host runs it that supplies `CustomFunctions`; `npm test` builds it first. */
const dist = path.join(__dirname, "../../dist");
const code = readFileSync(path.join(dist, "functions.js"), "utf8");

function load() {
  const functions = new Map<string, (...args: unknown[]) => unknown[][]>();
  const CustomFunctions = {
    associate: (id: string, fn: (...args: unknown[]) => unknown[][]) => functions.set(id, fn),
    Error: CellError,
  };
  vm.compileFunction(code, ["CustomFunctions"])(CustomFunctions);
  return functions;
}

const functions = load();

test("associates every function, and nothing else is needed of the host", () => {
  expect([...functions.keys()].sort()).toEqual(catalogue.map((f) => f.spec.id).sort());
});

test("a scalar and a 1×1 range give the same answer; omitted arguments come as null or not at all", () => {
  const pressure = functions.get("PRESSURE")!;
  const expected = [[800 / (20 * 15)]];
  expect(pressure([[800]], [[20]], [[15]], null)).toEqual(expected);
  expect(pressure(800, 20, 15)).toEqual(expected);
  expect(pressure([[800]], [[20]], [[15]], [[""]])).toEqual(expected);
});

test("errors are the host's own, with their message", () => {
  const [[cell]] = functions.get("PRESSURE")!([[800]], [[-5]], [[15]], null) as [[CellError]];
  expect(cell).toBeInstanceOf(CellError);
  expect(cell).toEqual(new CellError("#VALUE!", "bore must be above 0 mm, got -5"));
  const [[missing]] = functions.get("GRADE")!([["Unheard of"]], [["PV limit"]]) as [[CellError]];
  expect(missing.code).toBe("#N/A");
});

/** The words of the docs are left out of functions.js; none that an answer shows may go with them. */
test("every example and its STEPS in both systems answer as the core's do", () => {
  const compare = (id: keyof typeof core, typed: readonly unknown[]) => {
    const f = core[id] as Formula;
    const given = [...gathered(f, typed), ...Array(Object.keys(f.spec.args).length).fill(null)];
    expect([id, typed, told(functions.get(id)!(...given))]).toEqual([id, typed, told(answer(f, given, host))]);
  };
  for (const { spec } of catalogue) {
    compare(spec.id as keyof typeof core, spec.example);
    if (!spec.working) continue;
    for (const system of ["metric", "inch"]) {
      const last = spec.units ? [...Array(Object.keys(spec.args).length - spec.example.length).fill(""), system] : [];
      compare("STEPS", [spec.id, ...spec.example, ...last]);
    }
  }
});

/** Methods of the unit algebra that nothing calls are left out, too. */
test("every unit, alone, with a prefix and in a compound, reads as the core's does", () => {
  const names = Object.keys((create(all ?? {}).Unit as unknown as { UNITS: object }).UNITS);
  expect(names.length).toBeGreaterThan(150);
  const others = ["m", "m^2", "kg", "s", "Pa", "J", "K"];
  const rows = names
    .flatMap((name) => [name, `k${name}`, `N/(${name}^2*s)`])
    .flatMap((unit) => [...others, unit].map((other) => [unit, other]));
  const [from, to] = [rows.map(([unit]) => [unit]), rows.map(([, other]) => [other])];
  const built = functions.get("UNIT")!([[2]], from, to);
  expect(built.flat().filter((cell) => typeof cell === "number").length).toBeGreaterThan(names.length);
  expect(told(built)).toEqual(told(answer(core.UNIT, [[[2]], from, to], host)));
});
const told = (rows: unknown[][]) => rows.map((row) => row.map((cell) => (isError(cell) ? cell.message : cell)));
const isError = (cell: unknown): cell is CellError => cell instanceof CellError;

test("row × column makes a grid", () => {
  expect(functions.get("PVVALUE")!([[1], [2]], [[0.1, 0.2, 0.3]])).toEqual([
    [0.1, 0.2, 3 * 0.1].map((x) => expect.closeTo(x, 12)),
    [0.2, 0.4, 0.6].map((x) => expect.closeTo(x, 12)),
  ]);
});

test("cell errors reach the functions: the metadata asks for them", () => {
  const metadata = JSON.parse(readFileSync(path.join(dist, "functions.json"), "utf8")) as Record<string, unknown>;
  expect(metadata["allowErrorForDataTypeAny"]).toBe(true);
});

test("is small enough to start quickly", () => {
  expect(gzipSync(code, { level: 9 }).length).toBeLessThanOrEqual(110_000);
});

test("no script that Excel loads has a lookbehind or a static block, which stop older Macs", () => {
  // with what they import, at once or later
  const scripts = new Set(["functions.js", "taskpane.js"]);
  for (const name of scripts) {
    const text = readFileSync(path.join(dist, name), "utf8");
    for (const [, imported] of text.matchAll(/"\.\/([\w.]+\.js)"/g)) scripts.add(imported!);
    const found = /.{40}\(\?<[=!].{20}|\bstatic\{.{20}/.exec(text);
    expect([name, found?.[0]]).toEqual([name, undefined]);
  }
  expect(scripts.size).toBeGreaterThan(10);
});

/** What a script needs beyond the language itself, and where it asks for time, chance or code; one line for each. */
function breachesIn(script: string): string[] {
  const restricted = [
    { selector: "ImportExpression", message: "import()" },
    { selector: "NewExpression[callee.name='Date'][arguments.length=0]", message: "new Date()" },
    { selector: "CallExpression[callee.name='Date']", message: "Date()" },
    { selector: "MemberExpression[object.name='Date'][property.name='now']", message: "Date.now" },
    { selector: "MemberExpression[object.name='Math'][property.name='random']", message: "Math.random" },
  ];
  const found = new Linter().verify(script, {
    languageOptions: { ecmaVersion: 2022, sourceType: "script", globals: { CustomFunctions: "readonly" } },
    linterOptions: { noInlineConfig: true },
    rules: {
      "no-undef": ["error", { typeof: true }],
      "no-restricted-globals": ["error", "globalThis"],
      "no-restricted-syntax": ["error", ...restricted],
      "no-eval": "error",
      "no-new-func": "error",
    },
  });
  return found.map(({ message }) => message);
}

test("keeps to the page: nothing of a host but CustomFunctions, no clock, chance or code from text", () => {
  expect(breachesIn(code)).toEqual([]);
});

test.each([
  ..."fetch('/x')|new XMLHttpRequest()|localStorage.x|sessionStorage.x|new WebSocket('x')|indexedDB.open('x')".split(
    "|",
  ),
  ..."navigator.sendBeacon('/x')|import('/x')|setTimeout(() => 1)|setInterval(() => 1)|document.cookie".split("|"),
  ..."typeof process|performance.now()|globalThis.fetch|Date.now()|new Date()|Date()|Math.random()".split("|"),
  ..."new Function('return 1')|Function('return 1')|eval('1')|require('fs')".split("|"),
])("%s in it would be found", (planted) => {
  expect(breachesIn(`"use strict";(() => { ${planted}; })();`)).toHaveLength(1);
});
