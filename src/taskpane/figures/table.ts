import type { NamedDuty } from "../../core/duties";
import { BushError } from "../../core/errors";
import { Measure, UnitLabel } from "../../core/formula";
import type { Answer } from "../../core/formula";
import { kinds } from "../../core/kinds";
import type { System } from "../../core/kinds";
import { percentText } from "../../core/measure";
import { bareNumber } from "../state/quantity";

/** The duty as the functions read it out of a table of it alone. */
export const tableOf = (duty: NamedDuty) => ({
  lines: [{ number: 2, name: duty.name, duty }],
  height: 1,
  first: 2,
  unknownColumns: [],
});

/** What a function answers as the pane shows it; `use` is a share. */
export function answerText(answer: Answer | undefined, system: System, isUse = false): string {
  if (answer === undefined) return "";
  if (answer instanceof BushError) return answer.message;
  if (answer instanceof Measure) return bareNumber(answer.kind, answer.value, system);
  if (answer instanceof UnitLabel) return kinds[answer.kind][system];
  return isUse && typeof answer === "number" ? percentText(answer) : String(answer);
}
