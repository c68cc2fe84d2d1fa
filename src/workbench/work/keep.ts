import type { GridFile } from "../grid/file";
import type { Store } from "./store";

/** How the sheet's keeping stands; `at` is when it was last kept. */
export type Kept = { readonly state: "kept"; readonly at?: number } | { readonly state: "elsewhere" | "full" | "none" };

export interface Keeper {
  /** Keeps at once what has changed, as a browser's tab goes away. */
  flush(): Promise<void>;
  /** Whether something would be lost with this tab. */
  isAtRisk(): boolean;
  /** What stands there now is safe in a file. */
  saved(): void;
}

const pause = 1000;
/** So long one version takes up the changes, then a new one begins. */
const oneVersion = 5 * 60_000;

/**
 * Keeps the file a second after each change, and at once where it `isNew`. Without a store nothing is kept, and is said
 * to be so.
 */
export function keep(file: GridFile, store: Store | undefined, isNew: boolean, told: (kept: Kept) => void): Keeper {
  let kept = isNew ? "" : file.text();
  let version: { readonly key: number; readonly began: number } | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let safe = kept;
  // what the grid itself settles after opening is nobody's work, and the example of a later version may take its place
  let isTouched = isNew;
  for (const event of ["keydown", "pointerdown"])
    addEventListener(event, () => (isTouched = true), { capture: true, once: true });
  let isHeld = false;
  let writing: Promise<void> = Promise.resolve();

  async function write(): Promise<void> {
    clearTimeout(timer);
    timer = undefined;
    const text = file.text();
    if (!isTouched) kept = safe = text;
    if (text === kept) return;
    if (!store) return told({ state: "none" });
    if (!isHeld) return told({ state: "elsewhere" });
    const isOld = !version || Date.now() - version.began > oneVersion;
    try {
      const key = await store.put(text, isOld ? undefined : version?.key);
      if (isOld) version = { key, began: Date.now() };
      kept = text;
      told({ state: "kept", at: Date.now() });
    } catch {
      told({ state: "full" });
    }
  }
  const flush = (): Promise<void> => (writing = writing.then(write));

  file.watch(() => {
    clearTimeout(timer);
    timer = setTimeout(() => void flush(), pause);
  });
  holdFile(
    () => {
      isHeld = true;
      told(store ? { state: "kept" } : { state: "none" });
      void flush();
    },
    () => told({ state: "elsewhere" }),
  );
  return {
    flush,
    isAtRisk: () => ![kept, safe].includes(file.text()),
    saved: () => void (safe = file.text()),
  };
}

/** One tab at a time keeps the file; another one waits until that is closed. */
function holdFile(held: () => void, waits: () => void): void {
  const forever = (): Promise<never> => {
    held();
    return new Promise(() => undefined);
  };
  void navigator.locks.request("bushcell-file", { ifAvailable: true }, (lock) => {
    if (lock) return forever();
    waits();
    void navigator.locks.request("bushcell-file", forever);
  });
}
