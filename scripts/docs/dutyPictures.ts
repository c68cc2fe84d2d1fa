import { functions } from "../../src/core";
import { chooseDuty, dutiesArg } from "../../src/core/duties";
import type { NamedDuty } from "../../src/core/duties";
import { formulaNamed } from "../../src/core/families";
import { Measure } from "../../src/core/formula";
import type { Answer, Cell } from "../../src/core/formula";
import { findGrade, libraryOf } from "../../src/core/grades/model";
import type { Grade } from "../../src/core/grades/model";
import { curve, level } from "./chart";
import type { Chart, Point } from "./chart";
import { axisOf } from "./rows";
import type { Rows } from "./rows";

interface Example {
  /** The cells of the duty's card. */
  readonly duties: Cell[][];
  readonly duty: NamedDuty;
  readonly grade: Grade;
}

/** The duty and the grade of the example on the page of a function. */
export function exampleOf(id: "DUTYBAND" | "DUTYROOM" | "DUTYSWEEP" | "FITTABLE"): Example {
  const { example } = formulaNamed(id)!.spec;
  const duties = example[0] as Cell[][];
  const duty = chooseDuty(dutiesArg.read(duties, "metric", "duties"), undefined);
  return { duties, duty, grade: findGrade(example.at(-1) as string, libraryOf("demo")) };
}

/** The use that DUTYSWEEP answers for each value of a field. */
function usesOf({ duties, grade }: Example, heading: string, values: readonly Cell[]): number[] {
  const rows = functions.DUTYSWEEP({ duties, heading, values: values.map((value) => [value]), grade: grade.name });
  return rows.map(([, , , use]) => (typeof use === "number" ? use : NaN));
}

/** The use that it answers over a number, which stands in the cell as `cellOf` writes it. */
function sweep(example: Example, heading: string, from: number, to: number, cellOf: (at: number) => Cell = Number) {
  const at = curve((x) => x, from, to, 40).map(([x]) => x);
  const uses = usesOf(example, heading, at.map(cellOf));
  return at.map((x, i): Point => [x, uses[i]!]);
}

/** The pictures of one duty with its numbers elsewhere: the use of its limits. */
export const dutyPictures: Readonly<Record<string, () => Chart | Rows>> = {
  DUTYROOM: () => {
    const example = exampleOf("DUTYROOM");
    const { low, high } = example.duty.corners[0]!.temperature;
    const { duties, grade } = example;
    const room = functions.DUTYROOM({ duties, grade: grade.name });
    const turn = measured(room.find(([field]) => field === "temperature, warmer end")![6]);
    const [from, to] = [20, 75];
    return {
      id: "picture",
      title: "Use of the limits over the warmer end of the temperature",
      text: `The example above, which is meant for ${high} °C: the warmer, the less PV is left to the grade. The room ends at ${turn.toFixed(1)} °C, where the use comes to 1.`,
      x: { label: "warmer end of the temperature, °C", from, to },
      y: { label: "use", from: 0, to: 2 },
      series: [
        {
          label: "the duty with another temperature",
          look: "first",
          points: sweep(example, "temperature", from, to, (at) => `${low} to ${at}`),
        },
        {
          label: "the greatest that DUTYROOM answers",
          look: "third",
          marked: "joined",
          points: [
            [turn, 0],
            [turn, 1],
          ],
        },
        level("limit", 1, from, to),
      ],
    };
  },
  DUTYSWEEP: () => {
    const example = exampleOf("DUTYSWEEP");
    const swept = (formulaNamed("DUTYSWEEP")!.spec.example[2] as number[][]).flat();
    const uses = usesOf(example, "rpm", swept);
    const most = 300;
    return {
      id: "picture",
      title: "Use of the limits over the turns a minute",
      text: "The example above: its three values stand as marks on the line that finer steps draw. Where the line crosses 1 the verdict turns; DUTYROOM finds the place.",
      x: { label: "rpm, 1/min", from: 0, to: most },
      y: { label: "use", from: 0, to: 1.4 },
      series: [
        { label: "finer steps", look: "first", points: sweep(example, "rpm", 5, most) },
        {
          label: "values of the example",
          look: "third",
          marked: "alone",
          points: swept.map((at, i) => [at, uses[i]!]),
        },
        level("limit", 1, 0, most),
      ],
    };
  },
  DUTYBAND: () => {
    const { duties, grade } = exampleOf("DUTYBAND");
    const rows = functions.DUTYBAND({ duties, grade: grade.name }).flatMap(([name, ...uses]) => {
      const [best, likely, worst] = uses;
      if (typeof best !== "number" || typeof likely !== "number" || typeof worst !== "number") return [];
      return [{ name: String(name), spread: [best, worst] as const, mark: likely }];
    });
    return {
      id: "picture",
      title: "What bands make of the use",
      text: "The example above: each criterion from its best use to its worst, where the bands meet at their harder ends. Criteria without a ratio all over the bands are left out.",
      x: axisOf(
        "use",
        rows.flatMap(({ spread }) => spread),
      ),
      rows,
      legend: { spread: "from best to worst", mark: "with every number at its likely value" },
      limit: { label: "limit", at: 1 },
    };
  },
};

function measured(answer: Answer | undefined): number {
  if (answer instanceof Measure) return answer.value;
  throw new Error(`the picture's duty has no room: ${String(answer)}`);
}
