import { Measure, UnitLabel } from "../../formula";
import { cellOf } from "../../grade/grade";
import type { Grade } from "../../grade/library";
import { headingOf, property } from "../../grade/properties";
import type { PropertyKey } from "../../grade/properties";
import { originText } from "../../grade/source";
import type { System } from "../../kinds";
import type { Check } from "../criterion";
import type { NamedDuty } from "../namedDuty";
import { wordLine } from "./rows";
import type { Line } from "./rows";

/** Figures of the grade with where they come from; of its media those that the duty names. */
export function figureLines(all: Grade, duty: NamedDuty, keys: readonly PropertyKey[], system: System): Line[] {
  const media = all.values.media?.filter(({ medium }) => duty.values.media?.includes(medium));
  const grade = { ...all, values: { ...all.values, media } };
  return keys.map((key) => {
    const p = property(key);
    const cell = cellOf(grade, p, system);
    if (cell === undefined) return wordLine(p.heading, "no data");
    const isNumber = cell instanceof Measure;
    return [
      isNumber ? p.heading : headingOf(p, system),
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
