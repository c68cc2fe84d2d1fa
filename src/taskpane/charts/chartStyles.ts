import { makeStyles, tokens } from "@fluentui/react-components";

/** Where a person has chosen the colours, every line and area is drawn in that of the text. */
const forced = "@media (forced-colors: active)";

/** What all pictures share: told apart by dash, fill and word, not by colour. */
export const useChart = makeStyles({
  chart: {
    width: "100%",
    maxWidth: "520px",
    height: "auto",
    display: "block",
    flexShrink: 0,
    forcedColorAdjust: "auto",
  },
  text: { fill: tokens.colorNeutralForeground2, fontSize: "11px" },
  // an outline in the ground's colour keeps the words clear of the grid
  name: {
    fill: tokens.colorNeutralForeground1,
    fontSize: "12px",
    paintOrder: "stroke",
    stroke: tokens.colorNeutralBackground1,
    strokeWidth: "4px",
    [forced]: { forcedColorAdjust: "none", fill: "CanvasText", stroke: "Canvas" },
  },
  grid: { stroke: tokens.colorNeutralStroke2 },
  zero: { stroke: tokens.colorNeutralForeground1, strokeWidth: 2 },
  range: { fill: "none", stroke: tokens.colorBrandForeground1, strokeWidth: 2 },
  solid: { fill: tokens.colorBrandForeground1 },
  faint: { fill: "none", stroke: tokens.colorBrandForeground1, strokeWidth: 2, strokeDasharray: "4 3" },
  limit: { fill: "none", stroke: tokens.colorNeutralForeground1, strokeWidth: 1.5, strokeDasharray: "8 3" },
  band: { fill: tokens.colorNeutralBackground4, [forced]: { fill: "none", stroke: "CanvasText" } },
});

export const dashes = ["none", "7 4", "2 3"];
export const tick = (value: number): string => String(Number(value.toPrecision(6)));
/** Ends of an axis keep their numbers inside the picture. */
export const anchorAt = (x: number, width: number): "start" | "middle" | "end" =>
  x < 24 ? "start" : x > width - 24 ? "end" : "middle";
