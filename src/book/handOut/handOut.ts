import type { System } from "../../core/kinds";
import { quantityText } from "../../core/teach/notation";
import type { Scalar } from "../book";
import { lessons } from "../greenhouse/lessons";
import { slipOf } from "./slip";
import type { Slip } from "./slip";
import { taskOf } from "./tasks";
import type { Figure, Task } from "./tasks";
import { present } from "../../core/present";

/** What a trainer asks for. */
export interface HandOutWish {
  /** The same number brings the same figures. */
  readonly number: number;
  readonly system: System;
  /** Names of worked examples; they follow in the order of the list. */
  readonly chosen: readonly string[];
  /** Whether the exercise shows results to check, one of which is wrong. */
  readonly hasMistake: boolean;
}

/** An exercise for a class and its answers. */
export interface HandOut {
  readonly title: string;
  readonly answersTitle: string;
  readonly tasks: readonly Task[];
  readonly slip?: Slip;
}

/** The worked examples that a hand-out takes; it chooses the system of units itself. */
export const exercises = lessons.filter(({ inputs }) => !inputs.includes("inch"));

/** The worked examples of a wish with figures of their own. */
export function handOut({ number, system, chosen, hasMistake }: HandOutWish): HandOut {
  if (!Number.isSafeInteger(number) || number < 0)
    throw new Error(`the number must be a whole number of at least 0, got ${number}`);
  const tasks = exercises.filter(({ name }) => chosen.includes(name)).map((lesson) => taskOf(lesson, number, system));
  if (tasks.length === 0) throw new Error("choose one calculation at least");
  const title = `Exercise ${number}${system === "inch" ? " in inch units" : ""}`;
  return {
    title,
    answersTitle: title.replace("Exercise", "Answers"),
    tasks,
    ...(hasMistake && { slip: slipOf(tasks, number) }),
  };
}

const shownDigits = 4;
/** "0.6 MPa" */
export const figureText = ({ value, unit }: Pick<Figure, "value" | "unit">): string =>
  typeof value === "number" ? quantityText({ value, unit, digits: shownDigits }) : value;

export const forClass = "Work in the units given. Show the formula, the numbers put in, the result and its unit.";
export const toCheck =
  "The results to check were handed in by somebody. One task has a mistake in it: which, and what went wrong?";

/** The result handed in for a task. */
export const handedIn = (task: Task, slip: Slip): readonly Scalar[] =>
  slip.task === task ? slip.results : task.asked.map(({ value }) => value);

/** The mistake in a sentence, for the answer sheet alone. */
export function mistakeText({ tasks }: HandOut, { task, results, figure, putIn, why }: Slip): string {
  const { text, symbol, unit } = figure;
  const found = task.asked.map(
    (asked, i) =>
      `${asked.symbol} = ${figureText({ value: present(results[i]), unit: asked.unit })} instead of ${figureText(asked)}`,
  );
  return `The mistake is in task ${tasks.indexOf(task) + 1}, ${why}: ${text} ${symbol} was put in as ${figureText({ value: putIn, unit })} instead of ${figureText(figure)}, so that ${found.join(" and ")} came out.`;
}
