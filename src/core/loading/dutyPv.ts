import { formula, Measure } from "../formula";
import { cycleBetween, cycleLine, peakLine, peakOf } from "../heat/firstOrder";
import { cycleOf, spectrumOf } from "./spectrum";

/**
 * Mean PV = Σ p·v·t/Σ t; greatest p·v. What stands against a PV limit is the greatest step, since a mean hides a step that lasts; with a
 * time constant it is the first-order peak of the rise, which is proportional to PV.
 */
export const DUTYPV = formula(
  {
    id: "DUTYPV",
    text: "PV of a load spectrum that repeats: time-weighted mean (rest is a step of speed 0), greatest step, and the PV to compare with a limit: the greatest step, or with a time constant the peak of the rise, to the first order. Check each step's pressure and speed too",
    args: {
      pressures: { kind: "list", of: "pressure", from: 0, text: "Mean pressure of each step, one range" },
      speeds: { kind: "list", of: "speed", from: 0, text: "Sliding speed of each step, one range" },
      times: { kind: "list", of: "time", from: 0, text: "Duration of each step, one range, all in one unit" },
      timeconstant: {
        kind: "time",
        symbol: "τ",
        above: 0,
        optional: true,
        text: "Time constant of the bush; in the unit of the times, as in PEAKRISE",
      },
    },
    units: true,
    result: {
      shape: "row",
      columns: [
        { name: "mean PV", kind: "pv", symbol: "PV_mean" },
        { name: "greatest PV", kind: "pv", symbol: "PV_max" },
        { name: "PV to compare", kind: "pv", symbol: "PV" },
      ],
      text: "Mean PV, greatest PV of a step, PV to compare with a limit",
    },
    working: (values) => {
      const steps = stepsOf(values);
      const product = (step: number) => `p${step} * v${step}`;
      const numbers = steps.map((_, i) => i + 1);
      const work = numbers.map((i) => `${product(i)} * t${i}`).join(" + ");
      const { timeconstant } = values;
      return [
        cycleLine(steps),
        `PV_mean = (${work}) / t_c`,
        `PV_max = max(${numbers.map(product).join(", ")})`,
        timeconstant === undefined ? "PV = PV_max" : peakLine("PV", product, steps.map(heating), timeconstant),
      ];
    },
    between: cycleBetween,
    lookups: (values) =>
      Object.fromEntries(
        stepsOf(values).flatMap(({ pressures, speeds, times }, i) => [
          [`p${i + 1}`, { value: new Measure(pressures, "pressure"), text: `Pressure of step ${i + 1}` }],
          [`v${i + 1}`, { value: new Measure(speeds, "speed"), text: `Speed of step ${i + 1}` }],
          [`t${i + 1}`, { value: new Measure(times, "time"), text: `Duration of step ${i + 1}` }],
        ]),
      ),
    source: [
      { key: "mean", at: "time-weighted mean of p·v over the whole cycle" },
      { key: "own", at: "first-order response, started where the cycle closes" },
    ],
    // a nutrient mixer: stirs, drains slowly, rests
    example: [
      [["2 MPa"], ["4 MPa"], ["1 MPa"]],
      [["0.1 m/s"], ["0.05 m/s"], ["0 m/s"]],
      [["2 min"], ["1 min"], ["9 min"]],
      "11 min",
    ],
    see: ["PVVALUE", "PEAKRISE"],
  },
  (values) => {
    const steps = stepsOf(values);
    const cycle = cycleOf(steps.map(({ times }) => times));
    const mean = steps.reduce((sum, { pressures, speeds, times }) => sum + pressures * speeds * times, 0) / cycle;
    const greatest = steps.reduce((most, { pressures, speeds }) => Math.max(most, pressures * speeds), 0);
    const { timeconstant } = values;
    return [mean, greatest, timeconstant === undefined ? greatest : peakOf(steps.map(heating), timeconstant).value];
  },
);

type Lists = Readonly<Record<"pressures" | "speeds" | "times", readonly (number | undefined)[]>>;
type DutyStep = Readonly<Record<keyof Lists, number>>;

const stepsOf = ({ pressures, speeds, times }: Lists): DutyStep[] => spectrumOf({ pressures, speeds, times });

/** Rises are proportional to PV, so the PV itself follows the same law. */
const heating = ({ pressures, speeds, times }: DutyStep) => ({ steady: pressures * speeds, time: times });
