import { formula } from "../formula";
import { checkDiameters } from "./lame";
import { assemblyTemperature, runningState } from "./running";

/** 1/K; three times that of the softest rubbers (common practice, no source): beyond it a power of ten was lost. */
const mostExpansion = 1e-3;

/**
 * From the clearance after pressing: only what changes with heat and moisture is added. Negative is interference: the shaft binds. One temperature for
 * bush, housing and shaft: high (unsafe) where the bush runs hotter than its housing. Mean expansions: just above 20 °C
 * PTFE grows by a step beside them, to be put in with the swelling. A bush held at its ends loses up to its Poisson's ratio more, which is left out (unsafe). Nothing relaxes.
 */
export const RUNCLEARANCE = formula(
  {
    id: "RUNCLEARANCE",
    text: "Running clearance at temperature and moisture, from the clearance after pressing; zero or less binds the shaft. Too high, the unsafe side, where the bush runs hotter than its housing or is held at its ends",
    args: {
      clearance: { kind: "length", symbol: "C0", text: "Clearance after pressing, at the reference temperature" },
      bore: { kind: "length", symbol: "d", above: 0, text: "Bore of the bush" },
      outside: { kind: "length", symbol: "D", above: 0, text: "Outside diameter of the bush" },
      interference: {
        kind: "length",
        symbol: "δ0",
        text: "Interference of bush and housing at the reference temperature; negative is a loose bush",
      },
      closein: { kind: "ratio", symbol: "κ", from: 0, text: "Bore close-in per unit of interference, from CLOSEIN" },
      temperature: {
        kind: "temperature",
        symbol: "T",
        text: "Temperature of bush, housing and shaft",
        label: "Temperature in service",
      },
      bushexpansion: { kind: "expansion", symbol: "αb", to: mostExpansion, text: "Thermal expansion of the bush" },
      housingexpansion: {
        kind: "expansion",
        symbol: "αh",
        to: mostExpansion,
        text: "Thermal expansion of the housing",
      },
      shaftexpansion: { kind: "expansion", symbol: "αs", to: mostExpansion, text: "Thermal expansion of the shaft" },
      swelling: {
        kind: "percent",
        symbol: "s",
        from: -0.1,
        to: 0.1,
        default: 0,
        optional: true,
        text: 'Linear swelling of the bush by moisture since pressing: 0.005 or "0.5 %"',
      },
      reference: {
        kind: "temperature",
        symbol: "T0",
        default: assemblyTemperature,
        optional: true,
        text: "Temperature at which clearance and interference hold (ISO 1)",
      },
    },
    units: true,
    result: { kind: "length", symbol: "C", label: "Running clearance" },
    requires: ["d < D"],
    working: [
      "ε = αb * (T - T0) + s",
      "δ = δ0 + D * (ε - αh * (T - T0))",
      "Δd = d * ε - κ * (max(0, δ) - max(0, δ0))",
      "C = C0 + Δd - (d - C0) * αs * (T - T0)",
    ],
    between: {
      ε: { unit: "", text: "Free strain of the bush" },
      δ: { unit: "mm", text: "Interference at temperature" },
      Δd: { unit: "mm", text: "Change of the bore" },
    },
    source: [
      { key: "shigley", at: "press and shrink fits" },
      { key: "own", at: "superposition of free strain and press fit" },
    ],
    example: [0.04, 20, 23, 0.05, 1.036, 80, 0.000085, 0.0000236, 0.0000117, 0.005],
    see: ["CLOSEIN", "FITTABLE"],
  },
  (given) => {
    checkDiameters(given.bore, given.outside, undefined, "housing");
    const rise = given.temperature - given.reference;
    return runningState({
      clearance: given.clearance,
      bore: given.bore,
      shaft: given.bore - given.clearance,
      outside: given.outside,
      interference: given.interference,
      closeIn: given.closein,
      bushStrain: given.bushexpansion * rise + given.swelling,
      housingStrain: given.housingexpansion * rise,
      shaftStrain: given.shaftexpansion * rise,
    }).clearance;
  },
);
