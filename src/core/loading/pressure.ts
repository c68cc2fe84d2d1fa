import { formula } from "../formula";

export const PRESSURE = formula(
  {
    id: "PRESSURE",
    text: "Mean pressure on the projected area of a sleeve bush",
    args: {
      load: { kind: "force", symbol: "F", from: 0, text: "Radial load" },
      bore: { kind: "length", symbol: "d", above: 0, text: "Bore of the bush" },
      length: { kind: "length", symbol: "L", above: 0, text: "Length of the bush" },
    },
    units: true,
    result: { kind: "pressure", symbol: "p", label: "Mean pressure" },
    working: ["p = F / (d * L)"],
    source: { key: "shigley", at: "lubrication and journal bearings: boundary-lubricated bearings" },
    example: [800, 20, 15],
    see: ["WASHERPRESSURE", "PVVALUE"],
  },
  ({ load, bore, length }) => load / (bore * length),
);
