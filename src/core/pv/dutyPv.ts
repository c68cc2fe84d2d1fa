import { clash } from "../errors";
import { formula, Measure } from "../formula";

export const dutyPv = formula(
  {
    id: "DUTYPV",
    family: "Loading, motion, PV",
    text: "Time-weighted mean PV of a load spectrum; rest counts as a step of speed 0. Check each step's pressure and speed against their own limits too",
    args: {
      pressures: { kind: "list", of: "pressure", from: 0, text: "Mean pressure of each step, one range" },
      speeds: { kind: "list", of: "speed", from: 0, text: "Sliding speed of each step, one range" },
      times: { kind: "list", of: "time", from: 0, text: "Duration of each step, one range, all in one unit" },
    },
    units: true,
    result: { kind: "pv", symbol: "PVm" },
    working: (values) => {
      const steps = stepsOf(values).map((_, i) => i + 1);
      const work = steps.map((i) => `p${i} * v${i} * t${i}`);
      return [`PVm = (${work.join(" + ")}) / (${steps.map((i) => `t${i}`).join(" + ")})`];
    },
    lookups: (values) =>
      Object.fromEntries(
        stepsOf(values).flatMap(({ pressure, speed, time }, i) => [
          [`p${i + 1}`, { value: new Measure(pressure, "pressure"), text: `Pressure of step ${i + 1}` }],
          [`v${i + 1}`, { value: new Measure(speed, "speed"), text: `Speed of step ${i + 1}` }],
          [`t${i + 1}`, { value: new Measure(time, "time"), text: `Duration of step ${i + 1}` }],
        ]),
      ),
    source: { key: "mean", at: "time-weighted mean of p·v over the whole cycle" },
    example: [
      [[2], [4], [1]],
      [[0.1], [0.05], [0]],
      [[10], [5], [15]],
    ],
    see: ["PVVALUE"],
  },
  (values) => {
    const steps = stepsOf(values);
    const total = steps.reduce((sum, { time }) => sum + time, 0);
    if (total === 0) throw clash("times", "times must sum to above 0");
    return steps.reduce((sum, { pressure, speed, time }) => sum + pressure * speed * time, 0) / total;
  },
);

interface Step {
  readonly pressure: number;
  readonly speed: number;
  readonly time: number;
}

/** The spectrum step by step; a step with nothing in it is a spare row, one with a gap an error. */
function stepsOf(lists: Readonly<Record<"pressures" | "speeds" | "times", readonly (number | undefined)[]>>): Step[] {
  const { pressures, speeds, times } = lists;
  const length = Math.max(pressures.length, speeds.length, times.length);
  for (const [name, list] of Object.entries(lists))
    if (list.length !== length)
      throw clash(name, `${name} has ${list.length} cells, another range has ${length}: each step needs all three`);
  return pressures.flatMap((pressure, i) => {
    const [speed, time] = [speeds[i], times[i]];
    if (pressure === undefined && speed === undefined && time === undefined) return [];
    if (pressure === undefined) throw lacking("pressures", i);
    if (speed === undefined) throw lacking("speeds", i);
    if (time === undefined) throw lacking("times", i);
    return [{ pressure, speed, time }];
  });
}

const lacking = (name: string, index: number) => clash(name, `${name} is missing in step ${index + 1}`);
