import { findMetal } from "../fit/metals";
import type { PropertyKey, Values } from "../grade/properties";
import { flangedNodes, flangeRise, sleeveRise } from "../heat/flangedPaths";
import type { FlangedNodes } from "../heat/flangedPaths";
import { conductances, pathArgs } from "../heat/paths";
import type { Missing } from "./criterion";
import { peakOver } from "./duty";
import type { Duty, Face } from "./duty";
import type { FieldKey } from "./fields";
import { wallOf } from "./fitAssembly";

/** Of a rise, K; the greatest is without end where no way out is sure. */
export interface Ends {
  readonly least: number;
  readonly greatest: number;
}
/** Rises of the bore by the duty's own ways out for the heat; of a flanged bush the hotter of its two surfaces. */
export interface Rises extends Ends {
  readonly figures: readonly PropertyKey[];
  readonly surfaces?: { readonly sleeve: Ends; readonly flange: Ends };
}

/** Both ends of the shaft have the exposed length. */
const ends = 2;

/** What counts only where the duty gives ways out for the heat, with those ways themselves. */
export const pathFields = ["housingPath", "endLength", "friction"] as const satisfies readonly FieldKey[];

/** Whether the duty gives ways out for the heat of a bore in motion. */
export const givesPaths = ({ given, isMoving, part }: Duty): boolean =>
  isMoving && part !== "washer" && (given.housingPath !== undefined || !!given.endLength);

/** Whether a flange slides under load, so that it warms the bush and lies on its shoulder. */
export const bearsOnFlange = ({ steps }: Duty): boolean =>
  steps.some(({ bore, face }) => bore !== undefined && face !== undefined && face.pressure > 0);

/**
 * ΔT = μ·PV·d·L/G, with G through wall and housing and along the shaft's ends as in RUNTEMP; nothing where the duty gives
 * neither the housing's conductance nor an exposed length. Without the conductance the least rise has the housing at the
 * temperature of the surroundings, the greatest no way out through it. A loaded flange makes two nodes of it.
 */
export function pathRises(values: Values, duty: Duty): Rises | Missing | undefined {
  if (!givesPaths(duty)) return undefined;
  const { given, steps } = duty;
  const { housingPath, endLength = 0 } = given;
  const isFlanged = bearsOnFlange(duty);
  const wall = wallOf(given);
  if (wall === undefined) return { field: "wall" };
  if (isFlanged && given.flangeThickness === undefined) return { field: "flangeThickness" };
  if ((endLength > 0 || isFlanged) && given.shaft === undefined) return { field: "shaft" };
  const friction = given.friction ?? values.frictionHigh;
  if (friction === undefined) return { property: "frictionHigh" };
  if (values.conductivity === undefined) return { property: "conductivity" };
  const bush = {
    bore: given.bore!,
    length: given.length!,
    wall,
    bushconductivity: values.conductivity,
    shaftconductivity: given.shaft === undefined ? 1 : findMetal("shaft", given.shaft).conductivity,
    film: pathArgs.film.default,
    contact: pathArgs.contact.default,
  };
  const known = housingPath === undefined ? {} : { housingpath: housingPath };
  const { least, greatest } = conductances({ ...bush, endlength: endLength, ends: endLength > 0 ? ends : 0, ...known });
  const heat = peakOver(steps, given, ({ bore }) => friction * heatOf(bore));
  const alone: Ends = { least: heat / greatest, greatest: heat === 0 ? 0 : heat / least };
  const figures: readonly PropertyKey[] =
    given.friction === undefined ? ["frictionHigh", "conductivity"] : ["conductivity"];
  if (!isFlanged) return { ...alone, figures };

  const flanged = {
    ...{ ...bush, farend: endLength, shoulderend: endLength },
    ...{ flangeoutside: given.flangeOutside!, flangethickness: given.flangeThickness! },
  };
  const cool = flangedNodes(flanged, housingPath ?? Infinity);
  const warm = flangedNodes(flanged, housingPath ?? 0);
  const rise = (of: typeof sleeveRise, nodes: FlangedNodes): number =>
    peakOver(steps, given, ({ bore, face }) => of(nodes, friction * heatOf(bore), friction * heatOf(face)));
  // a flange that hardly bears lies loosely on its shoulder: it is not let cool the sleeve below what that has alone
  const sleeve: Ends = {
    least: Math.max(alone.least, rise(sleeveRise, cool)),
    greatest: Math.max(alone.greatest, rise(sleeveRise, warm)),
  };
  const flange: Ends = { least: rise(flangeRise, cool), greatest: rise(flangeRise, warm) };
  return {
    least: Math.max(sleeve.least, flange.least),
    greatest: Math.max(sleeve.greatest, flange.greatest),
    figures,
    surfaces: { sleeve, flange },
  };
}

/** W per friction of 1: load on the face times its speed. */
const heatOf = (face: Face | undefined): number => (face ? face.pressure * face.area * face.speed : 0);
