import { formula } from "../formula";
import { gradeArg } from "./grade";
import { sizingLimits, sizingLookups, sizingTemperature } from "./sizing";
import { gradesArg } from "./table";

/** L = max(F/(d·p_a), F·v/(d·PV_a)), with the grade's limits of running pressure and PV. */
export const leastLength = formula(
  {
    id: "MINLENGTH",
    family: "Grades, limits, verdicts",
    text: "Least length of a sleeve that holds the limits of running pressure and PV; the speed limit is not part of it",
    args: {
      grade: gradeArg,
      load: { kind: "force", symbol: "F", from: 0, text: "Radial load" },
      bore: { kind: "length", symbol: "d", above: 0, text: "Bore of the bush" },
      speed: { kind: "speed", symbol: "v", from: 0, text: "Mean sliding speed" },
      temperature: sizingTemperature,
      grades: gradesArg,
    },
    units: true,
    result: { kind: "length", symbol: "L" },
    working: ({ speed }) => [speed === 0 ? "L = F / (d * p_a)" : "L = max(F / (d * p_a), F * v / (d * PV_a))"],
    lookups: sizingLookups,
    source: { key: "shigley", at: "boundary-lubricated bearings: pressure and PV, solved for the length" },
    example: ["Demo Sorrel", 800, 20, 0.05, 40],
    see: ["MAXLOAD", "MAXRPM", "USE"],
  },
  (values, system) => {
    const { load, bore, speed } = values;
    const { pressure, pv = Infinity } = sizingLimits(values, system);
    return Math.max(load / (bore * pressure), (load * speed) / (bore * pv));
  },
);
