import { metals } from "../../core/fit/metals";
import type { BookCell, BookSheet } from "../book";
import { marksBy } from "./duties";
import { at, cardCells, cardLast, cardPicks, cardTop } from "./fitCard";
import type { Key } from "./fitCard";
import { across, cautionLines, titled } from "./parts";

/** Rows for the states: as many as there are where neither the moisture at assembly nor the share kept is told, two of a warmer bore, and two of service again from each moisture. */
const states = 27;
/** Bars of the states stand beside the card, and the table below both. */
const barTop = cardTop - 1;
const table = Math.max(cardLast, barTop + 1 + states) + 4;
const first = table + 1;
const last = table + states;

/** A value of the spilled table, through a range with its formula: the grid follows no reference to a spilled cell alone. */
const spilled = (range: string, row: number, col: number): string => `INDEX(${range},${row},${col})`;
const ofState = (state: number, col: number): string => spilled(`$A$${table}:$M$${last}`, state + 2, col);
const leastCol = 7;
const greatestCol = 8;

/** Bars of text on one scale, beside the card: what stands left of the line is clearance below 0, in another pattern. */
const scale = `I${barTop}`;
const longest = 32;
const marksOf = (length: string): string => `ROUND((${length})/$I$${barTop},0)`;

function barCells(): BookSheet["cells"] {
  const ends = Array.from({ length: states }, (_, i) => [ofState(i, leastCol), ofState(i, greatestCol)]).flat();
  const cells: Record<string, BookCell> = {
    [`C${barTop}`]: { value: "Clearance as a picture", look: "group" },
    [`G${barTop}`]: { value: "one mark, mm:", look: "caption" },
    [scale]: {
      formula: `=MAX(${ends.map((end) => `IFERROR(ABS(${end}),0)`).join(",")})/${longest}`,
      look: "result",
      format: "0.0000",
    },
    [`C${barTop + 1}`]: { value: "state", look: "heading" },
    [`E${barTop + 1}`]: { value: "below 0: the shaft binds ▒", look: "caption" },
    [`I${barTop + 1}`]: { value: "│0   █ least to greatest clearance", look: "heading" },
  };
  for (let i = 0; i < states; i++) {
    const [least, greatest, row] = [ofState(i, leastCol), ofState(i, greatestCol), barTop + 2 + i];
    cells[`C${row}`] = { formula: `=${ofState(i, 1)}&""`, look: "answer" };
    cells[`E${row}`] = {
      formula: `=IFERROR(REPT("▒",${marksOf(`MIN(0,${greatest})-MIN(0,${least})`)})&REPT("·",${marksOf(`-MIN(0,${greatest})`)}),"")`,
      look: "barLeft",
    };
    cells[`I${row}`] = {
      formula: `=IF(C${row}="","",IFERROR("│"&REPT("·",${marksOf(`MAX(0,${least})`)})&REPT("█",${marksOf(`MAX(0,${greatest})-MAX(0,${least})`)}),""))`,
      look: "bar",
    };
  }
  return cells;
}
const barRows = Array.from({ length: states + 1 }, (_, i) => barTop + 1 + i);

const pressTop = last + 3;
const ring = pressTop + 4;
const metalTop = ring + 13;
const metalRange = (column: string): string => `$${column}$${metalTop + 2}:$${column}$${metalTop + 1 + metals.length}`;
const ofHousing = (column: string): string =>
  `=INDEX(${metalRange(column)},MATCH(${at("housing")},${metalRange("A")},0))`;

const pressed = (interference: string): string =>
  `=BUSH.PRESSFIT(${at("bore")},${at("outside")},$B$${ring + 4},${interference},$B$${ring},$B$${ring + 1},$B$${ring + 2},$B$${ring + 3})`;
const limitsTop = ring + 7;
/** The least (1) or greatest (2) size of a line of the limits. */
const limit = (line: number, which: 1 | 2): string =>
  spilled(`$B$${limitsTop + line}:$C$${limitsTop + line}`, 1, which);

const ringCells = (): BookSheet["cells"] => ({
  [`A${ring - 1}`]: { value: "What the press fit takes", look: "group" },
  [`A${ring}`]: { value: "Modulus of the bush", look: "label" },
  [`B${ring}`]: { formula: `=BUSH.GRADE(${at("grade")},"compressive modulus")`, look: "result", format: "0" },
  [`C${ring}`]: { value: "MPa, in compression, of the grade", look: "quiet" },
  [`A${ring + 1}`]: { value: "Its Poisson's ratio", look: "label" },
  [`B${ring + 1}`]: { formula: `=BUSH.GRADE(${at("grade")},"Poisson's ratio")`, look: "result", format: "0.00" },
  [`A${ring + 2}`]: { value: "Modulus of housing", look: "label" },
  [`B${ring + 2}`]: { formula: ofHousing("C"), look: "result", format: "0" },
  [`C${ring + 2}`]: { value: "MPa, of the metals below", look: "quiet" },
  [`A${ring + 3}`]: { value: "Its Poisson's ratio", look: "label" },
  [`B${ring + 3}`]: { formula: ofHousing("D"), look: "result", format: "0.00" },
  [`A${ring + 4}`]: { value: "Housing outside, mm", look: "label" },
  [`B${ring + 4}`]: { formula: `=IF(${at("housingOutside")}="",1000000,${at("housingOutside")})`, look: "result" },
  [`A${ring + 5}`]: { value: "Bore close-in", look: "label" },
  [`B${ring + 5}`]: {
    formula: `=BUSH.CLOSEIN(${at("bore")},${at("outside")},B${ring + 4},B${ring},B${ring + 1},B${ring + 2},B${ring + 3})`,
    look: "result",
    format: "0.000",
  },
  [`C${ring + 5}`]: { value: "mm that the bore loses per mm of interference", look: "quiet" },
});

const pressCells = (): BookSheet["cells"] => ({
  ...across(
    ["A", "B", "C", "D", "E"],
    pressTop,
    [
      "Press fit at 20 °C, dry",
      "interference [mm]",
      "fit pressure [MPa]",
      "stress at bore [MPa]",
      "change of the bore [mm]",
    ],
    "heading",
  ),
  [`F${pressTop}`]: { value: "", look: "heading" },
  [`A${pressTop + 1}`]: { value: "Least", look: "label" },
  [`B${pressTop + 1}`]: { formula: `=MAX(0,${limit(3, 1)}-${limit(4, 2)})` },
  [`C${pressTop + 1}`]: { formula: pressed(`B${pressTop + 1}`) },
  [`A${pressTop + 2}`]: { value: "Greatest", look: "label" },
  [`B${pressTop + 2}`]: { formula: `=MAX(0,${limit(3, 2)}-${limit(4, 1)})` },
  [`C${pressTop + 2}`]: { formula: pressed(`B${pressTop + 2}`) },
  [`F${pressTop + 1}`]: { value: "0 is a bush that lies loose in its housing", look: "quiet" },
  [`F${pressTop + 2}`]: { value: "minus: compression, and a smaller bore", look: "quiet" },
});

const limits = (row: number, label: string, size: Key, zone: Key): BookSheet["cells"] => ({
  [`A${row}`]: { value: label, look: "label" },
  [`B${row}`]: { formula: `=BUSH.LIMITS(${at(size)},${at(zone)})` },
});

const limitCells = (): BookSheet["cells"] => ({
  ...across(["A", "B", "C"], limitsTop, ["Sizes and fit, mm", "least", "greatest"], "heading"),
  ...limits(limitsTop + 1, "Bore", "bore", "boreZone"),
  ...limits(limitsTop + 2, "Shaft", "bore", "shaftZone"),
  ...limits(limitsTop + 3, "Outside of the bush", "outside", "outsideZone"),
  ...limits(limitsTop + 4, "Bore of the housing", "outside", "housingZone"),
  [`E${limitsTop}`]: { value: "Clearance of bore and shaft, mm", look: "heading" },
  [`E${limitsTop + 1}`]: {
    formula: `=BUSH.FITOF(${at("bore")},${at("boreZone")}&"/"&${at("shaftZone")})`,
  },
  [`H${limitsTop + 1}`]: { value: "by the fit's code", look: "quiet" },
  [`E${limitsTop + 2}`]: { formula: `=${limit(1, 1)}-${limit(2, 2)}` },
  [`F${limitsTop + 2}`]: { formula: `=${limit(1, 2)}-${limit(2, 1)}` },
  [`H${limitsTop + 2}`]: { value: "by subtraction", look: "quiet" },
  [`E${limitsTop + 3}`]: {
    value: "Both are the row assembly, if the zone holds after pressing.",
    look: "quiet",
  },
});

const metalCells = (): BookSheet["cells"] => ({
  [`A${metalTop}`]: { value: "Metals that the fit knows, typical values at room temperature", look: "group" },
  ...across(
    ["A", "B", "C", "D", "E"],
    metalTop + 1,
    ["metal", "expansion [1/K]", "modulus [MPa]", "Poisson's ratio", "conductivity [W/(m·K)]"],
    "heading",
  ),
  ...Object.fromEntries(
    metals.flatMap((metal, i): [string, BookCell][] => [
      [`A${metalTop + 2 + i}`, { value: metal.name, look: "text" }],
      [`B${metalTop + 2 + i}`, { value: metal.expansion, look: "result", format: "0.0E+0" }],
      [`C${metalTop + 2 + i}`, { value: metal.modulus, look: "result", format: "0" }],
      [`D${metalTop + 2 + i}`, { value: metal.poisson, look: "result", format: "0.00" }],
      [`E${metalTop + 2 + i}`, { value: metal.conductivity, look: "result", format: "0.0" }],
    ]),
  ),
});

const cautions = cautionLines(metalTop + metals.length + 3, "L");
/** A bush pressed into its housing: its clearance from cold to hot and wet, and the press fit itself. */
export const fit: BookSheet = {
  name: "Fit",
  widths: [31, 18, 14, 13, 13, 9, 11, 11, 13, 13, 13, 10, 44],
  frozen: { rows: 1, columns: 1 },
  growing: [`M${first}:M${last}`],
  heights: { 1: 1.6, [table]: 4, [pressTop]: 3, [metalTop + 1]: 2 },
  cells: {
    ...titled(
      "Roof-vent pivot: does the shaft still turn, and the bush still hold, when it is cold, hot or humid?",
      "An invented example: a polyamide bush 20/23 × 20 mm, pressed into the vent's arm. Type over the shaded cells.",
    ),
    A3: {
      value: "Try wet as the moisture: the shaft binds. Clear the share of grip kept: both ends are shown, with care.",
      look: "quiet",
    },
    [`A${cardTop - 1}`]: { value: "The duty as a card", look: "group" },
    ...cardCells(),
    [`A${table - 2}`]: {
      value: "Zones: an ISO 286 class such as H7, or two deviations such as +0.05/+0.10.",
      look: "quiet",
    },
    [`A${table - 1}`]: {
      value:
        "Clearance: worst case of the tolerances; root-sum-square is the band where most assemblies lie. Running: friction warms the bore. Cold again: after the hottest hold has relaxed the fit.",
      look: "quiet",
    },
    [`A${last + 1}`]: {
      value: "binds: the shaft may seize. grip lost: nothing may hold the bush in its housing.",
      look: "quiet",
    },
    [`A${table}`]: { formula: `=BUSH.FITTABLE($A$${cardTop}:$B$${cardLast})` },
    ...barCells(),
    ...metalCells(),
    ...limitCells(),
    ...ringCells(),
    ...pressCells(),
    ...cautions.cells,
  },
  merged: [
    ...barRows.flatMap((row) => [`C${row}:D${row}`, `E${row}:H${row}`, `I${row}:L${row}`]),
    `E${limitsTop}:G${limitsTop}`,
    `G${barTop}:H${barTop}`,
    ...cautions.merged,
  ],
  areas: [
    { range: `A${cardTop - 1}:B${cardTop - 1}`, look: "group" },
    { range: `A${table}:M${table}`, look: "heading" },
    { range: `A${first}:A${last}`, look: "answer" },
    { range: `B${first}:C${last}`, look: "result", format: "0.0" },
    { range: `D${first}:D${last}`, look: "answer" },
    { range: `E${first}:E${last}`, look: "result", format: "0.00 %" },
    { range: `F${first}:F${last}`, look: "result", format: "0 %" },
    { range: `G${first}:K${last}`, look: "result", format: "0.000" },
    { range: `L${first}:L${last}`, look: "result", format: "0.0" },
    { range: `M${first}:M${last}`, look: "text" },
    { range: `C${barTop}:L${barTop}`, look: "group" },
    { range: `B${pressTop + 1}:B${pressTop + 2}`, look: "result", format: "0.000" },
    { range: `C${pressTop + 1}:D${pressTop + 2}`, look: "result", format: "0.00" },
    { range: `E${pressTop + 1}:E${pressTop + 2}`, look: "result", format: "0.000" },
    { range: `A${ring - 1}:F${ring - 1}`, look: "group" },
    { range: `B${limitsTop + 1}:C${limitsTop + 4}`, look: "result", format: "0.000" },
    { range: `E${limitsTop + 1}:F${limitsTop + 2}`, look: "result", format: "0.000" },
    { range: `G${limitsTop + 1}:G${limitsTop + 1}`, look: "answer" },
    { range: `A${metalTop}:E${metalTop}`, look: "group" },
  ],
  marks: [...marksBy(`A${first}:M${last}`, "M"), ...marksBy(`C${barTop + 2}:L${barTop + 1 + states}`, "M", first)],
  picks: cardPicks,
};
