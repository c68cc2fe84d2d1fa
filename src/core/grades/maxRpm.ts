import { noDatum } from "../errors";
import { formula, Measure } from "../formula";
import type { System } from "../kinds";
import { gradeArg } from "./grade";
import { gradesArg } from "./model/table";
import { measureText } from "../measure";
import { Bounds, sizingTemperature } from "./sizing";
import type { Asked } from "./sizing";

interface AskedForSpeed extends Asked {
  readonly load: number;
  readonly bore: number;
  readonly length: number;
}

/** Limits of turning speed and, under load, of PV: that at which the pressure limit has fallen to the pressure, where it is lower. */
function limitsFor(asked: AskedForSpeed, system: System = "metric") {
  const bounds = new Bounds(asked, system);
  const pressure = asked.load / (asked.bore * asked.length);
  const isAbove = pressure > bounds.pressure(0) * (1 + 1e-9);
  if (isAbove) {
    const [found, limit] = [pressure, bounds.pressure(0)].map((p) => measureText("pressure", p, system));
    throw noDatum("load", `load: no shaft speed is allowed, running pressure ${found} is above its limit ${limit}`);
  }
  return {
    speed: bounds.speed,
    ...(asked.load === 0 ? {} : { pv: bounds.greatestPv(Math.min(pressure, bounds.pressure(0))) }),
  };
}

/** n = 60000/(π·d)·min(v_a, PV_a·d·L/F), with the grade's limits of turning speed and PV; a pressure above its limit allows none. */
export const MAXRPM = formula(
  {
    id: "MAXRPM",
    text: "Highest shaft speed of a sleeve within turning speed, PV, bore temperature and the pressure limit at that temperature; #N/A where pressure or temperature alone fail",
    args: {
      grade: gradeArg,
      load: { kind: "force", symbol: "F", from: 0, text: "Radial load" },
      bore: { kind: "length", symbol: "d", above: 0, text: "Bore of the bush" },
      length: { kind: "length", symbol: "L", above: 0, text: "Length of the bush" },
      temperature: sizingTemperature,
      grades: gradesArg,
    },
    units: true,
    result: { kind: "rate", symbol: "n", label: "Highest shaft speed" },
    working: ({ load }) => [
      load === 0 ? "n = 60000 * v_a / (pi * d)" : "n = 60000 * min(v_a, PV_a * d * L / F) / (pi * d)",
    ],
    lookups: (values) => {
      const { speed, pv } = limitsFor(values);
      return {
        v_a: { value: new Measure(speed, "speed"), text: "Limit of turning speed" },
        ...(pv === undefined
          ? {}
          : { PV_a: { value: new Measure(pv, "pv"), text: "Greatest PV of this pressure in these surroundings" } }),
      };
    },
    source: { key: "shigley", at: "boundary-lubricated bearings: PV, solved for the shaft speed" },
    example: ["Demo Sorrel", 800, 20, 15, 40],
    see: ["MAXLOAD", "MINLENGTH", "USE"],
  },
  (values, system = "metric") => {
    const { load, bore, length } = values;
    const { speed, pv } = limitsFor(values, system);
    const fastest = pv === undefined ? speed : Math.min(speed, (pv * bore * length) / load);
    return (60_000 * fastest) / (Math.PI * bore);
  },
);
