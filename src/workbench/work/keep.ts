import type { GridFile } from "../grid/file";
import type { Start } from "./start";
import type { Store, Version } from "./store";

/** How the sheet's keeping stands; `at` is when it was last kept, `isBehind` that the other tab has kept changes since. */
export type Kept =
  | { readonly state: "kept"; readonly at?: number }
  | { readonly state: "elsewhere"; readonly isBehind: boolean }
  | { readonly state: "full" | "none" };

export interface Keeper {
  /** Keeps at once what has changed, as a browser's tab goes away. */
  flush(): Promise<void>;
  /** Whether something would be lost with this tab. */
  isAtRisk(): boolean;
  /** What stands there now is safe in a file. */
  saved(): void;
}

/** The tabs' lock and how they tell each other. */
const name = "bushcell-file";
const pause = 1000;
/** So long one version takes up the changes, then a new one begins. */
const oneVersion = 5 * 60_000;

export interface Keeping {
  readonly file: GridFile;
  readonly store: Store | undefined;
  readonly start: Start;
  told(kept: Kept): void;
  /** Another tab kept this after the sheet here was opened, and the sheet here is kept from now on. */
  overtaken(version: Version): void;
}

/**
 * Keeps the file a second after each change, and at once where it is new. Without a store nothing is kept, and is said
 * to be so.
 */
export function keep({ file, store, start: { isNew, newest }, told, overtaken }: Keeping): Keeper {
  let kept = isNew ? "" : file.text();
  let version: { readonly key: number; readonly began: number } | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let safe = kept;
  // what the grid itself settles after opening is nobody's work, and the example of a later version may take its place
  let isTouched = isNew;
  for (const event of ["keydown", "pointerdown"])
    addEventListener(event, () => (isTouched = true), { capture: true, once: true });
  let isHeld = false;
  let isBehind = false;
  const tabs = new BroadcastChannel(name);
  let writing: Promise<void> = Promise.resolve();

  async function write(): Promise<void> {
    clearTimeout(timer);
    timer = undefined;
    const text = file.text();
    if (!isTouched) kept = safe = text;
    if (text === kept) return;
    if (!store) return told({ state: "none" });
    if (!isHeld) return told({ state: "elsewhere", isBehind });
    const isOld = !version || Date.now() - version.began > oneVersion;
    try {
      const key = await store.put(text, isOld ? undefined : version?.key);
      if (isOld) version = { key, began: Date.now() };
      kept = text;
      tabs.postMessage("kept");
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
  /** What another tab has kept since the sheet here was opened. */
  async function newer(): Promise<Version | undefined> {
    const [last] = (await store?.versions().catch(() => [])) ?? [];
    return last && last.at !== newest ? last : undefined;
  }
  async function wait(): Promise<void> {
    isBehind ||= (await newer()) !== undefined;
    if (!isHeld) told({ state: "elsewhere", isBehind });
  }
  tabs.addEventListener("message", () => {
    if (isHeld) return;
    isBehind = true;
    told({ state: "elsewhere", isBehind });
  });
  holdFile(
    async () => {
      // looked for before anything of this tab is kept
      const others = await newer();
      isHeld = true;
      told(store ? { state: "kept" } : { state: "none" });
      await flush();
      if (others) overtaken(others);
    },
    () => void wait(),
  );
  return {
    flush,
    isAtRisk: () => ![kept, safe].includes(file.text()),
    saved: () => void (safe = file.text()),
  };
}

/** One tab at a time keeps the file; another one waits until that is closed. */
function holdFile(held: () => Promise<void>, waits: () => void): void {
  const forever = (): Promise<never> => {
    void held();
    return new Promise(() => undefined);
  };
  void navigator.locks.request(name, { ifAvailable: true }, (lock) => {
    if (lock) return forever();
    waits();
    void navigator.locks.request(name, forever);
  });
}
