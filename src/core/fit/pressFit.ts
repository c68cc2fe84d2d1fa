import { formula } from "../formula";
import { checkDiameters, checkStrain, closeInOf, fitPressureOf, hoopStressOf } from "./lame";
import { complianceLines, complianceUnits, diameterArgs, diameterConditions, elasticArgs, ringOf } from "./ringArgs";

/**
 * p = δ/(D·(ch + cb)), hoop stress at the bore σ = −2·p·D²/(D² − d²), change of the bore −κ·δ.
 * Stress relaxation is not counted: a polymer bush loses part of p with time and heat, and p is that of the fresh joint (high).
 * Elastic and for small strains: its error grows to about the strain δ/D itself.
 */
export const PRESSFIT = formula(
  {
    id: "PRESSFIT",
    text: "Press fit of a bush: fit pressure, hoop stress at the bore (negative is compression) and change of the bore (negative is close-in), fresh, before stress relaxation, and elastic: high where the stress nears the compressive strength",
    args: {
      ...diameterArgs,
      interference: {
        kind: "length",
        symbol: "δ",
        from: 0,
        text: "Diametral interference; at most a tenth of outside",
      },
      ...elasticArgs,
    },
    units: true,
    result: {
      shape: "row",
      columns: [
        { name: "fit pressure", kind: "pressure", symbol: "p" },
        { name: "hoop stress at the bore", kind: "pressure", symbol: "σ" },
        { name: "bore change", kind: "length", symbol: "Δd" },
      ],
      text: "Fit pressure, hoop stress at the bore, bore change",
    },
    requires: [...diameterConditions, "δ <= D / 10"],
    working: [
      ...complianceLines,
      "p = δ / (D * (ch + cb))",
      "σ = -2 * p * D^2 / (D^2 - d^2)",
      "Δd = -2 * p * D^2 * d / (E * (D^2 - d^2))",
    ],
    between: complianceUnits,
    source: { key: "shigley", at: "press and shrink fits" },
    example: [20, 23, 40, 0.05, 2500, 0.4, 69000, 0.33],
    see: ["CLOSEIN", "GRIPLEFT", "PRESSIN", "FITTABLE"],
  },
  (given) => {
    const { bore, outside, interference } = given;
    checkDiameters(bore, outside, given.housing, "housing");
    checkStrain(interference, outside);
    const ring = ringOf(given);
    const pressure = fitPressureOf(ring, interference);
    return [pressure, 0 - hoopStressOf(ring, pressure), 0 - closeInOf(ring) * interference];
  },
);
