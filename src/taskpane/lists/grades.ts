import { BushError, clash } from "../../core/errors";
import { Measure } from "../../core/formula";
import {
  propertyCell,
  gradeReading,
  propertyHeading,
  kindOf,
  parseGrades,
  properties,
  property,
} from "../../core/grades/model";
import type { PropertyKey, Values } from "../../core/grades/model";
import { measureText } from "../../core/measure";
import { fromUnit } from "../../core/units/scale";
import type { Sort } from "./sort";

const propertyAt = (key: string) => property(key as PropertyKey);
const name = "list";

/** Grades: a row with a fault is left out, since a formula refuses a table that holds one. */
export const grades: Sort = {
  kind: "grades",
  one: "grade",
  sheet: "Own grades",
  reading: gradeReading,
  keys: properties.filter(({ key }) => key !== "kind").map(({ key }) => key),
  words: {
    grade: ["name", "material", "materialname", "product", "compound", "designation", "type"],
    family: ["polymer", "basepolymer", "resin", "base"],
    staticPressure: ["maximumstaticpressure", "staticload", "maxstaticload", "staticcapacity", "pmaxstatic"],
    runningPressure: [
      "dynamicpressure",
      "dynamicload",
      "maxpressure",
      "pressurelimit",
      "maxp",
      "pmax",
      "maximumpressure",
    ],
    speedTurning: [
      "maxspeed",
      "speedlimit",
      "maxv",
      "vmax",
      "maxvelocity",
      "maximumspeed",
      "maxspeedrotating",
      "velocitylimit",
    ],
    speedSwinging: ["maxspeedoscillating", "speedoscillating", "maxspeedswinging"],
    speedLinear: ["maxspeedlinear", "speedlinear"],
    pvLimit: ["pvmax", "lpv", "pvvalue", "maximumpv"],
    lowestTemperature: ["mintemp", "tmin", "lowtemp"],
    highestTemperature: [
      "maxtemp",
      "maxtemperature",
      "maximumtemperature",
      "tmax",
      "hightemp",
      "continuoustemperature",
      "servicetemperature",
    ],
    shortTermTemperature: ["maxshorttermtemperature"],
    frictionHigh: ["friction", "cof", "coefficientoffriction", "mu"],
    wearHigh: ["wearrate", "wearfactor", "specificwearrate", "kfactor"],
    compressiveStrength: ["compressivestress", "strength"],
    compressiveModulus: ["modulus", "emodulus", "elasticmodulus", "youngsmodulus"],
    poisson: ["nu"],
    expansion: ["clte", "linearexpansion"],
    waterSaturated: ["waterabsorption", "moistureabsorption", "watersaturation", "maxwaterabsorption", "wateruptake"],
    density: ["specificgravity"],
    source: ["reference", "supplier"],
  },
  needs: { grade: "Set one column to grade: the name of each material." },
  owner: "list",
  dropsFaulty: true,
  takesUnit: (key) => kindOf(propertyAt(key)) !== undefined,
  headingOf(key, unit, system) {
    const p = propertyAt(key);
    return unit === "" ? propertyHeading(p, system) : `${p.heading} [${unit}]`;
  },
  checkUnit(key, unit) {
    const p = propertyAt(key);
    if (unit === "") {
      if (p.kind === "percent") throw clash(name, `${p.heading}: say whether it is in % or a ratio`);
      return;
    }
    const kind = kindOf(p);
    if (!kind) throw clash(name, `${p.heading} takes no unit`);
    if (p.kind !== "curve") return void fromUnit(p.heading, kind, 1, unit);
    const [second = "", first] = unit.split(":").reverse();
    fromUnit(p.heading, kind, 1, second.trim());
    if (first) fromUnit(p.heading, "temperature", 1, first.trim());
  },
  told(key, value, system) {
    const values = { [key]: value } as Values;
    const cell = propertyCell(
      { name: String(value), kind: "own", values, origins: {}, extra: [] },
      propertyAt(key),
      system,
    );
    if (cell instanceof BushError) throw cell;
    return cell instanceof Measure ? measureText(cell.kind, cell.value, system) : String(cell);
  },
  judge(cells, system) {
    const { grades: found, faults } = parseGrades(cells, system, name);
    return {
      count: found.length,
      faults: faults.map(({ row, message }) => ({ row, message: message.replace(`${name} row ${row}: `, "") })),
    };
  },
};
