import { mediaClasses } from "../../../grades/model/media";
import { yesNo } from "./entry";
import type { FieldEntry } from "./entry";

/** What reaches the bush. */
export const surroundings = {
  temperature: {
    heading: "temperature",
    also: ["surroundings temperature", "ambient temperature", "ambient"],
    kind: "span",
    symbol: "T",
    group: "surroundings",
    required: true,
    typeZero: '"0 °C"',
    text: 'Temperature of the surroundings, one value or lowest and highest: "-20 to 60"; that of the bore is computed',
  },
  peakTemperature: {
    heading: "short peak temperature",
    also: ["peak temperature"],
    kind: "temperature",
    symbol: "Tp",
    group: "surroundings",
    typeZero: '"0 °C"',
    text: "Short peak of the temperature of the surroundings",
  },
  moisture: {
    heading: "moisture",
    also: ["wet", "wet or dry"],
    kind: "choice",
    words: ["dry", "humid", "wet"],
    default: "dry",
    group: "surroundings",
    text: "Water that the bush takes up: none, that of humid air, or until saturated",
    spellings: { yes: "wet", no: "dry", true: "wet", false: "dry" },
  },
  media: {
    heading: "media",
    also: ["medium"],
    kind: "list",
    words: mediaClasses,
    group: "surroundings",
    text: "Media that reach the bush, separated by commas",
  },
  dirt: {
    heading: "dirt",
    kind: "choice",
    words: ["none", "some", "heavy"],
    default: "none",
    group: "surroundings",
    text: "Dirt that reaches the bush",
    spellings: { no: "none" },
  },
  vacuum: { ...yesNo, heading: "vacuum", group: "surroundings", text: "Whether it runs in vacuum" },
  damping: {
    ...yesNo,
    heading: "damping wanted",
    also: ["damping"],
    group: "surroundings",
    text: "Whether the bush has to damp vibration",
  },
} as const satisfies Record<string, FieldEntry>;
