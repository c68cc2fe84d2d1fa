import { sourceTitle } from "../sources";
import type { System } from "../kinds";
import { roomTemperature } from "./assess";
import type { Duty } from "./assess";
import type { Grade, Library } from "./library";
import { curveKey, limitOf, speedKey } from "./limits";
import type { LimitKey } from "./limits";
import { property } from "./properties";
import { measure } from "./verdict";

/** What every verdict of this add-in carries, whatever the grade. */
export const standingCautions: readonly string[] = [
  "Preliminary sizing: test in the application before use.",
  "Figures are typical, not guaranteed.",
  "Follow the codes that apply where the machine stands.",
  "Where failure can hurt someone, have a licensed engineer decide.",
];

/** Shaft materials that the data name. */
export const shafts = [
  "hardened steel",
  "stainless steel",
  "soft steel",
  "hard-anodised aluminium",
  "chromed",
] as const;

/** Room temperature of the laboratories that state limits, °C (ISO 291). */
const laboratory = 23;

/** Everything to bear in mind with this grade in this duty, the particular first and the standing cautions last. */
export function cautionsOf(grade: Grade, duty: Duty, system: System = "metric", library?: Library): string[] {
  return [
    ...kindCautions(grade),
    ...limitCautions(grade, duty),
    ...temperatureCautions(grade, duty, system),
    ...moistureCautions(grade, duty),
    ...suitability(grade, duty, system),
    ...lengthCaution(duty),
    ...(library?.unknownColumns ?? []).map((heading) => `Column "${heading}" is no known property and was not used.`),
    ...standingCautions,
  ];
}

const kindCautions = ({ kind, name }: Grade): string[] =>
  kind === "demo"
    ? [`${name} is invented for the demo: not a material on sale, not for design.`]
    : kind === "generic"
      ? [`${name} is a generic family: a maker's grade may differ widely.`]
      : [];

function neededLimits({ motion }: Duty): LimitKey[] {
  return motion === "static" ? ["staticPressure"] : ["runningPressure", speedKey(motion), "pvLimit"];
}

function limitCautions(grade: Grade, duty: Duty): string[] {
  const cautions: string[] = [];
  for (const key of neededLimits(duty)) {
    const { heading } = property(key);
    const limit = limitOf(grade, key, duty.temperature);
    const curve = curveKey(key);
    if (limit.state === "missing") cautions.push(`No data on ${heading}: it was not checked.`);
    if (limit.state !== "known") continue;
    if (key === "runningPressure" && limit.key === "staticPressure")
      cautions.push("No running pressure limit is known: the static one was used.");
    if (curve && !grade.values[curve] && duty.temperature.high > laboratory)
      cautions.push(`The ${heading} was not derated: no curve against temperature is known.`);
    const origin = grade.origins[limit.key];
    if (origin?.label.startsWith("memory"))
      cautions.push(`The ${property(limit.key).heading} was recalled from ${sourceTitle(origin.source)}, not re-read.`);
    if (origin?.condition) cautions.push(`The ${property(limit.key).heading}: ${origin.condition}.`);
  }
  return cautions;
}

function temperatureCautions({ values }: Grade, { temperature }: Duty, system: System): string[] {
  const { lowestTemperature, highestTemperature, shortTermTemperature } = values;
  const cautions: string[] = [];
  if (highestTemperature === undefined) cautions.push("No data on highest temperature: it was not checked.");
  else if (
    temperature.high > highestTemperature &&
    shortTermTemperature !== undefined &&
    temperature.high <= shortTermTemperature
  )
    cautions.push(
      `Short excursions to ${measure("temperature", shortTermTemperature, system)} may be borne; the duty counts as lasting.`,
    );
  if (lowestTemperature === undefined && temperature.low < roomTemperature)
    cautions.push("No data on lowest temperature: it was not checked.");
  return cautions;
}

function moistureCautions(grade: Grade, duty: Duty): string[] {
  if (!duty.wet) return [];
  const { swellingSaturated } = grade.values;
  const swells =
    swellingSaturated === undefined
      ? "No data on swelling saturated: check the wet clearance yourself."
      : swellingSaturated > 0
        ? `Swells by ${swellingSaturated} % when saturated: check the wet clearance.`
        : undefined;
  return [
    ...(swells ? [swells] : []),
    ...(duty.motion === "static" ? [] : ["PV limits are for dry running unless their condition says otherwise."]),
  ];
}

function suitability({ values }: Grade, duty: Duty, system: System): string[] {
  const cautions: string[] = [];
  if (duty.shock) {
    if (values.shock === undefined) cautions.push("No data on shock.");
    else if (values.shock !== "good") cautions.push(`Bears shock: ${values.shock}.`);
    if (duty.impactFactor === undefined)
      cautions.push("Shock is not in the pressure unless the load was multiplied by an impact factor.");
  }
  return [...cautions, ...shaftCautions(values, duty), ...hardnessCaution(values, duty, system)];
}

function shaftCautions({ shafts: suited, softShaft }: Grade["values"], { shaft }: Duty): string[] {
  if (shaft === undefined) return [];
  if (!suited) return ["No data on shafts suited."];
  const cautions: string[] = [];
  if (!suited.some((word) => word.toLowerCase() === shaft.toLowerCase()))
    cautions.push(`A shaft of ${shaft} is not among those suited: ${suited.join(", ")}.`);
  if (shaft === "soft steel" && softShaft && softShaft !== "good") cautions.push(`Spares a soft shaft: ${softShaft}.`);
  return cautions;
}

/** Spoken where the shaft is known to be softer than the grade asks, or where its material but not its hardness is known. */
function hardnessCaution({ shaftHardness }: Grade["values"], { shaft, hardness }: Duty, system: System): string[] {
  const asked = hardness !== undefined || shaft !== undefined;
  if (!asked || shaftHardness === undefined || (hardness !== undefined && hardness >= shaftHardness)) return [];
  const found = hardness === undefined ? "" : `, it has ${measure("hardness", hardness, system)}`;
  return [`The shaft should have at least ${measure("hardness", shaftHardness, system)}${found}.`];
}

/** Length over bore outside 0.5 to 2 (common practice): short bushes lose their shaft's guidance, long ones load their edges. */
export const lengthCaution = ({ lengthRatio }: Pick<Duty, "lengthRatio">): string[] =>
  lengthRatio === undefined || (lengthRatio >= 0.5 && lengthRatio <= 2)
    ? []
    : [`Length is ${Number(lengthRatio.toPrecision(2))} times the bore: 0.5 to 2 is common practice.`];
