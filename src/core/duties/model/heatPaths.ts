import { findMetal } from "../../fit/metals";
import type { PropertyKey, Values } from "../../grades/model/properties";
import { flangedNodes, flangeRise, nodeBetween, nodeLines, sleeveRise } from "../../heat/flangedPaths";
import type { FlangedNodes } from "../../heat/flangedPaths";
import { bushArgs, conductances, pathArgs, pathBetween, pathLines } from "../../heat/paths";
import type { Paths } from "../../heat/paths";
import { present } from "../../present";
import { labelOf } from "../../teach/worksheet";
import { figure, isMissing, joined, metalFigure } from "../judging/criterion";
import type { Known, Missing, Working } from "../judging/criterion";
import { peakOver } from "./duty";
import type { Duty, Face } from "./duty";
import type { FieldKey } from "./fields";
import { wallOf } from "../fit/assembly";

/** Of a rise, K. */
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
  isMoving && part !== "washer" && (given.housingPath !== undefined || given.endLength !== undefined);

/** Whether a flange slides under load, so that it warms the bush and lies on its shoulder. */
export const bearsOnFlange = ({ steps }: Duty): boolean =>
  steps.some(({ bore, face }) => bore !== undefined && face !== undefined && face.pressure > 0);

/** What a duty that gives ways out leaves out of its flange and its shaft. */
function unstatedOf(duty: Duty): "flangeThickness" | "shaft" | undefined {
  const { endLength = 0, shaft, flangeThickness } = duty.given;
  const isFlanged = bearsOnFlange(duty);
  if (isFlanged && flangeThickness === undefined) return "flangeThickness";
  return (endLength > 0 || isFlanged) && shaft === undefined ? "shaft" : undefined;
}

/** The ways out for the heat that the duty gives; nothing where it gives neither the housing's conductance nor an exposed length. */
function pathsOf({ conductivity }: Values, duty: Duty): Paths | Missing | undefined {
  if (!givesPaths(duty)) return undefined;
  const { housingPath, endLength = 0, shaft, bore, length } = duty.given;
  const wall = wallOf(duty.given);
  if (wall === undefined) return { field: "wall" };
  const unstated = unstatedOf(duty);
  if (unstated) return { field: unstated };
  if (conductivity === undefined) return { property: "conductivity" };
  return {
    bore: present(bore),
    length: present(length),
    wall,
    bushconductivity: conductivity,
    shaftconductivity: shaft === undefined ? 1 : findMetal("shaft", shaft).conductivity,
    endlength: endLength,
    ends,
    ...(housingPath === undefined ? {} : { housingpath: housingPath }),
    film: pathArgs.film.default,
    contact: pathArgs.contact.default,
  };
}

/**
 * ΔT = μ·PV·d·L/G, with G through wall and housing and along the shaft's ends as in RUNTEMP; nothing where the duty gives
 * neither the housing's conductance nor an exposed length. Without the conductance the least rise has the housing at the
 * temperature of the surroundings, the greatest no way out through it. A loaded flange makes two nodes of it.
 */
export function pathRises(values: Values, duty: Duty): Rises | Missing | undefined {
  const paths = pathsOf(values, duty);
  const { given, steps } = duty;
  const { housingPath, friction = values.frictionHigh } = given;
  // the order in which what is missing is told: fields, friction, conductivity
  if (paths === undefined || "field" in paths) return paths;
  if (friction === undefined) return { property: "frictionHigh" };
  if (isMissing(paths)) return paths;
  const { least, greatest } = conductances(paths);
  const heat = peakOver(steps, given, ({ bore }) => friction * heatOf(bore));
  const alone: Ends = { least: heat / greatest, greatest: heat / least };
  const figures: readonly PropertyKey[] =
    given.friction === undefined ? ["frictionHigh", "conductivity"] : ["conductivity"];
  if (!bearsOnFlange(duty)) return { ...alone, figures };

  const flanged = {
    ...{ ...paths, farend: paths.endlength, shoulderend: paths.endlength },
    ...{ flangeoutside: present(given.flangeOutside), flangethickness: present(given.flangeThickness) },
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

/** The lines that lead to one end of the rise, ΔT: the friction heat over the conductance of the ways out, or two nodes where a flange bears. */
export function pathWorking(values: Values, duty: Duty, end: keyof Ends): Working {
  const paths = pathsOf(values, duty) as Paths;
  const { friction, shaft } = duty.given;
  const args = Object.entries({ ...bushArgs, ...pathArgs }).map(([name, { symbol, kind, text }]): [string, Known] => [
    symbol,
    figure(
      paths[name as keyof Paths] ?? NaN,
      kind,
      labelOf(text),
      name === "bushconductivity" ? "conductivity" : undefined,
    ),
  ]);
  const ofShaft: Record<string, Known> =
    shaft === undefined
      ? {}
      : { λs: metalFigure(findMetal("shaft", shaft), "conductivity", "Thermal conductivity of the shaft") };
  const ofFriction = figure(
    present(friction ?? values.frictionHigh),
    "ratio",
    "Coefficient of friction",
    friction === undefined ? "frictionHigh" : undefined,
  );
  const ways: Working = {
    lines: pathLines(paths),
    known: { μ: ofFriction, ...Object.fromEntries(args), ...ofShaft },
    between: pathBetween,
  };
  const G = end === "least" ? "G_high" : "G_low";
  if (bearsOnFlange(duty)) return joined(ways, nodesWorking(values, duty, end, G));
  return joined(ways, {
    lines: ["Q = μ * PV * d * L", `ΔT = Q / ${G}`],
    known: {},
    between: { Q: { unit: "W", text: "Friction heat" }, ΔT: riseText },
  });
}
const riseText = { unit: "K", text: "Rise by the ways out for the heat" };

/** The hotter of sleeve and flange, as `flangedNodes` has them; over a cycle each by its first-order peak, as one figure. */
function nodesWorking(values: Values, duty: Duty, end: keyof Ends, G: string): Working {
  const { given, steps } = duty;
  const hotter = "ΔT = max(ΔT_s, ΔT_f)";
  const between = { ΔT: riseText };
  if (steps.length > 1 || given.timeConstant !== undefined) {
    const { sleeve, flange } = present((pathRises(values, duty) as Rises).surfaces);
    const known = {
      ΔT_s: figure(sleeve[end], "rise", "Rise of the sleeve, one of two nodes on the shaft"),
      ΔT_f: figure(flange[end], "rise", "Rise of the flange, the other node"),
    };
    return { lines: [hotter], known, between };
  }
  const [{ bore, face }] = steps;
  return {
    lines: [...nodeLines(!!given.endLength, given.housingPath === undefined ? end : "known", G), hotter],
    known: {
      Do: figure(present(given.flangeOutside), "length", "Outside diameter of the flange"),
      t_f: figure(present(given.flangeThickness), "length", "Thickness of the flange"),
      W_r: figure(heatOf(bore), "power", "Radial load times its sliding speed"),
      W_a: figure(heatOf(face), "power", "Axial load times its sliding speed"),
    },
    between: { ...between, ...nodeBetween },
  };
}
