import type { GridFile } from "../grid/file";
import type { GridPort } from "../grid/port";
import { ask } from "./bar";
import type { Bar } from "./bar";
import { keep } from "./keep";
import { openAnew } from "./start";
import type { Start } from "./start";
import type { Store } from "./store";
import { isWarning, keptText } from "./words";

export interface Work {
  readonly file: GridFile;
  readonly port: GridPort;
  readonly bar: Bar;
  readonly store: Store | undefined;
  readonly start: Start;
}

/** Keeps the sheet; opens, saves and begins anew. */
export function workWith({ file, port, bar, store, start }: Work): void {
  const keeper = keep(file, store, start.isNew, (kept) => bar.state(keptText(kept), isWarning(kept)));
  let isLeaving = false;
  document.addEventListener("visibilitychange", () => {
    if (document.visibilityState === "hidden") void keeper.flush();
  });
  addEventListener("beforeunload", (event) => {
    if (isLeaving || !keeper.isAtRisk()) return;
    void keeper.flush();
    event.preventDefault();
  });

  /** Opens something else; what is open now stays a version that can be had back. */
  async function replace(note: string, text?: string): Promise<void> {
    await keeper.flush();
    if (text !== undefined && !store)
      throw new Error("This browser keeps nothing, so that no file can be opened here.");
    if (!store && keeper.isAtRisk())
      throw new Error("This browser keeps nothing here: save as .xlsx first, so that nothing is lost.");
    const full = (): never => {
      throw new Error(
        "The browser's storage is full: the sheet stays as it is. Save as .xlsx so that nothing is lost.",
      );
    };
    const back = await store?.keyOf(file.text()).catch(full);
    const key = text === undefined ? undefined : await store?.put(text).catch(full);
    isLeaving = true;
    openAnew({ key, note, back });
  }

  async function open(chosen: File): Promise<void> {
    const data = new Uint8Array(await chosen.arrayBuffer());
    const { checkFile, readFile } = await import(/* webpackChunkName: "file" */ "../xlsx/file");
    checkFile(chosen.name, data);
    const { record, left } = await readFile(chosen.name, data);
    const wanted =
      left.length === 0 ||
      (await ask(`${chosen.name} also holds what this sheet cannot show or save:`, left, "Open without"));
    if (!wanted) return;
    const dropped = left.length > 0 ? ` Left out: ${left.join("; ")}.` : "";
    await replace(`Opened ${chosen.name}.${dropped}`, JSON.stringify(record));
  }

  async function save(): Promise<void> {
    const { writeFile } = await import(/* webpackChunkName: "file" */ "../xlsx/file");
    const record = file.record();
    const { file: data, left } = await writeFile(record, (sheet) => port.read(wholeOf(sheet, record)));
    download(`${record.name}.xlsx`, data);
    keeper.saved();
    const dropped = left.length > 0 ? ` Left out: ${left.join("; ")}.` : "";
    bar.note(`Saved as ${record.name}.xlsx.${dropped}`);
  }

  const told = (act: () => Promise<void>) => (): Promise<void> =>
    act().catch((error: unknown) => bar.note(error instanceof Error ? error.message : String(error)));
  const choose = fileChooser((chosen) => void told(() => open(chosen))());
  const saveNow = told(save);
  bar.button("Open …", "Opens an .xlsx file (Ctrl+O); the present sheet is kept", choose);
  bar.button("Save as .xlsx", "Saves the sheet as a file (Ctrl+S)", saveNow);
  bar.button(
    "Start again",
    "Opens the example; the present sheet is kept",
    told(() => replace("This is the example as new.")),
  );
  bar.button("Print", "Prints this sheet, or the record to which the selected cell belongs (Ctrl+P)", () => print());
  addEventListener("keydown", (event) => onKey(event, { s: saveNow, o: choose }), { capture: true });

  if (start.note) {
    const { back } = start;
    const act = told(async () => replace("This is the sheet as it was before.", await store?.version(back!)));
    bar.note(start.note, back === undefined ? undefined : { label: "Undo that", act });
  }
}

function onKey(event: KeyboardEvent, acts: Readonly<Record<string, () => unknown>>): void {
  const act = (event.ctrlKey || event.metaKey) && !event.altKey && !event.shiftKey && acts[event.key.toLowerCase()];
  if (!act) return;
  event.preventDefault();
  event.stopPropagation();
  void act();
}

function wholeOf(sheet: string, { sheets }: ReturnType<GridFile["record"]>) {
  const { rowCount = 0, columnCount = 0 } = Object.values(sheets).find(({ name }) => name === sheet) ?? {};
  return { sheet, row: 0, col: 0, rows: rowCount, cols: columnCount };
}

function fileChooser(chosen: (file: File) => void): () => void {
  const input = document.createElement("input");
  input.type = "file";
  input.accept = ".xlsx";
  input.addEventListener("change", () => {
    const [file] = input.files ?? [];
    input.value = "";
    if (file) chosen(file);
  });
  return () => input.click();
}

function download(name: string, data: Uint8Array): void {
  const type = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
  const address = URL.createObjectURL(new Blob([data as Uint8Array<ArrayBuffer>], { type }));
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  URL.revokeObjectURL(address);
}
