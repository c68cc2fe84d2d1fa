import fc from "fast-check";
import { catalogue, functions } from "../../src/core";
import { isWhole, resultSymbols } from "../../src/core/formula";
import type { Arg, Formula } from "../../src/core/formula";
import { answer } from "../../src/edge/sheet";
import { hostileCell } from "../fuzz/hostile";
import { call, CellError, host } from "../support";

/** No working where there is no answer: STEPS answers exactly where its function does, and else says what that says. */

const worked = catalogue.filter((f) => f.spec.working).map((f) => [f.spec.id, f] as const);
const args = (f: Formula): Arg[] => Object.values<Arg>(f.spec.args);

/** The function's own answer beside its working; both as a host gets them, from the same raw cells. */
const both = (f: Formula, cells: readonly unknown[]) => ({
  own: answer(f, cells, host),
  steps: answer(functions.STEPS, [f.spec.id, cells.map((cell) => (Array.isArray(cell) ? cell : [[cell]]))], host),
});

function check(f: Formula, cells: readonly unknown[]): void {
  const { own, steps } = both(f, cells);
  const [row] = own as [unknown[]];
  const errors = row.filter((cell) => cell instanceof CellError);
  if (row.every((cell) => cell === "")) {
    expect(steps[0]![0]).toBeInstanceOf(CellError); // a blank row has nothing to be worked
    return;
  }
  if (errors.length === row.filter((cell) => cell !== "").length) {
    expect(steps).toEqual([[errors[0]]]);
    return;
  }
  expect(steps[0]![0]).toBe("step");
  for (const { symbol, at } of resultSymbols(f.spec.result)) {
    const lines = steps.filter(([, formula]) => formula === symbol || String(formula).startsWith(`${symbol} = `));
    expect(lines.at(-1)?.[3]).toEqual(row[at]);
  }
}

/** One of each kind of what may stand in a cell instead of what is asked for, and of numbers beyond all bounds. */
const instead: readonly unknown[] = [
  ...[null, "", "words", "9".repeat(400), true, {}, 0, -1, 0.3, 1e300, 1e-300, Infinity],
  ...["12 psi", "5 mm", "250 lbf", "20 °C", "3 min", "5 5 mm", "#N/A"],
  { type: "Error", basicValue: "#REF!" },
  { type: "Error", basicValue: "#BUSY!", errorType: "Busy" },
];

/** The example with one cell after the other exchanged, all of its numbers far away, and with nothing in it; in each system. */
function exchanged(f: Formula): unknown[][] {
  const example = args(f).map((_, i): unknown => f.spec.example[i] ?? null);
  const cells = [...instead, ...f.spec.example.filter((cell) => typeof cell === "string")];
  const single = args(f).flatMap((arg, i) => (isWhole(arg) ? [] : cells.map((cell) => example.with(i, cell))));
  const scaled = [0.5, 3, 1e200, 1e-200].map((by) =>
    example.map((cell) => (typeof cell === "number" ? cell * by : cell)),
  );
  const blank = example.map((cell) => (Array.isArray(cell) ? cell : null));
  const units = f.spec.units ? [null, "inch", "metric"] : [null];
  return [
    ...single.map((given, i) => [...given, units[i % units.length]]),
    ...[...scaled, blank, example].flatMap((given) => units.map((unit) => [...given, unit])),
    [...example, "furlong"],
  ].map((given) => (f.spec.units ? given : given.slice(0, -1)));
}

/** Several cells off at once, near the example and far from it. */
function cellsOf(f: Formula): fc.Arbitrary<unknown[]> {
  const places = args(f).map((arg, i) => {
    const example = f.spec.example[i] ?? null;
    if (isWhole(arg)) return fc.constant<unknown>(example);
    const scaled =
      typeof example === "number"
        ? fc.double({ min: -0.5, max: 3, noNaN: true }).map((by) => by * example)
        : fc.constant(example);
    return fc.oneof(
      { weight: args(f).length, arbitrary: fc.constant<unknown>(example) },
      { weight: 4, arbitrary: scaled },
      { weight: 1, arbitrary: hostileCell.filter((cell) => !Array.isArray(cell)) },
    );
  });
  const units = f.spec.units ? [fc.constantFrom<unknown>(null, "inch")] : [];
  return fc.tuple(...places, ...units);
}

describe.each(worked)("%s", (_, f) => {
  test("each cell exchanged", () => {
    for (const cells of exchanged(f)) check(f, cells);
  });
  if (args(f).some((arg) => !isWhole(arg)))
    test("random cells", () => {
      fc.assert(
        fc.property(cellsOf(f), (cells) => check(f, cells)),
        { seed: 20261125, numRuns: 40 },
      );
    });
});

describe("where a function has no answer, neither has its working", () => {
  test.each<[string, unknown[]]>([
    ["USE", ["PA66", 0.6, 0.0942, "5 to 95"]],
    ["MAXRPM", ["Demo Sorrel", 180000, 15, 20]],
    ["WASHERPRESSURE", [150, 36, 18]],
    ["WASHERSPEED", [36, 18, 60]],
    ["WASHERTORQUE", [150, 36, 18, 0.2]],
    ["CLOSEIN", [23, 20, 40, 2000, 0.4, 69000, 0.33]],
    ["CLOSEIN", [20, 23, 22, 2000, 0.4, 69000, 0.33]],
    ["PRESSFIT", [20, 23, 22, 0.05, 2000, 0.4, 69000, 0.33]],
    ["CLEARANCE", [20.021, 20, 19.959, 19.98]],
    ["RUNCLEARANCE", [0.04, 23, 20, 0.05, 1.03, 80, 9e-5, 2.36e-5, 1.17e-5]],
    ["LIMITS", [0.01, "h11"]],
    ["UNIT", [-500, "°C", "K"]],
    [
      "DUTYPV",
      [
        [[2], [4]],
        [[0.1], [0.05]],
        [[0], [0]],
      ],
    ],
    ["PRESSURE", [1e300, 1e-200, 1e-200]],
  ])("%s(%j)", (id, given) => {
    const f = catalogue.find((one) => one.spec.id === id)!;
    const [[own]] = call(f, given) as [[CellError]];
    expect(own).toBeInstanceOf(CellError);
    expect(own.message!.length).toBeGreaterThan(10);
    expect(call(functions.STEPS, [id, ...given])).toEqual([[own]]);
  });
});
