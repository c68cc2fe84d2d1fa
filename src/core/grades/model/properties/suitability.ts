import type { PropertyEntry } from "../propertyEntry";

/** What it suits. */
export const suitability = {
  shock: {
    heading: "shock",
    also: [],
    kind: "rating",
    group: "suitability",
    text: "Bears shock load: poor, fair or good",
  },
  edgeLoad: {
    heading: "edge load",
    also: [],
    kind: "rating",
    group: "suitability",
    text: "Bears edge load: poor, fair or good",
  },
  dirt: { heading: "dirt", also: [], kind: "rating", group: "suitability", text: "Runs in dirt: poor, fair or good" },
  damping: {
    heading: "damping",
    also: [],
    kind: "rating",
    group: "suitability",
    text: "Damps vibration: poor, fair or good",
  },
  softShaft: {
    heading: "soft shaft",
    also: [],
    kind: "rating",
    group: "suitability",
    text: "Spares a soft shaft: poor, fair or good",
  },
  roughShaft: {
    heading: "rough shaft",
    also: [],
    kind: "rating",
    group: "suitability",
    text: "Bears a rough shaft: poor, fair or good",
  },
  chemicals: {
    heading: "chemicals",
    also: [],
    kind: "rating",
    group: "suitability",
    text: "Withstands chemicals: poor, fair or good",
  },
  media: {
    heading: "media",
    also: ["media resistance"],
    kind: "media",
    group: "suitability",
    text: 'What it withstands, as "water: resistant to 60 °C; weak acids: limited"',
  },
  vacuum: {
    heading: "vacuum",
    also: [],
    kind: "rating",
    group: "suitability",
    text: "Serves in vacuum: poor, fair or good",
  },
  shafts: {
    heading: "shafts suited",
    also: ["shaft materials"],
    kind: "list",
    group: "suitability",
    text: "Shaft materials that suit, separated by commas",
  },
  shaftHardness: {
    heading: "least shaft hardness",
    also: ["shaft hardness", "min shaft hardness"],
    kind: "hardness",
    above: 0,
    to: 800,
    plausible: [50, 700],
    group: "suitability",
    text: "Least Brinell hardness of the shaft",
  },
} as const satisfies Record<string, PropertyEntry>;
