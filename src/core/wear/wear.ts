import { formula } from "../formula";

export const wearDepth = formula(
  {
    id: "WEAR",
    family: "Wear and cost",
    text: "Wear depth after a sliding distance, load fixed to the bush and the shaft moving",
    args: {
      wearrate: {
        kind: "wearRate",
        symbol: "k",
        from: 0,
        text: "Specific wear rate, times your own factors for shaft roughness, hardness and dirt where you have them",
      },
      pressure: { kind: "pressure", symbol: "p", from: 0, text: "Mean pressure" },
      distance: { kind: "distance", symbol: "s", from: 0, text: "Sliding distance" },
    },
    units: true,
    result: { kind: "length", symbol: "h" },
    working: ["h = k * p * s * 1000"],
    source: { key: "archard", at: "linear wear law, as a depth per area" },
    example: [2e-6, 2.67, 400],
    see: ["LIFE", "LIFEBAND"],
  },
  ({ wearrate, pressure, distance }) => wearrate * pressure * distance * 1000,
);
