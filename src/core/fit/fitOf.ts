import { formula, Measure } from "../formula";
import { deviationsOf, limitsIn } from "./zones/iso286";
import { readFit } from "./zones/zone";
import type { Fit } from "./zones/zone";

interface Given {
  readonly size: number;
  readonly fit: Fit;
}
const of = { zone: "fit", size: "size" };
const deviations = ({ size, fit }: Given) => ({
  hole: deviationsOf(fit.hole, size, of),
  shaft: deviationsOf(fit.shaft, size, of),
});

/** Clearance is hole minus shaft; its negative is interference (ISO 286-1). */
export const FITOF = formula(
  {
    id: "FITOF",
    text: "A fit by its ISO 286 code: least and greatest clearance (negative is interference) and its kind",
    args: {
      size: { kind: "length", symbol: "D", above: 0, to: 500, text: "Nominal size of hole and shaft" },
      fit: { kind: "notation", text: "Hole and shaft class", what: 'ISO 286 code "H7/f7", hole first', read: readFit },
    },
    units: true,
    result: {
      shape: "row",
      columns: [
        { name: "least clearance", kind: "length", symbol: "C_min" },
        { name: "greatest clearance", kind: "length", symbol: "C_max" },
        { name: "kind of fit", kind: "text" },
      ],
      text: 'Least and greatest clearance, "clearance", "transition" or "interference"',
    },
    lookups: (values) => {
      const { hole, shaft } = deviations(values);
      return {
        EI: { value: new Measure(hole.lower, "length"), text: "Lower limit deviation of the hole" },
        ES: { value: new Measure(hole.upper, "length"), text: "Upper limit deviation of the hole" },
        ei: { value: new Measure(shaft.lower, "length"), text: "Lower limit deviation of the shaft" },
        es: { value: new Measure(shaft.upper, "length"), text: "Upper limit deviation of the shaft" },
      };
    },
    working: ["C_min = EI - es", "C_max = ES - ei"],
    source: { key: "iso286", at: "Tables 1 to 5; terms: clearance, transition and interference fit" },
    example: [25, "H7/f7"],
    see: ["DEVIATION", "CLEARANCE"],
  },
  (values) => {
    for (const zone of [values.fit.hole, values.fit.shaft]) limitsIn(zone, values.size, of);
    const { hole, shaft } = deviations(values);
    const least = hole.lower - shaft.upper;
    const greatest = hole.upper - shaft.lower;
    return [least, greatest, kindOfFit(least, greatest)];
  },
);

/** ISO 286-1: a clearance fit may have least clearance zero, an interference fit least interference zero. */
export const kindOfFit = (least: number, greatest: number): "clearance" | "transition" | "interference" =>
  least >= 0 ? "clearance" : greatest <= 0 ? "interference" : "transition";
