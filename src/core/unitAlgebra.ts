import { create, createUnitClass, factory } from "mathjs";
import type { Unit } from "mathjs";

/** The size of °F is written as a fraction; as a number it takes part in the arithmetic below. */
class Quotient {
  constructor(
    private readonly over: number,
    private readonly under: number,
  ) {}
  valueOf(): number {
    return this.over / this.under;
  }
}

/**
 * mathjs's unit algebra over plain numbers: its Unit class is given number arithmetic in place of the types that a
 * spreadsheet cell never holds (big numbers, fractions, complex numbers, matrices), which would be most of its weight.
 */
const arithmetic = {
  addScalar: (a: number, b: number) => a + b,
  subtractScalar: (a: number, b: number) => a - b,
  multiplyScalar: (a: number, b: number) => a * b,
  divideScalar: (a: number, b: number) => a / b,
  pow: (a: number, b: number) => a ** b,
  equal: (a: number, b: number) => a === b,
  isNumeric: (value: unknown) => typeof value === "number",
  abs: Math.abs,
  fix: Math.trunc,
  round: Math.round,
  format: String,
  number: Number,
  Complex: class {},
  BigNumber: class {},
  Fraction: Quotient,
};
const parts = Object.entries(arithmetic).map(([name, part]) => [name, factory(name, [], () => part)] as const);
const math = create({ ...Object.fromEntries(parts), createUnitClass });
const units = (math as unknown as { Unit: UnitClass }).Unit;

interface UnitClass {
  new (value: number, name?: string): Unit;
  parse(text: string): Unit;
  createUnit(definitions: Record<string, string>, options: { override: boolean }): void;
}

// mathjs's own psi and kip are rounded; these are exact (SI Brochure, 9th ed.; NIST SP 811, 2008, app. B)
units.createUnit(
  {
    psi: "6894.757293168361 Pa",
    ksi: "6894757.293168361 Pa",
    kip: "4448.2216152605 N",
    fpm: "0.00508 m/s",
    rpm: "1 min^-1",
    thou: "0.0254 mm",
    d: "24 h",
  },
  { override: true },
);

/** One of the unit, or `undefined` where the text is none. */
export function parseUnit(unit: string): Unit | undefined {
  try {
    return units.parse(`1 ${unit}`);
  } catch {
    return undefined;
  }
}

/** How many of the one unit make one of the other; both are one of their unit. */
export const ratioOf = (from: Unit, to: Unit): number => from.toSI().toJSON().value / to.toSI().toJSON().value;
