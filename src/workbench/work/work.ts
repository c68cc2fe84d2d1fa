import type { GridFile } from "../grid/file";
import type { GridPort } from "../grid/port";
import { ask, choose } from "./bar";
import type { Bar } from "./bar";
import { keep } from "./keep";
import { openAnew } from "./start";
import type { Start } from "./start";
import type { Store } from "./store";
import { isWarning, keptText, time, versionText } from "./words";

export interface Work {
  readonly file: GridFile;
  readonly port: GridPort;
  readonly bar: Bar;
  readonly store: Store | undefined;
  readonly start: Start;
}

/** Keeps the sheet; opens, saves and begins anew. */
export function workWith({ file, port, bar, store, start }: Work): void {
  const keeper = keep({
    file,
    store,
    start,
    told: (kept) => bar.state(keptText(kept), isWarning(kept)),
    overtaken: ({ at, text }) =>
      bar.note(
        `Another tab kept changes at ${time(at)} that are not in here. They stay among the versions; from now on this sheet is kept.`,
        { label: "Open them", act: told(() => replace("These are the other tab's changes.", text)) },
      ),
  });
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
    const { checkFile, readFile, readText } = await import("../xlsx/file");
    const isText = checkFile(chosen.name, data) === "text";
    const { record, left, remarks } = isText ? readText(chosen.name, data) : await readFile(chosen.name, data);
    const wanted =
      left.length === 0 ||
      (await ask(`${chosen.name} also holds what this sheet cannot show or save:`, left, "Open without"));
    if (!wanted) return;
    const dropped = left.length > 0 ? ` Left out: ${left.join("; ")}.` : "";
    const read = remarks.map((remark) => ` It was ${remark}.`).join("");
    await replace(`Opened ${chosen.name}.${dropped}${read}`, JSON.stringify(record));
  }

  async function save(): Promise<void> {
    const { writeFile } = await import("../xlsx/file");
    const record = file.record();
    const { file: data, left } = await writeFile(record, (sheet) => port.read(wholeOf(sheet, record)));
    download(`${record.name}.xlsx`, xlsx(data));
    keeper.saved();
    const dropped = left.length > 0 ? ` Left out: ${left.join("; ")}.` : "";
    bar.note(`Saved as ${record.name}.xlsx.${dropped}`);
  }

  async function handOver(): Promise<void> {
    const { writeHandedOver } = await import("../xlsx/file");
    const record = file.record();
    const read = (sheet: string) => port.read(wholeOf(sheet, record));
    const { file: data, natives, values } = await writeHandedOver(record, read, port.tables());
    download(`${record.name} handed over.xlsx`, xlsx(data));
    bar.note(
      natives + values === 0
        ? "No formula here needs the add-in: the file is a copy of the sheet."
        : `Handed over without the add-in: ${natives} formulas calculate in the sheet's own, ${values} stay values. The sheet Handed over lists which.`,
    );
  }

  async function addHandOut(): Promise<void> {
    const { makeHandOut } = await import("./handOuts");
    const said = await makeHandOut(port, (name, page) => download(name, new Blob([page], { type: "text/html" })));
    if (said) bar.note(said);
  }

  /** One of the kept versions instead of what is open. */
  async function goBack(): Promise<void> {
    await keeper.flush();
    const versions = (await store?.versions()) ?? [];
    const options = versions.map(({ key, at }) => [versionText(at), key] as const);
    if (options.length === 0) return bar.note("No earlier version is kept in this browser.");
    const key = await choose("Open a version that this browser kept", options);
    if (key !== undefined) await replace("This is an earlier version.", await store?.version(key));
  }

  const told = (act: () => Promise<void>) => (): Promise<void> =>
    act().catch((error: unknown) => bar.note(error instanceof Error ? error.message : String(error)));
  const chooseFile = fileChooser((chosen) => void told(() => open(chosen))());
  const saveNow = told(save);
  bar.button("Open …", "Opens an .xlsx or .csv file (Ctrl+O); the present sheet is kept", chooseFile);
  bar.button("Save as .xlsx", "Saves the sheet as a file (Ctrl+S)", saveNow);
  bar.button(
    "Hand over",
    "Saves a copy that calculates without the add-in, and lists which formula became what",
    told(handOver),
  );
  bar.button("Hand-out …", "An exercise for a class with figures of its own, and its answers", told(addHandOut));
  bar.button("Versions …", "Opens one of the last ten versions; the present sheet is kept", told(goBack));
  bar.button(
    "Start again",
    "Opens the example; the present sheet is kept",
    told(() => replace("This is the example as new.")),
  );
  bar.button("Print", "Prints this sheet, or the record to which the selected cell belongs (Ctrl+P)", () => print());
  addEventListener("keydown", (event) => onKey(event, { s: saveNow, o: chooseFile }), { capture: true });

  const { back } = start;
  const undo =
    back === undefined
      ? undefined
      : told(async () => replace("This is the sheet as it was before.", await store?.version(back)));
  if (start.note) bar.note(start.note, undo && { label: "Undo that", act: undo });
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
  input.accept = ".xlsx,.csv,.tsv,.txt";
  input.addEventListener("change", () => {
    const [file] = input.files ?? [];
    input.value = "";
    if (file) chosen(file);
  });
  return () => input.click();
}

const xlsx = (data: Uint8Array): Blob =>
  new Blob([data as Uint8Array<ArrayBuffer>], {
    type: "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet",
  });

function download(name: string, data: Blob): void {
  const address = URL.createObjectURL(data);
  const link = document.createElement("a");
  link.href = address;
  link.download = name;
  link.click();
  URL.revokeObjectURL(address);
}
