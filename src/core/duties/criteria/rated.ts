import type { FieldKey } from "../model/fields";
import type { PropertyKey, Rating, Values } from "../../grades/model/properties";
import { criterion, lacking } from "../judging/criterion";
import type { Criterion, Word } from "../judging/criterion";
import type { Duty } from "../model/duty";

type Ratings = { readonly [R in Rating]: Word };
type RatedKey = { [K in keyof Values]-?: Values[K] extends Rating | undefined ? K : never }[keyof Values] & PropertyKey;

/** Good passes, fair is care, poor fails. */
export const strict: Ratings = { good: "fits", fair: "care", poor: "fails" };
/** A step milder. */
export const mild: Ratings = { good: "fits", fair: "fits", poor: "care" };
/** PV limits rely on air, so that even a good rating leaves care. */
export const atBestCare: Ratings = { good: "care", fair: "care", poor: "fails" };

interface Rated {
  readonly id: string;
  readonly property: RatedKey;
  readonly heading: string;
  readonly text: string;
  readonly asked: string;
  readonly askedBy: readonly FieldKey[];
  readonly fields: readonly FieldKey[];
  asks(duty: Duty): boolean;
  words(duty: Duty): Ratings;
  /** What is said behind the rating. */
  readonly because?: string;
}

/** A criterion that reads a rating of the grade. */
export function rated({ property, words, because = "", ...spec }: Rated): Criterion {
  const figures = [property];
  return criterion(
    { ...spec, kind: "ratio", properties: figures, source: { key: "practice", at: "rating of the grade" } },
    (values, duty) => {
      const rating = values[property];
      if (rating === undefined) return lacking(property);
      const word = words(duty)[rating];
      return {
        word,
        figures,
        property,
        say: word === "fits" ? undefined : () => `${spec.heading} ${rating}${because}`,
      };
    },
  );
}
