import "./style.css";
import "./print.css";
import { supplyCustomFunctions } from "./adapter/customFunctions";
import type { Metadata } from "./adapter/metadata";
import { greenhouse } from "../book/greenhouse/book";
import { firstControl, goRoundWithF6 } from "./keys";
import { palette } from "../book/looks";
import { printInstead } from "./print";
import { showSelection } from "./strip";
import { showBar } from "./work/bar";
import { startOf } from "./work/start";
import { Store } from "./work/store";
import { workWith } from "./work/work";

/** Loads the built functions as Excel would, by a script element after the host's own names are there. */
function loadScript(address: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const script = document.createElement("script");
    script.src = address;
    script.onload = () => resolve();
    script.onerror = () => reject(new Error(`${address} does not load`));
    document.head.append(script);
  });
}

async function loadMetadata(address: string): Promise<Metadata> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address} does not load (${response.status})`);
  return (await response.json()) as Metadata;
}

const byId = (id: string): HTMLElement => {
  const found = document.getElementById(id);
  if (!found) throw new Error(`the page lacks #${id}`);
  return found;
};

for (const [name, colour] of Object.entries(palette)) document.documentElement.style.setProperty(`--${name}`, colour);

async function open(): Promise<void> {
  const functions = supplyCustomFunctions(globalThis);
  const [metadata, { mountGrid, readRecord }, pane, store] = await Promise.all([
    loadMetadata("functions.json"),
    import("./grid/mount"),
    // oxlint-disable-next-line no-restricted-imports -- the add-in's own pane beside the sheet
    import("../taskpane/main"),
    // a browser may refuse to keep anything: the sheet then says so
    Store.open().catch(() => undefined),
    loadScript("functions.js"),
  ]);
  const start = await startOf(store, readRecord);
  const sheet = byId("sheet");
  sheet.replaceChildren();
  const { port, file, focus } = await mountGrid(sheet, greenhouse, start.record, metadata, functions);
  // a handle for the console and for tests: the grid itself is a canvas
  Object.assign(globalThis, { bushcell: { port } });
  workWith({ file, port, bar: showBar(byId("work")), store, start });
  printInstead(port);
  showSelection(byId("strip"), byId("spoken"), port, metadata);
  // the page is light, and the strip below explains cells
  pane.mount(byId("pane"), port, { name: "the local sheet", theme: () => "light", explainsCells: true });
  goRoundWithF6([
    { part: sheet, enter: focus },
    { part: byId("pane"), enter: () => firstControl(byId("pane")).focus() },
    { part: byId("strip"), enter: () => byId("strip").focus() },
  ]);
}

open().catch((error: unknown) => {
  const note = document.getElementById("loading") ?? byId("sheet").appendChild(document.createElement("p"));
  note.className = "loading failed";
  note.textContent = `The sheet did not open: ${error instanceof Error ? error.message : String(error)}`;
});
