import { fieldHeading, fields } from "../../core/duties";
import type { FieldKey } from "../../core/duties";
import { metals } from "../../core/fit/metals";
import type { BookCell, BookSheet, PickList, Scalar } from "../book";

/** The card of the duty. */
const card = {
  duty: "Roof-vent pivot",
  grade: "Demo Sorrel",
  load: 900,
  bore: 20,
  length: 20,
  outside: 23,
  swing: 70,
  cycles: 0.5,
  temperature: "-20 to 80",
  moisture: "humid",
  shaft: "hardened steel",
  housing: "aluminium alloy",
  housingOutside: 40,
  boreZone: "E10",
  zoneHolds: "pressed",
  outsideZone: "+0.15/+0.20",
  housingZone: "H7",
  shaftZone: "f7",
  assemblyMoisture: "dry",
  keptGrip: 60,
  leastClearance: 0.01,
  heldAtEnds: "no",
} as const satisfies Partial<Record<FieldKey, Scalar>>;
export type Key = keyof typeof card;
const keys = Object.keys(card) as Key[];

export const cardTop = 5;
export const cardLast = cardTop + keys.length - 1;
export const at = (key: Key): string => `B${cardTop + keys.indexOf(key)}`;
export const labelOf = (key: Key): string =>
  key === "keptGrip" ? "share of grip kept [%]" : fieldHeading(key, "metric");

export const cardCells = (): BookSheet["cells"] =>
  Object.fromEntries(
    keys.flatMap((key, i): [string, BookCell][] => {
      const value: Scalar = card[key];
      return [
        [`A${cardTop + i}`, { value: labelOf(key), look: "label" }],
        [at(key), { value, look: typeof value === "string" ? "words" : "input" }],
      ];
    }),
  );
export const cardPicks = keys.flatMap((key): PickList[] => {
  const entry = fields[key];
  if (key === "housing") return [{ at: at(key), from: metals.map(({ name }) => name) }];
  return entry.kind === "choice" ? [{ at: at(key), from: entry.words }] : [];
});
