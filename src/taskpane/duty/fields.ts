import { checkDomain } from "../../core/domain";
import { BushError } from "../../core/errors";
import type { NumberArg } from "../../core/formula";
import { measure, motions, sleeveDuty, shafts } from "../../core/grade";
import type { Duty, Motion } from "../../core/grade";
import { isDimensional, kinds } from "../../core/kinds";
import type { Kind, System } from "../../core/kinds";
import { sleevePressure } from "../../core/load/pressure";
import { turningSpeed } from "../../core/motion/speed";
import { strokeSpeed } from "../../core/motion/strokeSpeed";
import { swingSpeed } from "../../core/motion/swingSpeed";
import { splitNumber } from "../../core/numbers";
import { fromWorking, readQuantity } from "../../core/units";

/** The fields of the form with a number; those of the functions are the functions' own arguments. */
export const numberFields = {
  load: sleevePressure.spec.args.load,
  bore: sleevePressure.spec.args.bore,
  length: sleevePressure.spec.args.length,
  rpm: turningSpeed.spec.args.rpm,
  swing: swingSpeed.spec.args.swing,
  stroke: strokeSpeed.spec.args.stroke,
  cycles: swingSpeed.spec.args.cycles,
  lowest: { kind: "temperature", symbol: "T", text: "Lowest temperature" },
  highest: { kind: "temperature", symbol: "T", text: "Highest temperature" },
  impactFactor: { kind: "ratio", symbol: "K", from: 1, text: "Impact factor", optional: true },
  hardness: { kind: "hardness", symbol: "H", above: 0, text: "Shaft hardness", optional: true },
  designFactor: { kind: "ratio", symbol: "S", from: 1, text: "Design factor", optional: true },
} as const satisfies Record<string, NumberArg>;
export type NumberField = keyof typeof numberFields;

/** The fields with a choice; the first choice is the one at the start. */
export const choiceFields = {
  motion: motions,
  wet: ["dry", "wet"],
  shock: ["steady", "shock"],
  shaft: ["", ...shafts],
} as const;
export type ChoiceField = keyof typeof choiceFields;

export type Field = NumberField | ChoiceField;
export type Texts = Readonly<Record<Field, string>>;

export const emptyTexts: Texts = {
  ...(Object.fromEntries(Object.keys(numberFields).map((name) => [name, ""])) as Record<NumberField, string>),
  motion: "turning",
  wet: "dry",
  shock: "steady",
  shaft: "",
};

const movement: Readonly<Record<Motion, readonly NumberField[]>> = {
  turning: ["rpm"],
  swinging: ["swing", "cycles"],
  linear: ["stroke", "cycles"],
  static: [],
};
export const movementFields = (motion: string): readonly NumberField[] => movement[motion as Motion];

const sizeFields = ["load", "bore", "length"] as const;
/** The number fields that count, in the form's order. */
export const activeFields = ({ motion, shock }: Texts): readonly NumberField[] => [
  ...sizeFields,
  ...movementFields(motion),
  "lowest",
  "highest",
  ...(shock === "shock" ? (["impactFactor"] as const) : []),
  "hardness",
  "designFactor",
];

export interface ReadDuty {
  /** Working values of the fields that could be read. */
  readonly values: Readonly<Partial<Record<NumberField, number>>>;
  readonly faults: Readonly<Partial<Record<NumberField, string>>>;
  /** Required fields without text. */
  readonly missing: readonly NumberField[];
  /** There when nothing is at fault or missing. */
  readonly duty?: Duty;
}

/** Reads the form; each fault stays at its field. */
export function readDuty(texts: Texts, system: System): ReadDuty {
  const values: Partial<Record<NumberField, number>> = {};
  const faults: Partial<Record<NumberField, string>> = {};
  const missing: NumberField[] = [];
  for (const name of activeFields(texts)) {
    if (texts[name].trim() === "") {
      if (!("optional" in numberFields[name])) missing.push(name);
      continue;
    }
    try {
      values[name] = readNumber(name, texts[name], system);
    } catch (error) {
      if (!(error instanceof BushError)) throw error;
      faults[name] = error.message;
    }
  }
  const { lowest, highest } = values;
  if (lowest !== undefined && highest !== undefined && lowest > highest)
    faults.highest = "highest temperature must not be below the lowest";
  if (missing.length > 0 || Object.keys(faults).length > 0) return { values, faults, missing };
  return { values, faults, missing, duty: dutyOf(texts, values as Record<NumberField, number>) };
}

function readNumber(name: NumberField, text: string, system: System): number {
  const arg: NumberArg = numberFields[name];
  const value = readQuantity(labelOf(name), arg.kind, text, system);
  checkDomain(labelOf(name), arg, value, system, text);
  return value;
}

const labelOf = (name: NumberField): string => numberFields[name].text.toLowerCase();

/** The duty with another load and movement, for the steps of a spectrum. */
export const dutyOf = (texts: Texts, values: Readonly<Record<NumberField, number>>): Duty =>
  sleeveDuty({
    load: values.load,
    bore: values.bore,
    length: values.length,
    movement: { ...values, motion: texts.motion as Motion },
    temperature: { low: values.lowest, high: values.highest },
    wet: texts.wet === "wet",
    shock: texts.shock === "shock",
    ...(values.impactFactor === undefined ? {} : { impactFactor: values.impactFactor }),
    ...(values.hardness === undefined ? {} : { hardness: values.hardness }),
    ...(values.designFactor === undefined ? {} : { designFactor: values.designFactor }),
    ...(texts.shaft === "" ? {} : { shaft: texts.shaft }),
  });

/** The value read back, with its unit in the sheet's system; short, for eyes only. */
export const readBack = (name: NumberField, value: number, system: System): string =>
  measure(numberFields[name].kind, value, system);

/** What the pane computes is shown to four digits. */
const digits = 4;
export const quantityText = (kind: Kind, value: number, system: System): string => measure(kind, value, system, digits);
export const bareNumber = (kind: Kind, value: number, system: System): string =>
  String(Number(fromWorking(kind, value, system).toPrecision(digits)));

/** The same duty in the other unit system: a plain number gets the unit that it had. */
export function keepUnits(texts: Texts, from: System): Texts {
  const kept = Object.entries(texts).map(([name, text]) => {
    const arg = numberFields[name as NumberField] as NumberArg | undefined;
    return [name, arg ? keepUnit(arg.kind, text, from) : text];
  });
  return Object.fromEntries(kept) as Texts;
}

export function keepUnit(kind: Kind, text: string, from: System): string {
  const isPlain = splitNumber(text.trim())?.rest === "";
  return isPlain && isDimensional(kind) ? `${text.trim()} ${kinds[kind][from]}` : text;
}
