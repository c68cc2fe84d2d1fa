import { formula } from "../formula";

export const RUNCOST = formula(
  {
    id: "RUNCOST",
    text: "Cost per 1000 running hours: part, labour and downtime of each replacement; all amounts in one currency",
    args: {
      landed: { kind: "money", symbol: "cl", above: 0, text: "Landed cost of one part" },
      life: { kind: "time", symbol: "t", above: 0, text: "Running hours until it is replaced" },
      labour: { kind: "money", symbol: "cw", from: 0, default: 0, optional: true, text: "Labour of one replacement" },
      downtime: {
        kind: "money",
        symbol: "cd",
        from: 0,
        default: 0,
        optional: true,
        text: "Cost of standing still for one replacement",
      },
    },
    units: false,
    result: { kind: "money", symbol: "cr" },
    working: ["cr = (cl + cw + cd) / t * 1000"],
    factors: { "1000": "per 1000 running hours" },
    source: { key: "practice", at: "replacement cost over life" },
    example: [3.0, 4000, 18, 40],
    see: ["LANDED", "LIFE", "QUOTES"],
  },
  ({ landed, life, labour, downtime }) => ((landed + labour + downtime) / life) * 1000,
);
