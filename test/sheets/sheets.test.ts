import { Linter } from "eslint";
import { readFileSync } from "node:fs";
import path from "node:path";
import vm from "node:vm";
import { gathered } from "../../src/edge/gathered";
import { catalogue } from "../../src/core";
import { parametersOf } from "../../src/core/describe";
import { isNumberArg, isWhole } from "../../src/core/formula";
import type { Arg, Formula } from "../../src/core/formula";
import { answer } from "../../src/edge/sheet";
import { root, run, temporaryFolder } from "../package/run";

/** Code.gs as Google Sheets runs it, held to what the Excel face answers for the same cells. */

const folder = temporaryFolder();
let code: string;
let functions: Record<string, (...given: unknown[]) => unknown>;

beforeAll(() => {
  const { code: status, err } = run("npm", ["run", "--silent", "build:sheets", "--", `--out=${folder}`]);
  expect([status, err]).toEqual([0, ""]);
  code = readFileSync(path.join(folder, "Code.gs"), "utf8");
  // nothing of Node, of a browser or of the sheet is within reach
  functions = vm.createContext({});
  vm.runInContext(forgetNewer, functions);
  vm.runInContext(code, functions, { filename: "Code.gs" });
}, 600_000);

/** What came into the language after ES2020, taken away: Apps Script's engine need not have it. */
const forgetNewer = `
  const newer = [
    [Array.prototype, "at findLast findLastIndex toSorted toReversed toSpliced with"],
    [String.prototype, "at replaceAll isWellFormed toWellFormed"],
    [Object, "hasOwn groupBy"],
    [Map, "groupBy"],
    [Array, "fromAsync"],
    [Promise, "any withResolvers try"],
    [globalThis, "AggregateError FinalizationRegistry WeakRef structuredClone Iterator"],
  ];
  for (const [owner, names] of newer) for (const name of names.split(" ")) delete owner[name];
  for (const name of ["union", "intersection", "difference", "isSubsetOf"]) delete Set.prototype[name];`;

type Cell = number | string | boolean;
type Given = Cell | Cell[][] | undefined;
interface Case {
  readonly what: string;
  readonly f: Formula;
  /** What stands in the cells; "" is a blank, undefined a left-out argument. */
  readonly given: readonly Given[];
}

const isElement = (f: Formula, i: number): boolean => {
  const arg = Object.values<Arg>(f.spec.args)[i];
  return arg !== undefined && !isWhole(arg);
};

function casesOf(f: Formula): Case[] {
  const args = Object.values<Arg>(f.spec.args);
  const example = f.spec.example.map((given) => (Array.isArray(given) ? given.map((row) => [...row]) : given) as Given);
  const withUnits = (units: string): Given[] => [...args.map((_, i) => example[i]), units];
  const of = (what: string, given: readonly Given[]): Case => ({ what: `${f.spec.id}, ${what}`, f, given });
  const cases = [of("its example", example), of("nothing given", [])];
  if (f.spec.units) cases.push(of("inch", withUnits("inch")), of("an unknown unit system", withUnits("feet")));
  example.forEach((given, i) => {
    if (!isElement(f, i)) return;
    const put = (other: Given) => example.map((own, j) => (j === i ? other : own));
    const cell = given as Cell;
    cases.push(
      of(
        `argument ${i + 1} a column with a blank, text, errors`,
        put([[cell], [""], ["fair words"], ["#N/A"], ["#DIV/0!"], [cell]]),
      ),
      of(`argument ${i + 1} a row`, put([[cell, cell]])),
      of(`argument ${i + 1} TRUE`, put(true)),
      of(`argument ${i + 1} blank`, put("")),
      of(`argument ${i + 1} an error`, put("#REF!")),
    );
    if (isNumberArg(args[i]!)) cases.push(of(`argument ${i + 1} beyond all bounds`, put(-1e9)));
  });
  return cases;
}

/** The Excel face's answer to the same cells: every argument a range, what is left out null, blanks null. */
function inExcel({ f, given }: Case): unknown[][] {
  const host = { error: (errorCode: string, message?: string) => ({ code: errorCode, message }) };
  const range = (cells: Given) =>
    (Array.isArray(cells) ? cells : [[cells]]).map((row) => row.map((cell) => (cell === "" ? null : cell)));
  const shaped = (cells: Given) => (cells === undefined ? null : range(cells));
  const handed = gathered(f, given.map(shaped));
  return answer(
    f,
    parametersOf(f.spec).map((_, i) => handed[i] ?? null),
    host,
  );
}

const isError = (cell: unknown): cell is { code: string; message?: string } =>
  typeof cell === "object" && cell !== null;

function inSheets({ f, given }: Case): unknown {
  try {
    return functions[`BUSH_${f.spec.id}`]!(...given);
  } catch (error) {
    return { thrown: (error as Error).message };
  }
}

/** How Sheets shows what Excel shows: a single error is thrown, among other cells it is text. */
function expected(cells: unknown[][]): unknown {
  const [[first]] = cells as [[unknown]];
  if (cells.length === 1 && cells[0]!.length === 1)
    return isError(first) ? { thrown: first.message ?? first.code } : first;
  return cells.map((row) =>
    row.map((cell) => (isError(cell) ? [cell.code, cell.message].filter(Boolean).join(" ") : cell)),
  );
}

test("every function of the catalogue is there and no other, with its hint", () => {
  const names = Object.keys(functions).filter((name) => name.startsWith("BUSH_"));
  expect(names).toEqual(catalogue.map((f) => `BUSH_${f.spec.id}`));
  for (const f of catalogue) {
    const doc = code
      .slice(0, code.indexOf(`\nfunction BUSH_${f.spec.id}(`))
      .split("/**")
      .at(-1)!;
    expect(doc).toContain(f.spec.text);
    expect(doc).toContain("@customfunction");
    for (const p of parametersOf(f.spec)) expect(doc).toContain(`@param {any} ${p.name} ${p.text}`);
  }
});

test.each(catalogue.map((f) => [f.spec.id, f] as const))("%s answers as in Excel", (_, f) => {
  for (const one of casesOf(f))
    expect([one.what, plain(inSheets(one))]).toEqual([one.what, plain(expected(inExcel(one)))]);
});
/** Arrays of another realm are no arrays to jest. */
const plain = (value: unknown): unknown => JSON.parse(JSON.stringify(value ?? null));

test("the engine has nothing newer than ES2020", () => {
  const still = "[[].at, [].findLast, ''.replaceAll, Object.hasOwn, globalThis.structuredClone].map((f) => typeof f)";
  expect([...(vm.runInContext(still, functions) as string[])]).toEqual(Array(5).fill("undefined"));
});

test("an error's text in a cell goes on as that error", () => {
  const { BUSH_PRESSURE, BUSH_PVVALUE } = functions as Record<string, (...given: unknown[]) => unknown[][]>;
  const pressures = BUSH_PRESSURE!([[800], ["oops"]], 20, 15);
  expect(pressures[1]![0]).toMatch(/^#VALUE! load must be /);
  expect(BUSH_PVVALUE!(pressures, 0.1)[1]![0]).toBe(pressures[1]![0]);
  expect(() => BUSH_PVVALUE!(pressures[1]![0], 0.1)).toThrow(/load must be/);
});

test("the script is written in a language that Apps Script reads, and its settings name V8", () => {
  const config: Linter.Config = { files: ["**/*.js"], languageOptions: { ecmaVersion: 2020, sourceType: "script" } };
  expect(new Linter().verify(code, [config], "Code.js")).toEqual([]);
  expect(JSON.parse(readFileSync(path.join(folder, "appsscript.json"), "utf8"))).toMatchObject({
    runtimeVersion: "V8",
  });
  expect(readFileSync(path.join(root, "docs/google-sheets.md"), "utf8")).toContain("npm run build:sheets");
});
