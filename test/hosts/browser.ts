import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { chromium } from "playwright-core";
import type { BrowserContext } from "playwright-core";
import { browserPath, root } from "../package/run";

/** Where the manifest has the add-in, and Microsoft's scripts. */
export const addIn = "https://localhost:8443/";
const microsoft = "https://appsforoffice.microsoft.com/lib/1/hosted/";
const library = path.join(root, "node_modules/@microsoft/office-js/dist");

export interface Browser {
  readonly context: BrowserContext;
  /** Errors and warnings of the console, what the Content-Security-Policy refused among them, and errors that nothing caught. */
  readonly complaints: string[];
  /** Addresses asked for that are neither the add-in's nor Microsoft's script. */
  readonly outside: string[];
  /** Microsoft's files that were loaded. */
  readonly microsoft: Set<string>;
  close(): Promise<void>;
}

/** A Chromium in which the built pages and Microsoft's own scripts stand at their real addresses, and further pages. */
export async function openBrowser(pages: Readonly<Record<string, string>> = {}, width = 340): Promise<Browser> {
  const browser = await chromium.launch({ executablePath: browserPath(), args: ["--no-sandbox", "--disable-gpu"] });
  const context = await browser.newContext({ viewport: { width, height: 900 }, reducedMotion: "reduce" });
  const complaints: string[] = [];
  const outside: string[] = [];
  const loaded = new Set<string>();
  await context.route("**/*", (route) => {
    const url = route.request().url().split(/[?#]/)[0]!;
    if (pages[url] !== undefined) return route.fulfill({ contentType: "text/html", body: pages[url] });
    const file = url.startsWith(addIn)
      ? path.join(root, "dist", url.slice(addIn.length))
      : url.startsWith(microsoft)
        ? path.join(library, url.slice(microsoft.length))
        : undefined;
    if (!file || !existsSync(file)) {
      outside.push(url);
      return route.abort();
    }
    if (url.startsWith(microsoft)) loaded.add(url.slice(microsoft.length));
    return route.fulfill({ path: file, headers: { "access-control-allow-origin": "*" } });
  });
  context.on("console", (message) => {
    if (["error", "warning"].includes(message.type())) complaints.push(message.text());
  });
  context.on("weberror", (error) => complaints.push(String(error.error())));
  return { context, complaints, outside, microsoft: loaded, close: () => browser.close() };
}

/** The functions' names and parameters as Excel reads them. */
export const metadata = JSON.parse(readFileSync(path.join(root, "dist/functions.json"), "utf8")) as {
  readonly functions: readonly { readonly id: string }[];
};

/** What the host says that it supports: above what the manifest asks for. */
export const supported = {
  ExcelApi: "1.17",
  CustomFunctions: "1.9",
  CustomFunctionsRuntime: "1.4",
  SharedRuntime: "1.2",
  RibbonApi: "1.2",
  DialogApi: "1.2",
};
