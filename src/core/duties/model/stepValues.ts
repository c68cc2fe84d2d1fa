import { clash, isMissing } from "../../errors";
import type { Span } from "../../formula";
import type { Motion } from "../../grades/model/limits";
import { motions } from "../../grades/model/limits";
import type { System } from "../../kinds";
import { present } from "../../present";
import { checkFit, wallOf } from "../fit/assembly";
import { field, fieldKeys, isAskedFor, parts } from "./fields";
import type { FieldKey, FieldValues, Given, Part } from "./fields";
import { misfit, sizeText } from "./misfit";

/** A row of a duty with what it takes over from the row above. */
export interface StepValues {
  readonly values: FieldValues;
  readonly part: Part;
  readonly motion: Motion;
}

/** What may differ from step to step; all else is of the whole duty. */
export const stepKeys: ReadonlySet<FieldKey> = new Set([
  "duty",
  "load",
  "axialLoad",
  "motion",
  "rpm",
  "swing",
  "stroke",
  "cycles",
  "time",
  "temperature",
]);
const drives = { rpm: "turning", swing: "swinging", stroke: "linear" } as const;
const driveKeys = Object.keys(drives) as (keyof typeof drives)[];

/** Reads one row in the light of the one above it; throws what is missing, or has no place in this part and motion. */
export function stepValues(own: FieldValues, above: FieldValues, isLater: boolean, hasSteps: boolean): StepValues {
  const part = own.part ?? above.part ?? "sleeve";
  const motion = motionOf(own, above);
  if (isLater) checkSame(own, above);
  const values = isLater ? { ...carried(above, motion, own), ...ofStep(own) } : own;
  for (const key of misplacedIn(part, motion))
    if (own[key] !== undefined)
      throw clash(field(key).heading, `${field(key).heading} has no place ${placeOf(key, part, motion)}`);
  for (const key of requiredOf(part, motion)) if (values[key] === undefined) throw isMissing(field(key).heading);
  if (part === "washer" && (values.load === undefined) === (values.axialLoad === undefined))
    throw clash("load", "a washer's load stands under load or axial load, one of them");
  if (hasSteps) checkTimes(own, values);
  return { values, part, motion };
}

function checkTimes(own: FieldValues, values: FieldValues): void {
  if (own.time === undefined) throw clash("time", "time is missing: each step of a duty needs its time");
  if (values.runningTime !== undefined)
    throw clash("running time", "running time has no place beside steps: a step at rest has its own time");
}

/** The motion that a row states, or that follows from the one of rpm, swing and stroke that it fills. */
export function motionOf(own: FieldValues, above: FieldValues): Motion {
  if (own.motion !== undefined) return own.motion;
  const filled = driveKeys.filter((key) => own[key] !== undefined);
  const [only] = filled;
  if (only && filled.length === 1) return drives[only];
  if (filled.length > 1) throw clash("motion", `motion is missing: ${filled.join(" and ")} are both filled`);
  if (above.motion !== undefined) return above.motion;
  const drive = driveKeys.find((key) => above[key] !== undefined);
  if (drive) return drives[drive];
  throw clash("motion", 'motion is missing: fill rpm, swing or stroke, or type "static"');
}

/** What a later step takes over: no figure of another motion, and no motion that its own figures tell. */
function carried(above: FieldValues, motion: Motion, own: FieldValues): FieldValues {
  const { part = "sleeve" } = above;
  // a washer has its one load in either of two columns
  const hasLoad = part === "washer" && (own.load ?? own.axialLoad) !== undefined;
  const taken = (Object.entries(above) as [FieldKey, unknown][]).filter(([key]) => {
    if (!stepKeys.has(key)) return true;
    if (key === "motion") return above.motion === motion;
    return isAskedFor(key, part, motion) && !(hasLoad && field(key).group === "load");
  });
  return Object.fromEntries(taken);
}

/** Of a later row what belongs to its step; the rest is what the first row says. */
const ofStep = (own: FieldValues): FieldValues =>
  Object.fromEntries(Object.entries(own).filter(([key]) => stepKeys.has(key as FieldKey)));

function checkSame(own: FieldValues, above: FieldValues): void {
  for (const key of Object.keys(own) as FieldKey[]) {
    if (stepKeys.has(key) || isSame(own[key], above[key] ?? field(key).default)) continue;
    throw clash(field(key).heading, `${field(key).heading} cannot change between the steps of one duty`);
  }
}
/** Bands, zones and lists are alike by what they hold. */
export const isSame = (a: unknown, b: unknown): boolean => a === b || JSON.stringify(a) === JSON.stringify(b);

/** Sizes, loads and figures of the motion that another part or motion asks for; of the rest, what is not asked is told. */
function misplaced(part: Part, motion: Motion): FieldKey[] {
  return fieldKeys.filter(
    (key) => ["load", "size", "motion"].includes(field(key).group) && !isAskedFor(key, part, motion) && !idle.has(key),
  );
}
/** These play no part at rest and may stand there. */
const idle: ReadonlySet<FieldKey> = new Set(["friction", "runningTime", "restTime", "timeConstant", "loadTurns"]);

function placeOf(key: FieldKey, part: Part, motion: Motion): string {
  const { parts: ofParts } = field(key);
  if (ofParts && !ofParts.includes(part))
    return part === "sleeve" ? `on a plain sleeve: type its part` : `on a ${partName[part]}`;
  return motion === "static" ? "at rest" : `where the motion is ${motion}`;
}
const partName: Readonly<Record<Part, string>> = { sleeve: "plain sleeve", flanged: "flanged bush", washer: "washer" };

/** Tables by part and motion, so that a row is checked against short lists. */
const byCase = new Map<string, { readonly required: readonly FieldKey[]; readonly misplaced: readonly FieldKey[] }>(
  parts.flatMap((part) =>
    motions.map((motion) => [
      part + motion,
      {
        required: fieldKeys.filter(
          (key) => field(key).required && isAskedFor(key, part, motion) && !(key === "load" && part === "washer"),
        ),
        misplaced: misplaced(part, motion),
      },
    ]),
  ),
);
const requiredOf = (part: Part, motion: Motion) => present(byCase.get(part + motion)).required;
const misplacedIn = (part: Part, motion: Motion) => present(byCase.get(part + motion)).misplaced;

function checkBore(bore: number, { wall, outside, flangeOutside }: Given, system: System): void {
  if (outside !== undefined && outside <= bore) throw misfit("outside", "above the bore", bore, outside, system);
  if (flangeOutside !== undefined && flangeOutside <= bore)
    throw misfit("flange outside", "above the bore", bore, flangeOutside, system);
  if (wall === undefined || outside === undefined || Math.abs(bore + 2 * wall - outside) <= 1e-6 * outside) return;
  const [a, b, sum] = [bore, wall, outside].map((size) => sizeText(size, system));
  throw clash("wall", `wall and outside contradict each other: bore ${a} + 2 × ${b} is not ${sum}`);
}

function checkWall(given: Given, system: System): void {
  const { bore, flangeOutside, allowance } = given;
  const wall = wallOf(given);
  if (wall === undefined) return;
  if (flangeOutside !== undefined && bore !== undefined && flangeOutside <= bore + 2 * wall)
    throw misfit("flange outside", "above the bush's outside", bore + 2 * wall, flangeOutside, system);
  if (allowance !== undefined && allowance >= wall)
    throw misfit("wear allowance", "below the wall", wall, allowance, system);
}

/** How the fields of one duty stand to each other, and to the temperatures of all its steps; told in the sheet's units. */
export function checkWhole(given: Given, temperature: Span, system: System): void {
  const { bore, peakTemperature } = given;
  if (bore !== undefined) checkBore(bore, given, system);
  checkFit(given, system);
  checkWall(given, system);
  if (peakTemperature !== undefined && peakTemperature < temperature.high)
    throw clash("short peak temperature", "short peak temperature must not be below the surroundings' warmer end");
  if ((given.runningTime === undefined) !== (given.restTime === undefined))
    throw isMissing(given.restTime === undefined ? "rest time" : "running time");
}
