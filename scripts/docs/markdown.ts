import { Marked } from "marked";
import { formulaNamed } from "../../src/core/families";
import { systems } from "../../src/core/kinds";
import { answered } from "../lib/functionPages";

/** A fence of formulas becomes each formula with what it answers: no page shows a number that was not computed. */
const fence = /```bush\n([\s\S]*?)```/g;
export const withAnswers = (markdown: string): string =>
  markdown.replace(fence, (_, lines: string) => lines.trim().split("\n").map(executed).join("\n\n"));

function executed(line: string): string {
  const [, id, inside] = /^=BUSH\.([A-Z]+)\((.*)\)$/.exec(line) ?? [];
  const f = id === undefined ? undefined : formulaNamed(id);
  if (!f || inside === undefined) throw new Error(`no formula of this add-in: ${line}`);
  const given = argumentsIn(inside);
  const named = systems.find((system) => f.spec.units && given.at(-1) === system);
  return answered(f, named ? given.slice(0, -1) : given, named);
}

/** Numbers, text and array constants as typed in a cell; an array's commas divide cells, its semicolons rows. */
function argumentsIn(text: string): unknown[] {
  const json = text.replace(/"[^"]*"|[{};]/g, (found) => ({ "{": "[[", "}": "]]", ";": "],[" })[found] ?? found);
  return JSON.parse(`[${json}]`) as unknown[];
}

const marked = new Marked({ gfm: true });

/** The first headings of tables of words: on a narrow page each of their rows becomes a paragraph, its cells named by their headings. */
const ofWords = [
  "argument",
  "criterion",
  "factor",
  "family",
  "group",
  "heading",
  "medium",
  "model",
  "property",
  "section",
  "symbol",
  "what",
  "word",
];

/** Other tables scroll in a box of their own that the keyboard reaches. */
function boxed(table: string): string {
  const headings = [...table.matchAll(/<th[^>]*>(.*?)<\/th>/g)].map(([, words]) => words!);
  if (!ofWords.includes(headings[0]!))
    return `<div class="wide" role="region" tabindex="0" aria-label="table">${table}</div>`;
  const named = table.replace(/<tr>[\s\S]*?<\/tr>/g, (row) => {
    let column = 0;
    return row.replace(/<td/g, () => `<td data-heading="${headings[column++]}"`);
  });
  return `<div class="words">${named}</div>`;
}

/** HTML of a page's Markdown. */
export function html(markdown: string): string {
  const text = marked.parse(markdown, { async: false });
  return text
    .replace(/<table>[\s\S]*?<\/table>/g, boxed)
    .replace(
      /<(h[2-3])>(.*?)<\/\1>/g,
      (_, tag: string, words: string) => `<${tag} id="${anchorOf(words)}">${words}</${tag}>`,
    );
}

/** The anchor of a heading. */
export const anchorOf = (words: string): string =>
  words
    .replace(/<[^>]*>|&[a-z#0-9]+;/g, "")
    .trim()
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, "-");
