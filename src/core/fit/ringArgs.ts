import type { Ring } from "./lame";

/** The arguments that describe a bush in its housing, shared by CLOSEIN and PRESSFIT. */
export const diameterArgs = {
  bore: { kind: "length", symbol: "d", above: 0, text: "Bore of the bush" },
  outside: { kind: "length", symbol: "D", above: 0, text: "Outside diameter of the bush" },
  housing: {
    kind: "length",
    symbol: "Dh",
    above: 0,
    text: "Outside diameter of the housing; a very large one (1E9) for an unbounded housing",
  },
} as const;

/** Diameters grow outwards. */
export const diameterConditions = ["d < D", "D < Dh"] as const;

export const elasticArgs = {
  bushmodulus: { kind: "pressure", symbol: "E", above: 0, text: "Compressive modulus of the bush" },
  bushpoisson: { kind: "ratio", symbol: "ν", from: 0, to: 0.5, text: "Poisson's ratio of the bush" },
  housingmodulus: { kind: "pressure", symbol: "Eh", above: 0, text: "Modulus of the housing" },
  housingpoisson: { kind: "ratio", symbol: "νh", from: 0, to: 0.5, text: "Poisson's ratio of the housing" },
} as const;

/** Compliance of housing and bush at their joint, the shared head of the workings; of an unbounded housing, and with other symbols for modulus and Poisson's ratio, where asked. */
export const complianceLinesOf = (isBounded = true, E = "E", ν = "ν"): readonly string[] => [
  isBounded ? "ch = ((Dh^2 + D^2) / (Dh^2 - D^2) + νh) / Eh" : "ch = (1 + νh) / Eh",
  `cb = ((D^2 + d^2) / (D^2 - d^2) - ${ν}) / ${E}`,
];
export const complianceLines = complianceLinesOf();
export const complianceUnits = {
  ch: { unit: "1/MPa", text: "Compliance of the housing" },
  cb: { unit: "1/MPa", text: "Compliance of the bush" },
} as const;

interface Given {
  readonly bore: number;
  readonly outside: number;
  readonly housing: number;
  readonly bushmodulus: number;
  readonly bushpoisson: number;
  readonly housingmodulus: number;
  readonly housingpoisson: number;
}
export const ringOf = (given: Given): Ring => ({
  bore: given.bore,
  outside: given.outside,
  housing: given.housing,
  bushModulus: given.bushmodulus,
  bushPoisson: given.bushpoisson,
  housingModulus: given.housingmodulus,
  housingPoisson: given.housingpoisson,
});
