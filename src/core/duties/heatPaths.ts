import { findMetal } from "../fit/metals";
import type { PropertyKey, Values } from "../grade/properties";
import { conductances, pathArgs } from "../heat/paths";
import type { Missing } from "./criterion";
import type { Duty } from "./duty";
import { wallOf } from "./fitAssembly";

/** Rises of the bore by the duty's own ways out for the heat, K; the greatest is without end where no way out is sure. */
export interface Rises {
  readonly least: number;
  readonly greatest: number;
  readonly figures: readonly PropertyKey[];
}

/** Both ends of the shaft have the exposed length. */
const ends = 2;

/**
 * ΔT = μ·PV·d·L/G, with G through wall and housing and along the shaft's ends as in RUNTEMP; nothing where the duty gives
 * neither the housing's conductance nor an exposed length. Without the conductance the least rise has the housing at the
 * temperature of the surroundings, the greatest no way out through it.
 */
export function pathRises(values: Values, { given, pv, isMoving, part }: Duty): Rises | Missing | undefined {
  const { housingPath, endLength, bore, length } = given;
  if (!isMoving || part === "washer" || (housingPath === undefined && !endLength)) return undefined;
  const wall = wallOf(given);
  if (wall === undefined) return { field: "wall" };
  if (endLength && given.shaft === undefined) return { field: "shaft" };
  const friction = given.friction ?? values.frictionHigh;
  if (friction === undefined) return { property: "frictionHigh" };
  if (values.conductivity === undefined) return { property: "conductivity" };
  const { least, greatest } = conductances({
    bore: bore!,
    length: length!,
    wall,
    bushconductivity: values.conductivity,
    shaftconductivity: endLength ? findMetal("shaft", given.shaft!).conductivity : 1,
    endlength: endLength ?? 0,
    ends: endLength ? ends : 0,
    ...(housingPath === undefined ? {} : { housingpath: housingPath }),
    film: pathArgs.film.default,
    contact: pathArgs.contact.default,
  });
  const heat = friction * pv * bore! * length!;
  const figures: readonly PropertyKey[] =
    given.friction === undefined ? ["frictionHigh", "conductivity"] : ["conductivity"];
  return { least: heat / greatest, greatest: heat === 0 ? 0 : heat / least, figures };
}
