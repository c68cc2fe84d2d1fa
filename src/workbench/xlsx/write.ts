import { BooleanNumber } from "@univerjs/core";
import type { ICellData, IStyleData, IWorkbookData, IWorksheetData, Nullable } from "@univerjs/core";
import { writeXlsx } from "hucre/xlsx";
import type { Cell, CellStyle, ConditionalRule, DataValidation, WriteSheet } from "hucre/xlsx";
import { finishFile } from "../../book/fileParts";
import { stored } from "../../book/storedFormula";
import { addressOf } from "../../port/address";
import type { ReadCell } from "../../port/sheet";
import { picturesIn } from "../grid/pictures/keptPictures";
import type { KeptPicture } from "../grid/pictures/keptPictures";
import { anchorPictures, filePicture, isChanged } from "./pictures";
import { listWords, rangeText, resource } from "./rules";
import type { KeptMark, KeptName, KeptPick } from "./rules";
import { toFileStyle } from "./styles";

export interface Written {
  readonly file: Uint8Array;
  /** What the sheet holds and the file does not. */
  readonly left: readonly string[];
}

type Answers = readonly (readonly ReadCell[])[];

/** The grid's record as an .xlsx file; `read` gives what the cells of a sheet answer, spills included. */
export async function writeFile(record: IWorkbookData, read: (sheet: string) => Answers): Promise<Written> {
  const marks = resource<KeptMark[]>(record, "marks");
  const picks = resource<KeptPick[]>(record, "picks");
  const names = Object.values(resource<KeptName>(record, "names"));
  const pictures = picturesIn(record);
  const picturesOf = ({ id }: IWorksheetData): KeptPicture[] => pictures.get(id) ?? [];
  const ordered = record.sheetOrder.flatMap((id) => record.sheets[id] ?? []) as IWorksheetData[];
  const base = styleOf(record, record.defaultStyle) ?? {};
  const images = await Promise.all(ordered.map((sheet) => Promise.all(picturesOf(sheet).map(filePicture))));
  const plain = await writeXlsx({
    sheets: ordered.map((sheet, i) => ({
      ...sheetOf(record, sheet, read(sheet.name)),
      images: images[i],
      conditionalRules: (marks[sheet.id] ?? []).filter(isByFormula).flatMap(fileRules),
      dataValidations: (picks[sheet.id] ?? []).filter(isList).flatMap(filePicks),
    })),
    ...(names.length > 0 && {
      namedRanges: names.map(({ name, formulaOrRefString }) => ({ name, range: formulaOrRefString.replace(/^=/, "") })),
    }),
    defaultFont: toFileStyle(base).font,
    properties: { title: record.name, creator: "Bushcell" },
  });
  const left = [
    [
      Object.values(marks)
        .flat()
        .filter((mark) => !isByFormula(mark)).length,
      "conditional formats that are not by formula",
    ],
    [
      Object.values(picks)
        .flat()
        .filter((pick) => !isList(pick)).length,
      "checks of typed values that no file list can hold",
    ],
    [Object.keys(resource(record, "filters")).length, "filters, whose rows are all there"],
    [ordered.flatMap(picturesOf).filter(isChanged).length, "turnings or croppings of pictures"],
  ] as const;
  return {
    file: finishFile(plain, "Bushcell", new Date(), (parts) => anchorPictures(parts, ordered.flatMap(picturesOf))),
    left: left.flatMap(([count, what]) => (count > 0 ? [`${count} ${what}`] : [])),
  };
}

const isByFormula = ({ rule }: KeptMark): boolean => rule.subType === "formula" && typeof rule.value === "string";
const isList = ({ type, formula1 = "" }: KeptPick): boolean =>
  type === "list" && (formula1.startsWith("=") || listWords(formula1) !== undefined);

const styleOf = (record: IWorkbookData, style: Nullable<IStyleData | string>): IStyleData | undefined =>
  (typeof style === "string" ? record.styles[style] : style) ?? undefined;

function sheetOf(record: IWorkbookData, sheet: IWorksheetData, answers: Answers): WriteSheet {
  const cells = new Map<string, Partial<Cell>>();
  const put = (row: number, col: number, part: Partial<Cell>): void => {
    const key = `${row},${col}`;
    cells.set(key, { ...cells.get(key), ...part });
  };
  const base = styleOf(record, sheet.defaultStyle) ?? styleOf(record, record.defaultStyle) ?? {};
  const styles = new Map<string, CellStyle>();
  eachCell(sheet, (row, col, cell) => {
    const key = typeof cell.s === "string" ? cell.s : JSON.stringify(cell.s ?? null);
    const style = styles.get(key) ?? toFileStyle({ ...base, ...styleOf(record, cell.s) });
    styles.set(key, style);
    put(row, col, { style });
  });
  answers.forEach((line, row) =>
    line.forEach((cell, col) => {
      if (cell.formula) put(row, col, formulaOf(answers, row, col, cell));
      else if (cell.value !== null) put(row, col, { value: cell.value });
    }),
  );
  const { freeze } = sheet;
  const columns = Object.entries(sheet.columnData ?? {}) as [string, { w?: number; hd?: BooleanNumber }][];
  const rows = Object.entries(sheet.rowData ?? {}) as [
    string,
    { h?: number; ia?: BooleanNumber; hd?: BooleanNumber },
  ][];
  return {
    name: sheet.name,
    cells,
    columns: Array.from({ length: Math.max(0, ...columns.map(([col]) => Number(col) + 1)) }, (_, col) => {
      const { w, hd } = sheet.columnData?.[col] ?? {};
      return { ...(w !== undefined && { width: (w - 5) / 7 }), ...(hd === BooleanNumber.TRUE && { hidden: true }) };
    }),
    rowDefs: new Map(
      rows.map(([row, { h, ia, hd }]) => [
        Number(row),
        {
          ...(h !== undefined && ia === BooleanNumber.FALSE && { height: h * 0.75 }),
          ...(hd === BooleanNumber.TRUE && { hidden: true }),
        },
      ]),
    ),
    merges: (sheet.mergeData ?? []).map(({ startRow, endRow, startColumn, endColumn }) => ({
      startRow,
      endRow,
      startCol: startColumn,
      endCol: endColumn,
    })),
    ...(freeze &&
      (freeze.xSplit > 0 || freeze.ySplit > 0) && {
        freezePane: { rows: freeze.ySplit, columns: freeze.xSplit },
      }),
    view: { showGridLines: sheet.showGridlines !== BooleanNumber.FALSE },
    ...(sheet.hidden === BooleanNumber.TRUE && { hidden: true }),
    pageSetup: { orientation: "landscape", fitToPage: true, fitToWidth: 1, fitToHeight: 0 },
    headerFooter: { oddFooter: "&LPreliminary sizing: test in the application, follow local codes.&RPage &P of &N" },
  };
}

function eachCell(sheet: IWorksheetData, found: (row: number, col: number, cell: ICellData) => void): void {
  for (const [row, line] of Object.entries(sheet.cellData))
    for (const [col, cell] of Object.entries((line ?? {}) as Record<string, ICellData | null>))
      if (cell) found(Number(row), Number(col), cell);
}

/** With the answer at hand, and as a spill where it is one, or where only the add-in knows how far it reaches. */
function formulaOf(answers: Answers, row: number, col: number, cell: ReadCell): Partial<Cell> {
  const formula = cell.formula ?? "";
  const isOwn = (other: ReadCell | undefined): boolean =>
    other?.spilledFrom?.row === row && other.spilledFrom.col === col;
  let [bottom, right] = [row, col];
  while (isOwn(answers[row]?.[right + 1])) right++;
  while (isOwn(answers[bottom + 1]?.[right])) bottom++;
  const isSpill = bottom > row || right > col || /\bBUSH\./i.test(formula);
  return {
    formula: stored(formula),
    formulaResult: cell.value ?? "",
    ...(isSpill && {
      formulaType: "array",
      formulaRef: `${addressOf(row, col)}:${addressOf(bottom, right)}`,
      formulaDynamic: true,
    }),
  };
}

const fileRules = ({ ranges, stopIfTrue, rule }: KeptMark, i: number): ConditionalRule[] =>
  ranges.map((range) => {
    const { font, fill } = toFileStyle(rule.style ?? {});
    return {
      type: "expression",
      priority: i + 1,
      range: rangeText(range),
      formula: stored(String(rule.value)),
      ...(stopIfTrue && { stopIfTrue }),
      // a rule's fill stands in the background colour of its pattern
      style: { font, ...(fill?.type === "pattern" && { fill: { ...fill, bgColor: fill.fgColor } }) },
    };
  });

const filePicks = ({ ranges, formula1 = "", error }: KeptPick): DataValidation[] =>
  ranges.map((range) => ({
    type: "list",
    range: rangeText(range),
    ...(formula1.startsWith("=") ? { formula1: formula1.slice(1) } : { values: listWords(formula1) }),
    allowBlank: true,
    showErrorMessage: true,
    ...(error && { errorMessage: error }),
  }));
