import { functions } from "../../../src/core";
import { call } from "../../support";

/** What STEPS ends in. */
const shown = (...given: unknown[]) =>
  call(functions.STEPS, ["RUNTEMP", ...given])
    .filter(([, , , result]) => typeof result === "number")
    .map((line) => line[3] as number);

/** RUNTEMP of a bush 20 × 15 with 0.25 W/(m·K) and a steel shaft. */
const of = (endlength: number, ends: number, ...housing: number[]) => [
  ...[400, 20, 15, 1.5, 0.1, 0.15, 25, 0.25, 45],
  ...[endlength, ends, ...housing],
];

test.each([
  [60, 2],
  [60, 1],
  [0, 2],
  [60, 0],
])("RUNTEMP's working ends in its answer, the ends being %d mm and %d", (endlength, ends) => {
  for (const housing of [[], [0.5]]) {
    const given = of(endlength, ends, ...housing);
    const [least, greatest] = call(functions.RUNTEMP, given)[0]!;
    const figures = shown(...given);
    const hasWayOut = endlength * ends > 0 || housing.length > 0;
    expect(typeof greatest).toBe(hasWayOut ? "number" : "object");
    expect(figures.at(hasWayOut ? -2 : -1)).toBeCloseTo(least as number, 9);
    if (hasWayOut) expect(figures.at(-1)).toBeCloseTo(greatest as number, 9);
  }
});
