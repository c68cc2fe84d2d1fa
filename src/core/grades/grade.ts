import { noDatum } from "../errors";
import { formula, Measure } from "../formula";
import type { Answer } from "../formula";
import type { System } from "../kinds";
import { curveText } from "./model/curve";
import type { Curve } from "./model/curve";
import { findGrade, findProperty } from "./model/find";
import { kindText } from "./model/library";
import type { Grade } from "./model/library";
import { mediaText } from "./model/media";
import type { Media } from "./model/media";
import type { Property } from "./model/properties";
import { gradesArg } from "./model/table";

/** A property as a cell shows it; `undefined` where the grade has no data. */
export function propertyCell(grade: Grade, p: Property, system: System): Answer | undefined {
  if (p.key === "grade") return grade.name;
  if (p.key === "kind") return kindText[grade.kind];
  const value = grade.values[p.key];
  if (value === undefined) return undefined;
  switch (p.kind) {
    case "text":
    case "rating":
    case "choice":
      return value as string;
    case "list":
      return (value as readonly string[]).join(", ");
    case "media":
      return mediaText(value as Media, system);
    case "curve":
      return curveText(value as Curve, p.of, system);
    default:
      return new Measure(value as number, p.kind);
  }
}

/** The error for a property that a grade lacks. */
export const lacks = (grade: Grade, heading: string) =>
  noDatum("grade", `grade "${grade.name}" has no data on ${heading}`);

/** The arguments that name a grade, in every function that takes one. */
export const gradeArg = { kind: "text", text: "Name of a grade in grades or in the library", label: "Grade" } as const;

export const GRADE = formula(
  {
    id: "GRADE",
    text: "One property of a grade, in the unit of that property; a percentage as a ratio; a curve, a rating or a list as text",
    args: {
      grade: gradeArg,
      property: { kind: "text", text: 'Heading of the property: "PV limit"; case, spaces and hyphens do not count' },
      grades: gradesArg,
    },
    units: true,
    result: { kind: "measure", text: "The property; #N/A where the grade has no data" },
    source: { key: "own" },
    example: ["PA66", "PV limit"],
    see: ["GRADES", "SOURCE", "ALLOWABLE"],
  },
  ({ grade, property, grades }, system = "metric"): Answer => {
    const found = findGrade(grade, grades);
    const p = findProperty(property);
    const cell = propertyCell(found, p, system);
    if (cell === undefined) throw lacks(found, p.heading);
    return cell;
  },
);
