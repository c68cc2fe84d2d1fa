import { Measure } from "../../formula";
import type { Metal, MetalFigure } from "../../fit/metals";
import type { Between, Lookup, Source } from "../../formula";
import type { PropertyKey, Values } from "../../grades/model/properties";
import type { Kind, System } from "../../kinds";
import { readLine, symbolsOf } from "../../teach/working";
import type { Duty } from "../model/duty";
import type { FieldKey } from "../model/fields";

/** The words of a verdict, worst first. */
export const words = ["fails", "no data", "care", "fits"] as const;
export type Word = (typeof words)[number];

/** What a criterion found. A figure is there only where the data and the duty give it. */
export interface Finding {
  readonly word: Word;
  /** The figures of the grade that counted. */
  readonly figures: readonly PropertyKey[];
  /** What the duty asks, and what the grade bears. */
  readonly value?: number | undefined;
  readonly limit?: number | undefined;
  /** What the value may come to at most, told but not judged. */
  readonly upper?: number | undefined;
  /** How far the value takes up the limit; 1 is just held. */
  readonly use?: number | undefined;
  /**
   * Where neither word nor use tells two corners of a band apart: what is left before the limit, then before what else is
   * told, the least the worse. Else what is missed is beyond its limit, and what fits within.
   */
  readonly room?: (() => readonly number[]) | undefined;
  /** The figure that the limit comes from, or that is missing. */
  readonly property?: PropertyKey | undefined;
  /** The field of the duty that is missing. */
  readonly field?: FieldKey | undefined;
  /** The reason in words, where a percentage does not tell it. */
  readonly say?: ((system: System) => string) | undefined;
  /** What the verdict's line tells in any case, also where it passes. */
  readonly tell?: ((system: System) => string) | undefined;
  /** What the verdict's line tells where it rests on this criterion. */
  readonly caveat?: string | undefined;
  /** What else should be known beside the line. */
  readonly notes?: ((system: System, finding: Finding) => readonly string[]) | undefined;
}

/** A finding that names each of its keys: one that is added above cannot be forgotten where findings are made so. */
type Whole = { readonly [K in keyof Required<Finding>]: Finding[K] };

/** A symbol that a working starts from: the figure of the grade that it is, or where else it comes from. */
export interface Known extends Lookup {
  readonly property?: PropertyKey | undefined;
  readonly origin?: string;
}
/** A criterion's formula line by line, the symbols that it starts from and those that it defines on its way. */
export interface Working {
  readonly lines: readonly string[];
  readonly known: Readonly<Record<string, Known>>;
  readonly between?: Readonly<Record<string, Between>>;
  /** A working of its own that leads to one of the symbols known. */
  readonly first?: Working | undefined;
}

export interface CriterionSpec {
  readonly id: string;
  readonly heading: string;
  /** Of value and limit. */
  readonly kind: Kind;
  /** What is judged, in one sentence without a full stop. */
  readonly text: string;
  /** When it is asked, in words. */
  readonly asked: string;
  /** Optional fields any of which asks for it; none where part, motion and temperature alone do. */
  readonly askedBy?: readonly FieldKey[];
  /** Fields of the duty that it judges. */
  readonly fields: readonly FieldKey[];
  /** Figures of the grade that it may need. */
  readonly properties: readonly PropertyKey[];
  readonly source: Source | readonly Source[];
  /** Whether the duty asks for it; the grade has no say in that. */
  asks(duty: Duty): boolean;
  /** The lines that lead to value, limit and use, named V, Z and u; none where the criterion reads a word. */
  working?(values: Values, duty: Duty): Working | undefined;
}
export interface Criterion extends CriterionSpec {
  /** `before` are the findings of the criteria that stand in front of it. */
  readonly check: (values: Values, duty: Duty, before: readonly Check[]) => Finding;
}
export interface Check extends Finding {
  readonly criterion: Criterion;
  /** What was judged: of a duty with bands the worst corner. */
  readonly duty: Duty;
}

/** Puts a judgement beside its description. */
export const criterion = (
  spec: CriterionSpec,
  check: (values: Values, duty: Duty, before: readonly Check[]) => Finding,
): Criterion => ({ ...spec, check });

/** A symbol of a working: its value in working units and what it is. */
export const figure = (value: number, kind: Kind, text: string, property?: PropertyKey): Known => ({
  value: new Measure(value, kind),
  text,
  property,
});

/** A figure of a metal. */
export const metalFigure = (metal: Metal, name: MetalFigure, text: string): Known => ({
  ...figure(metal[name], metalKinds[name], text),
  origin: metal.origins[name],
});
const metalKinds = {
  expansion: "expansion",
  modulus: "pressure",
  poisson: "ratio",
  conductivity: "conductivity",
} as const satisfies Record<MetalFigure, Kind>;

/** Workings below each other; a figure that no line uses is left out. */
export function joined(...parts: readonly Working[]): Working {
  const lines = parts.flatMap((part) => part.lines);
  const used = new Set(lines.flatMap((line) => symbolsOf(readLine(line).tree)));
  const known = parts.flatMap((part) => Object.entries(part.known)).filter(([symbol]) => used.has(symbol));
  return {
    lines,
    known: Object.fromEntries(known),
    between: Object.assign({}, ...parts.map((part) => part.between)) as Working["between"],
    first: parts.find(({ first }) => first)?.first,
  };
}

/** A use of exactly 1 holds; conversion of units may leave it a rounding above. */
export const rounding = 1e-9;
export const holds = (use: number): boolean => use <= 1 + rounding;

/** A finding in figures; all of one shape, and with room for its criterion and duty, for the engine's sake. */
export const inFigures = (
  word: Word,
  figures: readonly PropertyKey[],
  value: number,
  limit: number,
  use: number | undefined,
  property: PropertyKey,
  notes?: Finding["notes"],
  upper?: number,
  caveat?: string,
): Whole & { criterion: Criterion | undefined; duty: Duty | undefined } => ({
  criterion: undefined,
  duty: undefined,
  word,
  figures,
  value,
  limit,
  upper,
  use,
  room: undefined,
  property,
  field: undefined,
  say: undefined,
  tell: undefined,
  notes,
  caveat,
});

/** A value against its limit. */
export function ratio(
  figures: readonly PropertyKey[],
  value: number,
  limit: number,
  property: PropertyKey,
  notes?: Finding["notes"],
  caveat?: string,
): Finding {
  const use = value / limit;
  return inFigures(holds(use) ? "fits" : "fails", figures, value, limit, use, property, notes, undefined, caveat);
}

/** A figure that the grade lacks: never a pass. */
export const lacking = (property: PropertyKey, value?: number): Finding => ({
  word: "no data",
  figures: none,
  value,
  property,
});
/** A field that the criterion needs beside the one that asks for it. */
export const unstated = (field: FieldKey, value?: number): Finding => ({
  word: "no data",
  figures: none,
  value,
  field,
});
const none: readonly PropertyKey[] = [];

/** What keeps a model from being worked: a figure of the grade, or a field of the duty. */
export type Missing = { readonly property: PropertyKey } | { readonly field: FieldKey };
export const isMissing = <T extends object>(found: T | Missing): found is Missing =>
  "property" in found || "field" in found;
export const withoutData = (missing: Missing, value?: number): Finding =>
  "field" in missing ? unstated(missing.field, value) : lacking(missing.property, value);

/** The worse of two findings of one criterion: by its word, then by its use, then by its room. */
export function worse<F extends Finding>(a: F, b: F): F {
  const step = words.indexOf(a.word) - words.indexOf(b.word);
  if (step !== 0) return step < 0 ? a : b;
  const [use, other] = [a.use ?? -1, b.use ?? -1];
  if (use !== other) return use > other ? a : b;
  return moreRoom(a, b) <= 0 ? a : b;
}

/** By how much the first of two findings of one word has more room, where they first differ; 0 where they tell the same. */
export function moreRoom(a: Finding, b: Finding): number {
  const [rooms, others] = [roomOf(a), roomOf(b)];
  for (const [i, room] of rooms.entries()) {
    const more = room - (others[i] ?? room);
    if (Math.abs(more) > rounding) return more;
  }
  return 0;
}

function roomOf({ room, word, value, limit }: Finding): readonly number[] {
  if (room) return room();
  if (value === undefined || limit === undefined) return [Infinity];
  const gap = Math.abs(limit - value);
  return [word === "fits" ? gap : -gap];
}

/** The worst of what was found of several things, with the reasons of all that are as bad. */
export function together(findings: readonly Finding[]): Finding {
  const [only] = findings;
  if (only && findings.length === 1) return only;
  const worst = findings.reduce(worse);
  const says: NonNullable<Finding["say"]>[] = [];
  const figures: PropertyKey[] = [];
  for (const finding of findings) {
    figures.push(...finding.figures);
    if (finding.say && finding.word === worst.word) says.push(finding.say);
  }
  const { word, value, limit, upper, use, room, property, field, tell, notes, caveat } = worst;
  const say = says.length > 1 ? (system: System) => says.map((one) => one(system)).join("; ") : says[0];
  return { word, figures, value, limit, upper, use, room, property, field, say, tell, notes, caveat } satisfies Whole;
}
