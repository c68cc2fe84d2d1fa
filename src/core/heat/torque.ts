import { formula } from "../formula";
import { frictionArg } from "./friction";

export const TORQUE = formula(
  {
    id: "TORQUE",
    text: "Friction torque of a sleeve bush",
    args: {
      load: { kind: "force", symbol: "F", from: 0, text: "Radial load" },
      bore: { kind: "length", symbol: "d", above: 0, text: "Bore of the bush" },
      friction: frictionArg,
    },
    units: true,
    result: { kind: "torque", symbol: "T", label: "Friction torque" },
    working: ["T = μ * F * d / 2 / 1000"],
    source: { key: "mechanics", at: "friction force at the radius of the bore" },
    example: [800, 20, 0.2],
    see: ["WASHERTORQUE", "HEAT"],
  },
  ({ load, bore, friction }) => (friction * load * bore) / 2000,
);
