import { clash } from "../errors";
import { formula } from "../formula";

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
    source: { key: "mean", at: "time-weighted mean of p·v over the whole cycle" },
    example: [[[2], [4], [1]], [[0.1], [0.05], [0]], [[10], [5], [15]]],
    see: ["PV"],
  },
  ({ pressures, speeds, times }) => {
    const steps = Math.max(pressures.length, speeds.length, times.length);
    const lists = { pressures, speeds, times };
    for (const [name, list] of Object.entries(lists))
      if (list.length !== steps) throw clash(name, `${name} has ${list.length} cells, another range has ${steps}: each step needs all three`);
    let work = 0;
    let total = 0;
    for (let i = 0; i < steps; i++) {
      const step = { pressures: pressures[i], speeds: speeds[i], times: times[i] };
      const lacking = Object.entries(step).filter(([, value]) => value === undefined);
      if (lacking.length === 3) continue;
      if (lacking.length > 0) throw clash(lacking[0]![0], `${lacking[0]![0]} is missing in step ${i + 1}`);
      work += step.pressures! * step.speeds! * step.times!;
      total += step.times!;
    }
    if (total === 0) throw clash("times", "times must sum to above 0");
    return work / total;
  },
);
