import { writeFileSync } from "node:fs";
import path from "node:path";
import Papa from "papaparse";
import { catalogue, functions } from "../../src/core";
import { command } from "../../src/cli/command";
import { answer } from "../../src/edge/sheet";
import { dutyCells, dutyHeadings, dutyRows } from "../../src/book/greenhouse/dutyRows";
import { temporaryFolder } from "../package/run";
import { host } from "../support";

const folder = temporaryFolder();
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

const greenhouse = () => file("greenhouse.csv", Papa.unparse([[...dutyHeadings], ...dutyCells.map((row) => [...row])]));
const named = dutyRows.filter(({ duty }) => duty !== undefined);
const near = (text: string, value: unknown) =>
  typeof value === "number" ? expect(Number(text) / (value || 1)).toBeCloseTo(value && 1, 4) : expect(text).toBe(value);

test("the greenhouse duties have DUTIES' answer, with the file's line in front", () => {
  const { out, code } = check(greenhouse());
  const { data } = Papa.parse<string[]>(out.trim());
  const [headings, ...answered] = answer(functions.DUTIES, [[dutyHeadings, ...dutyCells]], host);
  expect(data[0]).toEqual(["line", ...headings!]);
  expect(data.slice(1).map(([line]) => Number(line))).toEqual(
    dutyRows.flatMap(({ duty }, i) => (duty === undefined ? [] : [i + 2])),
  );
  for (const [line, ...cells] of data.slice(1)) cells.forEach((text, i) => near(text, answered[Number(line) - 2]![i]));
  expect(code).toBe(1);
});

test("the greenhouse duties have the pressure, speed and PV of the sheet's functions", () => {
  const rows = rowsOf(check(greenhouse()).out);
  expect(rows.length).toBe(named.length);
  let compared = 0;
  rows.forEach((row, i) => {
    const d = named[i]!;
    expect([row.duty, row.grade]).toEqual([d.duty, d.grade]);
    if (d.part === "flanged" || d.time !== undefined || d.runningTime !== undefined) return;
    const pressure =
      d.part === "washer"
        ? bush("WASHERPRESSURE", d.load ?? d.axialLoad, d.inner, d.outer)
        : bush("PRESSURE", d.load, d.bore, d.length);
    const speeds: Record<string, unknown> = {
      turning: d.part === "washer" ? bush("WASHERSPEED", d.inner, d.outer, d.rpm) : bush("SPEED", d.bore, d.rpm),
      swinging: bush("SWINGSPEED", d.bore, d.swing, d.cycles),
      linear: bush("STROKESPEED", d.stroke, d.cycles),
      static: 0,
    };
    const speed = speeds[d.motion as string];
    near(row["pressure [MPa]"]!, pressure);
    near(row["speed [m/s]"]!, speed);
    near(row["PV [MPa·m/s]"]!, bush("PVVALUE", pressure, speed));
    compared++;
  });
  expect(compared).toBeGreaterThan(20);
});

const heading = "duty,grade,load,bore,length,rpm,temperature,moisture";
const good = "Seed drum,Demo Medlar,180,15,20,120,5 to 45";

test("exit code 0 where every row fits, and the cautions stand beside the answer", () => {
  const { code, out, err } = check(file("good.csv", `${heading}\n${good}\n\n`));
  expect(code).toBe(0);
  expect(rowsOf(out)).toHaveLength(1);
  expect(err).toContain("have a licensed engineer decide");
});

test.each<[string, number, string, RegExp]>([
  ["a row that fails", 1, "Drum,Demo Fennel,9000,15,20,120,20", /^fails, /],
  [
    "a grade that is not known",
    2,
    "Drum,Demo Medlra,180,15,20,120,20",
    /^cannot be read: grade "Demo Medlra" is unknown; nearest: Demo Medlar/,
  ],
  ["a number that cannot be read", 2, "Drum,Demo Medlar,heavy,15,20,120,20", /^cannot be read: line 3: load must be/],
  [
    "a number out of bounds",
    2,
    "Drum,Demo Medlar,180,-15,20,120,20",
    /^cannot be read: line 3: bore must be above 0 mm, got "-15"/,
  ],
  ["a missing number", 2, "Drum,Demo Medlar,180,,20,120,20", /^cannot be read: line 3: bore is missing/],
  ["no motion", 2, "Drum,Demo Medlar,180,15,20,,20", /^cannot be read: line 3: motion is missing/],
  ["no temperature", 2, "Drum,Demo Medlar,180,15,20,120,", /^cannot be read: line 3: temperature is missing/],
  ["a datum that the grade lacks", 1, "Door,epoxy + PTFE,700,25,30,15,5 to 40,wet", /^no data, /],
  ["a row that asks for care", 1, "Drum,Demo Medlar,60,15,5,120,20", /^care, length 0.333 times the bore/],
])("%s: exit code %p, and the other rows are there", (_, expected, line, verdict) => {
  const { code, out } = check(file("bad.csv", `${heading}\n${good}\n${line}\n`));
  const [first, second] = rowsOf(out);
  expect(code).toBe(expected);
  expect(first!.verdict).toMatch(/^fits/);
  expect(second!.verdict).toMatch(verdict);
});

test("care passes where it is allowed, and only care", () => {
  const care = file("care.csv", `${heading}\n${good}\nDrum,Demo Medlar,60,15,5,120,20\n`);
  expect(check(care).code).toBe(1);
  expect(check(care, "--allow-care").code).toBe(0);
  const worse = file("worse.csv", `${heading}\n${good}\nDoor,epoxy + PTFE,700,25,30,15,5 to 40,wet\n`);
  expect(check(worse, "--allow-care").code).toBe(1);
});

test("steps stand below their duty; without a grade the best is named; a fault in a step is told with its line", () => {
  const head = "duty,grade,load,bore,length,motion,rpm,time,temperature\n";
  const { out, code } = check(
    file(
      "steps.csv",
      `${head}Tower,Demo Sorrel,900,25,30,,10,5,20 to 40\n,,6000,,,static,,60,\nRoller,,250,20,25,,45,,20 to 40\n`,
    ),
  );
  const [tower, roller, ...more] = rowsOf(out);
  expect([tower!.line, roller!.line, more, code]).toEqual(["2", "4", [], 0]);
  // 6000 N on 25 × 30 mm at rest
  expect(Number(tower!["pressure [MPa]"])).toBe(8);
  expect([roller!.grade, roller!.verdict]).toEqual([expect.stringMatching(/\w/), expect.stringMatching(/^fits, /)]);
  const [faulty] = rowsOf(
    check(file("fault.csv", `${head}Tower,Demo Sorrel,900,25,30,,10,5,20 to 40\n,,6000,,,static,,,\n`)).out,
  );
  expect([faulty!.line, faulty!.verdict]).toEqual([
    "2",
    "cannot be read: line 3: time is missing: each step of a duty needs its time",
  ]);
});

test("a number as text is read as a sheet's text is, a band too", () => {
  const { out, err } = check(
    file(
      "text.csv",
      "duty;grade;load;bore;length;rpm;temperature;colour\nDrum;Demo Medlar;0,18 kN;1,5 cm;20;120;41 °F to 45 °C;red\nBand;Demo Medlar;150 to 180;15;20;120;5 to 45;\n",
    ),
  );
  const [drum, band] = rowsOf(out);
  for (const row of [drum!, band!]) expect([row["pressure [MPa]"], row.verdict]).toEqual(["0.6", "fits, PV 55 %"]);
  expect(err).toContain('column "colour" is not used');
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
    use: "0.93026",
  });
  // derated: (180 − 73.4)/(180 − 120) as much of it is used at 120 °F as at 73.4 °F
  expect([code, row!.verdict]).toEqual([0, "fits, PV 93 %"]);
});

test("a fault in the own grades is named by its line, and no duty falls back to a library's grade of that name", () => {
  const own = file("own.csv", "Our list\n\ngrade,PV limit,colour\nDemo Medlar,-1,red\n");
  const { code, out, err } = check(file("good.csv", `${heading}\n${good}\n`), "--grades", own);
  expect([code, out]).toEqual([2, ""]);
  expect(err).toMatch(/own.csv: line 4: PV limit must be/);
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

test("a table to read has its headings word by word and its numbers below each other", () => {
  const { out } = check(file("good.csv", `${heading}\n${good}\n`), "--table");
  expect(out).toBe(
    [
      "                                                                 upper",
      "                                                                  bore",
      "                              pressure   speed         PV  temperature                    life                           not",
      "line  duty       grade           [MPa]   [m/s]  [MPa·m/s]         [°C]  governing    use   [h]  verdict        data      asked",
      "   2  Seed drum  Demo Medlar       0.6  0.0942     0.0565           82  PV         0.551        fits, PV 55 %  invented  static pressure, short peak, peak pressure, edge pressure, tilt, wear life, clearance, grip, moisture, media, dirt, shock, damping, vacuum, shaft",
      "",
    ].join("\n"),
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
    ["speed,pressure\n1,1\n", "must have a heading row"],
    ["grade,temperature,bore,Bore [in]\nx,1,1,1\n", 'two columns for "bore"'],
    [`${heading}\n`, "holds no row below its headings"],
    ['grade,temperature\n"x,1\n', "line 2"],
  ] as const) {
    const { code, err } = check(file("headings.csv", text));
    expect([text, code, err.includes(message)]).toEqual([text, 2, true]);
  }
});
