import { formula } from "../formula";
import { bushArgs, pathArgs, pathFactors, pathLines, pathUnits, shaftConductance, wallConductance } from "./paths";

/** PV = ΔT·G/(μ·d·L): the inverse of RUNTEMP, by the same model and with the same limits of validity. */
export const heatPv = formula(
  {
    id: "HEATPV",
    family: "Heat and friction",
    text: "PV whose friction heat the bush wall and the shaft carry away at a given rise above ambient; the model and its limits are those of RUNTEMP",
    args: {
      ...bushArgs,
      rise: { kind: "rise", symbol: "ΔT", above: 0, text: "Rise allowed above ambient" },
      friction: { kind: "ratio", symbol: "μ", above: 0, text: "Coefficient of friction" },
      ...pathArgs,
    },
    units: true,
    result: { kind: "pv", symbol: "PV" },
    working: [...pathLines, "PV = ΔT * G / (μ * d * L)"],
    factors: pathFactors,
    between: pathUnits,
    source: [
      { key: "incropera", at: "radial conduction in a cylinder; extended surfaces: the infinitely long fin" },
      { key: "practice", at: "half of the bore in contact; film coefficient of still air" },
    ],
    example: [20, 15, 1.5, 40, 0.2, 0.25, 45, 1, 10],
    see: ["RUNTEMP", "PVVALUE"],
  },
  ({ rise, friction, ...paths }) =>
    (rise * (wallConductance(paths) + shaftConductance(paths))) / (friction * paths.bore * paths.length),
);
