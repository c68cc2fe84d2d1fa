import { criteria } from "../../../src/core/duties";
import type { Duty, FieldValues } from "../../../src/core/duties";
import { standardLibrary } from "../../../src/core/grade";
import type { Values } from "../../../src/core/grade";
import { evaluate, readLine, symbolsOf } from "../../../src/core/teach/working";
import { between, checksOf, curve, described, full, on, resting, stated } from "./support";

/** The lines that a criterion shows, worked through as they stand, against what it finds: a record cannot show another sum. */
const washer: FieldValues = {
  ...{ part: "washer", load: 600, inner: 20, outer: 40, rpm: 30 },
  ...{ temperature: { low: 23, high: 23 } },
};
const flanged: FieldValues = {
  ...{ part: "flanged", load: 500, axialLoad: 250, bore: 20, length: 20, flangeOutside: 30, rpm: 20 },
  ...{ temperature: { low: 5, high: 35 } },
};
const factors = { geometryFactor: 1.5, heatFactor: 0.5, counterfaceFactor: 2, impactFactor: 1.4, designFactor: 1.5 };
const duties: readonly (readonly [string, Duty])[] = [
  ["stated", stated()],
  ["stated, hot", stated(between(20, 70))],
  ["stated, cold", stated(between(-30, 0))],
  ["stated, at rest", stated({ motion: "static", ...between(20, 60) })],
  ["stated, without load", stated({ pressure: 0 })],
  ["stated, too hot", stated(between(20, 95))],
  ...Object.entries({
    sleeve: on({}),
    "peak at rest": on({ peakTemperature: 60 }, resting),
    "peak in motion": on({ peakTemperature: 40 }),
    "hot sleeve": on({ temperature: { low: 10, high: 60 }, peakTemperature: 80 }),
    "cold sleeve": on({ temperature: { low: -35, high: -5 } }),
    "worn sleeve": on({ hours: 120, allowance: 0.2 }),
    "worn with factors": on({ hours: 120, allowance: 0.2, ...factors }),
    "beyond its limits": on({ load: 3000, hours: 120, allowance: 0.2 }),
    intermittent: on({ runningTime: 2, restTime: 10, hours: 500, allowance: 0.2 }),
    "intermittent with a time constant": on({
      runningTime: 2,
      restTime: 10,
      timeConstant: 8,
      hours: 5,
      allowance: 0.2,
    }),
    "at rest": on({ staticLoad: 9000, impactFactor: 1.3, designFactor: 2 }, resting),
    "static load": on({ staticLoad: 9000, ...factors }),
    washer: on({ hours: 100, allowance: 0.3, staticLoad: 3000 }, washer),
    flanged: on({ hours: 100, allowance: 0.3, ...factors }, flanged),
    steps: described(
      { ...on({ hours: 100, allowance: 0.3, ...factors }).values, time: 10 },
      { load: 900, stroke: 60, time: 5 },
      { motion: "static", load: 4000, time: 60, temperature: { low: 0, high: 40 } },
    ),
    "steps of a washer": described({ ...on({}, washer).values, time: 10 }, { motion: "static", load: 900, time: 5 }),
    "with ways out for the heat": on({ wall: 1.5, housingPath: 0.02, endLength: 30, shaft: "stainless steel" }),
    "with one way out": on({ wall: 1.5, endLength: 30, shaft: "stainless steel", friction: 0.3 }),
    "flanged with ways out": on(
      { wall: 1.5, flangeThickness: 1.5, housingPath: 0.02, shaft: "stainless steel" },
      flanged,
    ),
    "flanged with one way out": on(
      { wall: 1.5, flangeThickness: 1.5, endLength: 30, shaft: "stainless steel" },
      flanged,
    ),
    "no wear": on({ load: 0, hours: 100, allowance: 0.3 }),
  }).flatMap(([name, { corners }]) => corners.map((corner) => [name, corner] as const)),
];
const grades: readonly (readonly [string, Values])[] = [
  ["full", full],
  [
    "with curves",
    { ...full, pressureCurve: curve("23: 60; 60: 12; 140: 8", "pressure"), pvCurve: curve("23: 0.2; 80: 0.05", "pv") },
  ],
  [
    "with short curves",
    { ...full, pressureCurve: curve("0: 60; 40: 50", "pressure"), pvCurve: curve("0: 0.2; 30: 0.15", "pv") },
  ],
  ["hot", { ...full, highestTemperature: 250, shortTermTemperature: 280 }],
  ["empty", {}],
  ...standardLibrary().grades.map(({ name, values }) => [name, values] as const),
];

/** Values of V, Z and u after the lines, in their order. */
function worked(
  lines: readonly string[],
  known: Readonly<Record<string, { readonly value: { readonly value: number } }>>,
) {
  const scope = new Map(Object.entries(known).map(([symbol, { value }]) => [symbol, value.value]));
  for (const line of lines) {
    const { symbol, tree } = readLine(line);
    expect(scope.has(symbol)).toBe(false);
    scope.set(
      symbol,
      evaluate(tree, (name) => scope.get(name)),
    );
  }
  return { V: scope.get("V"), Z: scope.get("Z"), u: scope.get("u") };
}
const close = (found: number | undefined, shown: number | undefined) =>
  found === undefined ? undefined : Math.abs(found - shown!) <= 1e-12 * Math.max(1, Math.abs(found));

test("every criterion's working ends in its value, its limit and its use", () => {
  const shownBy = new Map<string, number>();
  for (const [grade, values] of grades)
    for (const [duty, judged] of duties)
      for (const check of checksOf(values, judged)) {
        const { criterion, value, limit, use, word } = check;
        const working = criterion.working?.(values, judged);
        if (!working) continue;
        const place = `${criterion.id} of ${duty} in ${grade}`;
        shownBy.set(criterion.id, (shownBy.get(criterion.id) ?? 0) + 1);
        // no working where there is no number, and none that says more or less than the finding
        expect([place, word]).not.toEqual([place, "no data"]);
        const { V, Z, u } = worked(working.lines, working.known);
        expect([place, close(value, V)]).toEqual([place, true]);
        if (criterion.id !== "lengthOverBore") expect([place, limit === undefined]).toEqual([place, Z === undefined]);
        expect([place, use === undefined]).toEqual([place, u === undefined]);
        if (Z !== undefined) expect([place, close(limit, Z)]).toEqual([place, true]);
        if (u !== undefined) expect([place, close(use, u)]).toEqual([place, true]);
      }
  const withWorking = criteria.filter(({ working }) => working).map(({ id }) => id);
  expect([...shownBy.keys()].sort()).toEqual([...withWorking].sort());
  for (const [id, count] of shownBy) expect([id, count > 10]).toEqual([id, true]);
});

test("wherever there is a use, the working shows it", () => {
  for (const [grade, values] of grades)
    for (const [duty, judged] of duties)
      for (const { criterion, use, limit } of checksOf(values, judged)) {
        // without an end to a life there is nothing to divide by
        if (use === undefined || limit === undefined) continue;
        const working = criterion.working?.(values, judged);
        expect([criterion.id, duty, grade, working?.lines.at(-1)]).toEqual([
          criterion.id,
          duty,
          grade,
          "u = " + useLine[criterion.id],
        ]);
      }
});
const useLine: Readonly<Record<string, string>> = {
  ...Object.fromEntries(
    ["staticPressure", "runningPressure", "facePressure", "speed", "pv", "wearLife"].map((id) => [id, "V / Z"]),
  ),
  boreTemperature: "(V - T) / (T_max - T)",
};

test("every known symbol is used, and says what it is in words", () => {
  for (const [, values] of grades)
    for (const [, judged] of duties)
      for (const { criterion } of checksOf(values, judged)) {
        const working = criterion.working?.(values, judged);
        if (!working) continue;
        const used = working.lines.flatMap((line) => symbolsOf(readLine(line).tree));
        for (const [symbol, { text }] of Object.entries(working.known)) {
          expect(used).toContain(symbol);
          expect(text).toMatch(/^\p{Lu}[^;.]{2,}[^;.\s]$/u);
        }
      }
});
