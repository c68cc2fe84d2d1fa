import { BushError, checkLength, mustBe } from "../errors";
import { kinds } from "../kinds";
import type { Kind, System } from "../kinds";
import { algebraic, askedFor, meantBy, splitPower } from "./spelling";
import { isOfSameDimension, parseUnit, ratioOf } from "./unitAlgebra";

/** working = (given - offset) * factor */
export interface Scale {
  readonly offset: number;
  readonly factor: number;
}

/** 0 K in °C. */
export const absoluteZero = -273.15;

/**
 * A value in the working unit. What one is a whole part of, such as per cent, divides, which rounds once: 70 % is 0.7, as 70 · 0.01
 * is not.
 */
export function scaled(value: number, { offset, factor }: Scale): number {
  const parts = 1 / factor;
  return Number.isInteger(parts) ? (value - offset) / parts : (value - offset) * factor;
}

/** Absolute temperatures have an offset, which unit algebra leaves out. */
const absolute = new Map<string, Scale>([
  ["degC", { offset: 0, factor: 1 }],
  ["degF", { offset: 32, factor: 5 / 9 }],
  ["K", { offset: 273.15, factor: 1 }],
  ["degR", { offset: 491.67, factor: 5 / 9 }],
]);

/** Kinds whose units have no dimension that algebra could check. */
const none = ["", 1] as const;
const shares = new Map([none, ["ratio", 1], ["%", 0.01]]);
const bare: Partial<Record<Kind, ReadonlyMap<string, number>>> = {
  percent: shares,
  ratio: shares,
  count: new Map([none]),
  money: new Map([none]),
  hardness: new Map([
    ["HB", 1],
    ["HBW", 1],
  ]),
};

const cache = new Map<string, Scale | BushError>();
export const cacheLimit = 2000;

/** How a unit converts to a kind's working unit; throws where the unit is unknown or of another dimension. */
export function scaleOf(name: string, kind: Kind, unit: string): Scale {
  const key = `${kind} ${unit} ${name}`;
  let scale = cache.get(key);
  if (!scale) {
    if (cache.size >= cacheLimit) cache.clear();
    scale = findScale(name, kind, unit);
    cache.set(key, scale);
  }
  if (scale instanceof BushError) throw scale;
  return scale;
}

function findScale(name: string, kind: Kind, unit: string): Scale | BushError {
  checkLength(name, unit);
  const meant = meantBy(unit);
  if (meant === undefined) return scaleWithin(name, kind, unit);
  const isOfKind = !(scaleWithin(name, kind, meant) instanceof BushError);
  return wrongUnit(name, kind, unit, isOfKind ? meant : undefined);
}

/** By the units of a kind alone, whatever slip its spelling may be. */
function scaleWithin(name: string, kind: Kind, unit: string): Scale | BushError {
  const simple = bare[kind];
  if (simple) {
    const factor = simple.get(unit);
    return factor === undefined ? wrongUnit(name, kind, unit) : { offset: 0, factor };
  }
  if (kind === "temperature") return temperatureOf(unit) ?? wrongUnit(name, kind, unit);
  if (kind === "rise") {
    // the offsets of °C and °F play no part in a difference
    const difference = temperatureOf(unit);
    return difference ? { offset: 0, factor: difference.factor } : wrongUnit(name, kind, unit);
  }
  const { power, unit: rest } = splitPower(algebraic(unit));
  const parsed = parseUnit(rest);
  const working = parseUnit(algebraic(kinds[kind].metric));
  if (!parsed || !working || !isOfSameDimension(working, parsed)) return wrongUnit(name, kind, unit);
  const factor = power * ratioOf(parsed, working);
  return Number.isFinite(factor) ? { offset: 0, factor } : wrongUnit(name, kind, unit);
}

function wrongUnit(name: string, kind: Kind, unit: string, meant?: string): BushError {
  const { metric, inch } = kinds[kind];
  const accepted =
    kind === "percent"
      ? "in % or as a ratio"
      : metric === ""
        ? "a plain number"
        : metric === inch
          ? `in ${metric}`
          : `in a unit like ${metric} or ${inch}`;
  return mustBe(name, `${accepted}${askedFor(meant)}`, unit);
}

const systemScales = new Map<string, Scale>();
/** How plain numbers of a sheet's unit system convert: working = (given - offset) * factor. */
export function scaleIn(kind: Kind, system: System): Scale {
  if (system === "metric") return same;
  let scale = systemScales.get(kind);
  if (!scale) {
    scale = scaleOf("units", kind, kinds[kind][system]);
    systemScales.set(kind, scale);
  }
  return scale;
}
const same: Scale = { offset: 0, factor: 1 };

/** A plain number in the sheet's unit system, as a working value. */
export const toWorking = (kind: Kind, value: number, system: System): number => scaled(value, scaleIn(kind, system));

/** A working value in the sheet's unit system. */
export function fromWorking(kind: Kind, value: number, system: System): number {
  const { offset, factor } = scaleIn(kind, system);
  return value / factor + offset;
}

/** A working value from a number whose unit is named, as in a heading: "PV limit [psi*ft/min]". */
export const fromUnit = (name: string, kind: Kind, value: number, unit: string): number =>
  scaled(value, scaleOf(name, kind, unit));

/** How a unit of absolute temperature converts to °C; a lone C or F is one of them. */
export const temperatureOf = (unit: string): Scale | undefined =>
  absolute.get(/^[CF]$/.test(unit.trim()) ? `deg${unit.trim()}` : algebraic(unit));
