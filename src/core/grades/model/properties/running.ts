import { mostFriction } from "../../../friction";
import type { PropertyEntry } from "../propertyEntry";

/** How it slides and wears. */
export const running = {
  frictionLow: {
    heading: "friction low",
    also: ["least friction"],
    kind: "ratio",
    above: 0,
    to: mostFriction,
    plausible: [0.02, 0.5],
    group: "running",
    text: "Least coefficient of friction, dry on steel",
    method: "ISO 7148-2, ASTM D3702",
  },
  frictionHigh: {
    heading: "friction high",
    also: ["greatest friction"],
    kind: "ratio",
    above: 0,
    to: mostFriction,
    plausible: [0.05, 0.8],
    group: "running",
    text: "Greatest coefficient of friction, dry on steel",
    method: "ISO 7148-2, ASTM D3702",
  },
  wearLow: {
    heading: "wear rate low",
    also: ["least wear rate"],
    kind: "wearRate",
    above: 0,
    to: 0.01,
    plausible: [1e-8, 0.001],
    group: "running",
    text: "Least specific wear rate, dry on steel",
    method: "ISO 7148-2, ASTM D3702",
  },
  wearHigh: {
    heading: "wear rate high",
    also: ["greatest wear rate"],
    kind: "wearRate",
    above: 0,
    to: 0.01,
    plausible: [1e-8, 0.001],
    group: "running",
    text: "Greatest specific wear rate, dry on steel",
    method: "ISO 7148-2, ASTM D3702",
  },
  wearFrom: {
    heading: "wear rate from",
    also: ["wear test"],
    kind: "choice",
    words: ["flat", "bush"],
    group: "running",
    text: "Kind of test that the wear rate came from, flat or bush; unknown counts as flat",
  },
} as const satisfies Record<string, PropertyEntry>;
