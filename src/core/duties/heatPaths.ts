import { findMetal } from "../fit/metals";
import type { PropertyKey, Values } from "../grade/properties";
import { bushArgs, conductances, pathArgs, pathBetween, pathLines } from "../heat/paths";
import type { Paths } from "../heat/paths";
import { labelOf } from "../teach/worksheet";
import { figure, isMissing, metalFigure } from "./criterion";
import type { Known, Missing, Working } from "./criterion";
import type { Duty } from "./duty";
import { wallOf } from "./fitStates";

/** Rises of the bore by the duty's own ways out for the heat, K; the greatest is without end where no way out is sure. */
export interface Rises {
  readonly least: number;
  readonly greatest: number;
  readonly figures: readonly PropertyKey[];
}

/** Both ends of the shaft have the exposed length. */
const ends = 2;

/** The ways out for the heat that the duty gives; nothing where it gives neither the housing's conductance nor an exposed length. */
function pathsOf({ conductivity }: Values, { given, isMoving, part }: Duty): Paths | Missing | undefined {
  const { housingPath, endLength, bore, length } = given;
  if (!isMoving || part === "washer" || (housingPath === undefined && !endLength)) return undefined;
  const wall = wallOf(given);
  if (wall === undefined) return { field: "wall" };
  if (endLength && given.shaft === undefined) return { field: "shaft" };
  if (conductivity === undefined) return { property: "conductivity" };
  return {
    bore: bore!,
    length: length!,
    wall,
    bushconductivity: conductivity,
    shaftconductivity: endLength ? findMetal("shaft", given.shaft!).conductivity : 1,
    endlength: endLength ?? 0,
    ends: endLength ? ends : 0,
    ...(housingPath === undefined ? {} : { housingpath: housingPath }),
    film: pathArgs.film.default,
    contact: pathArgs.contact.default,
  };
}

/**
 * ΔT = μ·PV·d·L/G, with G through wall and housing and along the shaft's ends as in RUNTEMP. Without the conductance the least rise has the housing at the
 * temperature of the surroundings, the greatest no way out through it.
 */
export function pathRises(values: Values, duty: Duty): Rises | Missing | undefined {
  const paths = pathsOf(values, duty);
  const { given, pv } = duty;
  const friction = given.friction ?? values.frictionHigh;
  // the order in which what is missing is told: fields, friction, conductivity
  if (paths === undefined || "field" in paths) return paths;
  if (friction === undefined) return { property: "frictionHigh" };
  if (isMissing(paths)) return paths;
  const { least, greatest } = conductances(paths);
  const heat = friction * pv * given.bore! * given.length!;
  const figures: readonly PropertyKey[] =
    given.friction === undefined ? ["frictionHigh", "conductivity"] : ["conductivity"];
  return { least: heat / greatest, greatest: heat === 0 ? 0 : heat / least, figures };
}

/** The friction heat Q and the conductances G_low and G_high of the ways out, for the PV of the duty. */
export function pathWorking(values: Values, duty: Duty): Working {
  const paths = pathsOf(values, duty) as Paths;
  const { friction } = duty.given;
  const args = Object.entries({ ...bushArgs, ...pathArgs }).map(([name, { symbol, kind, text }]): [string, Known] => [
    symbol,
    figure(
      paths[name as keyof Paths] ?? NaN,
      kind,
      labelOf(text),
      name === "bushconductivity" ? "conductivity" : undefined,
    ),
  ]);
  return {
    lines: ["Q = μ * PV * d * L", ...pathLines(paths)],
    known: {
      μ: figure(
        friction ?? values.frictionHigh!,
        "ratio",
        "Coefficient of friction",
        friction === undefined ? "frictionHigh" : undefined,
      ),
      ...Object.fromEntries(args),
      ...(paths.ends > 0
        ? {
            λs: metalFigure(findMetal("shaft", duty.given.shaft!), "conductivity", "Thermal conductivity of the shaft"),
          }
        : {}),
    },
    between: { Q: { unit: "W", text: "Friction heat" }, ...pathBetween },
  };
}
