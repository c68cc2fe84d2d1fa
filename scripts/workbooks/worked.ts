import { catalogue } from "../../src/core";
import { argumentText } from "../../src/core/describe";
import type { Arg } from "../../src/core/formula";
import type { BookCell } from "../../src/workbench/book";
import type { FileBook, FileSheet } from "./book";
import { cautionLines, titled } from "./parts";

/** An example for a class: a calculation, its inputs, and the same by Excel's own formula on cells B5, B6 … */
interface Example {
  readonly id: string;
  readonly story: string;
  readonly inputs: readonly number[];
  readonly native: string;
}

export const examples: readonly Example[] = [
  {
    id: "PRESSURE",
    story: "A seed-drum spindle rests on a bush. How hard is the bush pressed?",
    inputs: [180, 15, 20],
    native: "=B5/(B6*B7)",
  },
  {
    id: "WASHERPRESSURE",
    story: "A thrust collar carries the nutrient mixer.",
    inputs: [150, 18, 36],
    native: "=B5/(PI()/4*(B7^2-B6^2))",
  },
  { id: "SPEED", story: "The seed drum turns at 120 rpm.", inputs: [15, 120], native: "=PI()*B5*B6/60000" },
  {
    id: "SWINGSPEED",
    story: "A roof vent opens and closes by 70° once in two minutes.",
    inputs: [20, 70, 0.5],
    native: "=2*B6/360*PI()*B5*B7/60000",
  },
  {
    id: "PV",
    story: "Pressure times speed tells how much heat a bush must bear.",
    inputs: [0.6, 0.0942],
    native: "=B5*B6",
  },
  { id: "TORQUE", story: "How hard is the spindle to turn?", inputs: [180, 15, 0.18], native: "=B7*B5*B6/2/1000" },
  { id: "HEAT", story: "How much heat does the friction make?", inputs: [180, 0.0942, 0.18], native: "=B7*B5*B6" },
  { id: "WEAR", story: "How deep is the bush worn after 50 km?", inputs: [2e-6, 0.6, 50], native: "=B5*B6*B7*1000" },
  {
    id: "LIFE",
    story: "After how many hours are 0.2 mm worn off?",
    inputs: [2e-6, 0.6, 0.0942, 0.2],
    native: "=B8/(B5*B6*B7*3600)",
  },
  {
    id: "FREETILT",
    story: "How far may the vent's shaft tilt before it touches the bush's edges?",
    inputs: [0.05, 20],
    native: "=DEGREES(ATAN(B5/B6))",
  },
];

const first = 5;

function sheetOf({ id, story, inputs, native }: Example): FileSheet {
  const f = catalogue.find((candidate) => candidate.spec.id === id)!;
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

export const worked: FileBook = {
  file: "worked-examples",
  title: "Worked examples: plain bearings step by step",
  sheets: examples.map(sheetOf),
};
