import { formula } from "../formula";
import { gripArgs, gripFriction } from "./gripArgs";

/**
 * F = μ·p·π·D·L; exact for even pressure, so as safe as the friction and the pressure that go in: low ones to hold by, high ones to press out with.
 * The pressure of a fresh joint is high (unsafe to hold by): relaxation takes part of it.
 */
export const PUSHOUT = formula(
  {
    id: "PUSHOUT",
    text: "Force that pushes a bush out of its housing; take the lowest friction, and the pressure left after the hottest hold, where the grip has to hold",
    args: { ...gripArgs, friction: gripFriction },
    units: true,
    result: { kind: "force", symbol: "F" },
    working: ["F = μ * p * pi * D * L"],
    source: { key: "shigley", at: "press and shrink fits: friction on the joint" },
    example: [1.8, 23, 15, 0.2],
    see: ["SPINTORQUE", "PRESSIN", "GRIPLEFT", "PRESSFIT"],
  },
  ({ pressure, outside, length, friction }) => friction * pressure * Math.PI * outside * length,
);
