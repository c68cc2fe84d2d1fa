import { dutyCells, dutyHeadings } from "../../src/book/greenhouse/dutyRows";
import { criteria, fieldHeading, judge, NamedDuty, readDuties, reasonOf, withField } from "../../src/core/duties";
import type { Check, Criterion } from "../../src/core/duties";
import type { Between } from "../../src/core/formula";
import { findGrade, libraryOf, property } from "../../src/core/grades/model";
import type { Grade } from "../../src/core/grades/model";
import { measureText } from "../../src/core/measure";
import { tradeLine } from "../../src/core/teach/notation";
import { readLine } from "../../src/core/teach/working";
import { sourceTexts } from "../../src/core/sources";
import { modelErrors } from "../../test/reference/measured/compare";
import { chart, curve, level } from "./chart";
import { measuredLine } from "./measured";
import type { MarkdownPage } from "./page";
import { table } from "../reference/tables";

const fileOf = ({ id }: Criterion): string => `${id.toLowerCase()}.html`;

/** What a duty is judged by: a page for all criteria and one for each, worked for a duty of the greenhouse. */
export function criterionPages(): MarkdownPage[] {
  const judged = judgedDuties();
  return [overview(), ...criteria.map((one) => criterionPage(one, exampleOf(one, judged)))];
}

function overview(): MarkdownPage {
  const text = [
    "# Criteria",
    "What a described duty is judged by, in the order that decides between equals. A verdict is the worst of those asked.",
    table(
      ["criterion", "asked"],
      criteria.map((one) => [`[${one.heading}](${fileOf(one)})`, one.asked]),
    ),
  ];
  return { file: "criteria/index.html", title: "Criteria", text: text.join("\n\n") };
}

interface Judged {
  readonly duty: NamedDuty;
  readonly grade: Grade;
  readonly checks: readonly Check[];
}

/** The greenhouse's duties, each by its own grade. */
function judgedDuties(): Judged[] {
  const library = libraryOf("demo");
  return readDuties([[...dutyHeadings], ...dutyCells.map((row) => [...row])], "metric", "duties").lines.flatMap(
    ({ duty }) => {
      if (!(duty instanceof NamedDuty) || duty.grade === undefined) return [];
      const grade = findGrade(duty.grade, library);
      return [{ duty, grade, checks: judge(grade, duty) }];
    },
  );
}

interface Example extends Judged {
  readonly check: Check;
}

/** Of the duties that ask the criterion the one that is worked for it and uses most of its limit; one without a working where there is none. */
function exampleOf(criterion: Criterion, judged: readonly Judged[]): Example | undefined {
  const asked = judged.flatMap((one) => {
    const check = one.checks.find((found) => found.criterion === criterion);
    return check ? [{ ...one, check }] : [];
  });
  const workedOut = asked.filter(({ grade, check }) => criterion.working?.(grade.values, check.duty));
  const usedOf = ({ check: { word, use = 0 } }: Example) => (word === "fails" ? 0 : use);
  return [...workedOut].sort((a, b) => usedOf(b) - usedOf(a))[0] ?? asked[0];
}

function criterionPage(criterion: Criterion, example: Example | undefined): MarkdownPage {
  const { heading, text, asked, fields, properties, source } = criterion;
  const list = (words: readonly string[]) => (words.length > 0 ? words.join(", ") : "none");
  const paragraphs = [
    `# Criterion: ${heading}`,
    `${text}.`,
    [
      `- Asked: ${asked}.`,
      `- [Fields of the duty](../duties.html#what-a-duty-may-say) that it judges: ${list(fields.map((key) => fieldHeading(key, "metric")))}.`,
      `- [Figures of the grade](../own-data.html): ${list(properties.map((key) => property(key).heading))}.`,
      `- Source: ${sourceTexts(source).join("; ")}.`,
    ].join("\n"),
    ...(example ? worked(criterion, example) : []),
    ...errors(criterion),
    "[All criteria](index.html)",
  ];
  return { file: `criteria/${fileOf(criterion)}`, title: `Criterion: ${heading}`, text: paragraphs.join("\n\n") };
}

/** The lines as the record of a duty has them, with the numbers that they start from, and the word. */
function worked(criterion: Criterion, example: Example): string[] {
  const { duty, grade, check } = example;
  const working = criterion.working?.(grade.values, check.duty);
  const told = `Found: **${check.word}**, ${reasonOf(check, "metric")}.`;
  const title = `## Worked for the duty “${duty.name}” with ${grade.name}`;
  if (!working) return [title, "The criterion reads words and compares figures; there is no equation.", told];
  const lines = [...(working.first?.lines ?? []), ...working.lines];
  const known = Object.entries(working.known).map(([symbol, { value, text }]) => [
    symbol,
    text,
    measureText(value.kind, value.value, "metric"),
  ]);
  return [
    title,
    "V is what the duty asks, Z what the grade bears, u the use of it, in N, mm, MPa, m/s, °C:",
    `\`\`\`text\n${lines.map(tradeLine).join("\n")}\n\`\`\``,
    ...explained(lines, { ...working.first?.between, ...working.between }),
    table(["symbol", "what it is", "value"], known),
    told,
    ...picture(criterion, example),
  ];
}

/** What symbols stand for that the lines define on their way. */
function explained(lines: readonly string[], between: Readonly<Record<string, Between>>): string[] {
  const defined = new Set(lines.map((line) => readLine(line).symbol));
  const own = Object.entries(between).filter(([symbol]) => defined.has(symbol));
  const told = own.map(([symbol, { unit, text }]) => `\`${symbol}\`: ${text}${unit && `, ${unit}`}`);
  return told.length > 0 ? [`In it ${told.join("; ")}.`] : [];
}

/** The use over the load, from a fifth of the duty's to one and a half times; none where the load does not move it. */
function picture(criterion: Criterion, { duty, grade, check }: Example): string[] {
  const load = check.duty.steps.length === 1 ? duty.steps[0]!.values.load : undefined;
  if (typeof load !== "number" || duty.bands.length > 0) return [];
  const useAt = (at: number): number | undefined =>
    judge(grade, withField(duty, "load", at, [0])).find((found) => found.criterion === criterion)?.use;
  const points = curve((at) => useAt(at) ?? NaN, load / 5, 1.5 * load, 40);
  const uses = points.map(([, use]) => use);
  if (uses.some((use) => !Number.isFinite(use)) || Math.max(...uses) - Math.min(...uses) < 0.01) return [];
  const most = Math.max(1.2, ...uses);
  return [
    chart({
      id: "picture",
      title: "Use of the limit over the load",
      text: `The duty above with another load, all else alike; at its own ${measureText("force", load, "metric")} the use is ${Number((100 * useAt(load)!).toPrecision(3))} %. Above 1 the criterion fails.`,
      x: { label: "load, N", from: 0, to: 1.6 * load },
      y: { label: "use", from: 0, to: Math.ceil(most * 5) / 5 },
      series: [{ label: criterion.heading, look: "first", points }, level("limit", 1, 0, 1.6 * load)],
    }),
  ];
}

/** The models that the criterion rests on, each with what was measured. */
function errors({ id }: Criterion): string[] {
  const own = modelErrors().filter(({ model }) => model.criteria.includes(id));
  const measured = own.map((one) => `- ${measuredLine(one, "../measured/")}`);
  const limits = "What the models assume and on which side they err: [Limits of the models](../limits.html).";
  return ["## Errors", ...(own.length > 0 ? [measured.join("\n")] : []), limits];
}
