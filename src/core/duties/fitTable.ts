import { clash } from "../errors";
import type { Limits } from "../fit/zones/iso286";
import { formula } from "../formula";
import type { Answer } from "../formula";
import { lacks } from "../grades/grade";
import type { Grade } from "../grades/model/library";
import { property } from "../grades/model/properties";
import type { Values } from "../grades/model/properties";
import { chooseDuty, chooseGrade, oneDutyArgs } from "./judging/choose";
import { clearanceFault } from "./criteria/clearance";
import { gripFault, gripUntold, isCrushed } from "./criteria/grip";
import { roomTemperature } from "./criteria/lowestTemperature";
import { isMissing, rounding, words } from "./judging/criterion";
import type { Word } from "./judging/criterion";
import type { Duty } from "./model/duty";
import { field } from "./model/fields";
import { bandOf } from "./fit/band";
import { fitStates, ifNothingKept, leastBy, warmerStates } from "./fit/states";
import type { FitState, FitStates } from "./fit/states";
import type { NamedDuty } from "./model/namedDuty";
import { dutiesArg } from "./model/readDuties";
import { riseUntold } from "./model/temperatures";

/** One state of a fit with its word, and the reasons for it. */
export interface FitRow extends FitState {
  /** Where the clearance of most assemblies lies. */
  readonly band: Limits;
  /** With nothing kept of a press fit whose share is not told, or with the bore as much warmer as was measured. */
  readonly isSupposed: boolean;
  readonly word: Word;
  readonly reasons: readonly string[];
}
type Reason = string | false | undefined;
const isTold = (reason: Reason): reason is string => typeof reason === "string";

const asksLowest = ({ bush }: FitState): boolean => bush < roomTemperature;

/** The figure that bounds the temperature of a state: in a short peak that for short times. */
const highestKey = ({ surroundings }: FitState, { temperature }: Duty) =>
  surroundings > temperature.high ? "shortTermTemperature" : "highestTemperature";

/** By which figures of the grade the state fails. */
function exceeded(state: FitState, values: Values, duty: Duty): Reason[] {
  const { compressiveStrength: strength, lowestTemperature: lowest } = values;
  const highest = values[highestKey(state, duty)];
  return [
    strength !== undefined && isCrushed(state, strength) && "overstressed",
    highest !== undefined && state.bush > highest + rounding && "hotter than the grade bears",
    asksLowest(state) && lowest !== undefined && state.bush < lowest - rounding && "colder than the grade bears",
  ];
}

/** The figures that would tell. */
const unknown = (state: FitState, values: Values, duty: Duty): Reason[] =>
  (
    [
      "compressiveStrength",
      highestKey(state, duty),
      ...(asksLowest(state) ? (["lowestTemperature"] as const) : []),
    ] as const
  )
    .filter((key) => values[key] === undefined)
    .map((key) => property(key).heading);

/** The word of one state, by what the criteria look for; beyond the grade's temperatures no figure of it holds. */
function judged(state: FitState, { values }: Grade, duty: Duty, isSupposed: boolean): FitRow {
  const { given } = duty;
  const untold = gripUntold(state, given);
  const faults = [clearanceFault(state, given), gripFault(state)];
  const found: readonly (readonly [Word, readonly Reason[]])[] = [
    ["fails", [...(isSupposed ? [] : faults), ...exceeded(state, values, duty)]],
    ["no data", unknown(state, values, duty)],
    ["care", [...(isSupposed ? faults : []), untold !== undefined && `${field(untold).heading} not told`]],
  ];
  const [word, reasons] = found.find(([, all]) => all.some(isTold)) ?? (["fits", []] as const);
  return { ...state, band: bandOf(state.course, state), isSupposed, word, reasons: reasons.filter(isTold) };
}

/** Of the states with the bore warmer the narrowest and the loosest that fail, where none of those told does. */
function warmerFaults({ states }: FitStates, { given }: Duty, warmer: readonly FitState[]): FitState[] {
  const worst = (fault: (state: FitState) => string | undefined, of: (state: FitState) => number): FitState[] => {
    const failing = warmer.filter((state) => fault(state) !== undefined);
    return failing.length === 0 || states.some((state) => fault(state) !== undefined) ? [] : [leastBy(failing, of)];
  };
  return [
    ...worst(
      (state) => clearanceFault(state, given),
      ({ clearance }) => clearance.least,
    ),
    ...worst(gripFault, ({ grip }) => grip),
  ];
}

/** The states at one corner of the duty's bands. */
function rowsAt(duty: Duty, grade: Grade): FitRow[] {
  const found = fitStates(grade.values, duty);
  if (isMissing(found)) {
    if ("property" in found) throw lacks(grade, property(found.property).heading);
    const { heading } = field(found.field);
    throw clash(heading, `${heading} is missing: the states of a fit need it`);
  }
  const { states } = found;
  return [
    // the moment of pressing in is one, however moist the bush
    ...states.filter(({ name }, i) => i === 0 || name !== "assembly").map((state) => judged(state, grade, duty, false)),
    ...ifNothingKept(found, duty.given).map((state) => judged(state, grade, duty, true)),
    ...warmerFaults(found, duty, warmerStates(found, riseUntold(grade.values, duty))).map((state) =>
      judged({ ...state, name: `${state.name}, bore warmer` }, grade, duty, true),
    ),
  ];
}

const wider = (a: Limits, b: Limits): Limits => ({
  least: Math.min(a.least, b.least),
  greatest: Math.max(a.greatest, b.greatest),
});
/** Of two corners the harder word, with the reasons of each that has it. */
function harderWord(a: FitRow, b: FitRow): Pick<FitRow, "word" | "reasons"> {
  if (a.word === b.word) return { word: a.word, reasons: [...new Set([...a.reasons, ...b.reasons])] };
  return words.indexOf(b.word) < words.indexOf(a.word) ? b : a;
}
function harder(a: FitRow, b: FitRow): FitRow {
  const { word, reasons } = harderWord(a, b);
  return {
    ...a,
    word,
    reasons,
    bush: Math.max(a.bush, b.bush),
    housing: Math.max(a.housing, b.housing),
    clearance: wider(a.clearance, b.clearance),
    band: wider(a.band, b.band),
    grip: Math.min(a.grip, b.grip),
    stress: Math.max(a.stress, b.stress),
  };
}

/** Every state of a duty's fit, over the corners of its bands; throws what is missing. */
export function fitRows({ part, corners }: NamedDuty, grade: Grade): FitRow[] {
  if (part === "washer") throw clash("duty", "a washer has no bore, and no fit");
  const rows = new Map<string, FitRow>();
  for (const corner of corners)
    for (const row of rowsAt(corner, grade)) {
      const key = [row.assembled, row.name, row.isSupposed].join();
      const before = rows.get(key);
      rows.set(key, before ? harder(before, row) : row);
    }
  return [...rows.values()];
}

/** "fails, binds, grip lost" */
export const fitVerdict = ({ word, reasons }: FitRow): string => [word, ...reasons].join(", ");

export const FITTABLE = formula(
  {
    id: "FITTABLE",
    text: "The fit of one duty state by state: running clearance, grip and hoop stress of a bush pressed into its housing, through assembly (20 °C), cold, hot, in a short peak, running, moist or dried, and cold again after the hottest hold has relaxed it, with the hardest states of service again where those are narrower or looser. Its verdicts are those of the criteria clearance and grip; beyond the grade's temperatures a state fails. A moisture at assembly that is not told is looked at dry and humid, a share of grip kept that is not told at 100 % and at 0 %, both care; states that only a bore warmer than its PV implies would fail, as was measured, are added as care. Of bands the harder end counts in each column",
    args: { duties: dutiesArg, ...oneDutyArgs },
    units: true,
    result: {
      shape: "table",
      text: 'One state per row: least and greatest clearance in the worst case of all tolerances, root sum square where most assemblies lie; below 0 the shaft is held and the bush is loose. Verdict "fits", or "fails", "no data", "care" with the reason: binds, loose in the housing, grip lost, overstressed',
      columns: [
        { name: "state", kind: "text" },
        { name: "bush temperature", kind: "temperature" },
        { name: "housing temperature", kind: "temperature" },
        { name: "moisture at assembly", kind: "text" },
        { name: "swelling since assembly", kind: "percent" },
        { name: "share of grip kept", kind: "percent" },
        { name: "least clearance", kind: "length" },
        { name: "greatest clearance", kind: "length" },
        { name: "root-sum-square least", kind: "length" },
        { name: "root-sum-square greatest", kind: "length" },
        { name: "least interference", kind: "length" },
        { name: "hoop stress", kind: "pressure" },
        { name: "verdict", kind: "text" },
      ],
    },
    source: [
      { key: "shigley", at: "press and shrink fits, Eq. (7-39)" },
      { key: "iso286", at: "Tables 1 to 5" },
      { key: "own", at: "history of a press fit whose polymer relaxes" },
      { key: "practice", at: "root sum square of half tolerances" },
    ],
    example: [
      [
        ["duty", "Roof-vent pivot"],
        ["load [N]", 900],
        ["bore [mm]", 20],
        ["length [mm]", 20],
        ["outside [mm]", 23],
        ["swing", 70],
        ["cycles", 0.5],
        ["temperature [°C]", "-20 to 80"],
        ["shaft", "hardened steel"],
        ["housing", "aluminium alloy"],
        ["bore zone", "E10"],
        ["outside zone", "+0.15/+0.20 mm"],
        ["housing zone", "H7"],
        ["shaft zone", "f7"],
        ["moisture at assembly", "dry"],
        ["share of grip kept", "60 %"],
      ],
      "",
      "Demo Sorrel",
    ],
    see: ["DUTYCHECKS", "RUNCLEARANCE", "PRESSFIT", "GRIPLEFT", "LIMITS"],
  },
  ({ duties, duty, grade, grades }): Answer[][] => {
    const chosen = chooseDuty(duties, duty);
    const isMoistureTold = chosen.values.assemblyMoisture !== undefined;
    return fitRows(chosen, chooseGrade(chosen, grade, grades)).map((row) => [
      row.name,
      row.bush,
      row.housing,
      isMoistureTold ? row.assembled : `${row.assembled}, assumed`,
      row.swelling,
      row.kept ?? "",
      row.clearance.least,
      row.clearance.greatest,
      row.band.least,
      row.band.greatest,
      row.grip,
      row.stress,
      fitVerdict(row),
    ]);
  },
);
