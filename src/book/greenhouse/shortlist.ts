import type { BookSheet } from "../book";
import { answerRange, dutyRange, firstDuty, marksBy, nameRange } from "./duties";
import { ownGrades } from "./ownGrades";
import { titled } from "./parts";

const duty = "B3";
const among = "B4";
const scopes = { generic: "generic families", demo: "demo", own: "own grades" } as const;

/** Of the chosen duty as it stands on its sheet. */
const ofDuty = (name: Parameters<typeof answerRange>[0]): string =>
  `=INDEX(${answerRange(name)},MATCH(${duty},${answerRange("duty")},0))`;
const rank = (grades: string): string => `BUSH.DUTYRANK(${dutyRange},${duty},${grades})`;

const top = 8;
const last = top + 40;
const below = (from: string, to = from): string => `${from}${top + 1}:${to}${last}`;

export const shortlist: BookSheet = {
  name: "Shortlist",
  widths: [20, 24, 8, 10, 62, 18],
  frozen: { rows: top, columns: 1 },
  heights: { 1: 1.3 },
  growing: [below("E")],
  cells: {
    ...titled(
      "Which grade for a duty?",
      "Choose a duty of the sheet Duties and the grades to look at in the shaded cells: the best stands first, each with its reason.",
    ),
    A3: { value: "Duty", look: "label" },
    [duty]: { value: firstDuty, look: "words" },
    A4: { value: "Among", look: "label" },
    [among]: { value: scopes.demo, look: "words" },
    A5: { value: "Grade it has", look: "label" },
    B5: { formula: ofDuty("grade"), look: "answer" },
    A6: { value: "Its verdict", look: "label" },
    B6: { formula: ofDuty("verdict"), look: "answer" },
    [`A${top}`]: {
      formula: `=IF(${among}="${scopes.own}",${rank(ownGrades)},${rank(`IF(${among}="${scopes.generic}","",${among})`)})`,
    },
  },
  merged: [`${duty}:E3`, `${among}:E4`],
  areas: [
    { range: `${duty}:E3`, look: "words" },
    { range: `${among}:E4`, look: "words" },
    { range: `A${top}:F${top}`, look: "heading" },
    { range: below("A", "B"), look: "answer" },
    { range: below("C"), look: "result", format: "0 %" },
    { range: below("D"), look: "result", format: "0" },
    { range: below("E"), look: "text" },
    { range: below("F"), look: "answer" },
  ],
  marks: marksBy(below("A", "F"), "E"),
  picks: [
    { at: duty, from: nameRange },
    { at: among, from: Object.values(scopes) },
  ],
};
