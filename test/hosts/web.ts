import type { Frame, Page } from "playwright-core";
import type { Batch } from "./batch";
import { addIn, openBrowser, supported } from "./browser";
import type { Browser } from "./browser";
import { ExcelHost } from "./excelHost";

export interface WebHost extends Browser {
  readonly page: Page;
  readonly pane: Frame;
  readonly excel: ExcelHost;
}

/** A page of Microsoft's, by its address one that office.js trusts as a parent. */
const parent = "https://excel.officeapps.live.com/x.html";

/** The pane as Excel on the web opens it: in a frame of another origin, which talks with its parent by messages. */
export async function openInWeb(fill: (excel: ExcelHost) => void): Promise<WebHost> {
  const hostInfo = "Excel$Web$16.00$en-US$correlation$$$3#";
  const channel = `conversation|frame|${encodeURIComponent(parent)}`;
  const address = `${addIn}taskpane.html?_host_Info=${hostInfo}&_xdm_Info=${channel}`;
  const html = `<!doctype html><title>Excel</title><iframe name="pane" style="width:340px;height:780px" src="${address}"></iframe>`;
  const browser = await openBrowser({ [parent]: html }, 360);
  const page = await browser.context.newPage();
  const tell = (name: string, data: unknown) =>
    page.evaluate(([action, given]) => window.toPane(action, given), [name, data] as const);
  const excel = new ExcelHost({
    send(entries) {
      const rows = entries.map(({ messageCategory, messageType, targetId, message, id }) => {
        const text = typeof message === "string" ? message : JSON.stringify(message);
        return [messageCategory, messageType, targetId, text, id, false, ""];
      });
      return tell("richApiMessage", { ArrayData: rows });
    },
    selected: () => tell("documentSelectionChanged", {}),
  });
  fill(excel);
  await page.exposeFunction("toExcel", (body: string) => JSON.stringify(excel.answer(JSON.parse(body) as Batch)));
  await page.addInitScript(standIn, supported);
  await page.goto(parent);
  const pane = page.frame("pane")!;
  await pane.locator("[data-field=load]").waitFor();
  return { ...browser, page, pane, excel };
}

declare global {
  interface Window {
    toPane(action: string, data: unknown): void;
  }
}

interface Message {
  readonly _messageType: number;
  readonly _actionName: string;
  readonly _conversationId: string;
  readonly _correlationId: number;
  readonly _data?: { readonly ArrayData?: readonly string[] };
}

/** In the parent page: answers what office.js asks of its parent, and passes the rich API's requests on. */
function standIn(sets: object): void {
  if (window !== window.parent) return;
  const context = {
    ...{ _id: "frame", _appName: 16, _appVersion: 16, _appUILocale: "en-US", _dataLocale: "en-US" },
    ...{ _docUrl: "https://greenhouse.example/book.xlsx", _clientMode: 1, _settings: [], _reason: 1 },
    ...{ _osfControlType: 1, _eToken: "", _correlationId: "correlation", _hostFullVersion: "16.0.17726.0" },
    _requirementMatrix: JSON.stringify(sets),
  };
  const message = { _errorCode: 0, _serializerVersion: 1 };
  addEventListener("message", (event: MessageEvent<string>) => void reply(event));
  async function reply({ data, source, origin }: MessageEvent<string>): Promise<void> {
    const asked = JSON.parse(data) as Message;
    if (asked._messageType !== 0) return;
    const { _actionName, _conversationId, _correlationId } = asked;
    let _data: unknown = { Error: 0 };
    if (_actionName === "ContextActivationManager_getAppContextAsync") _data = context;
    if (_actionName === "executeMethod" && asked._data?.ArrayData)
      _data = { Error: 0, Data: [200, [], await window.toExcel(asked._data.ArrayData[4]!)] };
    const answer = {
      ...message,
      _messageType: 1,
      _actionName,
      _conversationId,
      _correlationId,
      _responseType: 0,
      _data,
    };
    (source as Window).postMessage(JSON.stringify(answer), origin);
  }
  window.toPane = (_actionName, _data) => {
    const told = {
      _messageType: 1,
      _actionName,
      _conversationId: "conversation",
      _correlationId: -1,
      _responseType: 1,
    };
    const frame = document.querySelector("iframe")!;
    frame.contentWindow!.postMessage(JSON.stringify({ ...message, ...told, _data }), new URL(frame.src).origin);
  };
}
