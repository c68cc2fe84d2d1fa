import { formula } from "../formula";
import { gripArgs, gripFriction } from "./gripArgs";

/**
 * T = μ·p·π·D²·L/2 + μ·F·D/2, to be above the friction torque of the shaft; exact for even pressure, so as safe as the friction and the pressure that
 * go in. The load counts as if it rested on the joint throughout: leave it out (safe) where it comes and goes.
 */
export const SPINTORQUE = formula(
  {
    id: "SPINTORQUE",
    text: "Torque that spins a bush in its housing, to be above the friction torque in its bore; take the lowest friction, and the pressure left after the hottest hold",
    args: {
      ...gripArgs,
      friction: gripFriction,
      load: {
        kind: "force",
        symbol: "F",
        from: 0,
        default: 0,
        optional: true,
        text: "Radial load, which helps to hold the bush; leave it out where it comes and goes",
      },
    },
    units: true,
    result: { kind: "torque", symbol: "T" },
    working: ["T = (μ * p * pi * D^2 * L / 2 + μ * F * D / 2) / 1000"],
    source: { key: "shigley", at: "press and shrink fits: friction on the joint" },
    example: [1.8, 23, 15, 0.2, 800],
    see: ["PUSHOUT", "TORQUE", "GRIPLEFT"],
  },
  ({ pressure, outside, length, friction, load }) =>
    (friction * (pressure * Math.PI * outside * length + load) * outside) / 2000,
);
