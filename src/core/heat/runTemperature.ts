import { formula } from "../formula";
import { bushArgs, pathArgs, pathFactors, pathLines, pathUnits, shaftConductance, wallConductance } from "./paths";

/**
 * T = Ta + μ·F·v / G, with G the wall (radial conduction, half of the bore in contact) and the shaft's ends (fins) in parallel.
 * A preliminary estimate: measure the running temperature where it decides.
 */
export const runTemperature = formula(
  {
    id: "RUNTEMP",
    family: "Heat and friction",
    text: "Running temperature by friction heat, a preliminary estimate: steady state, housing at ambient, no air film between bush and housing, half of the bore in contact",
    args: {
      load: { kind: "force", symbol: "F", from: 0, text: "Radial load" },
      ...bushArgs,
      speed: { kind: "speed", symbol: "v", from: 0, text: "Mean sliding speed" },
      friction: { kind: "ratio", symbol: "μ", from: 0, text: "Coefficient of friction" },
      ambient: { kind: "temperature", symbol: "Ta", text: "Temperature of the air and the housing" },
      ...pathArgs,
    },
    units: true,
    result: { kind: "temperature", symbol: "T" },
    working: ["Q = μ * F * v", ...pathLines, "T = Ta + Q / G"],
    factors: pathFactors,
    between: { Q: { unit: "W", text: "Friction heat" }, ...pathUnits },
    source: [
      { key: "incropera", at: "radial conduction in a cylinder; extended surfaces: the infinitely long fin" },
      { key: "practice", at: "half of the bore in contact; film coefficient of still air" },
    ],
    example: [800, 20, 15, 1.5, 0.1257, 0.2, 25, 0.25, 45, 1, 10],
    see: ["HEATPV", "HEAT"],
  },
  ({ load, speed, friction, ambient, ...paths }) =>
    ambient + (friction * load * speed) / (wallConductance(paths) + shaftConductance(paths)),
);
