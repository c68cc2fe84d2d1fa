import { existsSync, mkdtempSync, readFileSync, writeFileSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { createJiti } from "jiti";
import { chromium } from "playwright-core";
import { browserPath } from "../scripts/lib/browser.mjs";
import { loadFunctions } from "../scripts/lib/host.mjs";
import { root } from "../scripts/lib/root.mjs";
import { serve } from "../scripts/lib/serve.mjs";
import { pressureColumns, pressureInputs } from "./loops.mjs";
import { best } from "./timing.mjs";

const { call } = loadFunctions();
const height = 5000;
const dist = path.join(root, "dist");
const flags = ["--no-sandbox", "--disable-gpu", "--disable-background-networking", "--disable-component-update"];

/** The same table in the local grid: one spilled call against a native formula in each row, typing and computing included. */
export async function localGrid() {
  if (!browserPath() || !existsSync(path.join(dist, "index.html"))) return undefined;
  const server = await serve(dist);
  const browser = await chromium.launch({ executablePath: browserPath(), args: flags });
  const page = await browser.newPage();
  await page.goto(server.url);
  await page.waitForFunction(() => "bushcell" in globalThis, null, { timeout: 60_000 });
  const table = Array.from({ length: height }, (_, i) => pressureInputs(i));
  const times = await page.evaluate(timeInPage, { table, rows: height });
  await browser.close();
  await server.close();
  return {
    name: `the local grid: ${height} rows by one spilled call, against ${height} native formulas`,
    ratio: times.call / times.native,
    limit: 1,
    note: `${times.call.toFixed(0)} ms against ${times.native.toFixed(0)} ms`,
  };
}

/** Runs in the page. */
async function timeInPage({ table, rows }) {
  const { port } = globalThis.bushcell;
  const sheet = "Grades";
  const top = 20;
  port.write({ sheet, row: top, col: 0 }, table);
  const settled = async (col, at) => {
    for (;;) {
      await new Promise((done) => setTimeout(done, 5));
      const [[cell]] = port.read({ sheet, row: top + rows - 1, col, rows: 1, cols: 1 });
      if (typeof cell.value === "number") return performance.now() - at;
    }
  };
  const [first, last] = [top + 1, top + rows];
  const run = async (col, block) => {
    const at = performance.now();
    port.write({ sheet, row: top, col }, block);
    return settled(col, at);
  };
  const spilled = await run(4, [
    [{ formula: `=BUSH.PRESSURE(A${first}:A${last},B${first}:B${last},C${first}:C${last})` }],
  ]);
  const formulas = Array.from({ length: rows }, (_, i) => [
    { formula: `=A${first + i}/(B${first + i}*C${first + i})` },
  ]);
  return { call: spilled, native: await run(6, formulas) };
}

/** What LibreOffice adds for native formulas when it loads, computes and saves a table, against our call over as many rows. */
export async function libreOffice() {
  const count = 100_000;
  const jiti = createJiti(import.meta.url);
  /** @type {typeof import("../scripts/lib/office")} */
  const { convert, officePath } = await jiti.import("../scripts/lib/office.ts");
  if (!officePath()) return undefined;
  const folder = mkdtempSync(path.join(os.tmpdir(), "bushcell-bench-"));
  const cell = (value) => `<table:table-cell office:value-type="float" office:value="${value}"/>`;
  const formula = (i) => `<table:table-cell table:formula="of:=[.A${i + 1}]/([.B${i + 1}]*[.C${i + 1}])"/>`;
  const time = (name, fourth) => {
    const file = path.join(folder, `${name}.fods`);
    const lines = Array.from(
      { length: count },
      (_, i) => `<table:table-row>${pressureInputs(i).map(cell).join("")}${fourth(i)}</table:table-row>`,
    );
    writeFileSync(file, flat(lines.join("")));
    const start = performance.now();
    const [made] = convert([file], "csv", folder);
    const ms = performance.now() - start;
    if (readFileSync(made, "utf8").split("\n").length < count) throw new Error("LibreOffice lost rows of the bench");
    return ms;
  };
  time("warm", () => cell(1));
  const native = time("native", formula) - time("plain", () => cell(1));
  const columns = pressureColumns(count);
  const ours = best(() => call("PRESSURE", ...columns), { rounds: 5, least: 300 });
  return {
    name: `one call over ${count} rows, against what as many native formulas add in LibreOffice`,
    ratio: ours / Math.max(native, 1),
    limit: 1,
    note: `${ours.toFixed(0)} ms against ${native.toFixed(0)} ms, two runs of a program apart`,
  };
}

const flat = (lines) => `<?xml version="1.0" encoding="UTF-8"?>
<office:document xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:of="urn:oasis:names:tc:opendocument:xmlns:of:1.2" office:version="1.2" office:mimetype="application/vnd.oasis.opendocument.spreadsheet"><office:body><office:spreadsheet><table:table table:name="Bench">${lines}</table:table></office:spreadsheet></office:body></office:document>`;
