import { criterion, lacking, unstated } from "../criterion";

/** Without the clearance no edge pressure can be told: what is known already, the rating, still judges. */
export const edgePressure = criterion(
  {
    id: "edgePressure",
    heading: "edge pressure",
    kind: "pressure",
    text: "The grade's rating for edge load; the pressure at the edge itself needs the running clearance",
    asked: "with a slope or a span",
    askedBy: ["slope", "span"],
    fields: ["slope", "span"],
    properties: ["edgeLoad"],
    source: { key: "practice", at: "rating for edge load" },
    asks: ({ given }) => given.slope !== undefined || given.span !== undefined,
  },
  ({ edgeLoad }) => {
    if (edgeLoad === undefined) return lacking("edgeLoad");
    if (edgeLoad !== "poor") return { ...unstated("boreZone"), figures, say: () => "edge pressure: no clearance" };
    return { word: "fails", figures, property: "edgeLoad", say: () => "edge load poor" };
  },
);
const figures = ["edgeLoad"] as const;
