import { dataLabel, found, reasonOf, words } from "../../core/duties";
import type { Check, NamedDuty, Ranked, Word } from "../../core/duties";
import type { Library } from "../../core/grades/model";
import type { System } from "../../core/kinds";
import { cautionsOf, standingCautions } from "../../core/grades/cautionsOf";
import { quantityText } from "../state/quantity";

/** One line for every criterion that fails or asks for care and one for all that lack data, unless the verdict's own line says it. */
export function reasonsOf({ checks, governing }: Ranked, system: System): string[] {
  const lines = (word: Word) =>
    checks
      .filter((check) => check.word === word && (check !== governing || numbersOf(check, system) !== ""))
      .map((check) => reasonOf(check, system) + numbersOf(check, system));
  const unknown = lines("no data");
  return [
    ...lines("fails").map((line) => `fails, ${line}`),
    ...(unknown.length > 0 ? [`no data, ${unknown.join("; ")}`] : []),
    ...lines("care").map((line) => `care, ${line}`),
  ];
}

/** ": 2 MPa against 1 MPa", where a percentage tells the reason. */
function numbersOf({ criterion: { kind }, say, value, limit, use }: Check, system: System): string {
  if (say || use === undefined || value === undefined || limit === undefined) return "";
  return `: ${quantityText(kind, value, system)} against ${quantityText(kind, limit, system)}`;
}

/** How well the weakest figure that counted is known. */
export function dataText({ grade, checks }: Ranked): string {
  const label = dataLabel(grade, checks);
  return label === "" ? "data: no figure counted" : `data: ${label}`;
}

/** "life 1200 h": the shortest, where the duty asks for it and the data give it. */
export function lifeText({ checks }: Ranked, system: System): string {
  const life = found(checks, "wearLife")?.limit;
  return life === undefined ? "" : `life ${quantityText("time", life, system)}`;
}

/** "3 fits, 1 care, 12 no data, 4 fails" */
export const countWords = (list: readonly Ranked[]): string =>
  [...words]
    .reverse()
    .map((word) => [list.filter((one) => one.word === word).length, word] as const)
    .filter(([count, word]) => count > 0 || word === "fits")
    .map((pair) => pair.join(" "))
    .join(", ");

/** The cautions of this grade alone; those that every verdict carries are shown once. */
export const ownCautions = ({ grade, checks }: Ranked, duty: NamedDuty, system: System, library: Library): string[] =>
  cautionsOf(grade, duty.moving, checks, system, library).filter((caution) => !standingCautions.includes(caution));
