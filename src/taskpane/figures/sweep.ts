import { DUTYSWEEP, fieldHeading, words } from "../../core/duties";
import type { FieldKey, Word } from "../../core/duties";
import { present } from "../../core/present";
import { spread } from "./told";
import type { Subject, Told, Untold } from "./told";
import { sweepPiece } from "./pieces";
import { answerText, tableOf } from "./table";

export interface SweepFigure extends Told {
  readonly heading: string;
  readonly values: readonly number[];
  /** Nothing where a criterion has no use. */
  readonly uses: readonly (number | undefined)[];
  readonly bands: readonly { readonly from: number; readonly to: number; readonly word: Word }[];
}

const count = 13;
/** Shares of the present value between which a field is swept unless told. */
export const usual = [0.5, 1.5] as const;

/** One field at each of a range of values: use and verdict. */
export function sweepFigure(
  { duty, one, library, system }: Subject,
  key: FieldKey,
  from: number,
  to: number,
): SweepFigure | Untold {
  if (!(from < to)) return { why: "Give the lower end first." };
  const heading = fieldHeading(key, system);
  const values = spread(from, to, count);
  const lines = DUTYSWEEP.calc(
    { duties: tableOf(duty), heading, values, duty: undefined, grade: one.grade.name, grades: library },
    system,
  );
  const course = lines.map((line, i) => ({ value: present(values[i]), verdict: answerText(line[5], system), line }));
  // where the verdict turns between two values, the worse counts from the better one on
  const bands = course.slice(1).flatMap((above, i) => {
    const below = present(course[i]);
    const ends = [below, above].map(wordOf);
    const word = ends.includes(undefined) ? undefined : words.find((worst) => ends.includes(worst));
    return word ? [{ from: below.value, to: above.value, word }] : [];
  });
  return {
    heading,
    values,
    uses: lines.map((line) => (typeof line[3] === "number" ? line[3] : undefined)),
    bands,
    summary: `${one.grade.name}, ${heading} from ${values[0]} to ${values.at(-1)}: ${courseText(course)}.`,
    numbers: {
      headings: [heading, "use", "governing", "verdict"],
      rows: course.map(({ value, verdict, line }) => [
        String(value),
        answerText(line[3], system, true),
        answerText(line[4], system),
        verdict,
      ]),
    },
    piece: sweepPiece(heading, values, one.grade.name),
  };
}

/** The verdict at a value of the field. */
interface Point {
  readonly value: number;
  readonly verdict: string;
}
const wordOf = ({ verdict }: Point): Word | undefined => words.find((word) => verdict.startsWith(word));

/** "fits up to 12, then care up to 15, then fails" */
function courseText(course: readonly Point[]): string {
  const parts: { word: string; to: number }[] = [];
  for (const point of course) {
    const word = wordOf(point) ?? "no duty";
    const last = parts.at(-1);
    if (last?.word === word) last.to = point.value;
    else parts.push({ word, to: point.value });
  }
  return parts.map(({ word, to }, i) => (i === parts.length - 1 ? word : `${word} up to ${to}`)).join(", then ");
}

/** The ends that a sweep of a field begins with, around its present value in the sheet's units. */
export const usualEnds = (value: number): [string, string] =>
  usual.map((share) => String(Number((value * share).toPrecision(3)))) as [string, string];
