import type { Answer } from "../formula";
import { formula } from "../formula";
import { findGrade } from "../grade/find";
import { lacks } from "../grade/grade";
import { gradesArg } from "../grade/table";
import { property } from "../grade/properties";
import { wearLife } from "./life";

/** Hours and km by the greatest and the least wear rate of a grade; a rate that the grade's data lack is no datum. */
export const lifeBand = formula(
  {
    id: "LIFEBAND",
    family: "Wear and cost",
    text: "Shortest and longest life of a grade by its greatest and least wear rate, in hours, then in sliding distance",
    args: {
      grade: { kind: "text", text: "Name of the grade" },
      pressure: wearLife.spec.args.pressure,
      speed: wearLife.spec.args.speed,
      allowance: wearLife.spec.args.allowance,
      clearance: {
        ...wearLife.spec.args.clearance,
        text: "Diametral clearance when new; with it the rates count as those of flat tests, as in LIFE",
      },
      grades: gradesArg,
    },
    units: true,
    result: {
      shape: "row",
      text: "Shortest and longest life, h; the sliding distance of each",
      columns: [
        { name: "shortest life", kind: "time" },
        { name: "longest life", kind: "time" },
        { name: "shortest distance", kind: "distance" },
        { name: "longest distance", kind: "distance" },
      ],
    },
    source: { key: "archard", at: "linear wear law, solved for the time" },
    example: ["Demo Sorrel", 2.67, 0.1257, 0.5],
    see: ["LIFE", "WEAR", "QUOTES"],
  },
  ({ grade: name, pressure, speed, allowance, clearance, grades }): Answer[] => {
    const grade = findGrade(name, grades);
    const hours = (["wearHigh", "wearLow"] as const).map((key) => {
      const wearrate = grade.values[key];
      return wearrate === undefined
        ? lacks(grade, property(key).heading)
        : wearLife({
            wearrate,
            pressure,
            speed,
            allowance,
            clearance,
            from: clearance === undefined ? "bush" : "flat",
          });
    });
    return [...hours, ...hours.map((life) => (typeof life === "number" ? life * speed * 3.6 : life))];
  },
);
