import { clash } from "../errors";
import { formula } from "../formula";
import type { Answer } from "../formula";
import { findGrade } from "../grade/find";
import { gradeArg, lacks } from "../grade/grade";
import type { Grade } from "../grade/library";
import { property } from "../grade/properties";
import { gradesArg } from "../grade/table";
import { fitState } from "./fitState";
import type { Assembly, FitState, Limits } from "./fitState";
import { checkFeature, limitsIn } from "./iso286";
import { checkDiameters, closeInOf, fitPressureOf } from "./lame";
import type { Ring } from "./lame";
import { findMetal, metalNames } from "./metals";
import { assemblyTemperature } from "./running";
import { zoneArg } from "./zone";
import type { Zone } from "./zone";

/** The property that holds the swelling of each moisture state. */
const swellings = { dry: undefined, room: "swelling50", soaked: "swellingSaturated" } as const;
type Moisture = keyof typeof swellings;

/**
 * "assembly" is the moment after pressing in: 20 °C and a dry bush, the sizes exactly as stated. "cold" and "hot" are
 * service, with the bush at the stated moisture; "hot and wet" is always a saturated bush at the hot temperature. Swelling
 * counts from the dry state: the harder case, since a bush that was made to size moist has less left to swell.
 */
export const fitTable = formula(
  {
    id: "FITTABLE",
    family: "Fits and clearance",
    text: "Running clearance and grip of a pressed bush when cold, at assembly (20 °C, dry), hot, and hot and saturated with water; before stress relaxation and wear",
    args: {
      bore: { kind: "length", symbol: "d", above: 0, text: "Nominal bore of the bush and size of the shaft" },
      borezone: zoneArg("Tolerance zone of the bore"),
      outside: { kind: "length", symbol: "D", above: 0, text: "Nominal outside diameter of the bush" },
      outsidezone: zoneArg("Tolerance zone of the bush's outside before pressing"),
      housingzone: zoneArg("Tolerance zone of the housing's bore"),
      shaftzone: zoneArg("Tolerance zone of the shaft"),
      grade: gradeArg,
      housing: { kind: "text", text: `Metal of the housing: ${metalNames}` },
      shaft: { kind: "text", text: "Metal of the shaft, of the same list" },
      cold: { kind: "temperature", symbol: "Tc", text: "Lowest temperature of service" },
      hot: { kind: "temperature", symbol: "Th", text: "Highest temperature of service" },
      moisture: {
        kind: "choice",
        choices: ["dry", "room", "soaked"],
        default: "dry",
        optional: true,
        text: "Water in the bush when cold and when hot: none, that of air at 50 % humidity, or saturated",
      },
      borestate: {
        kind: "choice",
        choices: ["pressed", "free"],
        default: "pressed",
        optional: true,
        text: "Whether the bore's zone holds after pressing in or before",
      },
      housingoutside: {
        kind: "length",
        symbol: "Dh",
        above: 0,
        optional: true,
        text: "Outside diameter of the housing; without it unbounded",
      },
      grades: gradesArg,
    },
    units: true,
    result: {
      shape: "table",
      columns: [
        { name: "state", kind: "text" },
        { name: "temperature", kind: "temperature" },
        { name: "least clearance", kind: "length" },
        { name: "greatest clearance", kind: "length" },
        { name: "root-sum-square least", kind: "length" },
        { name: "root-sum-square greatest", kind: "length" },
        { name: "least interference left", kind: "length" },
        { name: "verdict", kind: "text" },
      ],
      text: 'One state per row; verdict "fits", or "binds", "retention lost", "loose in the housing", "overstressed", "no data"',
    },
    source: [
      { key: "shigley", at: "press and shrink fits, Eq. (7-39)" },
      { key: "iso286", at: "Tables 1 to 5" },
      { key: "practice", at: "root sum square of half tolerances; swelling counted from the dry state" },
    ],
    example: [20, "E10", 23, "+0.05/+0.10", "H7", "f7", "Demo Sorrel", "aluminium alloy", "carbon steel", -20, 80],
    see: ["RUNCLEARANCE", "PRESSFIT", "LIMITS"],
  },
  (given) => {
    const { cold, hot, moisture } = given;
    if (cold > hot) throw clash("cold", "cold must be at most hot");
    checkDiameters(given.bore, given.outside, given.housingoutside, "housingoutside");
    const grade = findGrade(given.grade, given.grades);
    const housing = findMetal("housing", given.housing);
    const shaft = findMetal("shaft", given.shaft);
    const expansion = needed(grade, "expansion");
    const ring: Ring = {
      bore: given.bore,
      outside: given.outside,
      housing: given.housingoutside ?? Infinity,
      bushModulus: needed(grade, "compressiveModulus"),
      bushPoisson: needed(grade, "poisson"),
      housingModulus: housing.modulus,
      housingPoisson: housing.poisson,
    };
    const assembly = assemblyOf(given, closeInOf(ring));
    const loose = assembly.outside.least - assembly.housing.greatest <= 0;

    const row = (state: string, temperature: number, moisture: Moisture): Answer[] => {
      const swelling = swellings[moisture];
      const swollen = swelling === undefined ? 0 : grade.values[swelling];
      if (swollen === undefined) {
        const reason = `no data, ${property(swelling!).heading}`;
        return [state, temperature, "", "", "", "", "", reason];
      }
      const rise = temperature - assemblyTemperature;
      const result = fitState(assembly, {
        bush: expansion * rise + swollen,
        housing: housing.expansion * rise,
        shaft: shaft.expansion * rise,
      });
      return [state, temperature, ...numbers(result), verdict(result, loose, stressOf(ring, result), grade)];
    };
    return [
      row("cold", cold, moisture),
      row("assembly", assemblyTemperature, "dry"),
      row("hot", hot, moisture),
      row("hot and wet", hot, "soaked"),
    ];
  },
);

function needed(grade: Grade, key: "expansion" | "compressiveModulus" | "poisson"): number {
  const value = grade.values[key];
  if (value === undefined) throw lacks(grade, property(key).heading);
  return value;
}

interface Zones {
  readonly bore: number;
  readonly borezone: Zone;
  readonly outside: number;
  readonly outsidezone: Zone;
  readonly housingzone: Zone;
  readonly shaftzone: Zone;
  readonly borestate: "pressed" | "free";
}

function assemblyOf(given: Zones, closeIn: number): Assembly {
  const limits = (zone: "borezone" | "outsidezone" | "housingzone" | "shaftzone", size: "bore" | "outside"): Limits => {
    checkFeature(zone, given[zone], zone === "borezone" || zone === "housingzone" ? "hole" : "shaft");
    return limitsIn(given[zone], given[size], { zone, size });
  };
  return {
    boreState: given.borestate,
    bore: limits("borezone", "bore"),
    shaft: limits("shaftzone", "bore"),
    outside: limits("outsidezone", "outside"),
    housing: limits("housingzone", "outside"),
    nominalOutside: given.outside,
    closeIn,
  };
}

const numbers = ({ clearance, band, interference }: FitState): number[] => [
  clearance.least,
  clearance.greatest,
  band.least,
  band.greatest,
  interference.least,
];

/** Compressive hoop stress at the bore for the greatest interference, 2·p·D²/(D² − d²). */
function stressOf(ring: Ring, { interference }: FitState): number {
  const pressure = fitPressureOf(ring, Math.max(0, interference.greatest));
  return (2 * pressure * ring.outside ** 2) / (ring.outside ** 2 - ring.bore ** 2);
}

/** Worst case: every fault that a bush within its tolerances can have in this state. */
function verdict({ clearance, interference }: FitState, loose: boolean, stress: number, grade: Grade): string {
  const strength = grade.values.compressiveStrength;
  const faults = [
    clearance.least <= 0 && "binds",
    interference.least <= 0 && (loose ? "loose in the housing" : "retention lost"),
    strength !== undefined && stress > strength && "overstressed",
  ].filter((fault) => fault !== false);
  if (faults.length > 0) return faults.join(", ");
  return strength === undefined ? "fits, strength not known" : "fits";
}
