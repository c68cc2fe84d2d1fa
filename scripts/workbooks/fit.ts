import { metals } from "../../src/core/fit/metals";
import type { FileBook, FileSheet } from "./book";
import { cautionLines, titled } from "./parts";

const inputs: readonly (readonly [label: string, value: string | number, note: string])[] = [
  ["Bore, mm", 20, "nominal, of the bush and the shaft"],
  ["Zone of the bore", "H7", "holds after pressing, or before: see below"],
  ["Outside of the bush, mm", 23, "nominal, of the bush and the housing's bore"],
  ["Zone of the outside", "+0.05/+0.10", "an ISO 286 zone or two deviations, lower first"],
  ["Zone of the housing", "H7", ""],
  ["Zone of the shaft", "f7", ""],
  ["Grade", "Demo Sorrel", "a polyamide, invented for the demo"],
  ["Housing", "aluminium alloy", "a metal of the list"],
  ["Shaft", "carbon steel", "a metal of the list"],
  ["Lowest temperature, °C", -20, ""],
  ["Highest temperature, °C", 80, ""],
  ["Moisture in service", "dry", "dry, room or soaked"],
  ["The bore's zone holds", "pressed", "pressed or free"],
];
const top = 4;
const at = (i: number) => `B${top + i}`;
const area = (from: number, to: number, column = "B") => `${column}${top + from}:${column}${top + to}`;

const table = 20;
const sheet: FileSheet = {
  name: "Fit",
  widths: [31, 17, 15, 15, 15, 15, 17, 26],
  frozen: { rows: table, columns: 1 },
  heights: { 1: 1.5, [table]: 2 },
  cells: {
    ...titled(
      "Clearance of a pressed bush, cold to hot and wet",
      "A roof-vent pivot of the invented greenhouse. Type over the shaded cells.",
    ),
    ...Object.fromEntries(
      inputs.flatMap(([label, value, note], i) => [
        [`A${top + i}`, { value: label, look: "label" } as const],
        [at(i), { value, look: typeof value === "number" ? "input" : "words" } as const],
        [`C${top + i}`, { value: note, look: "answer" } as const],
      ]),
    ),
    A18: {
      value:
        "Below: worst case of the tolerances, and the root-sum-square band. A clearance of 0 or less binds. Answers in mm.",
      look: "quiet",
    },
    [`A${table}`]: { formula: `=BUSH.FITTABLE(${inputs.map((_, i) => at(i)).join(",")})` },
    A26: { value: "The assembly row by Excel alone", look: "heading" },
    B26: { value: "least", look: "heading" },
    C26: { value: "greatest", look: "heading" },
    A27: { value: "Bore, limits", look: "label" },
    B27: { formula: `=BUSH.LIMITS(${at(0)},${at(1)})` },
    A28: { value: "Shaft, limits", look: "label" },
    B28: { formula: `=BUSH.LIMITS(${at(0)},${at(5)})` },
    A29: { value: "Clearance", look: "label" },
    B29: { formula: "=B27-C28", look: "result", format: "0.0000" },
    C29: { formula: "=C27-B28", look: "result", format: "0.0000" },
    D29: { value: "holds where the bore's zone holds after pressing", look: "quiet" },
    ...cautionLines(32, "F").cells,
  },
  merged: cautionLines(32, "F").merged,
  areas: [
    { range: `A${table}:H${table}`, look: "heading" },
    { range: `A${table + 1}:A${table + 4}`, look: "answer" },
    { range: `B${table + 1}:B${table + 4}`, look: "result", format: "0" },
    { range: `C${table + 1}:G${table + 4}`, look: "result", format: "0.0000" },
    { range: `H${table + 1}:H${table + 4}`, look: "answer" },
    { range: "B27:C28", look: "result", format: "0.000" },
  ],
  marks: [
    { range: `A${table + 1}:H${table + 4}`, when: `=LEFT($H${table + 1},7)="no data"`, as: "unknown" },
    { range: `A${table + 1}:H${table + 4}`, when: `=LEFT($H${table + 1},4)<>"fits"`, as: "fails" },
  ],
  lists: [
    { at: area(7, 8), from: metals.map((metal) => metal.name) },
    { at: at(11), from: ["dry", "room", "soaked"] },
    { at: at(12), from: ["pressed", "free"] },
  ],
};

export const fit: FileBook = {
  file: "fit",
  title: "Clearance of a pressed polymer bush across temperature and moisture",
  sheets: [sheet],
};
