import { formula } from "../formula";

export const PVVALUE = formula(
  {
    id: "PVVALUE",
    text: "PV: mean pressure times sliding speed",
    args: {
      pressure: { kind: "pressure", symbol: "p", from: 0, text: "Mean pressure" },
      speed: { kind: "speed", symbol: "v", from: 0, text: "Sliding speed" },
    },
    units: true,
    result: { kind: "pv", symbol: "PV", label: "Pressure times speed" },
    working: ["PV = p * v"],
    source: { key: "shigley", at: "lubrication and journal bearings: boundary-lubricated bearings" },
    example: [2.5, 0.12],
    see: ["PRESSURE", "SPEED", "DUTYPV"],
  },
  ({ pressure, speed }) => pressure * speed,
);
