import { noDatum } from "../errors";
import { formula, Measure } from "../formula";
import type { Span } from "../formula";
import type { System } from "../kinds";
import { allowed } from "./allowed";
import { findGrade } from "./find";
import { gradeArg } from "./grade";
import type { Library } from "./library";
import { limitTexts } from "./limitText";
import { sizingTemperature } from "./sizing";
import { gradesArg } from "./table";
import { measure } from "./verdict";

interface Asked {
  readonly grade: string;
  readonly load: number;
  readonly temperature?: Span | undefined;
  readonly grades?: Library | undefined;
}

/** Limits of running pressure, turning speed and, under load, PV. */
function limitsFor({ grade, load, temperature, grades }: Asked, system: System = "metric") {
  const found = findGrade(grade, grades);
  return {
    pressure: allowed(found, "runningPressure", temperature, system),
    speed: allowed(found, "speedTurning", temperature, system),
    ...(load === 0 ? {} : { pv: allowed(found, "pvLimit", temperature, system) }),
  };
}

/** n = 60000/(π·d)·min(v_a, PV_a·d·L/F), with the grade's limits of turning speed and PV; a pressure above its limit allows none. */
export const greatestRpm = formula(
  {
    id: "MAXRPM",
    family: "Grades, limits, verdicts",
    text: "Highest shaft speed of a sleeve within the limits of turning speed and PV; #N/A where the pressure is above its limit at any speed",
    args: {
      grade: gradeArg,
      load: { kind: "force", symbol: "F", from: 0, text: "Radial load" },
      bore: { kind: "length", symbol: "d", above: 0, text: "Bore of the bush" },
      length: { kind: "length", symbol: "L", above: 0, text: "Length of the bush" },
      temperature: sizingTemperature,
      grades: gradesArg,
    },
    units: true,
    result: { kind: "rate", symbol: "n" },
    working: ({ load }) => [
      load === 0 ? "n = 60000 * v_a / (pi * d)" : "n = 60000 * min(v_a, PV_a * d * L / F) / (pi * d)",
    ],
    lookups: (values) => {
      const { speed, pv } = limitsFor(values);
      const text = limitTexts(findGrade(values.grade, values.grades), values.temperature);
      return {
        v_a: { value: new Measure(speed, "speed"), text: text("speedTurning") },
        ...(pv === undefined ? {} : { PV_a: { value: new Measure(pv, "pv"), text: text("pvLimit") } }),
      };
    },
    source: { key: "shigley", at: "boundary-lubricated bearings: PV, solved for the shaft speed" },
    example: ["Demo Sorrel", 800, 20, 15, 40],
    see: ["MAXLOAD", "MINLENGTH", "USE"],
  },
  (values, system = "metric") => {
    const { load, bore, length } = values;
    const limits = limitsFor(values, system);
    const pressure = load / (bore * length);
    if (pressure > limits.pressure * (1 + 1e-9)) {
      const [found, limit] = [pressure, limits.pressure].map((p) => measure("pressure", p, system));
      throw noDatum("load", `load: no shaft speed is allowed, running pressure ${found} is above its limit ${limit}`);
    }
    const speed = limits.pv === undefined ? limits.speed : Math.min(limits.speed, limits.pv / pressure);
    return (60_000 * speed) / (Math.PI * bore);
  },
);
