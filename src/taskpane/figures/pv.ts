import { verdictText } from "../../core/duties";
import type { Duty, NamedDuty, Ranked } from "../../core/duties";
import { kinds } from "../../core/kinds";
import type { System } from "../../core/kinds";
import { present } from "../../core/present";
import { figuresOf, isMoving } from "../state/figures";
import { bareNumber } from "../state/quantity";
import type { Told, Untold } from "./told";
import { bearsNothing, boundsOf, hardest, pointsOf, pvOf } from "./outline";
import type { Bounds, MarkedPoint } from "./outline";

export interface PvFigure extends Told {
  readonly curves: readonly { readonly name: string; readonly bounds: Bounds }[];
  readonly points: readonly MarkedPoint[];
  /** What should be known beside it. */
  readonly notes: readonly string[];
}

export const letters = ["a", "b", "c"];

/** Where the steps of a duty stand inside the limits of some grades, in its surroundings and with its factors. */
export function pvFigure(duty: NamedDuty, shown: readonly Ranked[], system: System): PvFigure | Untold {
  const verdict = (one: Ranked) => verdictText(one.checks, system, one);
  if (!isMoving(duty))
    return {
      why: `At rest only the static pressure counts: there is no speed to draw. ${shown.map((one) => `${one.grade.name}: ${verdict(one)}.`).join(" ")}`,
    };
  const corner = hardest(duty);
  const points = pointsOf(corner);
  const limits = shown.map((one) => ({
    name: one.grade.name,
    bounds: boundsOf(one.grade.values, corner),
    verdict: verdict(one),
  }));
  const { impactFactor } = corner;
  const curves = limits.map(({ name, bounds }) => ({
    name,
    bounds: { ...bounds, pressure: bounds.pressure === undefined ? undefined : bounds.pressure / impactFactor },
  }));
  const number = (kind: "pressure" | "speed" | "pv", value: number | undefined) =>
    value === undefined ? "no data" : value === 0 ? "none" : bareNumber(kind, value, system);
  const inUnits = (["pressure", "speed", "pv"] as const).map((kind) => `${kinds[kind].name}, ${kinds[kind][system]}`);
  return {
    curves,
    points,
    notes: notesOf(duty, corner, points, limits),
    summary: `${standsAt(duty, system)} ${shown.map((one, i) => `${letters[i]}, ${one.grade.name}: ${verdict(one)}.`).join(" ")}`,
    numbers: {
      headings: ["what", ...inUnits, "verdict"],
      rows: [
        ...points.map((point) => [
          point.mark || "duty",
          `${bareNumber("pressure", point.pressure, system)}${impactFactor > 1 ? ` × ${impactFactor}` : ""}`,
          bareNumber("speed", point.speed, system),
          bareNumber("pv", pvOf(point), system),
          "",
        ]),
        ...limits.map(({ name, bounds, verdict: said }, i) => [
          `${letters[i]}, limits of ${name}`,
          number("pressure", bounds.pressure),
          number("speed", bounds.speed),
          number("pv", bounds.pv),
          said,
        ]),
      ],
    },
    piece: "checks",
  };
}

function notesOf(
  duty: NamedDuty,
  { impactFactor, designFactor }: Duty,
  points: readonly MarkedPoint[],
  limits: PvFigure["curves"],
): string[] {
  const bare = limits.flatMap(({ bounds }, i) => (bearsNothing(bounds) ? [present(letters[i])] : []));
  return [
    "Pressure in motion, speed and PV are drawn; the verdict looks at every criterion.",
    ...(impactFactor > 1 ? [`The limits of pressure are drawn divided by the impact factor of ${impactFactor}.`] : []),
    ...(designFactor > 1 ? [`The limits are divided by the design factor of ${designFactor}.`] : []),
    ...(duty.bands.length > 0
      ? ["Of each band the end with the greatest PV is drawn, the design factor counted."]
      : []),
    ...(points.some(({ speed }) => speed === 0)
      ? ["A speed of 0 lies at the left edge; there the static limit counts."]
      : []),
    ...(bare.length > 0 ? [`No limits are drawn for ${bare.join(" and ")}: too warm, so that nothing is borne.`] : []),
  ];
}

/** Where the marks stand, in a sentence. */
function standsAt(duty: NamedDuty, system: System): string {
  const { pressure, speed, pv } = figuresOf(duty, system);
  const { length } = duty.steps;
  if (length > 1) return `The ${length} steps (numbered marks) reach ${pressure} and ${speed}, PV ${pv}.`;
  // the ends of bands do not come together: pressure and speed here need not be those of the mark
  return duty.bands.length > 0
    ? `The duty (filled mark at one end of its bands) reaches at most ${pressure} and ${speed}, PV ${pv}.`
    : `The duty (${duty.part === "flanged" ? "marks of bore and flange" : "filled mark"}) runs at ${pressure} and ${speed}, PV ${pv}.`;
}
