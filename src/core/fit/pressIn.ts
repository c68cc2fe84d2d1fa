import { formula } from "../formula";
import { gripArgs, gripFriction } from "./gripArgs";
import { checkStrain } from "./lame";

/**
 * F = μ·p·π·D·L + (p·π·D·δ/4)·(1 + μ/tan β): the joint's friction at full depth, and the ring that the chamfer squeezes, whose part without friction is
 * the elastic energy stored per length. The chamfer's part is 1 to 2 %; an error of the friction goes into the force in full. Low (unsafe for the press)
 * where the bush tilts, shaves off or the chamfer has an edge.
 */
export const PRESSIN = formula(
  {
    id: "PRESSIN",
    text: "Force that presses a bush into its housing at full depth, the fresh joint's friction and the squeezing on its chamfer; take the highest friction to choose a press by, and allow for a bush that enters tilted",
    args: {
      ...gripArgs,
      pressure: { ...gripArgs.pressure, text: "Fit pressure when fresh, from PRESSFIT" },
      interference: {
        kind: "length",
        symbol: "δ",
        from: 0,
        text: "Diametral interference; at most a tenth of outside",
      },
      friction: gripFriction,
      chamfer: {
        kind: "angle",
        symbol: "β",
        above: 0,
        below: 90,
        default: 30,
        optional: true,
        text: "Angle of the lead-in chamfer to the axis",
      },
    },
    units: true,
    result: { kind: "force", symbol: "F" },
    requires: ["δ <= D / 10"],
    working: ["F_f = μ * p * pi * D * L", "F_c = p * pi * D * δ / 4 * (1 + μ / tan(β * pi / 180))", "F = F_f + F_c"],
    between: {
      F_f: { unit: "N", text: "Friction of the joint" },
      F_c: { unit: "N", text: "Force on the chamfer" },
    },
    source: [
      { key: "shigley", at: "press and shrink fits: friction on the joint" },
      { key: "own", at: "rings squeezed on the chamfer" },
    ],
    example: [5, 23, 15, 0.1, 0.2],
    see: ["PUSHOUT", "PRESSFIT"],
  },
  ({ pressure, outside, length, interference, friction, chamfer }) => {
    checkStrain(interference, outside);
    const around = pressure * Math.PI * outside;
    const slope = Math.tan((chamfer * Math.PI) / 180);
    return friction * around * length + ((around * interference) / 4) * (1 + friction / slope);
  },
);
