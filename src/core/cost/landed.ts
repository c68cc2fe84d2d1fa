import { clash } from "../errors";
import { formula } from "../formula";

export const LANDED = formula(
  {
    id: "LANDED",
    text: "Landed cost of one piece: price with duty, freight shared by the lot, tooling shared by the planned volume; all amounts in one currency",
    args: {
      price: { kind: "money", symbol: "c", above: 0, text: "Unit price" },
      quantity: { kind: "count", symbol: "n", whole: true, above: 0, text: "Pieces in the lot ordered" },
      tooling: { kind: "money", symbol: "ct", from: 0, default: 0, optional: true, text: "Tooling cost, paid once" },
      volume: {
        kind: "count",
        whole: true,
        symbol: "N",
        from: 0,
        optional: true,
        text: "Pieces planned over the life of the tooling; needed where tooling is given",
      },
      freight: { kind: "money", symbol: "cf", from: 0, default: 0, optional: true, text: "Freight of the whole lot" },
      duty: {
        kind: "percent",
        symbol: "a",
        from: 0,
        default: 0,
        optional: true,
        text: 'Import duty on the unit price: 0.04 or "4 %"',
      },
    },
    units: false,
    result: { kind: "money", symbol: "cl" },
    requires: ({ tooling }) => (tooling > 0 ? ["ct > 0", "N > 0"] : ["ct = 0"]),
    working: ({ tooling }) => [`cl = c * (1 + a) + cf / n${tooling > 0 ? " + ct / N" : ""}`],
    source: { key: "practice", at: "landed cost" },
    example: [2.4, 200, 900, 5000, 60, 0.04],
    see: ["PRICEAT", "RUNCOST", "QUOTES"],
  },
  ({ price, quantity, tooling, volume, freight, duty }) => {
    if (tooling > 0 && !volume)
      throw clash("volume", `volume is missing: tooling of ${tooling} is shared by the pieces planned`);
    return price * (1 + duty) + freight / quantity + (volume ? tooling / volume : 0);
  },
);
