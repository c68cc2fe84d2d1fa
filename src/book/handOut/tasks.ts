import { BushError, orFault } from "../../core/errors";
import { isNumberArg, resultSymbols } from "../../core/formula";
import type { Arg, Formula } from "../../core/formula";
import { kinds } from "../../core/kinds";
import type { Kind, System } from "../../core/kinds";
import { present } from "../../core/present";
import { factorWord } from "../../core/teach/workedRows";
import { labelOf } from "../../core/teach/worksheet";
import { fromWorking } from "../../core/units/scale";
import type { Scalar } from "../book";
import type { Lesson } from "../greenhouse/lessons";
import { markOf } from "../record/page";
import type { RecordLine } from "../record/page";
import { answersOf, systemOf, workingOf } from "./call";

/** A figure of an exercise, given or asked for, with its unit. */
export interface Figure {
  readonly text: string;
  readonly symbol: string;
  readonly value: Scalar;
  readonly unit: string;
}
/** A worked example with figures of its own. */
export interface Task {
  readonly lesson: Lesson;
  readonly system: System;
  /** The arguments in their order. */
  readonly given: readonly Figure[];
  /** Figures that the calculation looks up in data, which a class cannot know. */
  readonly data: readonly Figure[];
  readonly asked: readonly Figure[];
  /** The lines of STEPS. */
  readonly working: readonly RecordLine[];
}

/** "2. How hard is the bush pressed?" */
export const titleOf = ({ lesson }: Task, i: number): string => `${i + 1}. ${lesson.story}`;

/** A whole number from a trainer's number and what it is for: the same always brings the same. */
export const drawn = (number: number, ...what: readonly Scalar[]): number => parseInt(markOf([[number, ...what]]), 16);

/** Kinds whose figures change from hand-out to hand-out; what describes a material stays. */
const varied: ReadonlySet<Kind> = new Set<Kind>([
  ...(["force", "length", "pressure", "speed", "rate", "angle", "distance", "temperature"] as const),
]);
export const isVaried = (name: string, kind: Kind): boolean => varied.has(kind) && !name.endsWith("modulus");

const least = 0.8;
const step = 0.02;
const steps = 20;
/** Bore and outside of a bush change together, so that a wall stays between them. */
const isDiameter = (name: string): boolean => name === "bore" || name === "outside";
const digits = { metric: 2, inch: 3 } as const;
const fixedDigits = 4;
const mostDraws = 50;

/** An argument by its place in a call. */
export const argumentAt = ({ spec }: Formula, at: number): [name: string, arg: Arg] =>
  present(Object.entries<Arg>(spec.args)[at]);

/** The kind that an argument's plain number has. */
export const kindOf = (arg: Arg): Kind | undefined =>
  isNumberArg(arg) ? arg.kind : arg.kind === "span" ? "temperature" : undefined;

/** A worked example with figures 20 % up or down by the trainer's number, drawn again where the function refuses them. */
export function taskOf(lesson: Lesson, number: number, wanted: System): Task {
  const system = systemOf(lesson.formula, wanted);
  for (let draw = 0; draw < mostDraws; draw++) {
    const inputs = inputsOf(lesson, number, draw, system);
    const answers = answered(lesson.formula, inputs, system);
    if (answers) return taskWith(lesson, inputs, answers, system);
  }
  throw new Error(`${lesson.name} refuses each of ${mostDraws} sets of figures`);
}

function inputsOf({ name, formula, inputs }: Lesson, number: number, draw: number, system: System): Scalar[] {
  return inputs.map((value, i) => {
    const [argument, arg] = argumentAt(formula, i);
    const kind = kindOf(arg);
    if (typeof value !== "number" || !kind) return value;
    const varies = isVaried(argument, kind);
    const key = isDiameter(argument) ? "diameter" : argument;
    const factor = varies ? least + step * (drawn(number, name, draw, key) % (steps + 1)) : 1;
    if (system === "metric") return varies ? Number((value * factor).toPrecision(digits.metric)) : value;
    return Number(fromWorking(kind, value * factor, system).toPrecision(varies ? digits.inch : fixedDigits));
  });
}

/** The function's answers; undefined where it refuses the figures. */
export function answered(formula: Formula, inputs: readonly Scalar[], system: System): readonly Scalar[] | undefined {
  const answers = orFault(() => answersOf(formula, inputs, system));
  return answers instanceof BushError ? undefined : answers;
}

function taskWith(lesson: Lesson, inputs: readonly Scalar[], answers: readonly Scalar[], system: System): Task {
  const { spec } = lesson.formula;
  const given = inputs.map((value, i): Figure => {
    const [name, arg] = argumentAt(lesson.formula, i);
    const kind = kindOf(arg);
    const symbol = isNumberArg(arg) ? arg.symbol : name;
    return { text: arg.label ?? labelOf(arg.text), symbol, value, unit: kind ? kinds[kind][system] : "" };
  });
  const asked = resultSymbols(spec.result).map(({ symbol, kind, name, at }): Figure => {
    const text = labelOf(name ?? spec.text);
    return { text, symbol, value: present(answers[at]), unit: kinds[kind][system] };
  });
  const working = workingOf(lesson.formula, inputs, system);
  const told = new Set([...given, ...asked].map(({ symbol }) => symbol));
  const data = working
    .filter(([text, symbol]) => !String(symbol).includes("=") && !told.has(String(symbol)) && !isNote(text))
    .map(([text, symbol, shown]) => ({ text: String(text), symbol: String(symbol), value: present(shown), unit: "" }));
  return { lesson, system, given, data, asked, working };
}

const isNote = (text: Scalar | undefined): boolean => text === "Source" || text === factorWord;
