import type { Family } from "../../src/core/formula";

/**
 * A check of the main job against something outside the project.
 * "published": a value as a source prints it. "independent": another method or another library.
 * "common practice": the trade does it so and no source is claimed.
 */
export type Kind = "published" | "independent" | "common practice";

export interface ReferenceCase {
  readonly family: Family;
  /** What is computed, with its numbers. */
  readonly what: string;
  /** Title, edition, table or equation; or the other method. */
  readonly source: string;
  readonly kind: Kind;
  /** The printed value was recalled, not read. */
  readonly memory?: true;
  readonly unit: string;
  /** As printed, or the other method's answer. */
  readonly expected: string | (() => number);
  /** Largest relative difference; without it half of the last printed digit. */
  readonly within?: number;
  readonly compute: () => number | string;
}

export interface Outcome {
  readonly expected: string;
  readonly computed: string;
  readonly difference: string;
  readonly holds: boolean;
}

/** Computes both sides and compares them; a word must be the same word. */
export function outcomeOf({ expected, within, compute }: ReferenceCase): Outcome {
  const computed = compute();
  if (typeof computed === "string")
    return { expected: String(expected), computed, difference: "", holds: computed === expected };
  const value = typeof expected === "string" ? numberIn(expected) : expected();
  const allowed = within === undefined ? halfOfLastDigit(String(expected)) : within * Math.abs(value);
  const difference = Math.abs(computed - value);
  return {
    expected: typeof expected === "string" ? expected : digits(value, 7),
    computed: digits(computed, 7),
    difference: difference <= 1e-12 * Math.abs(value) ? "0" : digits(difference, 1),
    holds: difference <= allowed * (1 + 1e-9),
  };
}

const digits = (x: number, count: number): string => String(Number(x.toPrecision(count)));

const numberIn = (printed: string): number => Number(printed.replace("−", "-").replaceAll(" ", ""));

/** 0.05 for "8.3", 0.5 for "13 064", 5e-13 for "2.0144e-8". */
export function halfOfLastDigit(printed: string): number {
  const [mantissa, exponent = "0"] = printed.replaceAll(" ", "").split("e") as [string, string?];
  const decimals = mantissa.split(".")[1]?.length ?? 0;
  return 0.5 * 10 ** (Number(exponent) - decimals);
}
