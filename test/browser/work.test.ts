import { mkdtempSync, writeFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import os from "node:os";
import path from "node:path";
import { readXlsx } from "hucre/xlsx";
import type { Page } from "playwright-core";
import { convert, officePath } from "../../scripts/lib/office";
import { typedFormula } from "../../src/book/storedFormula";
import { addressOf } from "../../src/port/address";
import type { ReadCell } from "../../src/port/sheet";
import type { LaidPicture } from "../../src/workbench/grid/port";
import { corner, eventually, openSheet } from "./page";
import type { Opened } from "./page";

/** What is typed, kept, saved and opened again, as a person does it: by keys and buttons. */
let sheet: Opened;
beforeAll(async () => {
  sheet = await openSheet();
  await sheet.page.locator("#work").waitFor();
}, 240000);
afterAll(() => sheet.close());

// in the page
// oxlint-disable-next-line typescript/no-explicit-any -- the port across the wire
declare function handle(): any;

const value = async (address: string) => (await sheet.cell("Mine", address)).value;
const button = (name: string) => sheet.page.getByRole("button", { name, exact: true });

/** Every sign of a keyboard, and how what is typed is held: numbers as read, all else as typed. */
const signs = [...'!"#$%&(*+,-./:;<>?@[\\]^_`{|}~°µ€'].map((sign) => `${sign}x`);
const typed: readonly (readonly [string, string | number])[] = [
  ...signs.map((text) => [text, text] as const),
  ["load [N]", "load [N]"],
  ["1.180", 1.18],
  ["1,180", 1180],
  ["2.345e-6", 0.000002345],
  ...["$0.60", "4.5 %", "007", "(5)", "3/4", "2026-12-01", "123456789012345678", "12,1250"].map(
    (text) => [text, text] as const,
  ),
];

test("whatever is typed stays what it was, and a formula typed after it answers", async () => {
  await sheet.page.evaluate(() => handle().addTable("Mine", [[null]]));
  await sheet.select("Mine", "A1");
  for (const [text] of typed) {
    await sheet.page.keyboard.type(text);
    await sheet.page.keyboard.press("Enter");
  }
  await sheet.type("Mine", "B1", "=1+2");
  await eventually(async () => expect(await value("B1")).toBe(3));
  const cells = await sheet.read({ sheet: "Mine", row: 0, col: 0, rows: typed.length, cols: 1 });
  expect(cells.map(([text]) => text!.value)).toEqual(typed.map(([, held]) => held));
}, 240000);

/** What the grid calls the first sheet that a person adds. */
const own = "Sheet1";
/** p = F/(d·L), the definition of mean pressure on the projected area. */
const loads = Array.from({ length: 20 }, (_, i) => 150 + 37 * i);
/** One more in the third row, which is inserted. */
const moreLoads = [loads[0]!, 168, ...loads.slice(1)];
const expectVariants = (wanted = moreLoads) =>
  eventually(async () => {
    const filled = await sheet.read({ sheet: own, row: 1, col: 0, rows: wanted.length, cols: 4 });
    expect(filled.map(([load]) => load!.value)).toEqual(wanted);
    filled.forEach((line, i) => expect(line[3]!.value).toBeCloseTo(wanted[i]! / (20 * 15), 12));
    const sum = await sheet.cell(own, `A${wanted.length + 3}`);
    expect([sum.formula, sum.value]).toEqual([
      `=SUM(A2:A${wanted.length + 1})`,
      wanted.reduce((total, load) => total + load),
    ]);
    expect(filled.map((line) => line[3]!.formula)).toEqual(
      filled.map((_, i) => `=BUSH.PRESSURE(A${i + 2},B${i + 2},C${i + 2})`),
    );
    expect((await sheet.cell(own, "H2")).value).toBe(0.21);
  }, 60000);
/** Keys into neighbouring cells; what follows waits until the last one is entered, and so the selection has gone on. */
async function typeAcross(address: string, texts: readonly string[], key: "Tab" | "Enter"): Promise<void> {
  await sheet.select(own, address);
  for (const text of texts) {
    await sheet.page.keyboard.type(text);
    await sheet.page.keyboard.press(key);
  }
  const { row, col } = corner(address);
  const next = key === "Tab" ? addressOf(row, col + texts.length) : addressOf(row + texts.length, col);
  await eventually(async () => expect(await sheet.strip()).toContain(`${next} on ${own}`));
}

test("twenty variants and a grade of one's own are typed below their headings on a new sheet, and filled down", async () => {
  const { page } = sheet;
  await page.locator('[data-u-comp="sheet-bar-append-button"]').first().click();
  await eventually(async () => expect(await sheet.strip()).toContain(`A1 on ${own}`));
  await typeAcross("A1", ["load [N]", "bore [mm]", "length [mm]", "pressure [MPa]"], "Tab");
  // Enter goes on below the load, not below where the Tabs began
  await typeAcross("A2", loads.map(String), "Enter");
  await typeAcross("B2", ["20", "15", "=BUSH.PRESSURE(A2,B2,C2)"], "Tab");
  await typeAcross("F1", ["grade", "PV limit [MPa·m/s]"], "Tab");
  await typeAcross("F2", ["Own mix", "0.21", '=BUSH.GRADE(F2,"PV limit",F1:G2)'], "Tab");
  const select = (at: string, rows: number, cols: number) =>
    page.evaluate((place) => handle().select(place), { sheet: own, ...corner(at), rows, cols });
  await select("A1", 1, 4);
  await page.keyboard.press("Control+b");
  await select("B2", 20, 3);
  await page.keyboard.press("Control+d");
  await sheet.type(own, "A23", "=SUM(A2:A21)");
  await expectVariants(loads);
}, 240000);

const pictures = () => sheet.page.evaluate((name) => handle().pictures(name) as LaidPicture[], own);
/** Whether a part of the picture's curve is in view: points of the sheet in its colour, which nothing else there has. */
const showsCurve = () =>
  sheet.page.locator("#sheet canvas[id^=univer-sheet-main]").evaluate((drawn) => {
    const { width, height } = drawn as HTMLCanvasElement;
    const copy = Object.assign(document.createElement("canvas"), { width, height }).getContext("2d")!;
    copy.drawImage(drawn as HTMLCanvasElement, 0, 0);
    const { data } = copy.getImageData(0, 0, width, height);
    const isCurve = (i: number) => [0x21, 0x5f, 0x69].every((shade, k) => Math.abs(data[i + k]! - shade) < 3);
    let points = 0;
    for (let i = 0; i < data.length; i += 4) if (isCurve(i)) points++;
    return points > 100;
  });

test("the pane puts a picture beside the cells, which shows there; one undo takes it away and one redo brings it back", async () => {
  const { page } = sheet;
  await sheet.select("Duties", "A5");
  await button("Read selected row").click();
  await page.getByRole("tab", { name: "Charts" }).click();
  // so far down that the sheet is scrolled
  await sheet.select(own, "J40");
  expect(await showsCurve()).toBe(false);
  const region = page.getByRole("region", { name: "Pressure and speed" });
  await region.getByRole("button", { name: "Put beside the cells" }).press("Enter");
  await region.getByText(`Put beside the cells at J40 on ${own}. Undo takes it away.`).waitFor();
  const [picture] = await pictures();
  // 341 × 320 pixels over rows of 24 and columns of 88
  expect(picture!.place).toEqual({ sheet: own, row: 39, col: 9, rows: 15, cols: 4 });
  expect(picture!.words).toMatch(/^The duty \(filled mark\) runs at 2\.25 MPa/);
  await eventually(async () => expect(await showsCurve()).toBe(true));
  await page.locator("#sheet canvas[id^=univer-sheet]").click({ position: { x: 100, y: 300 } });
  await page.keyboard.press("Control+z");
  await eventually(async () => expect([await pictures(), await showsCurve()]).toEqual([[], false]));
  await page.keyboard.press("Control+y");
  await eventually(async () => expect([await pictures(), await showsCurve()]).toEqual([[picture], true]));
  // what it shows is told where a cell below it is selected
  await sheet.select(own, "K41");
  expect(await sheet.strip()).toContain(picture!.words);
}, 240000);

test("a row inserted by the menu of its heading takes what refers to the rows below along; undo takes it back", async () => {
  const { page } = sheet;
  // the sheet scrolls to what is selected, so that the third heading is where it is looked for
  await sheet.select(own, "A1");
  const { x, y } = (await page.locator("#sheet canvas[id^=univer-sheet-main]").first().boundingBox())!;
  await page.mouse.click(x + 20, y + 20 + 2.5 * 24, { button: "right" });
  // on the word: in the middle of the button stands how many
  await page.getByRole("button", { name: /^Insert .* rows above$/ }).click({ position: { x: 35, y: 14 } });
  const sum = async (address: string) => (await sheet.cell(own, address)).formula;
  await eventually(async () => expect(await sum("A24")).toBe("=SUM(A2:A22)"));
  const pictureRow = async () => (await pictures())[0]!.place.row;
  await eventually(async () => expect(await pictureRow()).toBe(40));
  await page.keyboard.press("Control+z");
  await expectVariants(loads);
  expect(await pictureRow()).toBe(39);
  await page.keyboard.press("Control+y");
  await eventually(async () => expect(await sum("A24")).toBe("=SUM(A2:A22)"));
  await typeAcross("A3", ["168", "20", "15", "=BUSH.PRESSURE(A3,B3,C3)"], "Tab");
  await expectVariants();
}, 240000);

/** The texts of all versions that the browser keeps. */
const versions = (page: Page) =>
  page.evaluate(
    () =>
      new Promise<string[]>((resolve, reject) => {
        const opening = indexedDB.open("bushcell");
        opening.onerror = () => reject(opening.error!);
        opening.onsuccess = () => {
          const all = opening.result.transaction("versions").objectStore("versions").getAll();
          all.onsuccess = () => resolve((all.result as { text: string }[]).map(({ text }) => text));
          opening.result.close();
        };
      }),
  );

test("a second tab says that the first one holds the file, that it fell behind, and what it lacks once that is closed", async () => {
  const { page } = sheet;
  await sheet.type("Mine", "D1", "800");
  await sheet.type("Mine", "D2", "=BUSH.PRESSURE(D1,20,15)");
  await sheet.type("Mine", "F1", "=BUSH.GRADES()");
  await eventually(async () => expect(await value("F1")).toBe("grade"));
  await eventually(async () => expect((await versions(page)).at(-1)).toContain("=BUSH.GRADES()"));
  const other = await page.context().newPage();
  const told = (words: string) =>
    eventually(async () => expect(await other.locator("#work").innerText()).toContain(words), 60000);
  await other.goto(page.url());
  await told("Another tab holds the file: changes here are not kept.");
  await page.bringToFront();
  await sheet.type("Mine", "D3", "typed in the first");
  await told("Another tab holds the file and has changed it since: changes here are not kept.");
  await other.bringToFront();
  await eventually(async () => {
    await other.locator("#sheet canvas[id^=univer-sheet]").click({ position: { x: 300, y: 300 } });
    expect(await other.locator("#sheet :focus").count()).toBe(1);
  });
  await other.keyboard.type("typed in the second");
  await other.keyboard.press("Enter");
  // the first one goes
  await page.goto("about:blank");
  await told("that are not in here. They stay among the versions; from now on this sheet is kept. Open them");
  const kept = await versions(other);
  expect(kept.at(-1)).toContain("typed in the second");
  expect(kept.at(-1)).not.toContain("typed in the first");
  expect(kept.at(-2)).toContain("typed in the first");
  await other.close();
}, 240000);

test("what was typed is there after the page was opened anew", async () => {
  await sheet.reopen(() => sheet.page.goBack());
  await expectVariants();
  // p = F/(d·L), the definition of mean pressure on the projected area
  await eventually(async () => expect(await value("D2")).toBeCloseTo(800 / (20 * 15), 12));
  await eventually(async () => expect(await value("F1")).toBe("grade"));
  expect(await value("A1")).toBe(signs[0]);
  const [picture] = await pictures();
  expect(picture!.place).toEqual({ sheet: own, row: 40, col: 9, rows: 15, cols: 4 });
  // below it, so that all of it is in view
  await sheet.select(own, "M57");
  await eventually(async () => expect(await showsCurve()).toBe(true));
}, 240000);

const names = ["Start here", "Duties", "Shortlist", "Grades", "Fit", "Quotes", "Worked example", "Mine", own];
/** What the sheets hold, by address; the empty cells stay in the page, since they are nine in ten. */
const everything = () =>
  sheet.page.evaluate(
    (wanted) =>
      wanted.map((name) =>
        (handle().read({ sheet: name, row: 0, col: 0, rows: 120, cols: 62 }) as ReadCell[][]).flatMap((line, row) =>
          line.flatMap((cell, col) => (cell.text === "" && !cell.formula ? [] : [{ name, row, col, ...cell }])),
        ),
      ),
    names,
  );

const duty = async () => (await sheet.cell("Duties", "B5")).text;

/** Values, formulas and styles of every cell. */
async function cellsOf(file: Uint8Array) {
  const { sheets } = await readXlsx(file, { readStyles: true });
  return sheets.map(({ name, rows, cells }) => ({ name, rows, cells }));
}

/** LibreOffice opens and saves it: what the variants hold is the same, in the names that it lowers. */
async function expectSameInOffice(saved: Uint8Array): Promise<void> {
  if (!officePath()) return console.log("LibreOffice is not installed: it does not open the saved file.");
  const folder = mkdtempSync(path.join(os.tmpdir(), "bushcell-saved-"));
  writeFileSync(path.join(folder, "saved.xlsx"), saved);
  const [out] = convert([path.join(folder, "saved.xlsx")], "xlsx:Calc MS Excel 2007 XML", path.join(folder, "out"));
  const [mine, office] = await Promise.all(
    [saved, new Uint8Array(await readFile(out!))].map(async (file) => {
      const { rows, cells } = (await cellsOf(file)).find(({ name }) => name === own)!;
      const formulas = [...(cells ?? [])].flatMap(([at, { formula }]) =>
        formula ? [[at, typedFormula(formula)]] : [],
      );
      return { rows: rows.map((row) => row.slice(0, 3)), formulas, isBold: cells?.get("0,0")?.style?.font?.bold };
    }),
  );
  expect(mine!.isBold).toBe(true);
  expect(office).toEqual(mine);
}

/** How sheets look where no scroll bar reaches, made small: a hair's breadth beside counts for nothing, another font for much. */
async function looks(): Promise<number[]> {
  const found: number[] = [];
  for (const name of ["Start here", own]) {
    await sheet.select(name, "A1");
    let last: number[] = [];
    await eventually(async () => {
      const before = last;
      last = await sheet.page.locator("#sheet canvas[id^=univer-sheet-main]").evaluate((drawn) => {
        const small = Object.assign(document.createElement("canvas"), { width: 80, height: 40 }).getContext("2d")!;
        small.drawImage(drawn as HTMLCanvasElement, 0, 0, 800, 400, 0, 0, 80, 40);
        return [...small.getImageData(0, 0, 80, 40).data];
      });
      // the drawing rests
      expect(last).toEqual(before);
    });
    found.push(...last);
  }
  return found;
}

test("a saved file opens again with every value, formula, text and look the same, and undo goes back across it", async () => {
  await eventually(async () => expect(await duty()).not.toBe(""));
  const before = await everything();
  expect(before.map((cells) => cells.length).every((filled) => filled > 1)).toBe(true);
  const looked = await looks();
  const laid = (await pictures()).map(({ source: _, ...picture }) => picture);
  await sheet.select("Mine", "A1");
  const [saved] = await Promise.all([sheet.page.waitForEvent("download"), sheet.page.keyboard.press("Control+s")]);
  await eventually(async () => expect(await sheet.work()).toContain("Saved as Rooftop greenhouse.xlsx."));
  const file = await readFile(await saved.path());
  await expectSameInOffice(new Uint8Array(file));

  await sheet.type("Mine", "D1", "900");
  const chooser = sheet.page.waitForEvent("filechooser");
  await button("Open …").click();
  await sheet.reopen(async () => (await chooser).setFiles({ name: "mine.xlsx", mimeType: "", buffer: file }));
  expect(await sheet.work()).toContain("Opened mine.xlsx.");
  // once the slowest sheet has answered, so that the page is not asked for everything while it still computes
  await eventually(async () => expect(await duty()).not.toBe(""), 60000);
  await eventually(async () => expect(await everything()).toEqual(before), 60000);
  const [picture, ...others] = await pictures();
  const { source, ...rest } = picture!;
  expect([[rest], others]).toEqual([laid, []]);
  expect(source).toMatch(/^data:image\/png;base64,/);
  expect(Math.max(...(await looks()).map((shade, i) => Math.abs(shade - looked[i]!)))).toBeLessThan(8);

  await sheet.reopen(() => button("Undo that").click());
  await eventually(async () => expect(await value("D1")).toBe(900));
}, 240000);

test("a file that cannot be opened is refused in a sentence, and nothing is lost", async () => {
  const open = async (name: string, buffer: Buffer) => {
    const chooser = sheet.page.waitForEvent("filechooser");
    await button("Open …").click();
    await (await chooser).setFiles({ name, mimeType: "", buffer });
  };
  await open("list.xlsx", Buffer.from("grade;price"));
  await eventually(async () => expect(await sheet.work()).toContain("list.xlsx is no .xlsx file"));
  await open("torn.xlsx", Buffer.concat([Buffer.from("PK\u0003\u0004"), Buffer.alloc(2000)]));
  await eventually(async () => expect(await sheet.work()).toContain("torn.xlsx is damaged"));
  await open("wide.csv", Buffer.from(`title\n${Array(16_385).fill("1").join(",")}`));
  await eventually(async () =>
    expect(await sheet.work()).toContain("wide.csv is not opened. Line 2 holds 16385 cells"),
  );
  expect(await value("D1")).toBe(900);
}, 240000);

test("where nothing can be kept a sentence says so, and what opens something else leaves the sheet as it is", async () => {
  const { page } = sheet;
  await page.evaluate(() => {
    const { put } = IDBObjectStore.prototype;
    IDBObjectStore.prototype.put = () => {
      throw new DOMException("no room", "QuotaExceededError");
    };
    Object.assign(globalThis, { makeRoom: () => (IDBObjectStore.prototype.put = put) });
  });
  // the button has the keyboard
  await page.locator("#sheet canvas[id^=univer-sheet]").click({ position: { x: 300, y: 300 } });
  await sheet.type("Mine", "D1", "950");
  await eventually(async () =>
    expect(await sheet.work()).toContain(
      "The browser's storage is full: nothing further is kept here. Save as .xlsx so that nothing is lost.",
    ),
  );
  await button("Start again").click();
  await eventually(async () =>
    expect(await sheet.work()).toContain("The browser's storage is full: the sheet stays as it is."),
  );
  expect(await value("D1")).toBe(950);
  await page.evaluate(() => (globalThis as unknown as { makeRoom: () => void }).makeRoom());
  await page.locator("#sheet canvas[id^=univer-sheet]").click({ position: { x: 300, y: 300 } });
  await sheet.type("Mine", "D2", "960");
  await eventually(async () => expect(await sheet.work()).toContain("Kept in this browser at"));
  await sheet.type("Mine", "D1", "900");
}, 240000);

test("the page complains of nothing and asks for nothing from elsewhere", () => {
  expect([sheet.complaints, sheet.outside]).toEqual([[], []]);
});
