import { capitalised } from "../capitalised";
import type { Check } from "../duties/judging/criterion";
import type { Duty } from "../duties/model/duty";
import { missingText, reasonOf } from "../duties/judging/verdict";
import type { Grade, Library } from "./model/library";
import { property } from "./model/properties";
import type { System } from "../kinds";
import { measureText } from "../measure";
import { sourceTitle } from "../sources";

/** What every verdict of this add-in carries, whatever the grade. */
export const standingCautions: readonly string[] = [
  "Preliminary sizing: test in the application before use.",
  "Figures are typical, not guaranteed.",
  "Follow the codes that apply where the machine stands.",
  "Where failure can hurt someone, have a licensed engineer decide.",
];

/** Everything to bear in mind with this grade in this duty, the particular first and the standing cautions last. */
export function cautionsOf(
  grade: Grade,
  duty: Duty,
  checks: readonly Check[],
  system: System = "metric",
  library?: Library,
): string[] {
  return [
    ...kindCautions(grade),
    ...checks.flatMap((check) => checkCautions(check, system)),
    ...figureCautions(grade, checks),
    ...temperatureCautions(grade, duty, system),
    ...moistureCautions(duty),
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

const sentence = (text: string): string => `${capitalised(text)}.`;

/** What a criterion could not check, what it says in words, and what it notes. */
function checkCautions(check: Check, system: System): string[] {
  const { criterion, word, say, tell, notes } = check;
  return [
    ...(word === "no data" ? [`No data on ${missingText(check)}: ${criterion.heading} was not checked.`] : []),
    ...(say && word !== "no data" ? [sentence(reasonOf(check, system))] : []),
    ...(tell ? [`${sentence(tell(system)).slice(0, -1)}: check the wet clearance.`] : []),
    ...(notes?.(system, check) ?? []).map((note) => `${sentence(criterion.heading).slice(0, -1)}: ${note}.`),
  ];
}

/** Figures that were remembered, by their sources, and the conditions that figures hold under. */
function figureCautions(grade: Grade, checks: readonly Check[]): string[] {
  const recalled = new Map<string, string[]>();
  const conditions: string[] = [];
  for (const key of new Set(checks.flatMap(({ figures }) => figures))) {
    const origin = grade.origins[key];
    if (!origin) continue;
    const { heading } = property(key);
    const { source, label, condition } = origin;
    if (label === "memory" || label === "memory, band only")
      recalled.set(source, [...(recalled.get(source) ?? []), heading]);
    if (condition) conditions.push(`The ${heading}: ${condition}.`);
  }
  const lines = [...recalled].map(
    ([source, headings]) => `Recalled from ${sourceTitle(source)}, not re-read: ${headings.join(", ")}.`,
  );
  return [...lines, ...conditions];
}

function temperatureCautions({ values }: Grade, { temperature }: Duty, system: System): string[] {
  const { highestTemperature: highest, shortTermTemperature: short } = values;
  const isExcursion =
    highest !== undefined && short !== undefined && temperature.high > highest && temperature.high <= short;
  return isExcursion
    ? [`Short excursions to ${measureText("temperature", short, system)} may be borne; the duty counts as lasting.`]
    : [];
}

const moistureCautions = ({ given, isMoving, hasBlows }: Duty): string[] => [
  ...(given.moisture === "wet" && isMoving
    ? ["PV limits are for dry running unless their condition says otherwise."]
    : []),
  ...(hasBlows && given.impactFactor === undefined
    ? ["Shock is not in the pressure unless the load was multiplied by an impact factor."]
    : []),
];
