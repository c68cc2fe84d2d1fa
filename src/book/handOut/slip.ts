import type { Kind } from "../../core/kinds";
import { present } from "../../core/present";
import type { Scalar } from "../book";
import { answered, argumentAt, drawn, isVaried, kindOf } from "./tasks";
import type { Figure, Task } from "./tasks";

/** A result as somebody hands it in who put one figure in wrongly. */
export interface Slip {
  readonly task: Task;
  readonly results: readonly Scalar[];
  /** The figure, as it was put in, and how that happens. */
  readonly figure: Figure;
  readonly putIn: number;
  readonly why: string;
}

interface Way {
  readonly why: string;
  suits(name: string, kind: Kind): boolean;
  put(value: number): number;
}
/** As it happens in a class; the first that suits is taken. */
const ways: readonly Way[] = [
  { why: "the radius instead of the diameter", suits: (name) => name === "bore", put: (value) => value / 2 },
  { why: "a figure for a second instead of a minute", suits: (_, kind) => kind === "rate", put: (value) => value / 60 },
  { why: "the decimal point one place off", suits: isVaried, put: (value) => value * 10 },
];
/** A result this near to the right one would pass as rounded. */
const nearest = 0.1;

/** One of the tasks with one figure put in wrongly, both chosen by the trainer's number; its results are the function's own. */
export function slipOf(tasks: readonly Task[], number: number): Slip {
  const slips = tasks.flatMap((task) => task.given.flatMap((figure, i) => slipAt(task, figure, i) ?? []));
  if (slips.length === 0) throw new Error("none of these calculations shows a mistake: choose another one");
  return present(slips[drawn(number, "slip") % slips.length]);
}

function slipAt(task: Task, figure: Figure, at: number): Slip | undefined {
  const { lesson, given, asked, system } = task;
  const [name, arg] = argumentAt(lesson.formula, at);
  const kind = kindOf(arg);
  const way = kind && ways.find(({ suits }) => suits(name, kind));
  if (!way || typeof figure.value !== "number") return undefined;
  const putIn = Number(way.put(figure.value).toPrecision(4));
  const inputs = given.map(({ value }, i) => (i === at ? putIn : value));
  const results = answered(lesson.formula, inputs, system);
  const differs = asked.some(({ value }, i) => !isNear(Number(results?.[i]), Number(value)));
  return results && differs ? { task, results, figure, putIn, why: way.why } : undefined;
}

const isNear = (a: number, b: number): boolean => Math.abs(a - b) <= nearest * Math.abs(b);
