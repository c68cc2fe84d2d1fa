import { formula } from "../formula";
import { gradeArg } from "./grade";
import { sizingLimits, sizingLookups, sizingTemperature } from "./sizing";
import { gradesArg } from "./table";

/** F = d·L·min(p_a, PV_a/v), with the grade's limits of running pressure and PV. */
export const greatestLoad = formula(
  {
    id: "MAXLOAD",
    family: "Grades, limits, verdicts",
    text: "Highest radial load of a sleeve within the limits of running pressure and PV; the speed limit is not part of it",
    args: {
      grade: gradeArg,
      bore: { kind: "length", symbol: "d", above: 0, text: "Bore of the bush" },
      length: { kind: "length", symbol: "L", above: 0, text: "Length of the bush" },
      speed: { kind: "speed", symbol: "v", from: 0, text: "Mean sliding speed" },
      temperature: sizingTemperature,
      grades: gradesArg,
    },
    units: true,
    result: { kind: "force", symbol: "F" },
    working: ({ speed }) => [speed === 0 ? "F = d * L * p_a" : "F = d * L * min(p_a, PV_a / v)"],
    lookups: sizingLookups,
    source: { key: "shigley", at: "boundary-lubricated bearings: pressure and PV, solved for the load" },
    example: ["Demo Sorrel", 20, 15, 0.05, 40],
    see: ["MINLENGTH", "MAXRPM", "USE"],
  },
  (values, system) => {
    const { bore, length, speed } = values;
    const { pressure, pv = Infinity } = sizingLimits(values, system);
    return bore * length * (speed === 0 ? pressure : Math.min(pressure, pv / speed));
  },
);
