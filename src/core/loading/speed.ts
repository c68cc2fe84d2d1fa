import { formula } from "../formula";

export const SPEED = formula(
  {
    id: "SPEED",
    text: "Sliding speed of a turning shaft",
    args: {
      bore: { kind: "length", symbol: "d", above: 0, text: "Bore of the bush" },
      rpm: { kind: "rate", symbol: "n", from: 0, text: "Shaft speed" },
    },
    units: true,
    result: { kind: "speed", symbol: "v", label: "Sliding speed" },
    working: ["v = pi * d * n / 60000"],
    source: { key: "geometry", at: "circumference times revolutions" },
    example: [20, 120],
    see: ["SWINGSPEED", "STROKESPEED", "WASHERSPEED"],
  },
  ({ bore, rpm }) => (Math.PI * bore * rpm) / 60000,
);
