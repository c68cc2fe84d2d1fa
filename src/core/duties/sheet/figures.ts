import { Measure, UnitLabel } from "../../formula";
import { propertyCell } from "../../grades/grade";
import type { Grade } from "../../grades/model/library";
import { propertyHeading, property } from "../../grades/model/properties";
import type { PropertyKey } from "../../grades/model/properties";
import { originText } from "../../grades/source";
import type { System } from "../../kinds";
import type { Check } from "../judging/criterion";
import type { NamedDuty } from "../model/namedDuty";
import { wordLine } from "./rows";
import type { Line } from "./rows";

/** Figures of the grade with where they come from; of its media those that the duty names. */
export function figureLines(all: Grade, duty: NamedDuty, keys: readonly PropertyKey[], system: System): Line[] {
  const media = all.values.media?.filter(({ medium }) => duty.values.media?.includes(medium));
  const grade = { ...all, values: { ...all.values, media } };
  return keys.map((key) => {
    const p = property(key);
    const cell = propertyCell(grade, p, system);
    if (cell === undefined) return wordLine(p.heading, "no data");
    const isNumber = cell instanceof Measure;
    return [
      isNumber ? p.heading : propertyHeading(p, system),
      "",
      "",
      cell,
      isNumber ? new UnitLabel(cell.kind) : "",
      originText(grade, key),
    ];
  });
}

/** The figures that counted or are missing, each once. */
export const countedIn = (checks: readonly Check[]): PropertyKey[] => [
  ...new Set(checks.flatMap(({ figures, property: key }) => (key === undefined ? figures : [...figures, key]))),
];
