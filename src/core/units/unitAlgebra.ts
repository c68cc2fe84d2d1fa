import { createUnitClass } from "mathjs";

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
const units = createUnitClass({ ...arithmetic, on: undefined, config: { number: "number" } }) as UnitClass;

interface Definition {
  readonly definition: string;
  readonly aliases?: string[];
  readonly prefixes?: "short" | "long";
}
/** What is called here; functions.js has no other methods of mathjs' Unit (scripts/build/lean/withoutUncalled.mjs names them). */
export interface Unit {
  equalBase(other: Unit): boolean;
  /** In the coherent unit of the SI. */
  readonly value: number;
}
interface UnitClass {
  parse(text: string): Unit;
  createUnit(definitions: Record<string, string | Definition>, options: { override: boolean }): void;
  deleteUnit(name: string): void;
}

/**
 * Units that mathjs rounds or lacks, by their exact definitions: SI Brochure, 9th ed. (2019), for eV; NIST SP 811 (2008),
 * app. B (memory), for the others: torr = 101325/760 Pa, mmHg = 13.5951 × 9.80665 Pa, acre = 43 560 ft²,
 * hp = 550 ft·lbf/s.
 */
units.createUnit(
  {
    psi: "6894.757293168361 Pa",
    ksi: "6894757.293168361 Pa",
    kip: { definition: "4448.2216152605 N", aliases: ["kips"] },
    fpm: "0.00508 m/s",
    rpm: "1 min^-1",
    thou: "0.0254 mm",
    uin: "0.0254 um",
    d: "24 h",
    torr: { definition: "133.3223684210526 Pa", prefixes: "short" },
    mmHg: { definition: "133.322387415 Pa", aliases: ["mmhg"] },
    eV: { definition: "1.602176634e-19 J", prefixes: "short" },
    electronvolt: { definition: "1.602176634e-19 J", aliases: ["electronvolts"], prefixes: "long" },
    acre: { definition: "4046.8564224 m^2", aliases: ["acres"] },
    hp: "745.6998715822702 W",
  },
  { override: true },
);
/** Rounded in mathjs, and nobody's unit here: not accepted. */
for (const name of ["rd", "sqrd", "sqch", "stick", "sticks"]) units.deleteUnit(name);

/** One of the unit, or `undefined` where the text is none. */
export function parseUnit(unit: string): Unit | undefined {
  try {
    return units.parse(`1 ${unit}`);
  } catch {
    return undefined;
  }
}

/** How many of the one unit make one of the other; both are one of their unit. */
export const ratioOf = (from: Unit, to: Unit): number => from.value / to.value;
