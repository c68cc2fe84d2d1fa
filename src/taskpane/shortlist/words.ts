import { cautionsOf, property, reasonOf, standingCautions } from "../../core/grade";
import type { Check, Duty, Library, Ranked } from "../../core/grade";
import type { System } from "../../core/kinds";
import { quantityText } from "../duty/fields";

/** The verdict, and which criterion governs it, for a person who sees no bar. */
export function verdictWords({ word, governing }: Ranked, system: System): { verdict: string; why: string } {
  if (word === "no data") return { verdict: "Not judged", why: `no data on ${property(governing.property).heading}` };
  return { verdict: word === "fits" ? "Fits" : "Fails", why: `${reasonOf(governing, system)} governs` };
}

/** One line for every criterion that fails or lacks its datum. */
export function reasonsOf({ checks, word }: Ranked, system: System): string[] {
  return checks
    .filter((check) => check.verdict === "fails" || (check.verdict === "no data" && word !== "no data"))
    .map((check) => reasonLine(check, system));
}

function reasonLine(check: Check, system: System): string {
  if (check.verdict === "no data") return `no data on ${property(check.property).heading}`;
  const { kind, value, limit, use } = check;
  if (use === undefined || value === undefined || limit === undefined) return reasonOf(check, system);
  return `${reasonOf(check, system)}: ${quantityText(kind, value, system)} against ${quantityText(kind, limit, system)}`;
}

/** The cautions of this grade alone; those that every verdict carries are shown once. */
export const ownCautions = ({ grade }: Ranked, duty: Duty, system: System, library: Library): string[] =>
  cautionsOf(grade, duty, system, library).filter((caution) => !standingCautions.includes(caution));
