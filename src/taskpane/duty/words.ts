import { field } from "../../core/duties";
import type { FieldKey } from "../../core/duties";
import { keysOf } from "../../core/keyed";
import type { System } from "../../core/kinds";
import { labelOf } from "../state/fields";
import { readBack } from "../state/quantity";
import type { ReadDuty, ReadRow } from "../state/readDuty";

/** "load 800 N, bore 20 mm": what a group states; what is taken where nothing is needs no word. */
export function summaryOf(keys: readonly FieldKey[], { values, faults }: ReadRow, system: System): string {
  const stated = keys.flatMap((key) => {
    const { heading, default: usual } = field(key);
    if (faults[key] !== undefined) return [`${heading} to mend`];
    const value = values[key];
    return value === undefined || value === usual ? [] : [`${heading} ${readBack(key, value, system)}`];
  });
  return stated.length === 0 ? "nothing stated" : stated.join(", ");
}

/** What keeps the duty from being judged, in sentences; empty where it is. */
export function todoText({ rows, fault }: ReadDuty): string {
  const named = (keys: (row: ReadRow) => readonly FieldKey[]) =>
    rows.flatMap((row, i) =>
      keys(row).map((key) => `${labelOf(key).toLowerCase()}${i > 0 ? ` of step ${i + 1}` : ""}`),
    );
  const wrong = named(({ faults }) => keysOf(faults));
  const missing = named((row) => row.missing);
  return [
    ...(fault === undefined ? [] : [`${fault}.`]),
    ...(wrong.length > 0 ? [`To mend: ${wrong.join(", ")}.`] : []),
    ...(missing.length > 0 ? [`Still needed: ${missing.join(", ")}.`] : []),
  ].join(" ");
}
