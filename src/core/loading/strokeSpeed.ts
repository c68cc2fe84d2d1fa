import { formula } from "../formula";

export const STROKESPEED = formula(
  {
    id: "STROKESPEED",
    text: "Mean sliding speed of a linear motion",
    args: {
      stroke: { kind: "length", symbol: "s", from: 0, text: "Travel from one end to the other" },
      cycles: { kind: "rate", symbol: "c", from: 0, text: "Cycles per minute, each there and back" },
    },
    units: true,
    result: { kind: "speed", symbol: "v", label: "Mean sliding speed" },
    working: ["v = 2 * s * c / 60000"],
    source: { key: "geometry", at: "travel there and back once a cycle" },
    example: [400, 6],
    see: ["SPEED", "SWINGSPEED"],
  },
  ({ stroke, cycles }) => (2 * stroke * cycles) / 60000,
);
