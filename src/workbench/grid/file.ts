import { CommandType } from "@univerjs/core";
import type { IWorkbookData } from "@univerjs/core";
import type { FUniver } from "@univerjs/core/facade";
import type { Book } from "../../book/book";
import { addRules } from "./rules";
import { snapshotOf } from "./snapshot";

/** What is open in the grid, as one file. */
export interface GridFile {
  record(): IWorkbookData;
  /** All that a user made, as text; what is computed is left out, and so is the height that follows from it. */
  text(): string;
  /** Calls back after anything in the grid changed, also where that left the text the same. */
  watch(changed: () => void): void;
}

/** Opens what was kept, else the example. */
export function openFile(api: FUniver, kept: IWorkbookData | undefined, example: Book): GridFile {
  api.createWorkbook(kept ?? snapshotOf(example));
  // a record has its rules with it
  if (!kept) addRules(api, example);
  const record = (): IWorkbookData => {
    const book = api.getActiveWorkbook();
    if (!book) throw new Error("no workbook is open");
    return book.save();
  };
  return {
    record,
    text: () => JSON.stringify(record(), withoutComputed),
    watch(changed) {
      api.onCommandExecuted(({ type }) => {
        if (type === CommandType.MUTATION) changed();
      });
    },
  };
}

/** The grid would show a kept value instead of computing it, and would keep no spill with it. */
function withoutComputed(key: string, value: unknown): unknown {
  if (key === "ah") return undefined;
  if (typeof value !== "object" || value === null || !("f" in value || "si" in value)) return value;
  return { ...value, v: undefined, t: undefined, custom: undefined };
}

/** A text as a record of the grid; undefined where it is none. */
export function readRecord(text: string): IWorkbookData | undefined {
  try {
    const record = JSON.parse(text) as Partial<IWorkbookData> | null;
    const sheets = record?.sheets ?? {};
    const isWhole =
      (record?.sheetOrder ?? []).some((id) => sheets[id]) && Object.values(sheets).every((s) => s.cellData);
    return isWhole ? (record as IWorkbookData) : undefined;
  } catch {
    return undefined;
  }
}
