import { formula } from "../formula";
import { gradeArg } from "./grade";
import { gradesArg } from "./model/table";
import { Bounds, limitLookups, sizingTemperature } from "./sizing";

/** L = max(F/(d·p_a), F·v/(d·PV_a)), with the grade's limits of running pressure, at the bore's temperature, and of PV. */
export const MINLENGTH = formula(
  {
    id: "MINLENGTH",
    text: "Least length of a sleeve that holds running pressure, PV and bore temperature; #N/A where speed or temperature alone fail. Compare it with the bore: 0.5 to 2 times is common practice",
    args: {
      grade: gradeArg,
      load: { kind: "force", symbol: "F", from: 0, text: "Radial load" },
      bore: { kind: "length", symbol: "d", above: 0, text: "Bore of the bush" },
      speed: { kind: "speed", symbol: "v", from: 0, text: "Mean sliding speed" },
      temperature: sizingTemperature,
      grades: gradesArg,
    },
    units: true,
    result: { kind: "length", symbol: "L", label: "Least length" },
    working: ({ speed }) => [speed === 0 ? "L = F / (d * p_a)" : "L = max(F / (d * p_a), F * v / (d * PV_a))"],
    lookups: (values) => {
      const bounds = new Bounds(values, "metric");
      const pressure = bounds.greatestPressure(values.speed);
      return limitLookups(bounds.pressure(pressure * values.speed), values.speed === 0 ? undefined : bounds.pv);
    },
    source: { key: "shigley", at: "boundary-lubricated bearings: pressure and PV, solved for the length" },
    example: ["Demo Sorrel", 800, 20, 0.05, 40],
    see: ["MAXLOAD", "MAXRPM", "USE"],
  },
  (values, system = "metric") =>
    values.load / (values.bore * new Bounds(values, system).greatestPressure(values.speed)),
);
