import { Band } from "../../band";
import type { Bounds } from "../../domain";
import type { Span } from "../../formula";
import { kinds } from "../../kinds";
import type { Kind } from "../../kinds";
import { absoluteZero } from "../../units/scale";
import { likelyOf } from "./bandPoints";
import { field, fieldKeys } from "./fields";
import type { FieldKey } from "./fields";
import type { NamedDuty } from "./namedDuty";
import { heldValues, withField } from "./withField";
import type { Held } from "./withField";

/** A number of a duty, and the duty with it elsewhere. */
export interface Movable {
  /** "load", "load, step 2", "temperature, warmer end". */
  readonly label: string;
  readonly kind: Kind;
  readonly value: number;
  /** The outermost values of its domain; nothing where it is open, or open down to 0. */
  readonly least?: number | undefined;
  readonly most?: number | undefined;
  /** Throws where there is no such duty. With a corner's number that corner alone. */
  readonly to: (value: number, corner?: number) => NamedDuty;
}

type Put = (to: number | Band | Span, corner?: number) => NamedDuty;

/** Every number that a duty gives, in the order of the fields. */
export const movablesOf = (duty: NamedDuty): Movable[] =>
  fieldKeys.flatMap((key) => heldValues(duty, key).flatMap((held) => movables(duty, key, held)));

function movables(duty: NamedDuty, key: FieldKey, { value, steps }: Held): Movable[] {
  const { kind, heading, ...bounds } = field(key);
  const label = heading + placeOf(steps, duty.steps.length);
  const put: Put = (to, corner) => withField(duty, key, to, steps, corner);
  if (kind === "span") return ofSpan(label, value as Span, put);
  if (!(kind in kinds)) return [];
  if (value instanceof Band) return [ofBand(label, kind as Kind, value, endsOf(bounds), put)];
  return [{ label, kind: kind as Kind, value: value as number, ...endsOf(bounds), to: put }];
}

/** Which steps hold a value; nothing where all of them do. */
export function placeOf(steps: readonly number[], of: number): string {
  if (steps.length === of) return "";
  return `, step${steps.length > 1 ? "s" : ""} ${steps.map((step) => step + 1).join(", ")}`;
}

/** No domain of a field begins just above another number than 0. */
const endsOf = ({ from, below, to }: Omit<Bounds, "kind">): Pick<Movable, "least" | "most"> => ({
  least: from,
  most: to ?? (below === undefined ? undefined : below * (1 - Number.EPSILON)),
});

/** One temperature moves as one; of two, each as far as the other. */
function ofSpan(label: string, { low, high }: Span, put: Put): Movable[] {
  const kind = "temperature";
  if (low === high)
    return [{ label, kind, value: low, least: absoluteZero, to: (at, corner) => put({ low: at, high: at }, corner) }];
  const colder = { label: `${label}, colder end`, value: low, least: absoluteZero, most: high };
  const warmer = { label: `${label}, warmer end`, value: high, least: low };
  return [
    { kind, ...colder, to: (at, corner) => put({ low: at, high }, corner) },
    { kind, ...warmer, to: (at, corner) => put({ low, high: at }, corner) },
  ];
}

/** A band moves as a whole, in proportion; neither of its ends leaves the domain. */
function ofBand(
  heading: string,
  kind: Kind,
  { low, high, likely }: Band,
  { least, most }: Pick<Movable, "least" | "most">,
  put: Put,
): Movable {
  const value = likelyOf({ low, high, likely });
  return {
    label: `${heading}, ${likely === undefined ? "middle" : "likely value"} of its band`,
    kind,
    value,
    least: least && (least / low) * value,
    most: most && (most / high) * value,
    to: (at, corner) =>
      put(new Band((at / value) * low, (at / value) * high, likely === undefined ? undefined : at), corner),
  };
}
