import type { FUniver } from "@univerjs/core/facade";
import { CFRuleType, CFSubRuleType } from "@univerjs/preset-sheets-conditional-formatting";
import type { IFormulaHighlightCell } from "@univerjs/preset-sheets-conditional-formatting";
import { orList } from "../../core/errors";
import { areaOf, referenceTo } from "../../port/address";
import type { Book, BookSheet, Mark } from "../../book/book";
import { markStyles } from "../../book/looks";
import { gridRange } from "./snapshot";
import { gridStyle } from "./styles";

/** Marks, pick lists and names, which the grid's workbook record does not hold. */
export function addRules(api: FUniver, book: Book): void {
  for (const { name, sheet, range } of book.tables)
    api.getActiveWorkbook()?.insertDefinedName(name, referenceTo({ sheet, ...areaOf(range) }));
  for (const sheet of book.sheets) {
    addMarks(api, sheet);
    addPicks(api, sheet);
  }
}

function sheetNamed(api: FUniver, name: string) {
  const sheet = api.getActiveWorkbook()?.getSheetByName(name);
  if (!sheet) throw new Error(`no sheet ${name}`);
  return sheet;
}

function addMarks(api: FUniver, { name, marks = [] }: BookSheet): void {
  marks.forEach((mark, i) =>
    sheetNamed(api, name).addConditionalFormattingRule({
      cfId: `${name} ${i}`,
      ranges: [gridRange(mark.range)],
      stopIfTrue: false,
      rule: ruleOf(mark),
    }),
  );
}

function ruleOf({ when, as }: Mark): IFormulaHighlightCell {
  const { cl, bg, bl, it, ul } = gridStyle(markStyles[as]);
  return { type: CFRuleType.highlightCell, subType: CFSubRuleType.formula, value: when, style: { cl, bg, bl, it, ul } };
}

function addPicks(api: FUniver, { name, picks = [] }: BookSheet): void {
  for (const { at, from } of picks) {
    const rule = (typeof from === "string" ? fromRange(api, name, from) : fromWords(api, from)).build();
    sheetNamed(api, name).getRange(at).setDataValidation(rule);
  }
}

const fromWords = (api: FUniver, words: readonly string[]) =>
  api
    .newDataValidation()
    .requireValueInList([...words], false, true)
    .setOptions({ showErrorMessage: true, error: `choose ${orList(words)}` });

function fromRange(api: FUniver, sheet: string, from: string) {
  const [range = "", source = sheet] = from.split("!").reverse();
  const { row, col, rows, cols } = areaOf(range);
  return api
    .newDataValidation()
    .requireValueInRange(sheetNamed(api, source).getRange(row, col, rows, cols), false, true)
    .setOptions({ showErrorMessage: true, error: `choose one of ${from}` });
}
