import fc from "fast-check";
import type { Arbitrary } from "fast-check";
import { catalogue } from "../../src/core";
import { field, fieldKeys } from "../../src/core/duties";
import type { Arg, Formula } from "../../src/core/formula";

/** Cells that no calculation asked for: what hosts, formulas and people put where a number should be. */
const values = fc.constantFrom<unknown>(null, undefined, "", " ", true, false, 0, -0, NaN, Infinity, -Infinity);
const extremes = fc.constantFrom(1e308, -1e308, 5e-324, -5e-324, 2.2e-308, 1e-200, 1e200, 2 ** 53, 1e9, 1e-9);
const text = fc.constantFrom(
  "=cmd",
  "=cmd|' /C calc'!A0",
  "@SUM(1)",
  "#N/A",
  "#VALUE!",
  "12 psi",
  "250 lbf",
  "1e999 mm",
  "5 5 mm",
  "mm",
  "1,2,3",
  "½",
  "١٢٣",
  "H7",
  "H7/f7",
  "25 H7",
  "+0.05/+0.10",
  "js99",
  "POM copolymer",
  "Demo Sorrel",
  "PV limit",
  "metric",
  "inch",
  "turning",
  "static",
  "-20 to 60",
  "60 to -20",
  "carbon steel",
  "PRESSURE",
  "STEPS",
  "__proto__",
  "constructor",
  "שלום עולם",
  "\u202eHTGNEL\u202c 20 mm",
  "🙂",
  "\u0000",
  "x".repeat(500),
  "9".repeat(400),
  "(".repeat(3000),
  "mm*".repeat(2000),
  "1 ".repeat(10_000),
  " ".repeat(10_000),
  `12${" ".repeat(10_000)}mm`,
);
const objects = fc.constantFrom<unknown>(
  { type: "Error", basicValue: "#REF!" },
  { type: "Error", basicValue: "#BUSY!", errorType: "Busy" },
  { type: "Double", basicValue: 5 },
  { type: "FormattedNumber", basicValue: 5, numberFormat: "0.00" },
  { type: "String", basicValue: "7 N" },
  { type: "Entity", text: "a thing", properties: {} },
  { basicValue: { basicValue: 1 } },
  { basicValue: NaN },
  { code: "#N/A" },
  Object.create(null),
  {},
  [],
  new Date(0),
  10n,
  () => 1,
);
export const hostileCell: Arbitrary<unknown> = fc.oneof(
  { weight: 3, arbitrary: values },
  { weight: 2, arbitrary: extremes },
  { weight: 3, arbitrary: fc.double() },
  { weight: 2, arbitrary: fc.integer({ min: -1000, max: 1000 }) },
  { weight: 4, arbitrary: text },
  { weight: 1, arbitrary: fc.string({ unit: "binary", maxLength: 30 }) },
  { weight: 2, arbitrary: objects },
);

/** One cell, or a range: with no rows, with ragged rows, with rows of nothing. */
const argument: Arbitrary<unknown> = fc.oneof(
  { weight: 4, arbitrary: hostileCell },
  { weight: 1, arbitrary: fc.constantFrom<unknown>([], [[]], [[], []], [null], [[1], []]) },
  { weight: 2, arbitrary: fc.array(fc.array(hostileCell, { maxLength: 3 }), { maxLength: 3 }) },
);

const args = (f: Formula): [string, Arg][] => Object.entries<Arg>(f.spec.args);

/** A call's arguments as a host hands them over; about half keep the example's value, so that the calculation itself is reached. */
export function hostileCall(f: Formula): Arbitrary<unknown[]> {
  const rest = args(f).findIndex(([, arg]) => arg.kind === "rest");
  const places = args(f).map(([, arg], i) => {
    const given = rest === i ? f.spec.example.slice(i).map((x) => [[x]]) : f.spec.example[i];
    const any = arg.kind === "rest" ? fc.array(argument, { maxLength: 6 }) : argument;
    const varied = arg.kind === "table" || arg.kind === "list" ? fc.oneof(any, damaged(given, arg)) : any;
    return fc.oneof(varied, fc.constant<unknown>(given));
  });
  return fc.tuple(...places, ...(f.spec.units ? [fc.oneof(fc.constantFrom<unknown>(null, "inch"), argument)] : []));
}

/** A good table with some of its cells gone bad. */
function damaged(given: unknown, arg: Arg): Arbitrary<unknown> {
  const table = given ?? (arg.kind === "table" ? someGrades : [[1], [2]]);
  if (!Array.isArray(table)) return hostileCell;
  const rows = table as unknown[][];
  const spot = fc.tuple(fc.nat(rows.length - 1), fc.nat((rows[0]?.length ?? 1) - 1), hostileCell);
  return fc
    .array(spot, { minLength: 1, maxLength: 4 })
    .map((spots) =>
      rows.map((row, r) => row.map((old, c) => spots.find(([sr, sc]) => sr === r && sc === c)?.[2] ?? old)),
    );
}
const someGrades = [
  ["grade", "running pressure limit [psi]", "PV limit", "PV at temperature [°C: MPa*m/s]", "shafts suited", "shock"],
  ["Demo Sorrel", 1000, 0.1, "-40: 0.12; 23: 0.12; 90: 0.05", "hardened steel, chromed", "good"],
  ["Y", null, 0.3, null, null, "-"],
];

/** What a message may name: the call's own arguments and the columns of its tables; for STEPS the arguments of every function. */
const everyName = [...new Set(catalogue.flatMap((f) => args(f).map(([name]) => name)))];
const namesOf = new Map(
  catalogue.map((f) => {
    const isSteps = args(f).some(([, arg]) => arg.kind === "rest");
    const own = isSteps ? ["function", ...everyName] : args(f).map(([name]) => name);
    const columns = f.spec.example.flatMap((x) => (Array.isArray(x) ? (x as string[][])[0]! : []));
    // a duty may lack any of its fields
    const ofDuties = args(f).some(([name]) => name === "duties") ? fieldKeys.map((key) => field(key).heading) : [];
    return [f, ["units", ...own, ...ofDuties, ...columns.map((heading) => String(heading).replace(/ \[.*/, ""))]];
  }),
);

/** What a program makes of a missing value or of a number that is none; no text of ours says it. */
const notWords = /\b(Infinity|NaN|undefined|null|\[object)\b/;

/** What is wrong with an answer; nothing where it holds only finite numbers, text and errors that name an argument. */
export function faultIn(f: Formula, answer: unknown, isError: (cell: unknown) => boolean): string | undefined {
  if (!Array.isArray(answer) || answer.length === 0) return "no rows";
  const rows = answer as unknown[][];
  if (!rows.every((row) => Array.isArray(row) && row.length === rows[0]!.length)) return "not a rectangle";
  for (const row of rows)
    for (const found of row) {
      if (typeof found === "number" && Number.isFinite(found) && !Object.is(found, -0)) continue;
      if (typeof found === "string" && !notWords.test(found)) continue;
      if (!isError(found)) return `${typeof found} ${Object.is(found, -0) ? "-0" : String(found)} came out`;
      const fault = faultOfError(f, found as { code: string; message?: string });
      if (fault) return fault;
    }
  return undefined;
}

const codes = new Set(["#VALUE!", "#N/A"]);
const passing = new Set([...codes, "#DIV/0!", "#NUM!", "#NULL!", "#REF!", "#NAME?", "#SPILL!", "#CALC!", "#BUSY!"]);

function faultOfError(f: Formula, { code, message }: { code: string; message?: string }): string | undefined {
  if (message === undefined) return passing.has(code) ? undefined : `code ${code}`;
  if (!codes.has(code)) return `code ${code} with a message`;
  if (message.length > 120) return `message of ${message.length} characters`;
  if (message.includes("cannot compute this")) return `not foreseen: ${message}`;
  if (notWords.test(message)) return `no words: ${message}`;
  if (!namesOf.get(f)!.some((name) => message.includes(name))) return `names no argument: ${message}`;
  return undefined;
}
