import { judge, verdictOf, words } from "../../src/core/duties";
import type { NamedDuty } from "../../src/core/duties";
import { standardLibrary } from "../../src/core/grades/model";
import type { Grade, Values } from "../../src/core/grades/model";
import { duties } from "../data/greenhouse";

/** Missing knowledge never improves a verdict: each figure of each grade of the library, dropped by itself, on each duty of the greenhouse. */

/** A curve that is dropped leaves its single figure, which holds for all temperatures. */
const curves: ReadonlySet<string> = new Set(["pressureCurve", "pvCurve"]);
const care = words.indexOf("care");
const worth = (grade: Grade, duty: NamedDuty): number => words.indexOf(verdictOf(judge(grade, duty)).word);
const without = (grade: Grade, key: keyof Values): Grade => {
  const { [key]: _, ...values } = grade.values;
  return { ...grade, values };
};

test.each(standardLibrary().grades.map((grade) => [grade.name, grade] as const))(
  "%s is judged no better without any one of its figures",
  (_, grade) => {
    const keys = (Object.keys(grade.values) as (keyof Values)[]).filter((key) => !curves.has(key));
    const better = duties.flatMap((duty) => {
      const before = worth(grade, duty);
      return keys.flatMap((key) => {
        const after = worth(without(grade, key), duty);
        return after > before && after >= care ? [`${duty.name}, ${key}: ${words[before]} became ${words[after]}`] : [];
      });
    });
    expect(better).toEqual([]);
  },
);
