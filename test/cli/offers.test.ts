import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import Papa from "papaparse";
import { escaped } from "../../src/book/record/html";
import { command } from "../../src/cli/command";
import { asTable } from "../../src/cli/print";
import { temporaryFolder } from "../package/run";

const folder = temporaryFolder();
const file = (name: string, content: string | Uint8Array): string => {
  const place = path.join(folder, name);
  writeFileSync(place, content);
  return place;
};
function run(...args: string[]) {
  const said = { out: "", err: "" };
  const code = command(args, { out: (text) => (said.out += text), err: (text) => (said.err += text) });
  return { code, ...said };
}
const rowsOf = (csv: string) => Papa.parse<Record<string, string>>(csv.trim(), { header: true }).data;

const duties = file(
  "duties.csv",
  "duty;load [N];bore [mm];length [mm];rpm;temperature [°C];hours;wear allowance [mm];pieces a year;labour;downtime\n" +
    "Drum;180;15;20;120;5 bis 45;400;0,2;60;18;40\n",
);
/** The same two parts from two suppliers who write differently. */
const german = file(
  "North.csv",
  "Preisliste Nordseite;;;;;;\n;;;;;;\npart no.;material;bore;length;unit price [EUR];MOQ;lead time\n007;Demo Lovage;15;20;1,125;1.000;4-6 weeks\n1E5;Demo Sorrel;15;20;0,95;100;ex stock\n",
);
const inch = file(
  "West.csv",
  'item,compound,ID [in],length [in],price from 1 [USD],price from 500 [USD],qty,delivery,import duty %\n"A,1",Demo Medlar,0.591,25/32,"1,200.50",0.95,400,3 weeks,4.5\n',
);
const rates = file("rates.csv", "currency;rate [EUR];date\nUSD;0,5;2026-11-20\n");

test("files of several suppliers, each in its own way of writing, are one ranking", () => {
  const { code, out } = run("offers", german, inch, "--duties", duties, "--rates", rates);
  const rows = rowsOf(out).filter((row) => row.rank !== "note");
  expect(code).toBe(0);
  expect(rows.map((row) => row.part).sort()).toEqual(["007", "1E5", "A,1"]);
  const of = (part: string) => rows.find((row) => row.part === part)!;
  expect(of("007")).toMatchObject({
    "unit price": "1.125",
    quantity: "1000",
    "lead time [d]": "42",
    supplier: "North",
  });
  expect(of("1E5")).toMatchObject({ "unit price": "0.95", quantity: "100", "lead time [d]": "0" });
  // 1200.50 USD at 0.5, with 4.5 % customs duty; 25/32 in
  expect(of("A,1")).toMatchObject({ "unit price": "600.25", landed: "627.261", currency: "EUR" });
  expect(Number(of("A,1")["length [mm]"])).toBeCloseTo((25.4 * 25) / 32, 3);
});

test("the decision in lines; exit code 1 where nothing is to be bought", () => {
  const { code, out } = run("offers", german, "--duties", duties, "--decision");
  expect(code).toBe(0);
  expect(rowsOf(out)[0]).toEqual({ decision: "buy", answer: expect.stringMatching(/^007 from /) as string });
  const none = file("none.csv", "part,grade,bore,length,price\nx,unheard of,15,20,2\n");
  expect(run("offers", none, "--duties", duties, "--decision")).toMatchObject({ code: 1 });
});

test("the decision as a page: which, why, what turns it round, what to ask, each in its words; text stays text", () => {
  const out = path.join(folder, "decision.html");
  const odd = file("odd.csv", "part,grade,bore,length,price\n<b>x</b>,unheard of,15,20,2\n");
  const given = [german, odd, "--duties", duties, "--decision"];
  expect(run("offers", ...given, "--out", out)).toMatchObject({ code: 0, out: "" });
  const page = readFileSync(out, "utf8");
  const lines = rowsOf(run("offers", ...given).out);
  expect(new Set(lines.map(({ decision }) => decision)).size).toBeGreaterThan(5);
  for (const { answer = "" } of lines) expect(page).toContain(escaped(answer));
  for (const heading of ["What would turn the order round", "What to ask", "The offers", "Cautions", "Decided by"])
    expect(page).toContain(heading);
  expect(page).not.toContain("<b>x</b>");
  expect(run("offers", german, "--duties", duties, "--out", out)).toMatchObject({ code: 2 });
});

test("what cannot be told is asked for; the option answers it; a table that mixes both is refused", () => {
  const open = file("open.csv", "duty;grade;load;bore;length;rpm;temperature\nDrum;Demo Medlar;1.180;15;20;120;20\n");
  const asked = run("check", open);
  expect([asked.code, asked.out]).toEqual([2, ""]);
  expect(asked.err).toContain('line 2, load "1.180" could be 1180 or 1.18: decimal comma or point? (--decimal comma');
  const pressure = (mark: string) => Number(rowsOf(run("check", open, "--decimal", mark).out)[0]!["pressure [MPa]"]);
  // over 15 × 20 mm
  expect(pressure("comma")).toBeCloseTo(1180 / 300, 5);
  expect(pressure("point")).toBeCloseTo(1.18 / 300, 8);
  const comma = "duty;grade;load;bore;length;rpm;temperature\nA;Demo Medlar;1.180;15,5;20;120;20\n";
  expect(Number(rowsOf(run("check", file("comma.csv", comma)).out)[0]!["pressure [MPa]"])).toBeCloseTo(1180 / 310, 4);
  const mixed = run("check", file("mixed.csv", `${comma}B;Demo Medlar;1,180.5;15;20;120;20\n`));
  expect([mixed.code, mixed.err]).toEqual([2, expect.stringContaining("has a decimal comma (line 2, bore)")]);
  expect(run("check", file("comma.csv", comma), "--decimal", "point").err).toContain(
    'line 2, bore "15,5" has no decimal point, which was asked for',
  );
  expect(run("check", open, "--decimal", "dot").err).toContain("--decimal must be comma or point");
});

const heading = "duty,grade,load,bore,length,rpm,temperature";
test.each<[string, string | Uint8Array, RegExp]>([
  [
    "a thousands comma without quotes",
    `${heading}\nA,Demo Medlar,1,800,15,20,60,20\n`,
    /Line 2 has 8 cells under 7 headings \(the last is "20"\)/,
  ],
  [
    "a quotation mark that is never closed",
    `${heading}\nA,Demo Medlar,180,15,20,60,20\n"B,Demo Medlar,1\nC,1\n`,
    /opens a cell in line 3 is never closed/,
  ],
  [
    "a quotation mark inside a quoted cell",
    `${heading}\n"A"x,Demo Medlar,180,15,20,60,20\n`,
    /Line 2: a quotation mark/,
  ],
  ["a workbook under a wrong name", new Uint8Array([0x50, 0x4b, 3, 4, 0, 0]), /is a workbook \(.xlsx\), not text/],
  ["an old workbook", new Uint8Array([0xd0, 0xcf, 0x11, 0xe0]), /old workbook/],
  ["a PDF", new TextEncoder().encode("%PDF-1.7"), /is a PDF/],
  ["no text at all", new Uint8Array([1, 0, 2, 3, 0, 0, 9, 0]), /is no text/],
  [
    "offers",
    "part,supplier,grade,bore,length,unit price,MOQ,lead time\nA,S,Demo Medlar,15,20,1,1,3\n",
    /seems to hold offers, not duties/,
  ],
  [
    "501 headings",
    `${Array.from({ length: 501 }, (_, i) => (i ? `c${i}` : "load")).join(",")}\n1\n`,
    /501 headings, at most 500/,
  ],
  [
    "60 kB of spaces between words of a heading",
    `${heading},x${" ".repeat(60_000)}y\nA,Demo Medlar,180,15,20,60,20,1\n`,
    /at most 32767 are read/,
  ],
  [
    "30 kB of spaces between words of a heading",
    `${heading},x${" ".repeat(30_000)}y\nA,Demo Medlar,180,15,20,60,20,1\n`,
    /a heading has at most 300 characters/,
  ],
  [
    "a pressure beside the load that it follows from",
    `${heading},pressure [MPa]\nA,Demo Medlar,180,15,20,60,20,6\n`,
    /line 1: column "pressure \[MPa\]" has no place in a list of duties/,
  ],
  ["an ESC in a message", `${heading}\n"A\u001b[31m,\u001b[31m\n`, /never closed/],
])("%s: exit code 2, with where and why", (_, content, message) => {
  const { code, out, err } = run("check", file("refused.csv", content));
  expect([code, out]).toEqual([2, ""]);
  expect(err).toMatch(message);
  expect(err).not.toContain("\u001b");
});

test("a swing beside the rpm is a duty that cannot be read: exit code 2", () => {
  const both = file("both.csv", `${heading},swing\nA,Demo Medlar,180,15,20,60,20,40\n`);
  const { code, out } = run("check", both);
  expect([code, out]).toEqual([2, expect.stringContaining("rpm and swing are both filled")]);
});

test("a row that fails is exit code 1, a fault of the program itself 3; neither hides the other", () => {
  const weak = file("weak.csv", `${heading}\nA,Demo Medlar,180000,15,20,60,20\n`);
  expect(run("check", weak).code).toBe(1);
  let err = "";
  const broken = () => {
    throw new TypeError("no such thing");
  };
  expect(command(["check", weak], { out: broken, err: (text) => (err += text) })).toBe(3);
  expect(err).toContain("a fault of the program, please report it: TypeError: no such thing");
});

test("names with an ESC reach neither the table nor a message", () => {
  const odd = file("odd.csv", `${heading},col\u001b[31m\n"A\u001b[31m",Demo Medlar,180,15,20,60,20,1\n`);
  const { out, err } = run("check", odd, "--table");
  expect(out + err).not.toContain("\u001b");
  expect(out).toContain("A[31m");
});

// patterns that grow with the square of a cell took minutes here
test("hostile cells of 30 kB are read or refused", () => {
  const cells = [" ".repeat(30_000) + "5", "5" + " to ".repeat(7000), "1,".repeat(15_000), `5${" ".repeat(30_000)}H7`];
  for (const cell of cells)
    for (const at of [2, 6]) {
      const row = ["A", "Demo Medlar", "180", "15", "20", "60", "20"];
      row[at] = `"${cell}"`;
      expect([0, 1, 2]).toContain(
        run("check", file("long.csv", `${heading},shaft zone\n${row.join(",")},"${cell}"\n`)).code,
      );
    }
});

describe("any way that text files are written", () => {
  const text = `${heading}\r\n"Größe\r\nX",Demo Medlar,180,15,20,60,"5 to 45"\r\nB,Demo Medlar,180,15,20,60,20\r\n`;
  const utf16 = (mark: boolean, big: boolean) => {
    const units = [...(mark ? "\uFEFF" : ""), ...text].map((c) => c.charCodeAt(0));
    return Uint8Array.from(units.flatMap((u) => (big ? [u >> 8, u & 255] : [u & 255, u >> 8])));
  };
  const latin = Uint8Array.from([...text].map((c) => c.charCodeAt(0)));
  test.each<[string, string | Uint8Array]>([
    ["UTF-8", text],
    ["UTF-8 with a mark", `\uFEFF${text}`],
    ["UTF-16, little end first", utf16(true, false)],
    ["UTF-16, big end first", utf16(true, true)],
    ["UTF-16 without a mark", utf16(false, false)],
    ["Latin-1", latin],
    ["blank first lines", `\n\n${text}`],
  ])("%s; line numbers count the file's lines", (name, content) => {
    const { code, out, err } = run("check", file("written.csv", content));
    const rows = rowsOf(out);
    const offset = name === "blank first lines" ? 2 : 0;
    expect([code, rows.map((row) => [Number(row.line), row.duty!.replace(/\s/, " ")])]).toEqual([
      0,
      [
        [2 + offset, "Größe X"],
        [4 + offset, "B"],
      ],
    ]);
    expect(err.includes("read as Latin-1")).toBe(name === "Latin-1");
  });
  test("tabs, bars, semicolons with two decimal commas in a row", () => {
    for (const mark of ["\t", "|", ";"]) {
      const rows = ["duty", "grade", "load", "bore", "length", "rpm", "temperature"].join(mark);
      const { out } = run(
        "check",
        file("marks.csv", `${rows}\n${["A", "Demo Medlar", "180,5", "15,5", "20", "60", "20"].join(mark)}\n`),
      );
      expect(Number(rowsOf(out)[0]!["pressure [MPa]"])).toBeCloseTo(180.5 / 310, 5);
    }
  });
});

test("200 000 lines are printed without a stack error, and one more is refused before any is read", () => {
  const lines = Array.from({ length: 200_000 }, (_, i) => [i, "fits"]);
  expect(asTable({ heading: ["line", "verdict"], lines }).split("\n")).toHaveLength(200_002);
  const more = `${heading}\n${"A,Demo Medlar,180,15,20,60,20\n".repeat(200_001)}`;
  expect(run("check", file("more.csv", more)).err).toContain("It holds 200001 rows, at most 200000 are read at a time");
});
