import misses from "../../../data/misses.json";
import { formula, Measure } from "../formula";
import { spectrumOf } from "../loading/spectrum";
import { cycleBetween, cycleLine, peakLine, peakOf } from "./firstOrder";
import type { Step } from "./firstOrder";

/**
 * First order, cooling as fast as heating. With τ = C/G and C of the bush and of only the shaft inside it the peaks lie at or above those of a
 * shaft solved along its length (at most 0.2 % below); a τ from a heating test gives peaks up to 1.7 times too low, one that counts
 * the whole shaft up to 2.5 times.
 */
export const PEAKRISE = formula(
  {
    id: "PEAKRISE",
    text: `Greatest rise of a cycle that repeats, to the first order; safe with the heat capacity of the bush and of only the shaft inside it, up to 2.5 times too low with the whole shaft's (${misses.spells.wholeMass} times at a rod's heated end, measured)`,
    args: {
      rises: {
        kind: "list",
        of: "rise",
        from: 0,
        text: "Rise that each step would reach if it lasted, one range; 0 at rest",
      },
      times: { kind: "list", of: "time", from: 0, text: "Duration of each step, one range, all in one unit" },
      timeconstant: {
        kind: "time",
        symbol: "τ",
        above: 0,
        text: "Time constant; heat capacity over conductance, in the unit of the times",
      },
    },
    units: false,
    result: { kind: "rise", symbol: "ΔT" },
    working: (values) => {
      const steps = stepsOf(values);
      return [cycleLine(steps), peakLine("ΔT", (step) => `R${step}`, steps, values.timeconstant)];
    },
    between: cycleBetween,
    lookups: (values) =>
      Object.fromEntries(
        stepsOf(values).flatMap(({ steady, time }, i) => [
          [`R${i + 1}`, { value: new Measure(steady, "rise"), text: `Steady rise of step ${i + 1}` }],
          [`t${i + 1}`, { value: new Measure(time, "time"), text: `Duration of step ${i + 1}` }],
        ]),
      ),
    source: { key: "own", at: "first-order response, started where the cycle closes" },
    example: [[[60], [20], [95], [0]], [["100 s"], ["200 s"], ["30 s"], ["400 s"]], "150 s"],
    see: ["DUTYPV", "RUNTEMP"],
  },
  (values) => peakOf(stepsOf(values), values.timeconstant).value,
);

const stepsOf = ({ rises, times }: Record<"rises" | "times", readonly (number | undefined)[]>): Step[] =>
  spectrumOf({ rises, times }).map((step) => ({ steady: step.rises, time: step.times }));
