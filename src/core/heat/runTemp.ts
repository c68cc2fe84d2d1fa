import { noDatum } from "../errors";
import { formula } from "../formula";
import type { Answer } from "../formula";
import { frictionArg } from "./friction";
import {
  bushArgs,
  conductances,
  hasWayOut,
  pathArgs,
  pathBetween,
  pathConditions,
  pathLines,
  pathSources,
} from "./paths";

/**
 * T = Ta + μ·F·v/G, the mean over the bore: G from the wall (radial conduction) into the housing's path and the shaft's ends (fins) beside it.
 * Against assemblies solved in space: −0.5 to +0.2 % of the rise where the housing's path is known, the hottest point of the bore up to 5 % above
 * the mean. Insulated tips err high (safe); a housing taken at ambient is a lower bound, often far below; friction that rises with heat is not seen.
 */
export const RUNTEMP = formula(
  {
    id: "RUNTEMP",
    text: "Running temperature of the bore by friction heat, a preliminary estimate at steady state, least and greatest: equal when the housing's path is given (mean of the bore, within 0.5 % of the rise; its hottest point up to 5 % above), else housing at ambient, often far too cool, and a housing that takes no heat",
    args: {
      load: { kind: "force", symbol: "F", from: 0, text: "Radial load" },
      ...bushArgs,
      speed: { kind: "speed", symbol: "v", from: 0, text: "Mean sliding speed" },
      friction: frictionArg,
      ambient: { kind: "temperature", symbol: "Ta", text: "Temperature of the surroundings" },
      ...pathArgs,
    },
    units: true,
    result: {
      shape: "row",
      columns: [
        { name: "least temperature", kind: "temperature", symbol: "T_low" },
        { name: "greatest temperature", kind: "temperature", symbol: "T_high" },
      ],
      text: "Least and greatest running temperature; the greatest is #N/A where no path is left",
    },
    requires: pathConditions,
    working: (values) => [
      "Q = μ * F * v",
      ...pathLines(values),
      "T_low = Ta + Q / G_high",
      ...(!hasWayOut(values) ? [] : ["T_high = Ta + Q / G_low"]),
    ],
    between: { Q: { unit: "W", text: "Friction heat" }, ...pathBetween },
    source: pathSources,
    example: [400, 20, 15, 1.5, 0.1, 0.15, 25, 0.25, 45, 60, 2, 0.09],
    see: ["HEATPV", "HOUSINGPATH", "BORETEMP", "HEAT"],
  },
  ({ load, speed, friction, ambient, ...paths }): Answer[] => {
    const heat = friction * load * speed;
    const { least, greatest } = conductances(paths);
    return [ambient + heat / greatest, least === 0 ? noWayOut() : ambient + heat / least];
  },
);

const noWayOut = () =>
  noDatum("housingpath", "no shaft end and no housingpath: how warm it becomes at most is not known");
