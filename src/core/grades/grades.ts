import { formula } from "../formula";
import type { Answer } from "../formula";
import { findProperty } from "./model/find";
import { propertyCell } from "./grade";
import { standardLibrary } from "./model/library";
import { propertyHeading, properties, property } from "./model/properties";
import { gradesArg } from "./model/table";

export const GRADES = formula(
  {
    id: "GRADES",
    text: "The own grades and the library as a table that can itself serve as grades; a cell is empty where there are no data",
    args: {
      properties: {
        kind: "list",
        of: "text",
        optional: true,
        text: "Headings of the properties wanted, in their order; all of them unless given. Grade and kind always stand first",
      },
      grades: gradesArg,
    },
    units: true,
    result: { shape: "table", columns: "by property", text: "Headings with units, one grade below the other" },
    source: { key: "own" },
    example: [[["PV limit", "highest temperature"]]],
    see: ["GRADE", "SHORTLIST"],
  },
  ({ properties: wanted, grades = standardLibrary() }, system = "metric"): Answer[][] => {
    const named =
      wanted?.filter((heading) => heading !== undefined).map((heading) => findProperty(heading, "properties")) ??
      properties;
    const columns = [...new Set([property("grade"), property("kind"), ...named])];
    const extra = wanted ? [] : grades.unknownColumns;
    return [
      [...columns.map((p) => propertyHeading(p, system)), ...extra],
      ...grades.grades.map((grade) => [
        ...columns.map((p) => propertyCell(grade, p, system) ?? ""),
        ...extra.map((heading) => grade.extra.find(([name]) => name === heading)?.[1] ?? ""),
      ]),
    ];
  },
);
