import { fitRows, withField } from "../../core/duties";
import type { FieldKey, FitRow, NamedDuty } from "../../core/duties";
import { BushError } from "../../core/errors";
import type { Grade } from "../../core/grades/model";
import { kinds } from "../../core/kinds";
import type { System } from "../../core/kinds";
import { keepUnit } from "./quantity";
import { readFields } from "./readDuty";

/** What the window asks of the fit; shaft, moisture, bore and temperatures are the duty's. */
export const fitKeys = [
  "outside",
  "outsideZone",
  "boreZone",
  "zoneHolds",
  "housingZone",
  "shaftZone",
  "housing",
  "housingOutside",
  "assemblyMoisture",
  "keptGrip",
] as const satisfies readonly FieldKey[];
export type FitKey = (typeof fitKeys)[number];
/** Texts as typed. */
export type FitTexts = Readonly<Record<FitKey, string>>;

/** A usual combination to start from, all of it in view and to be changed; the outside diameter is the user's. */
export const firstFit: FitTexts = {
  outside: "",
  outsideZone: "+0.05/+0.10 mm",
  boreZone: "E10",
  zoneHolds: "pressed",
  housingZone: "H7",
  shaftZone: "h8",
  housing: "aluminium alloy",
  housingOutside: "",
  assemblyMoisture: "",
  keptGrip: "",
};

/** The same fit in the other unit system: plain numbers get the unit that they had. */
export function keepFitUnits(texts: FitTexts, from: System): FitTexts {
  const zone = (text: string) => (/^[\d\s.,+\-\u2212/]+$/.test(text) ? `${text.trim()} ${kinds.length[from]}` : text);
  return {
    ...texts,
    outside: keepUnit("length", texts.outside, from),
    housingOutside: keepUnit("length", texts.housingOutside, from),
    boreZone: zone(texts.boreZone),
    outsideZone: zone(texts.outsideZone),
    housingZone: zone(texts.housingZone),
    shaftZone: zone(texts.shaftZone),
  };
}

export interface FitRead {
  readonly faults: Readonly<Partial<Record<FitKey, string>>>;
  /** Why there are no rows, where that is not said at a field. */
  readonly fault?: string;
  readonly rows?: readonly FitRow[];
}

/** The states of FITTABLE for the duty with these fields; each fault stays at its field. */
export function readFit(duty: NamedDuty, texts: FitTexts, grade: Grade, system: System): FitRead {
  const { values, faults } = readFields(texts, fitKeys, system);
  if (Object.keys(faults).length > 0) return { faults };
  const steps = duty.steps.map((_, i) => i);
  try {
    const fitted = fitKeys.reduce((sum, key) => withField(sum, key, values[key], steps), duty);
    return { faults, rows: fitRows(fitted, grade) };
  } catch (error) {
    if (error instanceof BushError) return { faults, fault: error.message };
    throw error;
  }
}

/** "cold again, no grip kept" */
export const nameOf = ({ name, isSupposed }: FitRow): string => (isSupposed ? `${name}, no grip kept` : name);
