import { readFileSync } from "node:fs";
import path from "node:path";
import type { Locator } from "playwright-core";
import { dutyCells, dutyHeadings } from "../../src/book/greenhouse/dutyRows";
import { pieces } from "../../src/taskpane/insert/pieces";
import { eventually } from "../browser/page";
import { root } from "../package/run";
import { isError } from "./cells";
import { openInWindows } from "./windows";
import type { WindowsHost } from "./windows";
import type { Sheet } from "./workbook";

/** The pane at work on the emulated workbook: everything goes through Microsoft's Excel.run and its bridge. */
let host: WindowsHost;
const idler = dutyCells.find(([name]) => name === "Belt idler in its lever")!;
const duties = [dutyHeadings, idler.map((cell) => (typeof cell === "string" ? `'${cell}` : cell))];
const columnOf = (heading: string): number => dutyHeadings.indexOf(heading);
beforeAll(async () => {
  host = await openInWindows(({ book }) => void book.addSheet("Duties", duties));
  host.page.setDefaultTimeout(15_000);
}, 60_000);
afterAll(async () => {
  const { batches, calls, book } = host.excel;
  console.log(
    `The pane in Excel for Windows, emulated: ${batches} batches of Excel.run, ${book.changes} writes, ${calls} calls`,
  );
  await host.excel.settled;
  await host.close();
});

const tab = (name: string) => host.page.getByRole("tab", { name, exact: true }).click();
const button = (name: string | RegExp): Locator => host.page.getByRole("button", { name });
const sheetNamed = (name: string): Sheet => host.excel.book.find(name)!;

/** Formulas have their answers a moment after they were written. */
async function computed(sheet: Sheet): Promise<void> {
  await eventually(async () => {
    const formulas = [...sheet.formulas.values()];
    expect(formulas.length).toBeGreaterThan(0);
    for (const { text, answer } of formulas) expect([text, answer]).toEqual([text, expect.any(Array)]);
  });
}
const errorsOf = (sheet: Sheet) =>
  [...sheet.formulas.values()].flatMap(({ text, answer }) =>
    answer!.flat().flatMap((cell) => (isError(cell) ? [[text, cell]] : [])),
  );

test("the selected row becomes the duty", async () => {
  await host.excel.select("Duties", 1, 2);
  await button("Read selected row").click();
  await host.page.getByText("Read by the headings in row 1").waitFor();
  const field = (name: string) => host.page.locator(`[data-field=${name}]`).inputValue();
  expect([await field("load"), await field("bore"), await field("rpm")]).toEqual(["380", "20", "30"]);
  expect(await field("temperature")).toBe("5 to 45");
});

test("a picture is put beside the cells of the selected row, sharp and told", async () => {
  await tab("Charts");
  const region = host.page.getByRole("region", { name: "Pressure and speed" });
  await region.getByRole("button", { name: "Put beside the cells" }).click();
  await region.getByText(/^Put beside the cells at [A-Z]+2 on Duties\. Undo takes it away\.$/).waitFor();
  const [{ png, set } = { png: "", set: {} }] = sheetNamed("Duties").shapes;
  // 320 pixels may take six columns of 60: the first six empty cells from C2 on
  const free = idler.findIndex((_, col, cells) => col >= 2 && cells.slice(col, col + 6).every((cell) => cell === null));
  // a cell of the emulated workbook is 48 by 15 points
  expect([set.Left, set.Top, set.Width, set.Placement]).toEqual([48 * free, 15, 240, "OneCell"]);
  expect(set.AltTextDescription).toMatch(/^The duty \(filled mark\) runs at /);
  // width and height of a PNG stand in its bytes 16 to 23 (PNG specification, 2nd edition, 11.2.2, memory)
  const bytes = Buffer.from(png, "base64");
  const [width, height] = [bytes.readUInt32BE(16), bytes.readUInt32BE(20)];
  expect([width, height]).toEqual([(240 / 0.75) * 3, ((set.Height as number) / 0.75) * 3]);
  await host.excel.select("Duties", 1, 2);
});

test("what stands in the sheet is not overwritten unasked", async () => {
  await tab("Insert");
  await button("Insert at C2 on Duties").click();
  await host.page.getByText("Nothing was written").waitFor();
  expect(sheetNamed("Duties").formulas.size).toBe(0);
  expect(sheetNamed("Duties").valueAt(1, 2)).toBe(idler[columnOf("grade")]);
});

test.each(Object.entries(pieces))("%s is inserted where asked, and computes in the sheet", async (name, text) => {
  const sheet = host.excel.book.addSheet(name);
  await host.excel.select(name, 1, 1);
  await tab("Insert");
  await host.page.getByRole("radio", { name: text }).check();
  await button(`Insert at B2 on ${name}`).click();
  await host.page.getByText(RegExp(`Written to B2:\\w+ on ${name}`)).waitFor();
  // a card is cells alone
  if (name === "card") return expect(sheet.valueAt(1, 1)).toBe("duty");
  // formulas of the spreadsheet itself, whose numbers LibreOffice holds against the functions elsewhere
  if (name === "native") {
    const texts = [...sheet.formulas.values()].map(({ text: formula }) => formula);
    expect(texts.length).toBeGreaterThan(3);
    return expect(texts.filter((formula) => formula.includes("BUSH"))).toEqual([]);
  }
  await computed(sheet);
  expect(errorsOf(sheet)).toEqual([]);
});

test("a changed duty goes back into its row, other cells stay", async () => {
  await tab("Duty");
  await host.excel.select("Duties", 1, 0);
  await button("Read selected row").click();
  await host.page.getByText("Read by the headings in row 1").waitFor();
  await host.page.locator("[data-field=load]").fill("410");
  await button("Write back to row 2").click();
  const sheet = sheetNamed("Duties");
  await eventually(async () => expect(sheet.valueAt(1, columnOf("load [N]"))).toBe(410));
  const cells = idler.map((cell, col) => (col === columnOf("load [N]") ? 410 : (cell ?? undefined)));
  expect(idler.map((_, col) => sheet.valueAt(1, col))).toEqual(cells);
});

test("a formula's error is explained where it is selected, and mended the note goes", async () => {
  const sheet = host.excel.book.addSheet("Errors", [["=BUSH.PRESSURE(800,-20,15)"]]);
  await host.excel.recalculate();
  expect(sheet.valueAt(0, 0)).toEqual({ error: "#VALUE!", message: "bore must be above 0 mm, got -20" });
  await host.excel.select("Errors", 0, 0);
  const note = host.page.getByRole("complementary", { name: "Selected cell" });
  await eventually(async () => expect(await note.innerText()).toContain("A1 #VALUE!"));
  sheet.type(0, 0, 5);
  await host.excel.recalculate();
  await note.waitFor({ state: "detached" });
});

test("formulas freeze to the values that they had", async () => {
  const sheet = sheetNamed("row");
  const [first] = [...sheet.formulas.values()];
  const before = first!.answer![0]![0];
  await tab("Insert");
  await host.excel.select("row", first!.row, first!.col);
  await button("Freeze selected formulas").click();
  await host.page.getByRole("button", { name: "Freeze", exact: true }).click();
  await host.page.getByText("Values now in place of").waitFor();
  expect(sheet.formulaAt(first!.row, first!.col)).toBeUndefined();
  expect(sheet.valueAt(first!.row, first!.col)).toBe(before);
});

test("a pasted list becomes a table of the workbook, which the next shortlist names", async () => {
  await tab("Grades");
  const headings = [
    "grade",
    "running pressure limit [MPa]",
    "PV limit [MPa*m/s]",
    "speed limit turning [m/s]",
    "highest temperature [°C]",
  ];
  const list = [headings, ["Roof white", "40", "0.2", "2", "110"]].map((row) => row.join("\t")).join("\n");
  await host.page.getByLabel("Paste grades").fill(list);
  await button("Read the list").click();
  await button(/^Confirm and write/).click();
  await eventually(async () => expect(host.excel.book.tables.map(({ name }) => name)).toEqual(["Owngrades"]));
  const table = sheetNamed("Own grades");
  expect(table.valueAt(1, 0)).toBe("Roof white");
  const sheet = host.excel.book.addSheet("Own shortlist");
  await host.excel.select("Own shortlist", 0, 0);
  await tab("Insert");
  await host.page.getByRole("radio", { name: pieces.rank }).check();
  await button("Insert at A1 on Own shortlist").click();
  await host.page.getByText("Written to A1").waitFor();
  await computed(sheet);
  expect(errorsOf(sheet)).toEqual([]);
  const rank = [...sheet.formulas.values()].find(({ text }) => text.includes("DUTYRANK"))!;
  expect(rank.text).toContain("Owngrades[#All]");
  expect(rank.answer!.flat()).toContain("Roof white");
});

test("pasted offers become a table of the workbook, which the decision and the ranking name", async () => {
  await tab("Offers");
  const headings = ["part", "supplier", "grade", "bore [mm]", "length [mm]", "price [EUR]"];
  const lines = [
    ["RV-20", "Supplier A", "Demo Medlar", "20", "20", "1.85"],
    ["RV-21", "Supplier B", "Demo Lovage", "20", "20", "2.40"],
  ];
  await host.page.getByLabel("Paste offers").fill([headings, ...lines].map((row) => row.join("\t")).join("\n"));
  await button("Read the list").click();
  await button("Confirm and write 2 offers").click();
  await host.page.getByText("2 offers stand in the table").waitFor();
  const table = host.excel.book.tables.find(({ name }) => name.startsWith("Offers"))!;
  expect(sheetNamed("Offers").valueAt(1, 0)).toBe("RV-20");
  for (const [id, insert] of [
    ["DECISION", "Insert the decision at A1"],
    ["QUOTES", "Insert the ranking at A1"],
  ] as const) {
    const sheet = host.excel.book.addSheet(id);
    await host.excel.select(id, 0, 0);
    await button(insert).click();
    await computed(sheet);
    expect(errorsOf(sheet)).toEqual([]);
    const formula = [...sheet.formulas.values()].find(({ text }) => text.includes(`BUSH.${id}(`))!;
    expect(formula.text).toContain(`${table.name}[#All]`);
    expect(JSON.stringify(formula.answer)).toContain("Supplier B");
  }
});

test("the emulated workbook lacked nothing, and nothing was refused", () => {
  expect(host.excel.book.notEmulated).toEqual([]);
  expect(host.complaints).toEqual([]);
  expect(host.outside).toEqual([]);
});

interface Violation {
  readonly id: string;
  readonly nodes: readonly { readonly html: string }[];
}
declare const axe: { run(on: object, options: object): Promise<{ violations: Violation[] }> };
const tags = ["wcag2a", "wcag2aa", "wcag21aa", "wcag22aa", "best-practice"];

test("with forced colours, at 320 px: landmark, heading, contrast and all parts within the pane", async () => {
  const fill = (excel: WindowsHost["excel"]) => void excel.book.addSheet("Duties", duties);
  const narrow = await openInWindows(fill, { width: 320, forcedColors: true });
  const { page } = narrow;
  expect(await page.getByRole("main").getByRole("heading", { level: 1 }).textContent()).toBe("Bushcell");
  await narrow.excel.select("Duties", 1, 0);
  await page.getByRole("button", { name: "Read selected row" }).click();
  await page.getByText("Read by the headings in row 1").waitFor();
  await page.evaluate(readFileSync(path.join(root, "node_modules/axe-core/axe.min.js"), "utf8"));
  for (const name of await page.getByRole("tab").allInnerTexts()) {
    await page.getByRole("tab", { name, exact: true }).click();
    const found = await page.evaluate(
      async (runOnly) => (await axe.run({ exclude: "[data-tabster-dummy]" }, { runOnly })).violations,
      tags,
    );
    const said = found.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 90)).join(" ")}`);
    expect([name, said]).toEqual([name, []]);
    // else the theme's colours would stand on a ground that the person chose
    for (const picture of await page.locator("svg[role=img]").all())
      expect(await picture.evaluate((svg) => getComputedStyle(svg).getPropertyValue("forced-color-adjust"))).toBe(
        "auto",
      );
  }
  const strip = await page.getByRole("tablist").evaluate((list) => [list.scrollWidth, list.clientWidth]);
  expect(strip[0]).toBeLessThanOrEqual(strip[1]!);
  await narrow.close();
});

test("the pane takes Office's theme, and follows it when it changes", async () => {
  const { page } = host;
  const ground = () =>
    page.evaluate(() => getComputedStyle(document.querySelector(".fui-FluentProvider")!).backgroundColor);
  expect(await ground()).toBe("rgb(255, 255, 255)");
  await host.setTheme(0x262626);
  // office.js asks Excel again after five seconds
  await page.evaluate(() => {
    const { now } = Date;
    Date.now = () => now() + 6000;
    Date.prototype.getTime = function () {
      return this.valueOf() + 6000;
    };
  });
  await page.mouse.move(170, 500);
  await page.evaluate(() => dispatchEvent(new Event("focus")));
  await eventually(async () => expect(await ground()).not.toBe("rgb(255, 255, 255)"));
});
