import { formula } from "../formula";
import { checkDiameters, closeInOf } from "./lame";
import { complianceLines, complianceUnits, diameterArgs, diameterConditions, elasticArgs, ringOf } from "./ringArgs";

/** κ: by how much the bore narrows per unit of diametral interference. Only ratios count, so any one unit of length and of modulus will do. */
export const CLOSEIN = formula(
  {
    id: "CLOSEIN",
    text: "Bore close-in per unit of diametral interference of a bush pressed into a housing; lengths in one unit, moduli in one unit",
    args: { ...diameterArgs, ...elasticArgs },
    units: false,
    result: { kind: "ratio", symbol: "κ", label: "Bore close-in per interference" },
    requires: diameterConditions,
    working: [...complianceLines, "κ = 2 * D * d / (E * (D^2 - d^2)) / (ch + cb)"],
    between: complianceUnits,
    source: { key: "shigley", at: "press and shrink fits" },
    example: [20, 23, 40, 2500, 0.4, 69000, 0.33],
    see: ["PRESSFIT", "RUNCLEARANCE"],
  },
  (given) => {
    checkDiameters(given.bore, given.outside, given.housing, "housing");
    return closeInOf(ringOf(given));
  },
);
