import type { Motion } from "../../grades/model/limits";
import type { Zone } from "../../fit/zones/zone";
import type { System } from "../../kinds";
import { kinds } from "../../kinds";
import type { Kind } from "../../kinds";
import type { ValuesOf } from "../../table/entry";
import { Headings } from "../../table/entry";
import type { FieldEntry, Part } from "./fields/entry";
import { fits } from "./fields/fits";
import { loads } from "./fields/loads";
import { motion as motionFields } from "./fields/motion";
import { named } from "./fields/named";
import { shaft } from "./fields/shaft";
import { sizes } from "./fields/sizes";
import { surroundings } from "./fields/surroundings";
import { wanted } from "./fields/wanted";

export { groups, parts } from "./fields/entry";
export type { FieldEntry, Part } from "./fields/entry";

/**
 * Everything that a duty may say, in the order of tables: reading, headings, the pane's form, the command line and the docs
 * follow from it. `temperature` is always that of the surroundings; the temperature of the bore is computed.
 */
export const fields = {
  ...named,
  ...loads,
  ...sizes,
  ...motionFields,
  ...surroundings,
  ...shaft,
  ...fits,
  ...wanted,
} as const satisfies Record<string, FieldEntry>;

export type FieldKey = keyof typeof fields;
/** What a row or card says, as read: a number may be a band. */
export type FieldValues = ValuesOf<typeof fields, { zone: Zone }>;
/** The same with every band at one of its values. */
export type Given = {
  readonly [K in FieldKey]?: number extends FieldValues[K] ? number : Exclude<FieldValues[K], undefined>;
};

export const fieldKeys = Object.keys(fields) as FieldKey[];
export const field = (key: FieldKey): FieldEntry => fields[key];
export const fieldHeadings = new Headings<FieldKey>(fields);

/** Whether this part in this motion asks for a field. */
export function isAskedFor(key: FieldKey, part: Part, motion: Motion): boolean {
  const { parts: ofParts, motions: inMotions } = field(key);
  return (!ofParts || ofParts.includes(part)) && (!inMotions || inMotions.includes(motion));
}

/** "load [N]". */
export function fieldHeading(key: FieldKey, system: System): string {
  const { heading, kind } = field(key);
  const unit = kind === "span" ? kinds.temperature[system] : kind in kinds ? kinds[kind as Kind][system] : "";
  return unit === "" ? heading : `${heading} [${unit}]`;
}
