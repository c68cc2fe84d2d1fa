import type { Page } from "playwright-core";
import { addIn, openBrowser, supported } from "./browser";
import type { Browser } from "./browser";
import { ExcelHost } from "./excelHost";
import type { Entry } from "./excelHost";
import type { Batch } from "./batch";

export interface WindowsHost extends Browser {
  readonly page: Page;
  readonly excel: ExcelHost;
  /** Office's theme from now on, by its background. */
  setTheme(background: number): Promise<void>;
}

export interface Settings {
  readonly width?: number;
  readonly forcedColors?: boolean;
  readonly background?: number;
  /** Runs before anything else in the page. */
  readonly before?: () => void;
}

/** The pane as Excel for Windows opens it: office.js finds the objects that Excel puts into its web view. */
export async function openInWindows(fill: (excel: ExcelHost) => void, settings: Settings = {}): Promise<WindowsHost> {
  const { width = 340, forcedColors = false, background = 0xffffff, before } = settings;
  const browser = await openBrowser({}, width);
  const page = await browser.context.newPage();
  await page.emulateMedia({ forcedColors: forcedColors ? "active" : "none" });
  const send = (entries: readonly Entry[]) =>
    page.evaluate((message) => window._richApiNativeBridge.onMessageFromHost(message), told(entries));
  const excel = new ExcelHost({ send, selected: () => send([selectionChanged]) });
  fill(excel);
  await page.exposeFunction("toExcel", (text: string) => JSON.stringify(reply(excel, JSON.parse(text) as Request)));
  if (before) await page.addInitScript(before);
  await page.addInitScript(standIn, [supported, background] as const);
  await page.goto(`${addIn}taskpane.html`);
  await page.locator("[data-field=load]").waitFor();
  return {
    ...browser,
    page,
    excel,
    setTheme: (colour) => page.evaluate((value) => void (window.officeBackground = value), colour),
  };
}

interface Request {
  readonly id: number;
  readonly message: { readonly body: Batch | string };
}

/** The older interface's event, which Windows sends over the same bridge. */
const selectionChanged: Entry = { messageCategory: 65536, messageType: 2, targetId: "", message: "{}", id: 0 };

const told = (entries: readonly unknown[]): string => JSON.stringify({ type: 3, message: { entries } });

function reply(excel: ExcelHost, { id, message }: Request): object {
  const body = (typeof message.body === "string" ? JSON.parse(message.body) : message.body) as Batch;
  return { id, type: 2, message: { statusCode: 200, headers: {}, body: JSON.stringify(excel.answer(body)) } };
}

declare global {
  interface Window {
    _richApiNativeBridge: { sendMessageToHost(text: string): void; onMessageFromHost(text: string): void };
    toExcel(text: string): Promise<string>;
    officeBackground: number;
  }
}

/** In the page: what office.js looks for in a window of Excel for Windows. */
function standIn([sets, background]: readonly [object, number]): void {
  window.officeBackground = background;
  const later = (callback: (status: number, values: unknown[]) => void) => void setTimeout(() => callback(0, []), 0);
  const facts: Record<string, unknown> = {
    GetAppType: 1,
    GetSolutionRef: "5f5dbb9c-3e71-4ef3-ba5f-0d4b67f44677",
    GetAppVersionMajor: 16,
    GetAppVersionMinor: 1,
    GetAppUILocale: 1033,
    GetAppDataLocale: 1033,
    GetDocUrl: "C:\\greenhouse.xlsx",
    GetAppCapabilities: 1,
    GetActivationMode: 1,
    GetControlIntegrationLevel: 1,
    GetSolutionToken: "",
    GetCorrelationId: "correlation",
    GetInstanceId: "instance",
    GetTouchEnabled: false,
    GetCommerceAllowed: false,
    GetSupportedMatrix: JSON.stringify(sets),
    GetHostCustomMessage: undefined,
    GetHostFullVersion: "16.0.17726.20160",
    GetSettings: { Read: () => undefined, Write: () => undefined },
    GetInitialDisplayMode: 0,
  };
  const context: Record<string, () => unknown> = {
    GetOfficeThemeInfo: () =>
      JSON.stringify({ bodyBackgroundColor: window.officeBackground, bodyForegroundColor: 0x808080 }),
  };
  for (const [name, value] of Object.entries(facts)) context[name] = () => value;
  const external = {
    GetContext: () => context,
    GetHostInfo: () => "Excel$Win32$16.01$en-US$telemetry$$$3",
    Execute: (_id: number, _given: unknown, done: Parameters<typeof later>[0]) => later(done),
    RegisterEvent: (_id: number, _target: string, _handler: unknown, done: Parameters<typeof later>[0]) => later(done),
    UnregisterEvent: (_id: number, _target: string, done: Parameters<typeof later>[0]) => later(done),
  };
  Object.defineProperty(window, "external", { value: external, configurable: true, writable: true });
  const bridge = {
    sendMessageToHost(text: string) {
      void window.toExcel(text).then((answer) => bridge.onMessageFromHost(answer));
    },
    onMessageFromHost: (_text: string): void => undefined,
  };
  window._richApiNativeBridge = bridge;
}
