import type { IWorkbookData } from "@univerjs/core";
import type { Store } from "./store";

/** What the page opens with. */
export interface Start {
  /** The example where there is none. */
  readonly record?: IWorkbookData;
  /** Whether it is to be kept although nobody changed it yet. */
  readonly isNew: boolean;
  /** When the newest version was kept that there was on opening. */
  readonly newest?: number;
  /** What to say of it. */
  readonly note: string;
  /** The version that was open before. */
  readonly back?: number;
}

/** A sheet is replaced by opening the page anew, since the grid's undo, selection and keyboard belong to one workbook. */
interface Wish {
  /** The version to open; the example where there is none. */
  readonly key?: number;
  readonly note: string;
  readonly back?: number;
}
const place = "bushcell-open";

/** Opens the page anew with another version. */
export function openAnew(wish: Wish): void {
  sessionStorage.setItem(place, JSON.stringify(wish));
  location.reload();
}

/** What was asked for, else the newest version that can be read, else the example. */
export async function startOf(
  store: Store | undefined,
  read: (text: string) => IWorkbookData | undefined,
): Promise<Start> {
  const wish = JSON.parse(sessionStorage.getItem(place) ?? "null") as Wish | null;
  sessionStorage.removeItem(place);
  const versions = (await store?.versions().catch(() => [])) ?? [];
  const newest = versions[0]?.at;
  if (wish) {
    const text = wish.key === undefined ? undefined : await store?.version(wish.key);
    const record = text === undefined ? undefined : read(text);
    return { record, isNew: true, newest, note: wish.note, back: wish.back };
  }
  const records = versions.map(({ text }) => read(text));
  const isBroken = versions.length > 0 && !records[0];
  return {
    record: records.find((record) => record !== undefined),
    isNew: false,
    newest,
    note: isBroken ? "What was last kept here cannot be read; this is what was kept before it." : "",
  };
}
