import { chromium } from "playwright-core";
import { dutyCells, dutyHeadings } from "../../src/book/greenhouse/dutyRows";
import { record } from "../../src/cli/record";
import type { Cell } from "../../src/core/formula";
import { browserPath } from "../package/run";

const duties = [[...dutyHeadings], ...dutyCells.map((row) => [...row])] as Cell[][];
const names = duties.slice(1).flatMap((row) => (row[dutyHeadings.indexOf("duty")] as string | null) ?? []);

/** In mm (A4: ISO 216; Letter: 8.5 in by 11 in), and how much of it a browser leaves white on each side. */
const papers = { A4: [210, 297], Letter: [215.9, 279.4] } as const;
const margin = 10;
const pixels = (mm: number): number => (mm * 96) / 25.4;

test("the record of every greenhouse duty has all up to the signatures on its first page, and the whole on four at most", async () => {
  const browser = await chromium.launch({ executablePath: browserPath(), args: ["--no-sandbox"] });
  const page = await browser.newPage();
  await page.emulateMedia({ media: "print" });
  const widths = Object.values(papers).map(([wide]) => pixels(wide - 2 * margin));
  const most = Object.values(papers).map(([, high]) => pixels(high - 2 * margin));
  let longest = { height: 0, html: "" };
  expect(names.length).toBeGreaterThan(20);
  for (const name of names) {
    const html = record(duties, name, undefined, "metric");
    await page.setContent(html);
    const signed = await page.evaluate(
      (wide) =>
        wide.map((width) => {
          document.body.style.width = `${width}px`;
          return document.querySelector(".sign")!.getBoundingClientRect().bottom;
        }),
      widths,
    );
    expect([name, signed.map((bottom, i) => bottom <= most[i]!)]).toEqual([name, [true, true]]);
    const height = await page.evaluate(() => document.body.scrollHeight);
    if (height > longest.height) longest = { height, html };
  }
  await page.setContent(longest.html);
  const white = `${margin}mm`;
  for (const format of Object.keys(papers)) {
    const pdf = await page.pdf({ format, margin: { top: white, bottom: white, left: white, right: white } });
    const printed = pdf.toString("latin1").match(/\/Type\s*\/Page\b/g) ?? [];
    expect([format, printed.length >= 2, printed.length <= 4]).toEqual([format, true, true]);
  }
  await browser.close();
}, 120000);
