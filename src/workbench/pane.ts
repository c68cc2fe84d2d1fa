import type { SheetPort } from "../port/sheet";

/** What the built taskpane.js leaves on the page. */
interface BuiltPane {
  mount(
    element: HTMLElement,
    port: SheetPort,
    host: { name: string; theme(): "light"; explainsCells: true },
  ): () => void;
}

/** The add-in's own pane, as built, beside the local sheet; the page is light, and the strip below explains cells. */
export function showPane(element: HTMLElement, port: SheetPort): void {
  const { BushcellPane } = globalThis as { BushcellPane?: BuiltPane };
  BushcellPane?.mount(element, port, { name: "the local sheet", theme: () => "light", explainsCells: true });
}
