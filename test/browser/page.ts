import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { chromium } from "playwright-core";
import type { BrowserContext, Page } from "playwright-core";
import type { Block, Corner, Place, ReadCell } from "../../src/port/sheet";
import { browserPath, root } from "../package/run";

/** The built page, served as `npm start` serves it, in a Chromium that reports what it complains of and asks for. */
export interface Opened {
  readonly page: Page;
  /** Console errors and warnings, and errors that nothing caught. */
  readonly complaints: readonly string[];
  /** Every address that the page asked for beyond its own origin. */
  readonly outside: readonly string[];
  read(place: Place): Promise<ReadCell[][]>;
  cell(sheet: string, address: string): Promise<ReadCell>;
  select(sheet: string, address: string): Promise<void>;
  write(at: Corner, block: Block): Promise<void>;
  /** Types into a cell as a person does. */
  type(sheet: string, address: string, text: string): Promise<void>;
  strip(): Promise<string>;
  /** The strip's heading at once after a cell was selected in the moment in which the page had its sheet. */
  readonly firstHeading: string;
  /** Waits until the sheet's own boxes (proposals, hints) hold a text. */
  shows(text: string): Promise<void>;
  /** Does what opens the page anew, and waits until its sheet has the keyboard. */
  reopen(act: () => Promise<unknown>): Promise<void>;
  /** The words above the sheet on what is kept. */
  work(): Promise<string>;
  close(): Promise<void>;
}

const flags = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

export async function openSheet({ width = 1280, height = 800 } = {}): Promise<Opened> {
  const server = await serveBuilt();
  const profile = mkdtempSync(path.join(os.tmpdir(), "bushcell-browser-"));
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: browserPath(),
    headless: true,
    args: flags,
    viewport: { width, height },
    reducedMotion: "reduce",
  });
  const page = context.pages()[0] ?? (await context.newPage());
  const complaints: string[] = [];
  const outside: string[] = [];
  listen(page, server.url, complaints, outside);
  await page.addInitScript(selectAtOnce);
  await page.goto(server.url, { waitUntil: "domcontentloaded", timeout: 90000 });
  await page.waitForFunction(() => "firstHeading" in globalThis, null, { timeout: 90000 });

  async function takeKeyboard(): Promise<void> {
    await page.evaluate(() => {
      Object.assign(globalThis, {
        handle: () => (globalThis as unknown as { bushcell: { port: unknown } }).bushcell.port,
      });
    });
    // the keyboard goes to the grid once it was clicked, if by then it listens; what is computed on opening must have settled
    await eventually(async () => {
      await page.locator("#sheet canvas[id^=univer-sheet]").click({ position: { x: 300, y: 300 } });
      expect(await page.locator("#sheet :focus").count()).toBe(1);
    });
  }

  const read = (place: Place) => page.evaluate((p) => handle().read(p) as ReadCell[][], place);
  const opened: Opened = {
    page,
    complaints,
    outside,
    read,
    async cell(sheet, address) {
      const found = await read({ sheet, ...corner(address), rows: 1, cols: 1 });
      return found[0]![0]!;
    },
    async select(sheet, address) {
      const place = { sheet, ...corner(address), rows: 1, cols: 1 };
      await page.evaluate((p) => handle().select(p), place);
      await page.waitForFunction(
        ([at, name]) => document.querySelector("#strip h2")?.textContent === `${at} on ${name}`,
        [address, sheet] as const,
      );
    },
    write: (at, block) => page.evaluate(([a, b]) => handle().write(a, b), [at, block] as const),
    async type(sheet, address, text) {
      await opened.select(sheet, address);
      await page.keyboard.type(text);
      await page.keyboard.press("Enter");
    },
    strip: () => page.locator("#strip").innerText(),
    firstHeading: await page.evaluate(() => (globalThis as unknown as { firstHeading: string }).firstHeading),
    async shows(text) {
      const held = (wanted: string) => document.querySelector("#sheet")?.textContent?.includes(wanted);
      await page.waitForFunction(held, text, { timeout: 10000 }).catch(() => {
        throw new Error(`the sheet does not show: ${text}`);
      });
    },
    async reopen(act) {
      await page.evaluate(() => Object.assign(globalThis, { isOld: true }));
      await act();
      await page.waitForFunction(() => !("isOld" in globalThis) && "firstHeading" in globalThis, null, {
        timeout: 60000,
      });
      await takeKeyboard();
    },
    work: () => page.locator("#work").innerText(),
    close: () => closeAll(context, profile, server.stop),
  };
  await takeKeyboard();
  await page.waitForFunction(() => handle().read({ sheet: "Duties", row: 5, col: 2, rows: 1, cols: 1 })[0][0].text);
  return opened;
}

/** Runs in the page before its own scripts. */
function selectAtOnce(): void {
  const select = (port: { select(place: Place): void }) => {
    port.select({ sheet: "Start here", row: 10, col: 2, rows: 1, cols: 1 });
    Object.assign(globalThis, { firstHeading: document.querySelector("#strip h2")?.textContent });
  };
  Object.defineProperty(globalThis, "bushcell", {
    configurable: true,
    set(value: { port: { select(place: Place): void } }) {
      Object.defineProperty(globalThis, "bushcell", { value });
      // once the page's own opening is through
      queueMicrotask(() => select(value.port));
    },
  });
}

/** The sheet computes beside the page's own work: repeats a check until it holds or patience ends. */
export async function eventually(check: () => Promise<void>, patience = 15000): Promise<void> {
  const end = Date.now() + patience;
  for (;;)
    try {
      return await check();
    } catch (error) {
      if (Date.now() > end) throw error;
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
}

// in the page
// oxlint-disable-next-line typescript/no-explicit-any -- the port across the wire
declare function handle(): any;

function listen(page: Page, origin: string, complaints: string[], outside: string[]): void {
  page.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(String(error)));
  page.on("request", (request) => {
    if (!/^(data|blob):/.test(request.url()) && !request.url().startsWith(origin)) outside.push(request.url());
  });
}

async function closeAll(context: BrowserContext, profile: string, stop: () => void): Promise<void> {
  await context.close();
  stop();
  rmSync(profile, { recursive: true, force: true });
}

/** jest cannot import the server's module, so a Node of its own runs it. */
export function serveBuilt(): Promise<{ url: string; stop: () => void }> {
  const code = 'import { serve } from "./scripts/lib/serve.mjs"; console.log((await serve("dist")).url)';
  const server = spawn(process.execPath, ["--input-type=module", "-e", code], { cwd: root, stdio: "pipe" });
  return new Promise((resolve, reject) => {
    server.stdout.once("data", (line: Buffer) => resolve({ url: line.toString().trim(), stop: () => server.kill() }));
    server.once("exit", () => reject(new Error("the server stopped before it gave its address")));
  });
}

export function corner(address: string): { row: number; col: number } {
  const [, letters = "", digits = ""] = /^([A-Z]+)(\d+)$/.exec(address) ?? [];
  const col = [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
  return { row: Number(digits) - 1, col };
}
