import { argumentText } from "../../src/core/describe";
import type { Arg } from "../../src/core/formula";
import type { BookCell, BookSheet } from "../../src/book/book";
import { lessons } from "../../src/book/greenhouse/lessons";
import type { Lesson } from "../../src/book/greenhouse/lessons";
import { cautionLines, titled } from "../../src/book/greenhouse/parts";
import { exercises, handOut } from "../../src/book/handOut/handOut";
import type { HandOutWish } from "../../src/book/handOut/handOut";
import { handOutSheets } from "../../src/book/handOut/sheets";
import type { FileBook, FileSheet } from "./book";

/** The same by Excel's own formula on cells B5, B6 …; a lesson that has one becomes a sheet. */
const natives: Readonly<Record<string, string>> = {
  PRESSURE: "=B5/(B6*B7)",
  WASHERPRESSURE: "=B5/(PI()/4*(B7^2-B6^2))",
  SPEED: "=PI()*B5*B6/60000",
  SWINGSPEED: "=2*B6/360*PI()*B5*B7/60000",
  PVVALUE: "=B5*B6",
  TORQUE: "=B7*B5*B6/2/1000",
  HEAT: "=B7*B5*B6",
  WEAR: "=B5*B6*B7*1000",
  LIFE: "=B8/(B5*B6*B7*3600)",
  FREETILT: "=DEGREES(ATAN(B5/B6))",
};

const first = 5;

function sheetOf({ name: id, formula: f, story, inputs }: Lesson, native: string): FileSheet {
  const args = Object.values<Arg>(f.spec.args);
  const cells = inputs.map((_, i) => `B${first + i}`);
  const result = first + inputs.length;
  const steps = result + 5;
  const end = steps + 12;
  return {
    name: id,
    widths: [46, 24, 46, 16, 14],
    heights: { 1: 1.5 },
    plain: true,
    merged: cautionLines(end + 2, "C").merged,
    cells: {
      ...titled(f.spec.text, story),
      A4: { value: "Given (type over the shaded cells)", look: "heading" },
      B4: { value: "", look: "heading" },
      ...Object.fromEntries(
        inputs.flatMap((value, i): [string, BookCell][] => [
          [`A${first + i}`, { value: argumentText(args[i]!), look: "text" }],
          [cells[i]!, { value, look: "input" }],
        ]),
      ),
      [`A${result}`]: { value: `By the add-in: BUSH.${id}`, look: "label" },
      [`B${result}`]: { formula: `=BUSH.${id}(${cells.join(",")})`, look: "result", format: "0.00000E+0" },
      [`A${result + 1}`]: { value: "By Excel alone", look: "label" },
      [`B${result + 1}`]: { formula: native, look: "result", format: "0.00000E+0" },
      [`A${result + 2}`]: { value: "Do they agree?", look: "label" },
      [`B${result + 2}`]: {
        formula: `=IF(ABS(B${result}-B${result + 1})<=0.000000000001*ABS(B${result + 1}),"yes","no")`,
        look: "answer",
      },
      [`A${steps - 1}`]: { value: "Step by step", look: "group" },
      [`A${steps}`]: { formula: `=BUSH.STEPS("${id}",${cells.join(",")})` },
      ...cautionLines(end + 2, "C").cells,
    },
    areas: [
      { range: `A${steps}:E${steps}`, look: "heading" },
      { range: `A${steps + 1}:C${end}`, look: "text" },
      { range: `D${steps + 1}:D${end}`, look: "result" },
      { range: `E${steps + 1}:E${end}`, look: "answer" },
    ],
    marks: [{ range: `B${result + 2}`, when: `=B${result + 2}<>"yes"`, as: "fails" }],
  };
}

/** An exercise for a class with its answers, on two sheets. */
function handOutOf(wish: Omit<HandOutWish, "chosen">): BookSheet[] {
  const made = handOut({ ...wish, chosen: exercises.map(({ name }) => name) });
  return handOutSheets(made, [made.title, made.answersTitle]);
}

export const worked: FileBook = {
  file: "worked-examples",
  title: "Worked examples: plain bearings step by step",
  sheets: [
    ...lessons.flatMap((lesson) => {
      const native = natives[lesson.name];
      return native ? [sheetOf(lesson, native)] : [];
    }),
    ...handOutOf({ number: 1, system: "metric", hasMistake: false }),
    ...handOutOf({ number: 2, system: "inch", hasMistake: true }),
  ],
};
