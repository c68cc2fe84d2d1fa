import { unitText } from "../../core/teach/notation";
import { addressOf } from "../../port/address";
import { quotedName } from "../../port/references";
import type { BookCell, BookSheet, Scalar } from "../book";
import { cautionLines } from "../greenhouse/parts";
import { stepsFormula } from "./call";
import { figureText, forClass, handedIn, mistakeText, toCheck } from "./handOut";
import type { HandOut } from "./handOut";
import { titleOf } from "./tasks";
import type { Task } from "./tasks";
import { present } from "../../core/present";

type Cells = Record<string, BookCell>;
const first = 5;

/**
 * The exercise and its answers as two sheets. The answers are STEPS on the exercise's figures: they follow where a figure
 * there is typed over; the results to check and the sentence on the mistake hold for the figures that were drawn.
 */
export function handOutSheets(made: HandOut, names: readonly [exercise: string, answers: string]): BookSheet[] {
  const { sheet, inputs } = exerciseSheet(made, names[0]);
  return [sheet, answersSheet(made, names[1], inputs)];
}

interface Exercise {
  readonly sheet: BookSheet;
  /** Where each task has its arguments, for formulas on another sheet. */
  readonly inputs: ReadonlyMap<Task, readonly string[]>;
}

function exerciseSheet(made: HandOut, name: string): Exercise {
  const cells: Cells = {
    A1: { value: made.title, look: "title" },
    A2: { value: forClass, look: "quiet" },
    ...(made.slip && { A3: { value: toCheck, look: "quiet" } }),
  };
  const put = (row: number, line: readonly (Scalar | undefined)[], looks: readonly BookCell["look"][]): void =>
    line.forEach((value, col) => {
      if (value !== undefined) cells[addressOf(row - 1, col)] = { value, look: looks[col] };
    });
  const inputs = new Map<Task, readonly string[]>();
  const groups: string[] = [];
  const results: string[] = [];
  let row = first;
  made.tasks.forEach((task, i) => {
    groups.push(`A${row}:E${row}`);
    put(row++, [titleOf(task, i)], ["group"]);
    const own = task.given.map((_, k) => `${quotedName(name)}!$C$${row + k}`);
    inputs.set(task, own);
    for (const { text, symbol, value, unit } of [...task.given, ...task.data])
      put(
        row++,
        [text, symbol, value, unitText(unit)],
        [undefined, "answer", typeof value === "number" ? "result" : "answer", "answer"],
      );
    const checks = made.slip && handedIn(task, made.slip);
    task.asked.forEach(({ text, symbol, unit }, k) => {
      results.push(`C${row}:C${row}`);
      const check = checks?.[k];
      put(row, [text, symbol, undefined, unitText(unit)], ["label", "label", undefined, "answer"]);
      if (check !== undefined)
        put(row, [undefined, undefined, undefined, undefined, `To check: ${figureText({ value: check, unit })}`], []);
      row++;
    });
    row++;
  });
  const cautions = cautionLines(row, "E");
  const sheet: BookSheet = {
    name,
    widths: [50, 14, 18, 22, 26],
    heights: { 1: 1.5 },
    plain: true,
    cells: { ...cells, ...cautions.cells },
    merged: cautions.merged,
    areas: [
      ...groups.map((range) => ({ range, look: "group" as const })),
      ...results.map((range) => ({ range, look: "input" as const })),
    ],
  };
  return { sheet, inputs };
}

/** Of what each line is, its formula and its numbers, which may need more lines. */
const worded = [30, 32, 48];

function answersSheet(made: HandOut, name: string, inputs: Exercise["inputs"]): BookSheet {
  const mistake = made.slip && mistakeText(made, made.slip);
  const cells: Cells = {
    A1: { value: made.answersTitle, look: "title" },
    A2: { value: `Worked by STEPS from the figures on the sheet ${made.title}.`, look: "quiet" },
    ...(mistake !== undefined && { A3: { value: mistake, look: "caution" } }),
  };
  const heights: Record<number, number> = { 1: 1.5 };
  if (mistake !== undefined) heights[3] = 2;
  const areas: { range: string; look: NonNullable<BookCell["look"]> }[] = [];
  let row = first;
  made.tasks.forEach((task, i) => {
    areas.push({ range: `A${row}:E${row}`, look: "group" });
    cells[`A${row}`] = { value: titleOf(task, i), look: "group" };
    const top = row + 1;
    const last = top + task.working.length;
    cells[`A${top}`] = { formula: stepsFormula(task.lesson.formula, present(inputs.get(task)), task.system) };
    areas.push(
      { range: `A${top}:E${top}`, look: "heading" },
      { range: `A${top + 1}:C${last}`, look: "text" },
      { range: `D${top + 1}:D${last}`, look: "result" },
      { range: `E${top + 1}:E${last}`, look: "answer" },
    );
    task.working.forEach((line, k) => {
      heights[top + 1 + k] = Math.max(1, ...worded.map((width, col) => Math.ceil(String(line[col]).length / width)));
    });
    row = last + 2;
  });
  const cautions = cautionLines(row, "C");
  return {
    name,
    widths: [...worded, 14, 12],
    heights,
    plain: true,
    cells: { ...cells, ...cautions.cells },
    merged: [...(mistake === undefined ? [] : ["A3:E3"]), ...cautions.merged],
    areas,
  };
}
