import { formula } from "../formula";
import { frictionArg } from "./friction";

export const HEAT = formula(
  {
    id: "HEAT",
    text: "Friction heat of a sliding contact",
    args: {
      load: { kind: "force", symbol: "F", from: 0, text: "Load on the contact" },
      speed: { kind: "speed", symbol: "v", from: 0, text: "Mean sliding speed" },
      friction: frictionArg,
    },
    units: true,
    result: { kind: "power", symbol: "Q", label: "Friction heat" },
    working: ["Q = μ * F * v"],
    source: { key: "mechanics", at: "friction force times sliding speed" },
    example: [800, 0.1257, 0.2],
    see: ["RUNTEMP", "TORQUE"],
  },
  ({ load, speed, friction }) => friction * load * speed,
);
