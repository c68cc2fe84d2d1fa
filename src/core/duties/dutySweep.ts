import { BushError, clash, noDatum } from "../errors";
import { formula } from "../formula";
import type { Answer, Cell, TableArg } from "../formula";
import type { System } from "../kinds";
import { unknownName } from "../names";
import { splitHeading } from "../table/heading";
import { readFilled } from "../table/readFilled";
import { chooseDuty, chooseGrade, exampleDuty, oneDutyArgs } from "./judging/choose";
import { field, fieldHeadings, fieldKeys } from "./model/fields";
import type { FieldKey } from "./model/fields";
import { judge } from "./judging/judge";
import { dutiesArg, readOwn } from "./model/readDuties";
import { verdictOf, verdictText } from "./judging/verdict";
import { stepsLikeFirst, withField } from "./model/withField";
import { valueAndUnit } from "./sheet/inputs";
import type { Value } from "./sheet/inputs";

const valuesArg = {
  kind: "table",
  what: "a range of values as they would stand in the duty, text with its own unit too",
  text: "Values to put in one after the other",
  read: (cells) => cells.flat(),
} as const satisfies TableArg<Cell[]>;

/** The field that a heading names, and the unit in its brackets. */
function namedBy(heading: string): { key: FieldKey; unit?: string | undefined } {
  const { name, unit } = splitHeading(heading);
  const key = fieldHeadings.find(name);
  if (key !== undefined) return { key, unit };
  const known = fieldKeys.map((one) => field(one).heading);
  throw noDatum("heading", unknownName("heading", name, known, "give one of a table of duties, as load"));
}

/** A value as it was read, with its unit; what could not be read as it was typed. */
function cellAndUnit(key: FieldKey, cell: Cell, value: Value | undefined, system: System): [Answer, Answer] {
  if (value !== undefined) return valueAndUnit(key, value, system);
  return [cell instanceof BushError ? cell : String(cell ?? ""), ""];
}

const ofValues = (error: BushError): BushError =>
  error.code === "passed" ? error : new BushError(error.code, "values", `values: ${error.message}`);

export const DUTYSWEEP = formula(
  {
    id: "DUTYSWEEP",
    text: "One duty with one of its fields at each of a range of values, all else equal: use, governing criterion and verdict in a row for each value. The value is put into the first step and all that share it; the grade, where none is chosen, is the best for the duty as it stands",
    args: {
      duties: dutiesArg,
      heading: {
        kind: "text",
        text: 'Heading of the field, its unit in brackets where it has one: "load", "load [lbf]"',
      },
      values: valuesArg,
      ...oneDutyArgs,
    },
    units: true,
    result: {
      shape: "table",
      text: "One value per row, an error in the row of a value that cannot be",
      columns: [
        { name: "value", kind: "measure" },
        { name: "unit", kind: "text" },
        { name: "grade", kind: "text" },
        { name: "use", kind: "ratio" },
        { name: "governing", kind: "text" },
        { name: "verdict", kind: "text" },
      ],
    },
    source: { key: "own", at: "criteria: see DUTYCHECKS" },
    example: [exampleDuty, "rpm", [[60], [120], [240]], "", "Demo Medlar"],
    see: ["DUTYROOM", "DUTYCHECKS", "DUTIES"],
  },
  ({ duties, heading, values, duty, grade, grades }, system: System = "metric"): Answer[][] => {
    const chosen = chooseDuty(duties, duty);
    const { key, unit } = namedBy(heading);
    if (key === "grade" && grade !== undefined) throw clash("grade", "grade has no place where the values are grades");
    const held = key === "grade" ? undefined : chooseGrade(chosen, grade, grades);
    const moved = stepsLikeFirst(chosen, key);
    return values.map((cell) => {
      let value: Value | undefined;
      try {
        value = readFilled(field(key), cell, unit, system, readOwn) as Value | undefined;
        if (value === undefined) return ["", "", "", "", "", ""];
        const swept = withField(chosen, key, value, moved);
        const judged = held ?? chooseGrade(swept, undefined, grades);
        const checks = judge(judged, swept);
        const verdict = verdictOf(checks);
        return [
          ...cellAndUnit(key, cell, value, system),
          judged.name,
          verdict.use ?? "",
          verdict.governing.criterion.heading,
          verdictText(checks, system, verdict),
        ];
      } catch (error) {
        if (!(error instanceof BushError)) throw error;
        return [...cellAndUnit(key, cell, value, system), held?.name ?? "", "", "", ofValues(error)];
      }
    });
  },
);
