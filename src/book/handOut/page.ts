import { standingCautions } from "../../core/grades/cautionsOf";
import { unitText } from "../../core/teach/notation";
import { element, escaped } from "../record/html";
import { pageOf, text } from "../record/page";
import type { RecordLine } from "../record/page";
import { figureText, forClass, handedIn, mistakeText, toCheck } from "./handOut";
import type { HandOut } from "./handOut";
import { titleOf } from "./tasks";
import type { Figure } from "./tasks";
import { present } from "../../core/present";

const style = `
.hand-out { font-size: 10pt; line-height: 1.35; }
.hand-out h2 { font-size: 10.5pt; margin-top: 9pt; }
.hand-out table { margin: 2pt 0 4pt; }
.hand-out .task { break-inside: avoid; }
.hand-out .pair { grid-template-columns: 1fr 1fr; font-size: 9pt; }
.hand-out .room { min-height: 42pt; border: 0.4pt dashed #c3cdc8; margin: 2pt 0; }
.hand-out .answers { break-before: page; }
.hand-out .worked { columns: auto; font-size: 8.5pt; width: 100%; }
.hand-out .mistake { background: #f7e8b5; color: #544005; padding: 3pt 6pt; print-color-adjust: exact; }
`;

const blank = "________________";
const invented = "Figures of grades named Demo are invented.";

/** The exercise, and its answers from a page of their own on, as one page that a browser prints. */
export const handOutPage = (made: HandOut): string =>
  pageOf(
    made.title,
    element("div", exerciseBody(made) + element("div", answersBody(made), "answers"), "hand-out"),
    style,
  );

function exerciseBody(made: HandOut): string {
  const tasks = made.tasks.map((task, i) => {
    const results = made.slip && handedIn(task, made.slip);
    const asked = task.asked.map(({ symbol, unit, text: what }, k) => {
      const check = results ? ` To check: ${figureText({ value: present(results[k]), unit })}` : "";
      return element("p", escaped(`${what}: ${symbol} = ${blank} ${unitText(unit)}${check && `.${check}`}`));
    });
    const known = [...task.given, ...task.data].map(figureRow).join("");
    const figures = element("div", element("table", known) + element("div", "", "room"), "pair");
    return element("div", element("h2", escaped(titleOf(task, i))) + figures + asked.join(""), "task");
  });
  return [
    element("h1", escaped(made.title)),
    element("p", "Name: ______________________________ Date: ________________"),
    element("p", escaped(made.slip ? `${forClass} ${toCheck}` : forClass)),
    ...tasks,
    cautions(),
  ].join("\n");
}

function answersBody(made: HandOut): string {
  const tasks = made.tasks.map((task, i) =>
    element(
      "div",
      element("h2", escaped(titleOf(task, i))) + element("table", task.working.map(workedRow).join(""), "worked"),
      "task",
    ),
  );
  return [
    element("h1", escaped(made.answersTitle)),
    made.slip ? element("p", escaped(mistakeText(made, made.slip)), "mistake") : "",
    ...tasks,
    cautions(),
  ].join("\n");
}

const row = (cells: readonly string[]): string =>
  element("tr", cells.map((cell) => element("td", escaped(cell))).join(""));
const figureRow = (figure: Figure): string => row([figure.text, figure.symbol, figureText(figure)]);

/** What it is, the formula, and the numbers put in, which end in the result. */
const workedRow = ([what, formula, numbers]: RecordLine): string =>
  element("tr", [what, formula, numbers].map((cell) => element("td", text(cell))).join(""));

const cautions = (): string =>
  element("ul", [...standingCautions, invented].map((line) => element("li", escaped(line))).join(""), "cautions");
