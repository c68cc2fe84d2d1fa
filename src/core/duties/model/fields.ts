import { mostFriction } from "../../friction";
import type { Motion } from "../../grades/model/limits";
import { motions } from "../../grades/model/limits";
import { shafts } from "../../grades/model/shafts";
import { mediaClasses } from "../../grades/model/media";
import { metals } from "../../fit/metals";
import type { Zone } from "../../fit/zone";
import type { System } from "../../kinds";
import { kinds } from "../../kinds";
import type { Kind } from "../../kinds";
import type { Entry, ValuesOf } from "../../table/entry";
import { Headings } from "../../table/entry";

export const parts = ["sleeve", "flanged", "washer"] as const;
export type Part = (typeof parts)[number];

export const groups = [
  "name",
  "load",
  "size",
  "motion",
  "surroundings",
  "shaft",
  "housing",
  "fit",
  "wanted",
  "cost",
] as const;

/** One entry of the list of what a duty may say; bounds are in working units. */
export interface FieldEntry extends Entry {
  readonly group: (typeof groups)[number];
  /** One phrase: what it is. */
  readonly text: string;
  readonly symbol?: string;
  /** The parts and motions that ask for it; all of them unless given. */
  readonly parts?: readonly Part[];
  readonly motions?: readonly Motion[];
  /** A duty whose part and motion ask for it is refused without it. */
  readonly required?: true;
  /** What an empty cell means. */
  readonly default?: string | number;
}

/** A number that may be a band. */
const number = <const E extends { readonly kind: Kind }>(entry: E) => ({ ...entry, band: true as const });
/** A number that multiplies a wear rate. */
const factor = <const H extends string, const S extends string>(heading: H, symbol: S, text: string) =>
  number({ heading, kind: "ratio", symbol, group: "wanted", above: 0, to: 100, default: 1, text });
const yesNo = { kind: "choice", words: ["no", "yes"], default: "no", spellings: { true: "yes", false: "no" } } as const;

const sleeves = ["sleeve", "flanged"] as const;
const inMotion = ["turning", "swinging", "linear"] as const;

/**
 * Everything that a duty may say: reading, headings, the pane's form, the command line and the docs follow from it.
 * `temperature` is always that of the surroundings; the temperature of the bore is computed.
 */
export const fields = {
  duty: {
    heading: "duty",
    also: ["name"],
    kind: "text",
    group: "name",
    text: "Name of the duty; rows of one name below each other are its steps",
  },
  part: {
    heading: "part",
    also: ["kind of part"],
    kind: "choice",
    words: parts,
    default: "sleeve",
    group: "name",
    text: "Kind of bush",
    spellings: { "sleeve bush": "sleeve", bush: "sleeve", "flanged bush": "flanged", "thrust washer": "washer" },
  },
  grade: {
    heading: "grade",
    also: ["material"],
    kind: "text",
    group: "name",
    text: "Grade chosen for the duty; without one the best is looked for",
  },

  load: number({
    heading: "load",
    also: ["radial load", "force"],
    kind: "force",
    symbol: "F",
    group: "load",
    from: 0,
    required: true,
    typeZero: '"0 N"',
    text: "Radial load, or the axial load of a washer",
  }),
  axialLoad: number({
    heading: "axial load",
    also: ["thrust", "thrust load"],
    kind: "force",
    symbol: "Fa",
    group: "load",
    from: 0,
    blankZero: true,
    parts: ["flanged", "washer"],
    text: "Axial load on the flange or the washer",
  }),
  staticLoad: number({
    heading: "static load",
    also: ["greatest load at rest"],
    kind: "force",
    symbol: "Fs",
    group: "load",
    from: 0,
    blankZero: true,
    text: "Greatest load while at rest",
  }),
  impactFactor: number({
    heading: "impact factor",
    also: ["shock factor"],
    kind: "ratio",
    symbol: "K",
    group: "load",
    from: 1,
    to: 100,
    default: 1,
    text: "Multiplies the load where it comes in blows; counts for pressure, not for PV",
  }),
  designFactor: number({
    heading: "design factor",
    also: ["safety factor"],
    kind: "ratio",
    symbol: "S",
    group: "load",
    from: 1,
    to: 100,
    default: 1,
    text: "Divides the limits of pressure and PV",
  }),
  loadTurns: {
    ...yesNo,
    heading: "load turns",
    also: ["load turns with the shaft", "rotating load"],
    group: "load",
    parts: sleeves,
    motions: inMotion,
    text: "Whether the load turns with the shaft",
  },

  bore: number({
    heading: "bore",
    also: ["bore diameter", "inner diameter", "shaft diameter", "inside diameter"],
    kind: "length",
    symbol: "d",
    group: "size",
    above: 0,
    parts: sleeves,
    required: true,
    text: "Bore of the bush",
  }),
  length: number({
    heading: "length",
    also: ["bush length", "width"],
    kind: "length",
    symbol: "L",
    group: "size",
    above: 0,
    parts: sleeves,
    required: true,
    text: "Length of the bush",
  }),
  wall: number({
    heading: "wall",
    also: ["wall thickness"],
    kind: "length",
    symbol: "w",
    group: "size",
    above: 0,
    parts: sleeves,
    text: "Wall thickness of the bush",
  }),
  outside: number({
    heading: "outside",
    also: ["outside diameter", "outer diameter"],
    kind: "length",
    symbol: "D",
    group: "size",
    above: 0,
    parts: sleeves,
    text: "Outside diameter of the bush, in place of its wall",
  }),
  flangeOutside: number({
    heading: "flange outside",
    also: ["flange diameter", "flange outside diameter"],
    kind: "length",
    symbol: "Df",
    group: "size",
    above: 0,
    parts: ["flanged"],
    required: true,
    text: "Outside diameter of the flange",
  }),
  flangeThickness: number({
    heading: "flange thickness",
    kind: "length",
    symbol: "tf",
    group: "size",
    above: 0,
    parts: ["flanged"],
    text: "Thickness of the flange; needed where it bears and a way out for the heat is given",
  }),
  inner: number({
    heading: "inner",
    also: ["inner Ø", "washer inner"],
    kind: "length",
    symbol: "Di",
    group: "size",
    from: 0,
    parts: ["washer"],
    required: true,
    text: "Inner diameter of the washer's face",
  }),
  outer: number({
    heading: "outer",
    also: ["outer Ø", "washer outer"],
    kind: "length",
    symbol: "Do",
    group: "size",
    above: 0,
    parts: ["washer"],
    required: true,
    text: "Outer diameter of the washer's face",
  }),

  motion: {
    heading: "motion",
    kind: "choice",
    words: motions,
    group: "motion",
    text: "Motion of the shaft; it follows from rpm, swing or stroke where one of them is filled; at rest type static",
    spellings: { oscillating: "swinging", rotating: "turning", sliding: "linear", rest: "static", "at rest": "static" },
  },
  rpm: number({
    heading: "rpm",
    also: ["shaft speed", "revolutions"],
    kind: "rate",
    symbol: "n",
    group: "motion",
    from: 0,
    motions: ["turning"],
    required: true,
    typeZero: '"static" under motion',
    text: "Shaft speed",
  }),
  swing: number({
    heading: "swing",
    also: ["swing angle", "angle"],
    kind: "angle",
    symbol: "φ",
    group: "motion",
    from: 0,
    motions: ["swinging"],
    required: true,
    typeZero: '"static" under motion',
    text: "Angle from one end of the swing to the other",
  }),
  stroke: number({
    heading: "stroke",
    also: ["travel"],
    kind: "length",
    symbol: "s",
    group: "motion",
    from: 0,
    motions: ["linear"],
    required: true,
    typeZero: '"static" under motion',
    text: "Travel from one end to the other",
  }),
  cycles: number({
    heading: "cycles",
    also: ["cycles per minute", "cycles/min"],
    kind: "rate",
    symbol: "c",
    group: "motion",
    from: 0,
    motions: ["swinging", "linear"],
    required: true,
    typeZero: '"static" under motion',
    text: "Cycles per minute, each there and back",
  }),
  friction: number({
    heading: "friction",
    also: ["coefficient of friction"],
    kind: "ratio",
    symbol: "μ",
    group: "motion",
    above: 0,
    to: mostFriction,
    motions: inMotion,
    text: "Coefficient of friction in this duty, for the heat that has a way out; else the grade's high figure",
  }),
  time: number({
    heading: "time",
    also: ["step time", "duration"],
    kind: "minutes",
    symbol: "t",
    group: "motion",
    above: 0,
    text: "How long this step lasts",
  }),
  runningTime: number({
    heading: "running time",
    kind: "minutes",
    symbol: "tr",
    group: "motion",
    above: 0,
    motions: inMotion,
    text: "How long an intermittent duty runs each time",
  }),
  restTime: number({
    heading: "rest time",
    kind: "minutes",
    symbol: "t0",
    group: "motion",
    above: 0,
    motions: inMotion,
    text: "How long it rests in between",
  }),
  timeConstant: number({
    heading: "time constant",
    kind: "minutes",
    symbol: "τ",
    group: "motion",
    above: 0,
    motions: inMotion,
    text: "Thermal time constant of the assembly, as measured",
  }),

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

  shaft: {
    heading: "shaft",
    also: ["shaft material"],
    kind: "choice",
    words: shafts,
    group: "shaft",
    text: "Material of the shaft",
  },
  hardness: number({
    heading: "hardness",
    also: ["shaft hardness"],
    kind: "hardness",
    symbol: "H",
    group: "shaft",
    above: 0,
    to: 1000,
    text: "Brinell hardness of the shaft",
  }),
  roughness: number({
    heading: "roughness",
    also: ["roughness Ra", "shaft roughness", "Ra"],
    kind: "roughness",
    symbol: "Ra",
    group: "shaft",
    above: 0,
    to: 100,
    text: "Roughness Ra of the shaft",
  }),
  slope: number({
    heading: "slope",
    also: ["shaft slope", "tilt"],
    kind: "angle",
    symbol: "θ",
    group: "shaft",
    from: 0,
    below: 10,
    blankZero: true,
    parts: sleeves,
    text: "Slope of the shaft at the bush; a misalignment where the span is given too: both add up",
  }),
  span: number({
    heading: "span",
    also: ["bearing span", "support span"],
    kind: "length",
    symbol: "ls",
    group: "shaft",
    above: 0,
    parts: sleeves,
    text: "Distance of the two bushes, from which the slope follows",
  }),
  spanDiameter: number({
    heading: "shaft diameter between bushes",
    kind: "length",
    symbol: "dw",
    group: "shaft",
    above: 0,
    parts: sleeves,
    text: "Diameter of the shaft between the bushes",
  }),
  endLength: number({
    heading: "exposed length",
    also: ["exposed shaft length", "exposed length of each end"],
    kind: "length",
    symbol: "le",
    group: "shaft",
    from: 0,
    blankZero: true,
    text: "Length of each of the two ends of the shaft that stand out into the air, up to half way to the next bush",
  }),

  housing: {
    heading: "housing",
    also: ["housing metal", "housing material"],
    kind: "text",
    words: metals.map(({ name }) => name),
    group: "housing",
    text: "Metal of the housing",
  },
  housingOutside: number({
    heading: "housing outside",
    also: ["housing diameter"],
    kind: "length",
    symbol: "Dh",
    group: "housing",
    above: 0,
    text: "Outside diameter of the housing",
  }),
  housingPath: number({
    heading: "housing conductance",
    also: ["housing path"],
    kind: "conductance",
    symbol: "Gh",
    group: "housing",
    above: 0,
    text: "Conductance of the housing to the surroundings",
  }),

  boreZone: { heading: "bore zone", kind: "zone", group: "fit", parts: sleeves, text: "Tolerance zone of the bore" },
  zoneHolds: {
    heading: "zone holds",
    kind: "choice",
    words: ["pressed", "free"],
    default: "pressed",
    group: "fit",
    parts: sleeves,
    text: "Whether the bore's zone holds after pressing in or before",
  },
  outsideZone: {
    heading: "outside zone",
    kind: "zone",
    group: "fit",
    parts: sleeves,
    text: "Tolerance zone of the bush's outside before pressing",
  },
  housingZone: {
    heading: "housing zone",
    kind: "zone",
    group: "fit",
    parts: sleeves,
    text: "Tolerance zone of the housing's bore",
  },
  shaftZone: { heading: "shaft zone", kind: "zone", group: "fit", parts: sleeves, text: "Tolerance zone of the shaft" },
  assemblyMoisture: {
    heading: "moisture at assembly",
    kind: "choice",
    words: ["dry", "humid", "wet"],
    group: "fit",
    parts: sleeves,
    text: "Water in the bush when it is pressed in",
  },
  keptGrip: number({
    heading: "share of grip kept",
    also: ["grip kept"],
    kind: "percent",
    symbol: "R",
    group: "fit",
    above: 0,
    to: 1,
    parts: sleeves,
    text: "Share of the press fit kept after the hottest hold",
  }),
  leastClearance: number({
    heading: "least clearance wanted",
    also: ["least clearance"],
    kind: "length",
    symbol: "Cw",
    group: "fit",
    from: 0,
    blankZero: true,
    parts: sleeves,
    text: "Least running clearance wanted; 0 unless given",
  }),
  heldAtEnds: {
    ...yesNo,
    heading: "held at its ends",
    group: "fit",
    parts: sleeves,
    text: "Whether shoulders keep the bush from lengthening",
  },

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

export type FieldKey = keyof typeof fields;
/** What a row or card says, as read: a number may be a band. */
export type FieldValues = ValuesOf<typeof fields, { zone: Zone }>;
/** The same with every band at one of its values. */
export type Given = {
  readonly [K in FieldKey]?: number extends FieldValues[K] ? number : Exclude<FieldValues[K], undefined>;
};

export const fieldKeys = Object.keys(fields) as FieldKey[];
export const field = (key: FieldKey): FieldEntry => fields[key];
export const fieldHeadings = new Headings<FieldKey>(fields);

/** Whether this part in this motion asks for a field. */
export function isAskedFor(key: FieldKey, part: Part, motion: Motion): boolean {
  const { parts: ofParts, motions: inMotions } = field(key);
  return (!ofParts || ofParts.includes(part)) && (!inMotions || inMotions.includes(motion));
}

/** "load [N]". */
export function headingOf(key: FieldKey, system: System): string {
  const { heading, kind } = field(key);
  const unit = kind === "span" ? kinds.temperature[system] : kind in kinds ? kinds[kind as Kind][system] : "";
  return unit === "" ? heading : `${heading} [${unit}]`;
}
