import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import Papa from "papaparse";
import { catalogue } from "../../src/core";
import { command } from "../../src/cli/command";
import { answer } from "../../src/edge/sheet";
import { root, temporaryFolder } from "../package/run";

const folder = temporaryFolder();
const host = { error: (code: string, message?: string) => ({ code, message }) };
const bush = (id: string, ...given: unknown[]) =>
  answer(
    catalogue.find((f) => f.spec.id === id)!,
    given,
    host,
  )[0]![0];

function file(name: string, text: string): string {
  const place = path.join(folder, name);
  writeFileSync(place, text);
  return place;
}
function check(...args: string[]) {
  const said = { out: "", err: "" };
  const code = command(["check", ...args], { out: (text) => (said.out += text), err: (text) => (said.err += text) });
  return { code, ...said };
}
const rowsOf = (csv: string) => Papa.parse<Record<string, string>>(csv.trim(), { header: true }).data;

interface Duty extends Record<string, unknown> {
  readonly name: string;
  readonly grade: string;
  readonly motion: string;
  readonly part: string;
}
const duties = JSON.parse(readFileSync(path.join(root, "data/greenhouse/duties.json"), "utf8")) as Duty[];

test("the greenhouse duties have the pressure, speed, PV, use and verdict of the sheet's functions", () => {
  const columns = "name grade motion load bore length inner outer rpm swing cycles stroke temperature".split(" ");
  const cells = duties.map((duty) => columns.map((column) => duty[column] ?? ""));
  const { out, code } = check(file("greenhouse.csv", Papa.unparse([columns, ...cells])));
  const rows = rowsOf(out);
  expect(rows.length).toBe(duties.length);
  rows.forEach((row, i) => {
    const d = duties[i]!;
    const pressure =
      d.part === "washer"
        ? bush("WASHERPRESSURE", d.load, d.inner, d.outer)
        : bush("PRESSURE", d.load, d.bore, d.length);
    const speeds: Record<string, unknown> = {
      turning: d.part === "washer" ? bush("WASHERSPEED", d.inner, d.outer, d.rpm) : bush("SPEED", d.bore, d.rpm),
      swinging: bush("SWINGSPEED", d.bore, d.swing, d.cycles),
      linear: bush("STROKESPEED", d.stroke, d.cycles),
      static: 0,
    };
    const speed = speeds[d.motion];
    const use = bush("USE", d.grade, pressure, speed, d.temperature, d.motion);
    const near = (text: string, value: unknown) => expect(Number(text)).toBeCloseTo(Number(value), 4);
    expect([row.duty, row.grade]).toEqual([d.name, d.grade]);
    near(row["pressure [MPa]"]!, pressure);
    near(row["speed [m/s]"]!, speed);
    near(row["PV [MPa·m/s]"]!, bush("PVVALUE", pressure, speed));
    if (typeof use === "number") near(row.use!, use);
    else expect(row.use).toBe("");
    expect(row.verdict).toBe(bush("VERDICT", d.grade, pressure, speed, d.temperature, d.motion));
  });
  expect(code).toBe(1);
});

const heading = "duty,grade,load,bore,length,rpm,temperature";
const good = "Seed drum,Demo Medlar,180,15,20,120,5 to 45";

test("exit code 0 where every row fits, and the cautions stand beside the answer", () => {
  const { code, out, err } = check(file("good.csv", `${heading}\n${good}\n\n`));
  expect(code).toBe(0);
  expect(rowsOf(out)).toHaveLength(1);
  expect(err).toContain("have a licensed engineer decide");
});

test.each([
  ["a row that fails", "Drum,Demo Fennel,9000,15,20,120,20", /^fails, /],
  [
    "a grade that is not known",
    "Drum,Demo Medlra,180,15,20,120,20",
    /^cannot be read: grade "Demo Medlra" is unknown; nearest: Demo Medlar/,
  ],
  ["a number that cannot be read", "Drum,Demo Medlar,heavy,15,20,120,20", /^cannot be read: load must be/],
  [
    "a number out of bounds",
    "Drum,Demo Medlar,180,-15,20,120,20",
    /^cannot be read: bore must be above 0 mm, got "-15"/,
  ],
  ["a missing number", "Drum,Demo Medlar,180,,20,120,20", /^cannot be read: bore is missing/],
  ["no motion", "Drum,Demo Medlar,180,15,20,,20", /^cannot be read: motion is missing/],
  ["no temperature", "Drum,Demo Medlar,180,15,20,120,", /^cannot be read: temperature is missing/],
  ["a datum that the grade lacks", "Door,POM,700,25,30,15,-30 to 40", /^no data, /],
])("exit code 1 for %s, and the other rows are there", (_, line, verdict) => {
  const { code, out } = check(file("bad.csv", `${heading}\n${good}\n${line}\n`));
  const [first, second] = rowsOf(out);
  expect(code).toBe(1);
  expect(first!.verdict).toMatch(/^fits/);
  expect(second!.verdict).toMatch(verdict);
});

test("own grades come first; inch units; units in headings; semicolons", () => {
  const own = file(
    "own.csv",
    "grade;running pressure limit [psi];speed limit turning [ft/min];PV limit [psi*ft/min];highest temperature [°F]\nLoft mix;1000;100;3000;180\n",
  );
  const rows = file(
    "inch.csv",
    "duty;grade;load [kip];bore;length;rpm;temperature [°F]\nRoller;Loft mix;0,2;1;1;30;70 to 120\n",
  );
  const { code, out } = check(rows, "--grades", own, "--units", "inch");
  const [row] = rowsOf(out);
  // 200 lbf / 1 in²; π·1 in·30/min = 7.854 ft/min; 1570.8 of 3000 psi·ft/min
  expect(row).toMatchObject({
    "pressure [psi]": "200",
    "speed [ft/min]": "7.85398",
    "PV [psi·ft/min]": "1570.8",
    use: "0.523599",
  });
  expect([code, row!.verdict]).toEqual([0, "fits, PV 52 %"]);
});

test("a fault in the own grades is named by its row, and the exit code says so", () => {
  const own = file("own.csv", "grade,PV limit,colour\nLoft mix,-1,red\n");
  const { code, err } = check(file("good.csv", `${heading}\n${good}\n`), "--grades", own);
  expect(code).toBe(1);
  expect(err).toMatch(/grades row 2: PV limit must be/);
  expect(err).toContain('column "colour"');
});

test("text that a spreadsheet would run is guarded, in CSV; a terminal gets no control characters", () => {
  const place = file(
    "evil.csv",
    `${heading}\n"=HYPERLINK(""x"")",Demo Medlar,180,15,20,120,20\n@SUM(1),+cmd,180,15,20,120,20\n\u001b[31mred,Demo Medlar,180,15,20,120,20\n`,
  );
  const [first, second] = rowsOf(check(place).out);
  expect(first!.duty).toBe('\'=HYPERLINK("x")');
  expect([second!.duty, second!.grade]).toEqual(["'@SUM(1)", "'+cmd"]);
  expect(check(place, "--table").out).not.toContain("\u001b");
});

test("a table to read has its numbers below each other", () => {
  const { out } = check(file("good.csv", `${heading}\n${good}\n`), "--table");
  expect(out).toBe(
    "line  duty       grade        pressure [MPa]  speed [m/s]  PV [MPa·m/s]    use  verdict\n" +
      "   2  Seed drum  Demo Medlar             0.6       0.0942        0.0565  0.454  fits, PV 45 %\n",
  );
});

test.each([
  ["no file", [], "Usage: bushcell check"],
  ["a file that is not there", ["/nowhere.csv"], "cannot be opened"],
  ["an unknown unit system", ["x.csv", "--units", "feet"], "--units must be metric or inch"],
  ["an unknown option", ["x.csv", "--grade", "y.csv"], "'--grade'"],
])("exit code 2 for %s", (_, args, message) => {
  const { code, out, err } = check(...args);
  expect([code, out]).toEqual([2, ""]);
  expect(err).toContain(message);
});

test("exit code 2 for a file whose headings do not serve", () => {
  for (const [text, message] of [
    ["duty,load\nx,1\n", 'no column is headed "grade"'],
    ["grade,temperature,bore,Bore [in]\nx,1,1,1\n", 'two columns are headed "bore"'],
    [`${heading}\n`, "holds no row below its headings"],
    ['grade,temperature\n"x,1\n', "line 2"],
  ] as const) {
    const { code, err } = check(file("headings.csv", text));
    expect([text, code, err.includes(message)]).toEqual([text, 2, true]);
  }
});
