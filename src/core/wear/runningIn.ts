import { formula } from "../formula";

/**
 * h = h_r·(1 − e^(−s/s_r)) + k·p·s: what a new face gives up at first, beside its steady wear. Exact for a pace that falls in proportion to what is
 * left of h_r. Without s_r the whole of h_r counts at once, which is high (safe).
 */
export const RUNNINGIN = formula(
  {
    id: "RUNNINGIN",
    text: "Wear depth after a sliding distance, running in included; WEAR leaves it out, the unsafe side of a small allowance",
    args: {
      wearrate: { kind: "wearRate", symbol: "k", from: 0, text: "Specific wear rate once run in" },
      pressure: { kind: "pressure", symbol: "p", from: 0, text: "Mean pressure on the projected area" },
      distance: { kind: "distance", symbol: "s", from: 0, text: "Sliding distance" },
      depth: { kind: "length", symbol: "h_r", from: 0, text: "Depth that running in takes in all" },
      over: {
        kind: "distance",
        symbol: "s_r",
        above: 0,
        optional: true,
        text: "Distance in which the pace of running in falls to 37 %; without it the whole depth counts, the safe side",
      },
    },
    units: true,
    result: { kind: "length", symbol: "h", label: "Wear depth" },
    working: ({ over }) => [`h = h_r${over === undefined ? "" : " * (1 - exp(-s / s_r))"} + k * p * s * 1000`],
    source: { key: "archard", at: "linear wear law, with a pace of running in that fades" },
    example: [2e-6, 2.5, 1, 0.02, 0.3],
    see: ["WEAR", "BEDDING"],
  },
  ({ wearrate, pressure, distance, depth, over }) =>
    (over === undefined ? depth : -depth * Math.expm1(-distance / over)) + wearrate * pressure * distance * 1000,
);
