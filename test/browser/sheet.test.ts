import { readFileSync } from "node:fs";
import path from "node:path";
import quotes from "../../data/greenhouse/quotes.json";
import { functions as formulas } from "../../src/core";
import { answer } from "../../src/edge/sheet";
import { addressOf } from "../../src/port/address";
import type { ReadCell } from "../../src/port/sheet";
import { dutyRows } from "../../src/book/greenhouse/dutyRows";
import { root } from "../package/run";
import { pressedBush } from "../support";
import { corner, eventually, openSheet } from "./page";
import type { Opened } from "./page";

interface Meta {
  readonly name: string;
  readonly description: string;
  readonly parameters: readonly { readonly name: string; readonly description: string; readonly optional?: boolean }[];
}
const { functions } = JSON.parse(readFileSync(path.join(root, "dist/functions.json"), "utf8")) as {
  functions: readonly Meta[];
};

/** The Fit sheet's own card, by the core. */
const fitTable = (temperature: string) =>
  answer(
    formulas.FITTABLE,
    [
      pressedBush({
        ...{ grade: "Demo Sorrel", load: 900, motion: "", swing: 70, cycles: 0.5, temperature, moisture: "humid" },
        ...{ shaft: "hardened steel", "housing outside": 40, "outside zone": "+0.15/+0.20" },
        ...{ "share of grip kept": "60 %", "least clearance wanted": 0.01 },
      }),
    ],
    { error: (code) => code },
  );

let sheet: Opened;
beforeAll(async () => {
  sheet = await openSheet();
}, 90000);
afterAll(() => sheet.close());

const duties = dutyRows.filter(({ duty }) => duty !== undefined);

const dutiesSheet = { sheet: "Duties", row: 0, col: 0, rows: 60, cols: 80 };
/** Where the Duties sheet has its headings and names, wherever they stand; read once, as no test moves them. */
let layout: { readonly headings: readonly string[]; readonly names: readonly unknown[] };
async function dutyCell(duty: string, heading: string): Promise<string> {
  layout ??= layoutOf(await sheet.read(dutiesSheet));
  const [row, col] = [layout.names.indexOf(duty), layout.headings.indexOf(heading)];
  expect([duty, row >= 0, heading, col >= 0]).toEqual([duty, true, heading, true]);
  return addressOf(row, col);
}
function layoutOf(cells: readonly (readonly ReadCell[])[]) {
  const top = cells.find((line) => line.some((cell) => cell.value === "verdict"));
  expect(top).toBeDefined();
  return { headings: top!.map(({ text }) => text), names: cells.map((line) => line[0]!.value) };
}
const dutyText = async (duty: string, heading: string): Promise<string> =>
  (await sheet.cell("Duties", await dutyCell(duty, heading))).text;
const dutyNumber = async (duty: string, heading: string): Promise<number> =>
  Number((await sheet.cell("Duties", await dutyCell(duty, heading))).value);

test("the strip follows from the first moment on", () => {
  expect(sheet.firstHeading).toBe("C11 on Start here");
});

test("every duty of the data has a verdict, and no cell of it is an error that the data do not explain", async () => {
  for (const { duty } of duties)
    expect(await dutyText(duty as string, "verdict")).toMatch(/^(fits|care|fails|no data), /);
});

test("pressure, speed and PV of a turning bush follow from its row", async () => {
  const { load, bore, length, rpm } = duties.find((d) => d.id === "seed-drum") as unknown as Record<string, number>;
  const pressure = load! / (bore! * length!);
  const speed = (Math.PI * bore! * rpm!) / 60000;
  expect(await dutyNumber("Seed-drum spindle", "pressure [MPa]")).toBeCloseTo(pressure, 9);
  expect(await dutyNumber("Seed-drum spindle", "speed [m/s]")).toBeCloseTo(speed, 9);
  expect(await dutyNumber("Seed-drum spindle", "PV [MPa·m/s]")).toBeCloseTo(pressure * speed, 9);
});

test("all results spill from one formula", async () => {
  const pv = await sheet.cell("Duties", await dutyCell("Potting turntable washer", "PV [MPa·m/s]"));
  const verdict = await sheet.cell("Duties", await dutyCell("Potting turntable washer", "verdict"));
  expect(pv.formula).toBeUndefined();
  expect(pv.spilledFrom?.formula).toMatch(/^=BUSH\.DUTIES\(/);
  expect(verdict.spilledFrom).toEqual(pv.spilledFrom);
  const own = (await sheet.read(dutiesSheet)).flat().filter((c) => c.formula);
  expect(own).toHaveLength(1);
});

test("editing a load changes the verdict, and undo brings both back", async () => {
  const before = await dutyText("Seed-drum spindle", "verdict");
  expect(before).toMatch(/^fits/);
  await sheet.type("Duties", await dutyCell("Seed-drum spindle", "load [N]"), "5000");
  await eventually(async () => expect(await dutyText("Seed-drum spindle", "verdict")).toMatch(/^fails, PV/));
  expect(await dutyNumber("Seed-drum spindle", "use")).toBeGreaterThan(1);
  await sheet.page.keyboard.press("Control+z");
  await eventually(async () => expect(await dutyText("Seed-drum spindle", "verdict")).toBe(before));
});

/** One cell after the other, as a person goes along a row. */
async function typeRow(name: string, address: string, texts: readonly string[]): Promise<void> {
  await sheet.select(name, address);
  for (const text of texts) {
    await sheet.page.keyboard.type(text);
    await sheet.page.keyboard.press("Tab");
  }
}

test("a duty and a grade of one's own are typed, and the one is judged with the other", async () => {
  await typeRow("Grades", "A8", ["Own gate mix", "acetal", "60", "30", "1.2", "0.8", "2.5", "4000", "-40", "80"]);
  const row = 4 + dutyRows.length + 1;
  const typed = {
    ...{ duty: "Gate latch", grade: "Own gate mix", "load [N]": "180", "bore [mm]": "15", "length [mm]": "20" },
    ...{ "rpm [1/min]": "40", "temperature [°C]": "5 to 45" },
  };
  const { headings } = (layout ??= layoutOf(await sheet.read(dutiesSheet)));
  // the answer to the left has a duty and a grade too
  for (const [heading, text] of Object.entries(typed))
    await sheet.type("Duties", addressOf(row - 1, headings.lastIndexOf(heading)), text);
  const answer = async (heading: string) =>
    (await sheet.cell("Duties", addressOf(row - 1, headings.indexOf(heading)))).value;
  // by hand: 180/(15·20) MPa times π·15·40/60000 m/s over 4000 psi·ft/min (6894.757 Pa times 0.00508 m/s each), less for 45 °C
  const limit = ((4000 * 6894.757 * 0.00508) / 1e6) * ((80 - 45) / (80 - 23));
  await eventually(async () =>
    expect(await answer("use")).toBeCloseTo((0.6 * ((Math.PI * 15 * 40) / 60000)) / limit, 6),
  );
  expect(await answer("verdict")).toMatch(/^fits, PV/);
  await sheet.write({ sheet: "Duties", row: row - 1, col: headings.lastIndexOf("duty") }, [Array(49).fill(null)]);
  await sheet.write({ sheet: "Grades", row: 7, col: 0 }, [Array(10).fill(null)]);
  await eventually(async () => expect(await answer("verdict")).toBe(""));
});

test("a row in inch units equals its metric twin", async () => {
  // exact by definition: 1 lbf = 4.4482216152605 N, 1 in = 25.4 mm (NIST SP 811, 2008, app. B)
  const twin = { load: 55 * 4.4482216152605, bore: 0.75 * 25.4, length: 25.4 };
  const headings = ["pressure [MPa]", "speed [m/s]", "PV [MPa·m/s]", "use"];
  const row = () => Promise.all(headings.map((heading) => dutyNumber("Bench roller", heading)));
  const put = async (values: Readonly<Record<string, number | string>>) => {
    for (const [heading, value] of Object.entries(values))
      await sheet.write({ sheet: "Duties", ...corner(await dutyCell("Bench roller", heading)) }, [[value]]);
  };
  const inch = await row();
  // through another load, so that what is compared was computed anew
  await put({ "load [N]": 1 });
  await eventually(async () => expect((await row())[0]! / inch[0]!).toBeLessThan(0.1));
  await put({ "load [N]": twin.load, "bore [mm]": twin.bore, "length [mm]": twin.length });
  await eventually(async () => {
    const metric = await row();
    inch.forEach((value, i) => expect(metric[i]! / value).toBeCloseTo(1, 10));
  });
  await put({ "load [N]": "55 lbf", "bore [mm]": "0.75 in", "length [mm]": "1 in" });
  await eventually(async () => expect(await dutyText("Bench roller", "load [N]")).toBe("55 lbf"));
});

/** Words and address of the link under an error in the strip. */
const errorLink = (): Promise<unknown> =>
  sheet.page.locator("#strip .error a").evaluate((link) => [link.textContent, link.getAttribute("href")]);

test("selecting an error shows its message, inside a spill and where it came in from another cell too", async () => {
  await sheet.select("Start here", "C11");
  expect(await sheet.strip()).toContain("Bore must be above 0 mm, got -20.");
  expect(await sheet.page.locator("#spoken").innerText()).toContain("C11: #VALUE! Bore must be above 0 mm, got -20.");

  expect(await errorLink()).toEqual(["Errors of BUSH.PRESSURE", "docs/functions/pressure.html#error-bore"]);

  const bore = await dutyCell("Shade-screen winding drum", "bore [mm]");
  await sheet.type("Duties", bore, "-30");
  const verdict = await dutyCell("Shade-screen winding drum", "verdict");
  await sheet.select("Duties", verdict);
  const message = /Duties row \d+: bore must be above 0 mm, got -30\./;
  await eventually(async () => expect(await sheet.strip()).toMatch(message));
  expect(await sheet.strip()).toContain("Spilled from");
  expect(await errorLink()).toEqual(["Errors of BUSH.DUTIES", "docs/functions/duties.html#error-duties"]);
  // the other rows go on
  expect(await dutyText("Seed-drum spindle", "verdict")).toMatch(/^fits/);

  const below = { sheet: "Duties", row: 60, col: 0 };
  await sheet.write(below, [[{ formula: `=BUSH.PVVALUE(${verdict},1)` }]]);
  await sheet.select("Duties", "A61");
  await eventually(async () => expect(await sheet.strip()).toContain(`It came in with ${verdict}.`));
  expect(await sheet.strip()).toMatch(message);
  expect(await errorLink()).toEqual(["Errors of BUSH.DUTIES", "docs/functions/duties.html#error-duties"]);
  await sheet.write(below, [[null]]);

  await sheet.type("Duties", bore, "30");
  await sheet.select("Duties", verdict);
  await eventually(async () => expect(await sheet.strip()).not.toContain("#VALUE!"));
});

test("a sheet opened by its tab is the one that the strip speaks of, and has the keyboard", async () => {
  for (const name of ["Quotes", "Worked example"]) {
    await sheet.page.getByText(name, { exact: true }).last().click();
    await eventually(async () => expect(await sheet.strip()).toContain(`A1 on ${name}`));
    // the keyboard comes back in the page's next turn
    await sheet.page.evaluate(() => new Promise((done) => setTimeout(done)));
    await sheet.page.keyboard.press("ArrowDown");
    await eventually(async () => expect(await sheet.strip()).toContain(`A2 on ${name}`));
  }
});

test("a message does not outlive the formula that made it", async () => {
  const at = { sheet: "Start here", row: 30, col: 1 };
  const error = async () => (await sheet.cell("Start here", "B31")).error;
  await sheet.write(at, [[{ formula: "=BUSH.PRESSURE(1,-1,1)" }, { formula: "=BUSH.PVVALUE(B31,1)" }]]);
  const made = { code: "#VALUE!", message: "bore must be above 0 mm, got -1", by: "PRESSURE" };
  await eventually(async () => expect(await error()).toEqual(made));
  await sheet.write(at, [[{ formula: '="a"+1' }]]);
  await eventually(async () => expect(await error()).toEqual({ code: "#VALUE!" }));
  await sheet.select("Start here", "C31");
  await eventually(async () => expect(await sheet.strip()).toContain("carries no message"));
  await sheet.write(at, [[null, null]]);
  await eventually(async () => expect(await sheet.cell("Start here", "B31")).toEqual({ value: null, text: "" }));
});

test("arguments arrive as Excel hands them over", async () => {
  const at = { sheet: "Start here", row: 32, col: 1 };
  const answers = (formula: string, expected: number | string) =>
    eventually(async () => {
      const { value, error } = await sheet.cell("Start here", "B33");
      expect([formula, error ? `${error.code} ${error.message ?? ""}`.trim() : value]).toEqual([formula, expected]);
    });
  const expectCall = async (formula: string, expected: number | string) => {
    await sheet.write(at, [["not yet"]]);
    await answers(formula, "not yet");
    await sheet.write(at, [[{ formula }]]);
    await answers(formula, expected);
  };
  await sheet.write({ sheet: "Start here", row: 33, col: 1 }, [["3E5", null, 20, 15]]);
  await expectCall("=bush.pressure(600,D34,E34)", 2); // any case; a reference to one cell
  await expectCall("=BUSH.PRESSURE(B34,D34,E34)", 1000); // text that could be a number stays text
  await expectCall("=BUSH.PRESSURE(600,C34,E34)", "#VALUE! bore is missing"); // a blank is no 0
  await expectCall("=BUSH.PRESSURE(600,,15)", "#VALUE! bore is missing"); // left out in the middle
  await expectCall("=BUSH.PRESSURE(600)", "#VALUE! bore is missing"); // and at the end
  await expectCall('=BUSH.PRESSURE(600,20,15,"metric",1)', "#VALUE! BUSH.PRESSURE takes 4 arguments at most");
  await expectCall("=BUSH.PRESSURE(1/0,20,15)", "#DIV/0!"); // an error passes through
  await expectCall("=IFERROR(BUSH.PRESSURE(600,-1,15),7)", 7);
  await sheet.write(at, [[null], [null, null, null, null]]);
});

test("the shortlist ranks the grades that are chosen for the chosen duty", async () => {
  const list = async () =>
    (await sheet.read({ sheet: "Shortlist", row: 7, col: 0, rows: 40, cols: 6 })).map((line) =>
      line.map((c) => c.text),
    );
  const names = async () => (await list()).slice(1).flatMap(([grade]) => grade || []);
  expect((await list())[0]).toEqual(["grade", "kind", "use", "life [h]", "verdict", "data"]);
  // typed as a person does: the list that opens on the way takes no key
  const choose = async (duty: string, among: string) => {
    for (const [address, text] of [
      ["B3", duty],
      ["B4", among],
    ] as const) {
      await sheet.type("Shortlist", address, text);
      await eventually(async () => expect((await sheet.cell("Shortlist", address)).value).toBe(text));
    }
  };
  await choose("Steam-lance swivel", "demo");
  await eventually(async () => {
    const hot = (await list()).find(([grade]) => grade === "Demo Sorrel");
    expect(hot?.slice(2)).toEqual(["", "", expect.stringMatching(/^fails, temperature 100 °C above/), "invented"]);
  });
  await choose("Steam-lance swivel", "generic families");
  await eventually(async () =>
    expect(await names()).toEqual(expect.arrayContaining(["POM copolymer", "PA66", "PEEK"])),
  );
  // a shorter answer leaves nothing of the longer one behind
  await choose("Steam-lance swivel", "own grades");
  const own = ["Own boiler mix", "Own gutter mix", "Own loft mix"];
  await eventually(async () => expect([...(await names())].sort()).toEqual(own));
  await choose("Roof-vent pivot", "demo");
  await eventually(async () => expect(await names()).toHaveLength(6));
});

/** A sheet's first block of that many rows and columns from a cell on, as shown values. */
const shown = async (name: string, address: string, rows: number, cols: number) =>
  (await sheet.read({ sheet: name, ...corner(address), rows, cols })).map((line) => line.map(({ value }) => value));

test("the Fit sheet shows the states as FITTABLE gives them, and follows its card", async () => {
  const states = fitTable("-20 to 80")
    .slice(1)
    .map(([state]) => state);
  const expectTable = (temperature: string) =>
    eventually(async () => expect(await shown("Fit", "A36", 11, 13)).toEqual(fitTable(temperature)));
  const bars = () => shown("Fit", "C6", 10, 7);
  await expectTable("-20 to 80");
  const before = await bars();
  expect(before.map(([state]) => state)).toEqual(states);
  expect(states.at(-1)).toBe("cold again");
  expect(before.at(-1)![2]).toMatch(/^▒+$/);
  expect(before[0]![6]).toMatch(/^│·+█+$/);

  await sheet.type("Fit", "B13", "-20 to 60");
  await expectTable("-20 to 60");
  // the pictures and the press fit read spilled cells: they must follow too
  await sheet.type("Fit", "B18", "H7");
  await eventually(async () => expect((await bars())[0]![6]).not.toBe(before[0]![6]));
  await sheet.type("Fit", "B20", "+0.25/+0.30");
  await eventually(async () => expect((await sheet.cell("Fit", "B67")).value).toBeCloseTo(0.229, 12));
  // an empty cell of the card is not told: more states, which go again
  await sheet.write({ sheet: "Fit", row: 23, col: 1 }, [[null]]);
  await eventually(async () => expect((await sheet.cell("Fit", "A47")).value).toBe("cold again"));
  await sheet.write({ sheet: "Fit", row: 23, col: 1 }, [[60]]);
  await sheet.write({ sheet: "Fit", row: 19, col: 1 }, [["+0.15/+0.20"]]);
  await sheet.write({ sheet: "Fit", row: 17, col: 1 }, [["E10"]]);
  await sheet.write({ sheet: "Fit", row: 12, col: 1 }, [["-20 to 80"]]);
  await eventually(async () => expect(await bars()).toEqual(before));
  await eventually(async () => expect((await sheet.cell("Fit", "A47")).value).toBeNull());
  expect((await sheet.cell("Fit", "B67")).value).toBeCloseTo(0.129, 12);
});

test("Decision lists every offer of Quotes, also one that is added below", async () => {
  const parts = async () => (await shown("Decision", "D4", 20, 2)).map(([, part]) => part);
  const given = quotes.rows.slice(1).map(([part]) => part);
  await eventually(async () => expect(await parts()).toEqual(expect.arrayContaining(given)));
  expect((await shown("Decision", "D4", 1, 1))[0]).toEqual(["rank"]);
  await typeRow("Quotes", "A23", ["D-1", "Supplier D", "Demo Lovage", "15", "20", "1.5", "0.30", "1", "400"]);
  await eventually(async () => expect(await parts()).toEqual(expect.arrayContaining(["D-1", ...given])));
  await sheet.write({ sheet: "Quotes", row: 22, col: 0 }, [Array(9).fill(null)]);
  await eventually(async () => expect(await parts()).not.toContain("D-1"));
});

test("the Worked example follows the chosen calculation and a number of one's own", async () => {
  const line = async (formula: string) =>
    (await shown("Worked example", "B8", 32, 5)).find((row) => row[1] === formula) ?? [];
  await eventually(async () => expect((await line("p = F / (d·L)"))[3]).toBeCloseTo(55 / 0.75, 10));
  expect((await line("p = F / (d·L)"))[4]).toBe("psi");
  await sheet.write({ sheet: "Worked example", row: 3, col: 1 }, [["RUNTEMP"]]);
  await eventually(async () => expect((await line("T_high = Ta + Q / G_low"))[4]).toBe("°C"));
  const before = (await line("T_high = Ta + Q / G_low"))[3] as number;
  await sheet.type("Worked example", "A15", "40");
  // ten degrees more around it are ten degrees more in it
  await eventually(async () => expect((await line("T_high = Ta + Q / G_low"))[3]).toBeCloseTo(before + 10, 9));
  await sheet.write({ sheet: "Worked example", row: 14, col: 0 }, [[null]]);
  await sheet.write({ sheet: "Worked example", row: 3, col: 1 }, [["PRESSURE in inches"]]);
  await eventually(async () => expect((await line("p = F / (d·L)"))[4]).toBe("psi"));
});

test("the sheet proposes a function by the beginning of its name", async () => {
  await sheet.select("Start here", "B24");
  await sheet.page.keyboard.type("=bush.wash");
  const proposed = functions.filter(({ name }) => name.startsWith("WASH"));
  expect(proposed.length).toBeGreaterThan(1);
  for (const { name, description } of proposed) await sheet.shows(`BUSH.${name}${description}`);
  await leaveCell();
});

test("a proposal that is behind what was typed is not taken", async () => {
  await sheet.select("Start here", "B24");
  await sheet.page.keyboard.type("=BUSH.P");
  await sheet.shows("BUSH.PRESSURE");
  // faster than the list follows
  await sheet.page.keyboard.insertText("RESSURE(800,20,15)");
  await sheet.page.keyboard.press("Enter");
  await eventually(async () => {
    expect((await sheet.cell("Start here", "B24")).formula).toBe("=BUSH.PRESSURE(800,20,15)");
  });
  await sheet.select("Start here", "B24");
  await sheet.page.keyboard.press("Delete");
});

test("every function has an argument hint, from the metadata", async () => {
  expect(functions.length).toBeGreaterThan(20);
  await sheet.select("Start here", "B24");
  await sheet.page.keyboard.type("=");
  for (const { name, description, parameters } of functions) {
    await sheet.page.keyboard.press("Control+a");
    await sheet.page.keyboard.insertText(`=bush.${name.toLowerCase()}`);
    await sheet.page.keyboard.type("(");
    const explained = parameters.map((p) => `${p.name}${p.optional ? "Optional" : "Required"}. ${p.description}`);
    await sheet.shows(`${description}${explained.join("")}`);
  }
  await leaveCell();
}, 240000);

/** Escape closes the hint, then the editor. */
async function leaveCell(): Promise<void> {
  await sheet.page.keyboard.press("Escape");
  await sheet.page.keyboard.press("Escape");
}

test("F6 goes round the page's parts, and the keyboard works in the sheet again", async () => {
  await sheet.select("Start here", "B24");
  const inPart = () =>
    sheet.page.evaluate(() =>
      ["sheet", "pane", "strip"].find((id) => document.getElementById(id)?.contains(document.activeElement)),
    );
  const visited: (string | undefined)[] = [];
  for (let i = 0; i < 3; i++) {
    await sheet.page.keyboard.press("F6");
    visited.push(await inPart());
  }
  expect(visited).toEqual(["pane", "strip", "sheet"]);
  await sheet.page.keyboard.press("ArrowDown");
  await eventually(async () => expect(await sheet.strip()).toContain("B25 on Start here"));
});

test("tables have names, and a block becomes a table on a sheet of its own", async () => {
  const made = await sheet.page.evaluate(async () => {
    const { port } = (globalThis as unknown as { bushcell: { port: import("../../src/port/sheet").SheetPort } })
      .bushcell;
    const before = await port.tables();
    const added = await port.addTable("Lab grades", [
      ["grade", "PV limit"],
      ["Lab mix", 0.2],
    ]);
    return [before, added] as const;
  });
  expect(made[0]).toEqual([expect.objectContaining({ name: "OwnGrades" })]);
  expect(made[1]).toEqual({
    name: "Labgrades",
    reference: "Labgrades",
    place: { sheet: "Lab grades", row: 0, col: 0, rows: 2, cols: 2 },
  });
  await sheet.write({ sheet: "Start here", row: 34, col: 1 }, [
    [{ formula: '=BUSH.GRADE("Lab mix","PV limit",Labgrades)' }],
  ]);
  await eventually(async () => expect((await sheet.cell("Start here", "B35")).value).toBe(0.2));
});

test("the page asks nothing of anyone else and complains of nothing", () => {
  expect(sheet.outside).toEqual([]);
  expect(sheet.complaints).toEqual([]);
});
