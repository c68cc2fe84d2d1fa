import { field, unstatedFit } from "../../core/duties";
import type { FieldKey, NamedDuty, Ranked } from "../../core/duties";
import { present } from "../../core/present";

/** What keeps grades without a verdict. */
export interface Needed {
  /** Fields that the duty does not state, in the order in which they are asked for. */
  readonly fields: readonly FieldKey[];
  /** Headings of the criteria that wait for them. */
  readonly waiting: readonly string[];
  /** Whether none but invented grades hold, and figures that grades lack are in the way. */
  readonly lacksFigures: boolean;
}

/** What would have to be known for a verdict on these grades; the fields of a fit are needed together. */
export function neededFor({ corners: [corner] }: NamedDuty, ranked: readonly Ranked[]): Needed {
  const open = ranked.flatMap(({ checks }) => checks.filter(({ word }) => word === "no data"));
  const named = new Set(open.flatMap(({ field: key }) => key ?? []));
  const fit = unstatedFit(present(corner).given);
  const fields = new Set([...named].flatMap((key) => (fit.includes(key) ? fit : [key])));
  const waiting = open.flatMap(({ field: key, criterion }) => (key === undefined ? [] : [criterion.heading]));
  const isHeld = ranked.some(({ word, grade }) => grade.kind !== "demo" && (word === "fits" || word === "care"));
  return {
    fields: [...fields],
    waiting: [...new Set(waiting)],
    lacksFigures: !isHeld && open.some(({ property }) => property !== undefined),
  };
}

/** A field by its heading; the wall may be told by the outside too. */
export const neededText = (key: FieldKey): string => (key === "wall" ? "wall or outside" : field(key).heading);
