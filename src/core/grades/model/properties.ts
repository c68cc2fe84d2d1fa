import { mostFriction } from "../../friction";
import { kinds } from "../../kinds";
import type { Kind, System } from "../../kinds";
import { Headings } from "../../table/entry";
import type { ValuesOf } from "../../table/entry";
import { splitHeading } from "../../table/heading";
import type { Curve } from "./curve";
import type { Media } from "./media";
import type { PropertyEntry } from "./propertyEntry";

export const ratings = ["poor", "fair", "good"] as const;
export type Rating = (typeof ratings)[number];

/** Every property of a grade, in the order of tables. */
export const propertyList = {
  grade: { heading: "grade", also: [], kind: "text", group: "identity", text: "Name of the material as offered" },
  kind: {
    heading: "kind",
    also: [],
    kind: "text",
    group: "identity",
    text: "Generic family, invented for the demo, or own row",
  },
  family: { heading: "family", also: [], kind: "text", group: "identity", text: "Polymer family and filler" },
  description: {
    heading: "description",
    also: [],
    kind: "text",
    group: "identity",
    text: "What the material is and where it serves",
  },
  staticPressure: {
    heading: "static pressure limit",
    also: ["static pressure", "max static pressure"],
    kind: "pressure",
    above: 0,
    to: 1000,
    plausible: [1, 500],
    group: "limits",
    text: "Highest mean pressure on the projected area at rest, 23 °C",
  },
  runningPressure: {
    heading: "running pressure limit",
    also: ["running pressure", "dynamic pressure limit", "max dynamic pressure"],
    kind: "pressure",
    above: 0,
    to: 1000,
    plausible: [1, 500],
    group: "limits",
    text: "Highest mean pressure in motion; without it there is no data: the static limit never stands in",
  },
  speedTurning: {
    heading: "speed limit turning",
    also: ["speed limit rotating"],
    kind: "speed",
    above: 0,
    to: 50,
    plausible: [0.05, 20],
    group: "limits",
    text: "Highest sliding speed of a turning shaft, continuous",
  },
  speedSwinging: {
    heading: "speed limit swinging",
    also: ["speed limit oscillating"],
    kind: "speed",
    above: 0,
    to: 50,
    plausible: [0.05, 20],
    group: "limits",
    text: "Highest mean sliding speed of an oscillating shaft, continuous",
  },
  speedLinear: {
    heading: "speed limit linear",
    also: [],
    kind: "speed",
    above: 0,
    to: 50,
    plausible: [0.05, 20],
    group: "limits",
    text: "Highest mean sliding speed of a linear motion, continuous",
  },
  pvLimit: {
    heading: "PV limit",
    also: ["PV", "max PV", "limiting PV"],
    kind: "pv",
    above: 0,
    to: 50,
    plausible: [0.01, 3],
    group: "limits",
    text: "Highest pressure times speed, continuous, dry, 23 °C",
  },
  lowestTemperature: {
    heading: "lowest temperature",
    also: ["min temperature", "minimum temperature"],
    kind: "temperature",
    from: -273.15,
    to: 100,
    plausible: [-200, 0],
    group: "limits",
    text: "Lowest temperature in use",
  },
  highestTemperature: {
    heading: "highest temperature",
    also: ["long-term highest temperature", "continuous service temperature"],
    kind: "temperature",
    from: -50,
    to: 500,
    plausible: [50, 320],
    group: "limits",
    text: "Highest temperature in long-term use",
  },
  shortTermTemperature: {
    heading: "short-term highest temperature",
    also: ["short-term temperature", "peak temperature"],
    kind: "temperature",
    from: -50,
    to: 600,
    plausible: [60, 400],
    group: "limits",
    text: "Highest temperature for short excursions",
  },
  pressureCurve: {
    heading: "pressure at temperature",
    also: [],
    kind: "curve",
    of: "pressure",
    above: 0,
    to: 1000,
    group: "limits",
    text: "Highest mean pressure against temperature; caps the static and the running limit",
  },
  pvCurve: {
    heading: "PV at temperature",
    also: [],
    kind: "curve",
    of: "pv",
    from: 0,
    to: 50,
    group: "limits",
    text: "Highest PV against temperature; caps the PV limit",
  },
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
  compressiveStrength: {
    heading: "compressive strength",
    also: [],
    kind: "pressure",
    above: 0,
    to: 1000,
    plausible: [3, 450],
    group: "mechanical",
    text: "Compressive strength or stress at 10 % strain",
    method: "ISO 604, ASTM D695",
  },
  compressiveModulus: {
    heading: "compressive modulus",
    also: [],
    kind: "pressure",
    above: 0,
    to: 200000,
    plausible: [200, 30000],
    group: "mechanical",
    text: "Modulus of elasticity in compression",
    method: "ISO 604, ASTM D695",
  },
  poisson: {
    heading: "Poisson's ratio",
    also: ["Poisson ratio"],
    kind: "ratio",
    from: 0,
    to: 0.5,
    plausible: [0.25, 0.49],
    group: "mechanical",
    text: "Poisson's ratio, 23 °C",
  },
  expansion: {
    heading: "expansion",
    also: ["CTE", "thermal expansion", "coefficient of thermal expansion"],
    kind: "expansion",
    above: 0,
    to: 0.0005,
    plausible: [1e-5, 0.0004],
    group: "thermal",
    text: "Coefficient of linear thermal expansion",
    method: "ISO 11359-2",
  },
  conductivity: {
    heading: "conductivity",
    also: ["thermal conductivity"],
    kind: "conductivity",
    above: 0,
    to: 500,
    plausible: [0.1, 2],
    group: "thermal",
    text: "Thermal conductivity",
  },
  glassTransition: {
    heading: "glass transition",
    also: ["Tg", "glass transition temperature"],
    kind: "temperature",
    from: -200,
    to: 500,
    plausible: [-150, 300],
    group: "thermal",
    text: "Temperature above which the polymer softens; fillers hardly move it",
    method: "ISO 11357-2",
  },
  meltingPoint: {
    heading: "melting point",
    also: ["melting temperature", "Tm"],
    kind: "temperature",
    from: -50,
    to: 600,
    plausible: [100, 400],
    group: "thermal",
    text: "Temperature at which the polymer melts; empty where it does not",
    method: "ISO 11357-3",
  },
  water50: {
    heading: "water uptake at 50 % RH",
    also: ["water uptake at 50 % humidity"],
    kind: "percent",
    from: 0,
    to: 0.5,
    plausible: [0, 0.05],
    group: "moisture",
    text: "Water uptake at equilibrium in air of 50 % relative humidity, by mass",
    method: "ISO 62, ASTM D570",
  },
  waterSaturated: {
    heading: "water uptake saturated",
    also: ["saturated water uptake"],
    kind: "percent",
    from: 0,
    to: 0.5,
    plausible: [0, 0.12],
    group: "moisture",
    text: "Water uptake at saturation in water, by mass",
    method: "ISO 62, ASTM D570",
  },
  swelling50: {
    heading: "swelling at 50 % RH",
    also: [],
    kind: "percent",
    from: 0,
    to: 0.1,
    plausible: [0, 0.015],
    group: "moisture",
    text: "Linear growth at equilibrium in air of 50 % relative humidity",
  },
  swellingSaturated: {
    heading: "swelling saturated",
    also: ["saturated swelling"],
    kind: "percent",
    from: 0,
    to: 0.1,
    plausible: [0, 0.04],
    group: "moisture",
    text: "Linear growth at saturation in water",
  },
  density: {
    heading: "density",
    also: [],
    kind: "density",
    above: 0.1,
    to: 25,
    plausible: [0.85, 4],
    group: "mechanical",
    text: "Density",
    method: "ISO 1183",
  },
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
  source: { heading: "source", also: [], kind: "text", group: "identity", text: "Where the row comes from" },
  notes: {
    heading: "notes",
    also: ["note", "remarks", "comment", "comments"],
    kind: "text",
    group: "identity",
    text: "Remarks",
  },
} as const satisfies Record<string, PropertyEntry>;

type List = typeof propertyList;
export type PropertyKey = keyof List;

/** What the kinds that only grades have read as. */
export interface OwnKinds {
  readonly curve: Curve;
  readonly rating: Rating;
  readonly media: Media;
}

/** A grade's data in working units; a property without a value is "no data". The name and the kind are the grade's own. */
export type Values = Omit<ValuesOf<List, OwnKinds>, "grade" | "kind">;

export type Property = PropertyEntry & { readonly key: PropertyKey };

export const properties: readonly Property[] = (Object.keys(propertyList) as PropertyKey[]).map((key) => ({
  key,
  ...propertyList[key],
}));

const byKey = new Map(properties.map((p) => [p.key, p]));
export const property = (key: PropertyKey): Property => byKey.get(key)!;

/** The kind of a number's or a curve's values; `undefined` for words. */
export function kindOf(p: Property): Kind | undefined {
  switch (p.kind) {
    case "curve":
      return p.of;
    case "text":
    case "rating":
    case "choice":
    case "list":
    case "media":
      return undefined;
    default:
      return p.kind;
  }
}

export const propertyHeadings = new Headings<PropertyKey>(propertyList);

/** The property that a heading names, with or without its unit in brackets. */
export function propertyNamed(heading: string): Property | undefined {
  const key = propertyHeadings.find(splitHeading(heading).name);
  return key && property(key);
}

/** "PV limit [MPa·m/s]", "PV at temperature [°C: MPa·m/s]", "swelling saturated [ratio]". */
export function headingOf(p: Property, system: System): string {
  const kind = kindOf(p);
  const unit = kind === "percent" ? "ratio" : kind ? kinds[kind][system] : "";
  if (unit === "") return p.heading;
  return `${p.heading} [${p.kind === "curve" ? `${kinds.temperature[system]}: ` : ""}${unit}]`;
}
