import { formula } from "../formula";
import { frictionArg, mostFriction } from "./friction";
import { bushArgs, conductances, pathArgs, pathBetween, pathConditions, pathLines, pathSources } from "./paths";

/**
 * PV = ΔT·G/(μ·d·L): the inverse of RUNTEMP by the same paths, so within 0.5 % for the mean of the bore where the housing's path is known, and up to
 * 5 % high (unsafe) for its hottest point. Insulated tips err low (safe); the greatest PV, housing at ambient, is often far too high.
 */
export const HEATPV = formula(
  {
    id: "HEATPV",
    text: "PV whose friction heat the paths carry away at a given rise above ambient, least and greatest: equal when the housing's path is given, else a housing that takes no heat, the safe side, and one at ambient, often far too much; within 0.5 % for the mean of the bore, up to 5 % high for its hottest point",
    args: {
      ...bushArgs,
      rise: { kind: "rise", symbol: "ΔT", above: 0, text: "Rise allowed above ambient" },
      friction: { kind: "ratio", symbol: "μ", above: 0, to: mostFriction, text: frictionArg.text },
      ...pathArgs,
    },
    units: true,
    result: {
      shape: "row",
      columns: [
        { name: "least PV", kind: "pv", symbol: "PV_low" },
        { name: "greatest PV", kind: "pv", symbol: "PV_high" },
      ],
      text: "Least and greatest PV; the least is 0 where no path is left",
    },
    requires: pathConditions,
    working: (values) => [
      ...pathLines(values),
      "PV_low = ΔT * G_low / (μ * d * L)",
      "PV_high = ΔT * G_high / (μ * d * L)",
    ],
    between: pathBetween,
    source: pathSources,
    example: [20, 15, 1.5, 40, 0.15, 0.25, 45, 60, 2, 0.09],
    see: ["RUNTEMP", "HOUSINGPATH", "PVVALUE"],
  },
  ({ rise, friction, ...paths }) => {
    const { least, greatest } = conductances(paths);
    const per = rise / (friction * paths.bore * paths.length);
    return [per * least, per * greatest];
  },
);
