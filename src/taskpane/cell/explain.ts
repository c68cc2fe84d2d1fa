import { functionText, signatureOf } from "../../core/describe";
import { workingOf } from "../../core/formula";
import type { Formula } from "../../core/formula";
import { formulaNamed } from "../../core/families";
import { present } from "../../core/present";
import { sourceTexts } from "../../core/sources";
import { tradeLine } from "../../core/teach/notation";
import type { ReadCell } from "../../port/sheet";

export interface Explained {
  readonly signature: string;
  readonly text: string;
  readonly working: readonly string[];
  readonly sources: readonly string[];
}

/** The functions of this add-in that a cell's formula calls, in their order, each once. */
export function explain(cell: ReadCell): Explained[] {
  const formula = cell.formula ?? cell.spilledFrom?.formula ?? "";
  const ids = [...formula.replace(/"[^"]*"/g, "").matchAll(/BUSH[._]([A-Z]+)\s*\(/gi)].map(([, id]) =>
    present(id).toUpperCase(),
  );
  return [...new Set(ids)].flatMap((id) => {
    const f = formulaNamed(id);
    return f ? [describe(f)] : [];
  });
}

const describe = (f: Formula): Explained => ({
  signature: `BUSH.${signatureOf(f.spec)}`,
  text: functionText(f.spec),
  // lines that depend on the arguments are shown by STEPS, which knows them
  working: typeof f.spec.working === "function" ? [] : workingOf(f, {}).map(tradeLine),
  sources: sourceTexts(f.spec.source),
});

/** What stands in the cell, for a person and for a screen reader. */
export function sayCell(cell: ReadCell): string {
  if (cell.error)
    return cell.error.message
      ? `${cell.error.code}: ${cell.error.message}`
      : `${cell.error.code}. ${causes[cell.error.code] ?? "The sheet gives no reason."}`;
  return cell.value === null ? "empty" : cell.text;
}

/** For hosts that keep a function's message to themselves. */
const causes: Readonly<Record<string, string>> = {
  "#VALUE!": "An argument is of the wrong kind or outside its range; point at the cell's warning mark for the message.",
  "#N/A": "A grade, a property or a datum is not there; point at the cell's warning mark for the message.",
  "#NAME?": "The add-in's functions are not loaded: open the pane again, or reload the add-in.",
  "#SPILL!": "The answer needs empty cells below or beside: clear them, or insert rows where the sheet ends.",
  "#BUSY!": "The functions are still being loaded.",
};
