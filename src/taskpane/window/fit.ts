import { BushError } from "../../core/errors";
import type { Answer } from "../../core/formula";
import { fitTable } from "../../core/fit/fitTable";
import { readZone } from "../../core/fit/zone";
import type { Library } from "../../core/grade";
import { kinds } from "../../core/kinds";
import type { System } from "../../core/kinds";
import { fromWorking, readQuantity } from "../../core/units";
import { keepUnit } from "../duty/quantity";

/** The fields of a fit beside the duty's bore and temperatures; texts as typed. */
export interface FitTexts {
  readonly borezone: string;
  readonly borestate: string;
  readonly outside: string;
  readonly outsidezone: string;
  readonly housingzone: string;
  readonly shaftzone: string;
  readonly housing: string;
  readonly shaft: string;
  readonly moisture: string;
}

/** A usual combination to start from, all of it in view and to be changed; the outside diameter is the user's. */
export const firstFit: FitTexts = {
  borezone: "E10",
  borestate: "pressed",
  outside: "",
  outsidezone: "+0.05/+0.10 mm",
  housingzone: "H7",
  shaftzone: "h8",
  housing: "aluminium alloy",
  shaft: "carbon steel",
  moisture: "dry",
};

/** The same fit in the other unit system: plain numbers get the unit that they had. */
export function keepFitUnits(texts: FitTexts, from: System): FitTexts {
  const zone = (text: string) => (/^[\d\s.,+\-\u2212/]+$/.test(text) ? `${text.trim()} ${kinds.length[from]}` : text);
  return {
    ...texts,
    outside: keepUnit("length", texts.outside, from),
    borezone: zone(texts.borezone),
    outsidezone: zone(texts.outsidezone),
    housingzone: zone(texts.housingzone),
    shaftzone: zone(texts.shaftzone),
  };
}

/** What the duty and the choice of a grade add, in working units. */
export interface FitCase extends FitTexts {
  readonly grade: string;
  readonly bore: number;
  readonly cold: number;
  readonly hot: number;
}

type Range = readonly [least: number, greatest: number];

/** One state of FITTABLE; lengths in the sheet's unit, missing where the grade lacks a datum. */
export interface FitRow {
  readonly state: string;
  readonly temperature: number;
  readonly clearance?: Range;
  readonly likely?: Range;
  readonly verdict: string;
}

/** The rows of FITTABLE, or its message. */
export function fitRows(texts: FitCase, grades: Library, system: System): FitRow[] | string {
  const zone = (name: "borezone" | "outsidezone" | "housingzone" | "shaftzone") => readZone(texts[name], system, name);
  try {
    const rows = fitTable({
      ...texts,
      outside: readQuantity("outside", "length", texts.outside, system),
      borezone: zone("borezone"),
      outsidezone: zone("outsidezone"),
      housingzone: zone("housingzone"),
      shaftzone: zone("shaftzone"),
      borestate: texts.borestate as "pressed" | "free",
      moisture: texts.moisture as "dry" | "room" | "soaked",
      grades,
    });
    return rows.map((row) => rowOf(row, system));
  } catch (error) {
    if (error instanceof BushError) return error.message;
    throw error;
  }
}

const columns = (fitTable.spec.result as { columns: readonly { readonly name: string }[] }).columns.map((c) => c.name);

function rowOf(row: readonly Answer[], system: System): FitRow {
  const cell = (name: string) => row[columns.indexOf(name)];
  const range = (name: string, least: string, greatest: string) => {
    const [a, b] = [cell(least), cell(greatest)];
    if (typeof a !== "number" || typeof b !== "number") return {};
    return { [name]: [fromWorking("length", a, system), fromWorking("length", b, system)] as const };
  };
  return {
    state: String(cell("state")),
    temperature: fromWorking("temperature", cell("temperature") as number, system),
    ...range("clearance", "least clearance", "greatest clearance"),
    ...range("likely", "root-sum-square least", "root-sum-square greatest"),
    verdict: String(cell("verdict")),
  };
}
