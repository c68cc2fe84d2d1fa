import { words } from "../../core/duties";
import type { Check } from "../../core/duties";
import { ratings } from "../../core/grades/model";
import type { Grade, Property } from "../../core/grades/model";

/** A word for each of grades side by side: "best" alone, "better" among several; none where all that are known are alike. */
export function sideWords(scores: readonly (number | undefined)[]): ("best" | "better" | "")[] {
  const known = scores.filter((score) => score !== undefined);
  const most = Math.max(...known);
  const leaders = known.filter((score) => score === most).length;
  if (leaders === known.length) return scores.map(() => "");
  const word = leaders === 1 && known.length > 2 ? "best" : "better";
  return scores.map((score) => (score === most ? word : ""));
}

/** Higher is better; nothing where the figure is unknown, or where its better side depends on the duty. */
export function scoreOf({ values }: Grade, property: Property): number | undefined {
  if (property.kind === "curve" || property.better === undefined) return undefined;
  const value = (values as Readonly<Record<string, unknown>>)[property.key];
  const figure = property.kind === "rating" ? (ratings as readonly unknown[]).indexOf(value) : value;
  if (typeof figure !== "number" || (figure < 0 && property.kind === "rating")) return undefined;
  return property.better === "higher" ? figure : -figure;
}

/** How one criterion is met, higher is better: first by its word, then by its use where every grade has one; no data has no place. */
export function checkScores(checks: readonly Check[]): (number | undefined)[] {
  const known = checks.filter(({ word }) => word !== "no data");
  const hasUses = known.every(({ use }) => use !== undefined && Number.isFinite(use));
  return checks.map(({ word, use }) => {
    if (word === "no data") return undefined;
    // what is left of the use lies between 0 and 1, so that it never outweighs the word
    return words.indexOf(word) + (hasUses && use !== undefined ? 1 / (2 + use) : 0);
  });
}
