import { formula } from "../formula";
import { gradeArg } from "./grade";
import { gradesArg } from "./model/table";
import { Bounds, limitLookups, sizingTemperature } from "./sizing";

/** F = d·L·min(p_a, PV_a/v), with the grade's limits of running pressure, at the bore's temperature, and of PV. */
export const MAXLOAD = formula(
  {
    id: "MAXLOAD",
    text: "Highest radial load of a sleeve within running pressure, PV and bore temperature; #N/A where speed or temperature alone fail",
    args: {
      grade: gradeArg,
      bore: { kind: "length", symbol: "d", above: 0, text: "Bore of the bush" },
      length: { kind: "length", symbol: "L", above: 0, text: "Length of the bush" },
      speed: { kind: "speed", symbol: "v", from: 0, text: "Mean sliding speed" },
      temperature: sizingTemperature,
      grades: gradesArg,
    },
    units: true,
    result: { kind: "force", symbol: "F", label: "Highest radial load" },
    working: ({ speed }) => [speed === 0 ? "F = d * L * p_a" : "F = d * L * min(p_a, PV_a / v)"],
    lookups: (values) => {
      const bounds = new Bounds(values, "metric");
      const pressure = bounds.greatestPressure(values.speed);
      return limitLookups(bounds.pressure(pressure * values.speed), values.speed === 0 ? undefined : bounds.pv);
    },
    source: { key: "shigley", at: "boundary-lubricated bearings: pressure and PV, solved for the load" },
    example: ["Demo Sorrel", 20, 15, 0.05, 40],
    see: ["MINLENGTH", "MAXRPM", "USE"],
  },
  (values, system = "metric") =>
    values.bore * values.length * new Bounds(values, system).greatestPressure(values.speed),
);
