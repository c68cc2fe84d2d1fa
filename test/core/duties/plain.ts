import type { Formula } from "../../../src/core/formula";
import type { System } from "../../../src/core/kinds";
import { call } from "../../support";

/**
 * A grade whose limits can be worked by hand: PV 0.1 MPa·m/s up to 23 °C, falling straight to 0 at 123 °C; neither curve.
 * Invented for these tests.
 */
export const plainGrades = [
  [
    ...["grade", "static pressure limit", "running pressure limit", "speed limit turning", "PV limit"],
    ...[
      "lowest temperature",
      "highest temperature",
      "wear rate high",
      "wear rate low",
      "wear rate from",
      "shock",
      "shafts suited",
    ],
  ],
  ["Plain", 40, 20, 1, 0.1, -40, 123, 1e-6, 1e-7, "bush", "fair", "hardened steel"],
  ["Bare", null, 20, 1, 0.1, -40, 123, null, null, null, null, null],
];

/** A sleeve of length over bore 1: 0.75 MPa, 0.0628 m/s, PV 0.0471 MPa·m/s at 23 °C. */
export const sleeve = { load: 300, bore: 20, length: 20, rpm: 60, temperature: 23 } as const;
export const speed = (Math.PI * 20 * 60) / 60_000;

export type Fields = Readonly<Record<string, number | string>>;
/** A card of a duty, temperatures in °C. */
export const card = (fields: Fields) => Object.entries(fields);

/** Rows of an answer below its headings, by their first cell. */
export function rows(f: Formula, given: readonly unknown[], units?: System): ReadonlyMap<unknown, readonly unknown[]> {
  const [, ...lines] = call(f, given, units);
  return new Map(lines.map(([first, ...rest]) => [first, rest]));
}

export const near = (found: unknown, expected: number, within = 3e-9): void => {
  const isNear = typeof found === "number" && Math.abs(found - expected) <= within * Math.abs(expected);
  if (!isNear) throw new Error(`${String(found)} is not ${expected}`);
};
