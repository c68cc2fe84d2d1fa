import { parametersOf } from "../../core/describe";
import type { BookCell, BookSheet } from "../book";
import { lessons } from "./lessons";
import { across, cautionLines, titled } from "./parts";
import { present } from "../../core/present";

const chosen = "B4";
const steps = 8;
const most = Math.max(...lessons.map(({ inputs }) => inputs.length));
const roomForSteps = 32;
const another = steps + roomForSteps + 2;
const roomForAnother = 20;
const trainer = another + roomForAnother + 3;

const forTrainer = [
  "STEPS works from the same formula as the calculation itself, so the working cannot disagree with the answer.",
  "Give the question alone first, then the line of the formula, then the numbers: the class computes the result before it scrolls on.",
  "Asked for in inch units, a calculation is worked in them; one that has no plain form there is worked in metric units, with lines that convert what is given and what is found.",
  "Type a wrong number on purpose, such as a bore of -15: the strip beside the sheet names the argument and what is accepted.",
];
const lessonTop = trainer + forTrainer.length + 2;

/** Each lesson in lines of its own: its name and question, then its arguments, numbered. */
function lessonCells(): { cells: Record<string, BookCell>; last: number; heads: number[] } {
  const cells: Record<string, BookCell> = {};
  const heads: number[] = [];
  let row = lessonTop + 1;
  for (const { name, formula, story, inputs } of lessons) {
    heads.push(row);
    cells[`B${row}`] = { value: name, look: "group" };
    cells[`C${row}`] = { value: formula.spec.id, look: "group" };
    cells[`D${row}`] = { value: story, look: "quiet" };
    row++;
    inputs.forEach((value, i) => {
      cells[`A${row}`] = { value: i + 1, look: "result" };
      cells[`B${row}`] = { value: present(parametersOf(formula.spec)[i]).name };
      cells[`C${row}`] = { value, look: "answer" };
      row++;
    });
  }
  return { cells, last: row - 1, heads };
}
const listed = lessonCells();
const column = (letter: string): string => `$${letter}$${lessonTop + 1}:$${letter}$${listed.last + most + 1}`;
/** The chosen lesson's line in the list. */
const line = "$G$4";
const given = Array.from({ length: most }, (_, i) => `G${steps + 1 + i}`);

const firstLesson = present(lessons[1]);
const cautions = cautionLines(listed.last + most + 3, "F");

/** A calculation of choice, worked step by step for a class. */
export const workedExample: BookSheet = {
  name: "Worked example",
  widths: [11, 23, 25, 32, 17, 11, 12],
  frozen: { rows: steps, columns: 0 },
  heights: { 1: 1.6, [steps]: 2 },
  growing: [`B${steps + 1}:D${steps + roomForSteps}`, `B${another + 1}:D${another + roomForAnother}`],
  cells: {
    ...titled(
      "Worked example: a calculation step by step",
      "Choose a calculation in the shaded cell: its inputs, the formula, the numbers put in, the result and the source follow.",
    ),
    A4: { value: "Calculation", look: "label" },
    [chosen]: { value: firstLesson.name, look: "words" },
    F4: { value: "line", look: "caption" },
    G4: { formula: `=MATCH(${chosen},${column("B")},0)`, look: "result" },
    A5: { value: "Question", look: "label" },
    B5: { formula: `=INDEX(${column("D")},${line})`, look: "answer" },
    A6: {
      value:
        "A number of your own goes into the shaded column beside its line. Empty that column before you choose another calculation.",
      look: "quiet",
    },
    [`A${steps}`]: { value: "Your number", look: "heading" },
    [`G${steps}`]: { value: "Given to STEPS", look: "heading" },
    ...Object.fromEntries(
      given.map((at, i): [string, BookCell] => [
        at,
        {
          formula: `=IF(A${steps + 1 + i}<>"",A${steps + 1 + i},IF(INDEX(${column("A")},${line}+${i + 1})=${i + 1},INDEX(${column("C")},${line}+${i + 1}),""))`,
          look: "quiet",
        },
      ]),
    ),
    [`B${steps}`]: { formula: `=BUSH.STEPS(INDEX(${column("C")},${line}),${given.join(",")})` },
    [`A${another - 1}`]: {
      value: "Another calculation: type its name and its arguments over the formula in the shaded cell.",
      look: "group",
    },
    [`B${another}`]: { formula: '=BUSH.STEPS("LIFE",0.000002,0.6,0.0942,0.2)' },
    [`A${trainer - 1}`]: { value: "For the trainer", look: "group" },
    ...Object.fromEntries(forTrainer.map((value, i): [string, BookCell] => [`A${trainer + i}`, { value }])),
    ...across(["A", "B", "C", "D"], lessonTop, ["argument", "lesson", "number", "question"], "heading"),
    ...listed.cells,
    ...cautions.cells,
  },
  merged: cautions.merged,
  areas: [
    ...[steps, another].flatMap((top, i): NonNullable<BookSheet["areas"]> => {
      const end = top + (i === 0 ? roomForSteps : roomForAnother);
      return [
        { range: `B${top}:F${top}`, look: "heading" },
        { range: `B${top + 1}:D${end}`, look: "text" },
        { range: `E${top + 1}:E${end}`, look: "result" },
        { range: `F${top + 1}:F${end}`, look: "answer" },
      ];
    }),
    { range: `A${steps + 1}:A${steps + most}`, look: "input" },
    { range: `B${another}:B${another}`, look: "words" },
    { range: `A${another - 1}:F${another - 1}`, look: "group" },
    { range: `A${trainer - 1}:F${trainer - 1}`, look: "group" },
    ...listed.heads.map((row) => ({ range: `A${row}:F${row}`, look: "group" }) as const),
  ],
  picks: [{ at: chosen, from: lessons.map(({ name }) => name) }],
};
