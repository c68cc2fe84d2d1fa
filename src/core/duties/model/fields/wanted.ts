import { factor, inMotion, number } from "./entry";
import type { FieldEntry } from "./entry";

/** What is wanted of the bush, and what a change costs. */
export const wanted = {
  hours: number({
    heading: "hours",
    also: ["life wanted", "hours wanted", "life"],
    kind: "time",
    symbol: "tw",
    group: "wanted",
    motions: inMotion,
    above: 0,
    text: "Running hours wanted, rests included",
  }),
  allowance: number({
    heading: "wear allowance",
    also: ["allowance", "life allowance"],
    kind: "length",
    symbol: "h",
    group: "wanted",
    motions: inMotion,
    above: 0,
    text: "Wear depth that may be used up",
  }),
  geometryFactor: factor("wear factor geometry", "ka", "Wear factor of the motion and the load's direction"),
  heatFactor: factor("wear factor heat", "kb", "Wear factor of how well the housing sheds heat"),
  temperatureFactor: factor("wear factor temperature", "kc", "Wear factor of temperature"),
  counterfaceFactor: factor("wear factor counterface", "kd", "Wear factor of the shaft's material"),
  finishFactor: factor("wear factor finish", "ke", "Wear factor of the shaft's finish"),
  piecesAYear: number({
    heading: "pieces a year",
    kind: "count",
    symbol: "N",
    group: "cost",
    above: 0,
    text: "Pieces used a year",
  }),
  labour: number({
    heading: "labour per change",
    also: ["labour"],
    kind: "money",
    symbol: "cw",
    group: "cost",
    from: 0,
    text: "Labour of one change",
  }),
  downtime: number({
    heading: "downtime per change",
    also: ["downtime"],
    kind: "money",
    symbol: "cd",
    group: "cost",
    from: 0,
    text: "Cost of standing still for one change",
  }),
} as const satisfies Record<string, FieldEntry>;
