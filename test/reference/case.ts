import type { FamilyTitle } from "../../src/core";

/**
 * What a check of the main job holds it against, outside the project.
 * "printed example": a value that a source prints, read there. "measurement": what somebody measured. "other method": another method or library
 * for the same assumptions. "definition": what a unit or a word means. "memory": a printed value that was recalled, so it counts for less.
 */
export type Kind = "printed example" | "measurement" | "other method" | "definition" | "memory";

export interface ReferenceCase {
  readonly family: FamilyTitle;
  /** What is computed, with its numbers. */
  readonly what: string;
  /** Title, edition, table or equation; or the other method. */
  readonly source: string;
  readonly kind: Exclude<Kind, "measurement">;
  /** The source prints a wrong value: what it should be, and why. */
  readonly misprint?: { readonly should: string; readonly why: string };
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

/** Computes both sides and compares them; a word must be the same word. A misprint holds where its recomputation does and the print does not. */
export function outcomeOf(one: ReferenceCase): Outcome {
  if (!one.misprint) return compared(one);
  const printed = compared(one);
  return { ...printed, holds: !printed.holds && compared({ ...one, expected: one.misprint.should }).holds };
}

function compared({ expected, within, compute }: ReferenceCase): Outcome {
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
