import { Measure, UnitLabel } from "../../formula";
import type { Grade } from "../../grades/model/library";
import { kindOf, property } from "../../grades/model/properties";
import type { System } from "../../kinds";
import type { Work } from "../../teach/worksheet";
import { labelOf } from "../../teach/worksheet";
import { fromWorking } from "../../units/scale";
import { assess } from "../judging/assess";
import { moreRoom } from "../judging/criterion";
import type { Check } from "../judging/criterion";
import { originOf } from "../dutyChecks";
import { found } from "../judging/judge";
import type { NamedDuty } from "../model/namedDuty";
import { figureLines } from "./figures";
import { askedLines, cornerText } from "./inputs";
import { sourcesText, wordLine } from "./rows";
import type { Line, RecordWorkings } from "./rows";

/** One criterion from its rule to its word: worked at its worst corner, or by the words and figures that it reads. */
export function criterionLines(
  grade: Grade,
  duty: NamedDuty,
  check: Check,
  isVaried: boolean,
  record: RecordWorkings,
): Line[] {
  const { criterion, word } = check;
  const { system } = record;
  const corner = isVaried ? cornerText(duty, duty.corners.indexOf(check.duty), system) : "";
  const working = criterion.working?.(grade.values, check.duty);
  return [
    ["rule", "", criterion.text, "", "", sourcesText(criterion.source)],
    ...(corner === "" ? [] : [wordLine("worst corner", corner, "of the bands")]),
    ...(working
      ? [...wordLines(grade, duty, check, system), ...record.working(working, resultsOf(check, system))]
      : readLines(grade, duty, check, system)),
    wordLine("verdict", word, originOf(grade, check, system)),
  ];
}

/** The checks that find at other corners of the bands what they do not at their worst. */
export function variedIn({ values }: Grade, { corners }: NamedDuty, checks: readonly Check[]): ReadonlySet<Check> {
  const others = corners.length > 1 ? corners.map((corner) => assess(values, corner)) : [];
  const differs = (worst: Check) => (all: readonly Check[]) => {
    const other = found(all, worst.criterion.id);
    if (other?.word !== worst.word || other.value !== worst.value || other.limit !== worst.limit) return true;
    return moreRoom(other, worst) !== 0;
  };
  return new Set(checks.filter((check) => others.some(differs(check))));
}

/** What a criterion's working ends in. */
const resultsOf = ({ criterion: { heading, kind }, value, limit, use }: Check, system: System): Work["results"] => {
  const shown = (x: number | undefined) => (x === undefined ? undefined : fromWorking(kind, x, system));
  return [
    { symbol: "V", kind, text: labelOf(heading), answer: shown(value) },
    { symbol: "Z", kind, text: "Limit", answer: shown(limit) },
    { symbol: "u", kind: "ratio", text: "Use", answer: use },
  ];
};

/** The words of the grade that counted beside the figures of a working. */
const wordLines = (grade: Grade, duty: NamedDuty, { figures }: Check, system: System): Line[] =>
  figureLines(
    grade,
    duty,
    figures.filter((key) => kindOf(property(key)) === undefined),
    system,
  );

/** A criterion without a working: what the duty says to it, the grade's words and figures, value and limit. */
function readLines(grade: Grade, duty: NamedDuty, check: Check, system: System): Line[] {
  const { criterion, figures, value, limit, property: limiting } = check;
  const number = (what: string, x: number | undefined): Line[] =>
    x === undefined ? [] : [[what, "", "", new Measure(x, criterion.kind), new UnitLabel(criterion.kind), ""]];
  const read = figures.filter((key) => limit === undefined || key !== limiting);
  return [
    ...askedLines(criterion, duty, system),
    ...figureLines(grade, duty, [...new Set(read)], system),
    ...number("Value", value),
    ...number("Limit", limit),
  ];
}
