import { formula } from "../formula";
import { sourceTitle } from "../sources";
import { findGrade, findProperty } from "./model/find";
import { cellOf, gradeArg, lacks } from "./grade";
import { kindText } from "./model/library";
import type { Grade, Origin } from "./model/library";
import type { PropertyKey } from "./model/properties";
import { gradesArg } from "./model/table";

/** Where a grade's value comes from, in one line. */
export function originText(grade: Grade, key: PropertyKey): string {
  if (grade.kind === "own") return grade.values.source ?? "own row, no source given";
  const origin = grade.origins[key];
  if (origin) return publishedText(origin);
  return grade.kind === "demo" ? kindText.demo : "wording of this library";
}

const publishedText = ({ source, at, printed, label, condition }: Origin): string =>
  [`${sourceTitle(source)} ${at}`, `${printed}, ${label}`, condition].filter(Boolean).join("; ");

export const gradeSource = formula(
  {
    id: "SOURCE",
    family: "Grades, limits, verdicts",
    text: "Where a grade's value comes from: source, place in it, the number as printed, whether it was read or remembered, condition",
    args: {
      grade: gradeArg,
      property: { kind: "text", text: "Heading of the property" },
      grades: gradesArg,
    },
    units: false,
    result: { kind: "text", text: "The source in one line" },
    source: { key: "own" },
    example: ["PA66", "PV limit"],
    see: ["GRADE"],
  },
  ({ grade, property, grades }) => {
    const found = findGrade(grade, grades);
    const p = findProperty(property);
    if (cellOf(found, p, "metric") === undefined) throw lacks(found, p.heading);
    return originText(found, p.key);
  },
);
