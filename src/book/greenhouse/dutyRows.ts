import list from "../../../data/greenhouse/duties.json";
import { fieldHeading, fieldKeys } from "../../core/duties";
import type { FieldKey } from "../../core/duties";
import type { Scalar } from "../book";

/** One row of the greenhouse's table of duties; a row without a name is a further step of the duty above it. */
export type DutyRow = { readonly [K in FieldKey]?: Scalar } & { readonly id?: string; readonly note?: string };
export const dutyRows = list as readonly DutyRow[];

/** The fields that any of them fills. */
export const dutyColumns: readonly FieldKey[] = fieldKeys.filter((key) =>
  dutyRows.some((row) => row[key] !== undefined),
);

/** The table as DUTIES takes it: a heading row, plain numbers metric, and a row for each duty or step. */
export const dutyHeadings: readonly string[] = dutyColumns.map((key) => fieldHeading(key, "metric"));
export const dutyCells: readonly (readonly (Scalar | null)[])[] = dutyRows.map((row) =>
  dutyColumns.map((key) => row[key] ?? null),
);
