import type { IWorkbookData } from "@univerjs/core";
import { addressOf, areaOf } from "../../port/address";

interface Area {
  readonly startRow: number;
  readonly endRow: number;
  readonly startColumn: number;
  readonly endColumn: number;
}
/** A conditional format as the grid keeps it; only those by formula go into a file. */
export interface KeptMark {
  readonly cfId: string;
  readonly ranges: readonly Area[];
  readonly stopIfTrue: boolean;
  readonly rule: {
    readonly type: string;
    readonly subType?: string;
    readonly value?: unknown;
    readonly style?: object;
  };
}
/** A check of what is typed as the grid keeps it; only lists go into a file. */
export interface KeptPick {
  readonly uid: string;
  readonly type: string;
  readonly ranges: readonly Area[];
  readonly formula1?: string;
  readonly error?: string;
  readonly [more: string]: unknown;
}
export interface KeptName {
  readonly id: string;
  readonly name: string;
  readonly formulaOrRefString: string;
}

/** The parts of the grid's record that its plugins keep as text. */
export const resourceNames = {
  marks: "SHEET_CONDITIONAL_FORMATTING_PLUGIN",
  picks: "SHEET_DATA_VALIDATION_PLUGIN",
  names: "SHEET_DEFINED_NAME_PLUGIN",
  filters: "SHEET_FILTER_PLUGIN",
} as const;

export function resource<T>(record: IWorkbookData, name: keyof typeof resourceNames): Record<string, T> {
  const { data } = record.resources?.find((one) => one.name === resourceNames[name]) ?? {};
  return data ? (JSON.parse(data) as Record<string, T>) : {};
}

export const rangeText = ({ startRow, endRow, startColumn, endColumn }: Area): string =>
  `${addressOf(startRow, startColumn)}:${addressOf(endRow, endColumn)}`;

export function rangeArea(range: string): Area {
  const { row, col, rows, cols } = areaOf(range);
  return { startRow: row, endRow: row + rows - 1, startColumn: col, endColumn: col + cols - 1 };
}

/** The words of a list, which the grid keeps as text; undefined where it is a range, or one of the words has a comma in it. */
export function listWords(formula1: string): string[] | undefined {
  if (formula1.startsWith("=")) return undefined;
  const words = formula1.startsWith("[") ? (JSON.parse(formula1) as string[]) : formula1.split(",");
  return words.some((word) => word.includes(",")) ? undefined : words;
}
