import { dutyCells, dutyHeadings } from "../../src/book/greenhouse/dutyRows";
import {
  criteria,
  field,
  fieldHeading,
  judge,
  NamedDuty,
  readDuties,
  reasonOf,
  withField,
} from "../../src/core/duties";
import type { Check, Criterion } from "../../src/core/duties";
import type { Between } from "../../src/core/formula";
import { findGrade, libraryOf, property } from "../../src/core/grades/model";
import type { Grade } from "../../src/core/grades/model";
import { kinds } from "../../src/core/kinds";
import type { Kind } from "../../src/core/kinds";
import { measureText } from "../../src/core/measure";
import { tradeLine } from "../../src/core/teach/notation";
import { readLine } from "../../src/core/teach/working";
import type { Working } from "../../src/core/duties/judging/criterion";
import { sourceTexts } from "../../src/core/sources";
import { modelErrors } from "../../test/reference/measured/compare";
import { curve, level } from "./chart";
import type { Axis, Chart, Point } from "./chart";
import { clearancePicture, gripPicture } from "./fitPictures";
import { measuredLine } from "./measured";
import type { MarkdownPage } from "./page";
import { drawn } from "./pictures";
import { axisOf } from "./rows";
import { table } from "../reference/tables";

const fileOf = ({ id }: Criterion): string => `${id.toLowerCase()}.html`;

/** What a duty is judged by: a page for all criteria and one for each, worked for a duty of the greenhouse. */
export function criterionPages(): MarkdownPage[] {
  const judged = judgedDuties();
  return [overview(), ...criteria.map((one) => criterionPage(one, examplesOf(one, judged)))];
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

interface Example extends Judged {
  readonly check: Check;
  /** Of the working; none where there is no equation. */
  readonly lines: readonly string[];
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

/** How many lines another duty must bring that the page has not yet, to be worked as well: one alone is a small change of another. */
const leastNew = 2;

/**
 * Of the duties that ask the criterion the one that is worked for it and uses most of its limit, then those that are worked by other
 * equations, the most of them first; one without a working where there is none.
 */
function examplesOf(criterion: Criterion, judged: readonly Judged[]): Example[] {
  const asked = judged.flatMap((one) => {
    const check = one.checks.find((found) => found.criterion === criterion);
    return check ? [{ ...one, check, lines: linesOf(criterion.working?.(one.grade.values, check.duty)) }] : [];
  });
  const usedOf = ({ check: { word, use = 0 } }: Example) => (word === "fails" ? 0 : use);
  const workedOut = asked.filter(({ lines }) => lines.length > 0).sort((a, b) => usedOf(b) - usedOf(a));
  const [first = asked[0]] = workedOut;
  if (!first) return [];
  const shown = [first];
  for (;;) {
    const known = new Set(shown.flatMap(({ lines }) => lines));
    const newOf = ({ lines }: Example) => lines.filter((line) => !known.has(line)).length;
    const next = workedOut.reduce((a, b) => (newOf(b) > newOf(a) ? b : a), first);
    if (newOf(next) < leastNew) return shown;
    shown.push(next);
  }
}

const linesOf = (working: Working | undefined): readonly string[] =>
  working ? [...(working.first?.lines ?? []), ...working.lines] : [];

function criterionPage(criterion: Criterion, [example, ...others]: readonly Example[]): MarkdownPage {
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
    ...(example ? [...worked(criterion, example), ...picture(criterion, example)] : []),
    ...(others.length > 0 ? ["Other duties give other figures, and are worked by other equations:"] : []),
    ...others.flatMap((other) => worked(criterion, other)),
    ...errors(criterion),
    "[All criteria](index.html)",
  ];
  return { file: `criteria/${fileOf(criterion)}`, title: `Criterion: ${heading}`, text: paragraphs.join("\n\n") };
}

/** The lines as the record of a duty has them, with the numbers that they start from, and the word. */
function worked(criterion: Criterion, example: Example): string[] {
  const { duty, grade, check, lines } = example;
  const working = criterion.working?.(grade.values, check.duty);
  const told = `Found: **${check.word}**, ${reasonOf(check, "metric")}.`;
  const title = `## Worked for the duty “${duty.name}” with ${grade.name}`;
  if (!working) return [title, "The criterion reads words and compares figures; there is no equation.", told];
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
  ];
}

/** What symbols stand for that the lines define on their way. */
function explained(lines: readonly string[], between: Readonly<Record<string, Between>>): string[] {
  const defined = new Set(lines.map((line) => readLine(line).symbol));
  const own = Object.entries(between).filter(([symbol]) => defined.has(symbol));
  const told = own.map(([symbol, { unit, text }]) => `\`${symbol}\`: ${text}${unit && `, ${unit}`}`);
  return told.length > 0 ? [`In it ${told.join("; ")}.`] : [];
}

/** What a criterion's page shows of its example: the states of a fit, or a number of the duty elsewhere. */
function picture(criterion: Criterion, example: Example): string[] {
  const { duty, grade, lines } = example;
  if (lines.length === 0) return [];
  if (criterion.id === "clearance") return [drawn(clearancePicture(duty, grade))];
  if (criterion.id === "grip") return [drawn(gripPicture(duty, grade))];
  const charts = (["load", "rpm"] as const).flatMap((key) => overField(criterion, example, key));
  return charts.slice(0, 1).map(drawn);
}

/** What is drawn of a criterion's findings. */
interface Shown {
  readonly title: string;
  /** Of the duty as it is. */
  readonly told: string;
  readonly axisOf: (values: readonly number[]) => Axis;
  readonly of: (found: Check) => number | undefined;
  readonly limitOf: (found: Check) => number | undefined;
}

/** The use against 1; value against limit where no use is formed. */
function shownOf({ heading, kind }: Criterion, { use, value }: Check): Shown | undefined {
  if (use !== undefined)
    return {
      title: "Use of the limit",
      told: `the use is ${Number((100 * use).toPrecision(3))} %; at 1 the limit is reached`,
      axisOf: (values) => axisOf("use", [1.2, ...values]),
      of: (found) => found.use,
      limitOf: () => 1,
    };
  if (value === undefined) return undefined;
  return {
    title: "Value and limit",
    told: `the value is ${measureText(kind, value, "metric", 3)}; where the lines meet the limit is reached`,
    // a temperature has no zero to be seen from
    axisOf: (values) => axisOf(`${heading}, ${kinds[kind].metric}`, values, kind === "temperature" ? values[0] : 0),
    of: (found) => found.value,
    limitOf: (found) => found.limit,
  };
}

/** The findings over the load or the turns, from a fifth of the duty's to one and a half times; none where they do not move with it. */
function overField(criterion: Criterion, { duty, grade, check }: Example, key: "load" | "rpm"): Chart[] {
  const own = check.duty.steps.length === 1 ? duty.steps[0]!.values[key] : undefined;
  const shown = shownOf(criterion, check);
  if (typeof own !== "number" || duty.bands.length > 0 || !shown) return [];
  const found = curve((at) => at, own / 5, 1.5 * own, 40).map(([at]) => {
    const checks = judge(grade, withField(duty, key, at, [0]));
    return [at, checks.find((one) => one.criterion === criterion)] as const;
  });
  const over = (of: Shown["of"]): Point[] => found.map(([at, one]) => [at, (one && of(one)) ?? NaN]);
  const [points, bounds] = [over(shown.of), over(shown.limitOf)];
  const all = [...points, ...bounds].map(([, y]) => y);
  const least = 0.01 * Math.max(...all);
  if (all.some((y) => !Number.isFinite(y)) || Math.max(spanOf(points), spanOf(bounds)) < least) return [];
  const kind = field(key).kind as Kind;
  const end = 1.6 * own;
  return [
    {
      id: "picture",
      title: `${shown.title} over the ${key === "rpm" ? "turns" : key}`,
      text: `The duty above with another ${key}, all else alike; at its own ${measureText(kind, own, "metric")} ${shown.told}.`,
      x: { label: `${key}, ${kinds[kind].metric}`, from: 0, to: end },
      y: shown.axisOf(all),
      series: [
        { label: criterion.heading, look: "first", points },
        spanOf(bounds) > 0 ? { label: "limit", look: "limit", points: bounds } : level("limit", bounds[0]![1], 0, end),
      ],
    },
  ];
}

const spanOf = (line: readonly Point[]): number => {
  const values = line.map(([, y]) => y);
  return Math.max(...values) - Math.min(...values);
};

/** The models that the criterion rests on, each with what was measured. */
function errors({ id }: Criterion): string[] {
  const own = modelErrors().filter(({ model }) => model.criteria.includes(id));
  const measured = own.map((one) => `- ${measuredLine(one, "../measured/")}`);
  const limits = "What the models assume and on which side they err: [Limits of the models](../limits.html).";
  return ["## Errors", ...(own.length > 0 ? [measured.join("\n")] : []), limits];
}
