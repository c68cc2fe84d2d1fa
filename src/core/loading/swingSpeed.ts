import { formula } from "../formula";

export const SWINGSPEED = formula(
  {
    id: "SWINGSPEED",
    text: "Mean sliding speed of a swinging shaft",
    args: {
      bore: { kind: "length", symbol: "d", above: 0, text: "Bore of the bush" },
      swing: { kind: "angle", symbol: "φ", from: 0, text: "Angle from one end of the swing to the other" },
      cycles: { kind: "rate", symbol: "c", from: 0, text: "Cycles per minute, each there and back" },
    },
    units: true,
    result: { kind: "speed", symbol: "v", label: "Mean sliding speed" },
    working: ["s = 2 * φ / 360 * pi * d", "v = s * c / 60000"],
    factors: { "360": "degrees of a full turn" },
    between: { s: { unit: "mm", text: "Path in one cycle" } },
    source: { key: "geometry", at: "arc length, there and back once a cycle" },
    example: [20, 90, 30],
    see: ["SPEED", "STROKESPEED"],
  },
  ({ bore, swing, cycles }) => (((2 * swing) / 360) * Math.PI * bore * cycles) / 60000,
);
