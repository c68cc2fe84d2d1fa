import { createRoot } from "react-dom/client";
import type { SheetPort } from "../port/sheet";
import { App } from "./app";
import { systemTheme, watchSystemTheme } from "./host/host";
import type { PaneHost } from "./host/host";
import { Stopped } from "./parts/states";
import "./page.css";

/** Puts the pane into an element of a page that has a sheet; the answer takes it out again. */
export function mount(element: HTMLElement, port: SheetPort, host: Partial<Omit<PaneHost, "port">> = {}): () => void {
  const root = createRoot(element);
  const whole: PaneHost = { port, name: "the sheet", theme: systemTheme, watchTheme: watchSystemTheme, ...host };
  root.render(<App host={whole} />);
  return () => root.unmount();
}

/** On the add-in's own page the sheet is Excel's. */
async function startInExcel(element: HTMLElement): Promise<void> {
  const { excelHost } = await import("./host/excelHost");
  const host = await excelHost();
  if (host) mount(element, host.port, host);
  else
    createRoot(element).render(
      <Stopped
        title="This page belongs in a spreadsheet"
        text="Open it with the add-in's button in Excel. Without Excel, use the local sheet of this project."
      />,
    );
}

const own = document.getElementById("pane");
if (own?.dataset.host === "excel") void startInExcel(own);
