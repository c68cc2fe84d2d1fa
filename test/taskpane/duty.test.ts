import { Band } from "../../src/core/band";
import { field, fieldKeys, found, judge, parts, verdictOf } from "../../src/core/duties";
import { findGrade, libraryOf, motions, readGrades } from "../../src/core/grades/model";
import { dutyWords } from "../../src/taskpane/duty/DutyLine";
import { fromRowText, readSelectedRow } from "../../src/taskpane/duty/fromRow";
import { summaryOf, todoText } from "../../src/taskpane/duty/words";
import { writeBack } from "../../src/taskpane/duty/writeBack";
import { askedKeys, formGroups, groupKeys, headKeys, hintOf, labelOf, unitOf } from "../../src/taskpane/state/fields";
import { figuresOf } from "../../src/taskpane/state/figures";
import { emptyForm, keysAt, withStep, withoutStep } from "../../src/taskpane/state/form";
import type { Form, Texts } from "../../src/taskpane/state/form";
import { keepUnits, readBack, withUnit } from "../../src/taskpane/state/quantity";
import { readDuty } from "../../src/taskpane/state/readDuty";
import type { Block, Corner, ReadCell, SheetPort } from "../../src/port/sheet";

const emptyTexts = emptyForm[0];
const texts = (given: Texts): Texts => ({ ...emptyTexts, ...given });
const shaft = texts({ load: "800", bore: "20", length: "15", rpm: "120", temperature: "5 to 45" });
/** The first step over the texts, then the others. */
const formOf = (given: Texts, [first = {}, ...later]: readonly Texts[] = []): Form => [
  { ...given, ...first },
  ...later,
];
const read = (given: Texts, steps: readonly Texts[] = [], system: "metric" | "inch" = "metric") =>
  readDuty(formOf(given, steps), system);
const only = (given: Texts, steps: readonly Texts[] = []) => {
  const { duty, ...rest } = read(given, steps);
  if (!duty) throw new Error(JSON.stringify(rest));
  expect(duty.corners).toHaveLength(1);
  return duty.corners[0]!;
};

describe("the form", () => {
  test("every field of the list has its place once it is asked for: part and motion first, then one group each", () => {
    const placed = new Set<string>();
    for (const part of parts)
      for (const motion of motions)
        for (const hasSteps of [false, true]) {
          const asked = askedKeys(part, motion, hasSteps);
          const inGroups = formGroups.flatMap((group) => {
            const { needed, open } = groupKeys(group, asked);
            return [...needed, ...open];
          });
          expect([...headKeys, ...inGroups].sort()).toEqual([...asked].sort());
          inGroups.forEach((key) => placed.add(key));
        }
    expect([...headKeys, ...placed].sort()).toEqual([...fieldKeys].sort());
  });

  test("what it says of a field stands in the list of duty fields", () => {
    for (const key of fieldKeys) {
      if (key !== "temperature") expect(labelOf(key).toLowerCase()).toBe(field(key).heading.toLowerCase());
      expect(hintOf(key)).toContain(field(key).text);
    }
    expect(labelOf("temperature")).toBe("Surroundings temperature");
    expect(hintOf("impactFactor")).toMatch(/counts for pressure, not for PV; 1 unless given$/);
    expect([unitOf("load", "inch"), unitOf("temperature", "inch"), unitOf("hardness", "metric")]).toEqual([
      "lbf",
      "°F",
      "HB",
    ]);
    expect(unitOf("keptGrip", "metric")).toBe("%");
  });

  test("a group tells in one line what is stated", () => {
    const { rows } = read({ ...shaft, hours: "2000", allowance: "0.3", hardness: "many" });
    expect(summaryOf(["hours", "allowance"], rows[0], "metric")).toBe("hours 2000 h, wear allowance 0.3 mm");
    expect(summaryOf(["hardness"], rows[0], "metric")).toBe("hardness to mend");
    expect(summaryOf(["impactFactor"], rows[0], "metric")).toBe("nothing stated");
  });

  test("a duty is what its fields say: p = F/(d·L), v = π·d·n/60 000", () => {
    const { duty, rows } = read(shaft);
    const [{ faults, missing }] = rows;
    expect([faults, missing]).toEqual([{}, []]);
    expect(duty!.corners).toHaveLength(1);
    const [{ steps, pv, temperature, given }] = duty!.corners as [(typeof duty & object)["corners"][number]];
    expect(steps).toHaveLength(1);
    expect(steps[0].bore!.pressure).toBeCloseTo(800 / 300, 12);
    expect(steps[0].bore!.speed).toBeCloseTo((Math.PI * 20 * 120) / 60000, 12);
    expect(pv).toBeCloseTo(((800 / 300) * (Math.PI * 20 * 120)) / 60000, 12);
    expect(temperature).toEqual({ low: 5, high: 45 });
    expect(duty!.steps[0]!.motion).toBe("turning");
    expect(given.moisture).toBeUndefined();
  });

  test("only the fields of the motion are asked for", () => {
    expect(read(emptyTexts).rows[0].missing).toEqual(["load", "bore", "length", "rpm", "temperature"]);
    expect(read(texts({ motion: "linear" })).rows[0].missing).toContain("stroke");
    const atRest = only({ ...shaft, motion: "static", rpm: "nonsense" });
    expect(atRest.steps[0]).toMatchObject({ motion: "static", bore: { speed: 0 } });
    expect(atRest.isMoving).toBe(false);
  });

  test("a swinging shaft: travel there and back, 2·φ/360·π·d a cycle", () => {
    const { steps } = only({ ...shaft, motion: "swinging", swing: "90", cycles: "12" });
    expect(steps[0].bore!.speed).toBeCloseTo((2 * 90 * Math.PI * 20 * 12) / (360 * 60000), 12);
  });

  test("faults stay at their field and name it, what was found and what is accepted", () => {
    const { rows, duty } = read({ ...shaft, bore: "0", length: "15 kg", designFactor: "0.5" });
    const [{ faults }] = rows;
    expect(duty).toBeUndefined();
    expect(faults.bore).toBe('bore must be above 0 mm, got "0"');
    expect(faults.length).toMatch(/^length must be in a unit like mm or in, got "kg"/);
    expect(faults.designFactor).toBe('design factor must be from 1 to 100, got "0.5"');
    expect(read({ ...shaft, temperature: "60 to 45" }).rows[0].faults.temperature).toMatch(
      /^temperature must be like "12.5 °C", or two, lowest first/,
    );
  });

  test("hardness, design factor and shaft count when given; moisture has the list's three words", () => {
    const { given, designFactor } = only({ ...shaft, hardness: "200", designFactor: "1.5", shaft: "soft steel" });
    expect(given).toMatchObject({ hardness: 200, shaft: "soft steel" });
    expect(designFactor).toBe(1.5);
    expect(only(shaft).given).not.toHaveProperty("shaft");
    expect(only({ ...shaft, moisture: "humid" }).given.moisture).toBe("humid");
  });

  test("an impact factor multiplies the pressure and leaves PV and bore temperature alone", () => {
    const grade = findGrade("Demo Quince");
    const checks = (given: Texts) => judge(grade, read(given).duty!);
    const [calm, blows] = [checks(shaft), checks({ ...shaft, impactFactor: "2" })];
    const value = (some: typeof calm, id: string) => some.find(({ criterion }) => criterion.id === id)!.value!;
    expect(value(blows, "runningPressure")).toBeCloseTo((2 * 800) / 300, 12);
    expect(value(calm, "runningPressure")).toBeCloseTo(800 / 300, 12);
    for (const id of ["pv", "speed", "boreTemperature"]) expect(value(blows, id)).toBe(value(calm, id));
    expect(figuresOf(read({ ...shaft, impactFactor: "2" }).duty!, "metric")).toEqual({
      pressure: "2.667 MPa × 2",
      speed: "0.1257 m/s",
      pv: "0.3351 MPa·m/s",
    });
    const words = dutyWords(
      read({ ...shaft, impactFactor: "2", moisture: "wet", designFactor: "1.5" }).duty!,
      "metric",
    );
    expect(words).toEqual([
      "turning",
      "2.667 MPa × 2",
      "0.1257 m/s",
      "PV 0.3351 MPa·m/s",
      "surroundings 5 °C to 45 °C",
      "wet",
      "design factor 1.5",
    ]);
  });

  test("a field may be a band; too many in one duty are told for the whole", () => {
    const { duty, rows } = read({ ...shaft, load: "640 to 960" });
    expect(rows[0].values.load).toEqual(new Band(640, 960));
    expect(duty!.corners.map(({ steps }) => steps[0].bore!.pressure * 300)).toEqual([640, 960]);
    const all = { load: "1 to 2", bore: "10 to 11", length: "9 to 10", rpm: "1 to 2", impactFactor: "1 to 2" };
    const many = read({ ...shaft, ...all, hardness: "100 to 200", designFactor: "1 to 2" });
    expect(many.duty).toBeUndefined();
    expect(many.fault).toBe("a duty may hold at most 6 bands, this one holds 7");
  });

  test("changing the unit system keeps the duty, its steps and its zones", () => {
    const zones = { boreZone: "E10", outsideZone: "+0.15/+0.20", keptGrip: "60" };
    const steps = [{ time: "10" }, { load: "700 to 900", rpm: "10", time: "1" }];
    const kept = keepUnits(formOf({ ...shaft, ...zones, load: "180 lbf" }, steps), "metric");
    expect(kept[0]).toMatchObject({
      load: "180 lbf",
      bore: "20 mm",
      temperature: "5 to 45 °C",
      rpm: "120",
      motion: "turning",
      boreZone: "E10",
      outsideZone: "+0.15/+0.20 mm",
      keptGrip: "60",
    });
    expect(kept[1]!.load).toBe("700 to 900 N");
    const before = readDuty(formOf({ ...shaft, ...zones, load: "180 lbf" }, steps), "metric").duty!;
    const after = readDuty(kept, "inch").duty!;
    expect(after.corners.map(({ pv }) => pv.toPrecision(9))).toEqual(before.corners.map(({ pv }) => pv.toPrecision(9)));
    expect(after.corners[0]!.temperature.high).toBeCloseTo(45, 9);
    // 1 in = 25.4 mm exactly
    expect(readBack("bore", 25.4, "inch")).toBe("1 in");
    const [band] = keepUnits([{ ...shaft, load: "800 ± 20 %", length: "14 to 16", temperature: "5/45" }], "metric");
    expect(band).toMatchObject({ load: "800 N ± 20 %", length: "14 to 16 mm", temperature: "5/45 °C" });
    const { values } = read(band, [], "inch").rows[0];
    expect(values.load).toEqual(new Band(640, 960, 800));
    expect(values.length).toEqual(new Band(14, 16));
    expect(values.temperature!.low).toBeCloseTo(5, 9);
    expect(readBack("load", values.load!, "metric")).toBe("640 N to 960 N, most likely 800 N");
  });

  test("a unit is added where a text has none", () => {
    expect(["12", "-10 to 40", "800 ± 50", "14 °F", "1e3", "", "abc"].map((text) => withUnit(text, "X"))).toEqual([
      "12 X",
      "-10 to 40 X",
      "800 X ± 50",
      "14 °F",
      "1e3 X",
      "",
      "abc",
    ]);
  });
});

test.each([
  // 8000 N on π/4·(36² − 18²) mm²; the shoulder of a washer of 18 × 36
  ["washer", { part: "washer", load: "8000", inner: "18", outer: "36", rpm: "30" }, 8000 / ((Math.PI / 4) * 972)],
  // its flange bears 5000 N on the ring from its bore to 40 mm
  [
    "flanged",
    {
      part: "flanged",
      load: "600",
      axialLoad: "5000",
      bore: "20",
      length: "20",
      wall: "3",
      flangeOutside: "40",
      rpm: "30",
    },
    5000 / ((Math.PI / 4) * (40 ** 2 - 20 ** 2)),
  ],
] as const)("a %s is one", (part, given, pressure) => {
  const { duty } = read(texts({ ...given, temperature: "20" }));
  expect(duty!.part).toBe(part);
  expect(Number(figuresOf(duty!, "metric").pressure.split(" ")[0])).toBeCloseTo(pressure, 2);
});

describe("steps", () => {
  const steps = [
    { load: "800", rpm: "120", time: "10" },
    { load: "1600", rpm: "60", time: "5" },
    { motion: "static", load: "0", time: "15" },
  ];

  test("they are rows of the duty: load, rate, and time in minutes", () => {
    const corner = only(shaft, steps);
    expect(corner.steps.map(({ bore }) => bore!.pressure)).toEqual([800 / 300, 1600 / 300, 0]);
    expect(corner.steps.map(({ motion, time }) => [motion, time])).toEqual([
      ["turning", 10],
      ["turning", 5],
      ["static", 15],
    ]);
    const speed = (n: number) => (Math.PI * 20 * n) / 60000;
    // no mean stands in for a step that lasts: the greatest counts
    expect(corner.pv).toBeCloseTo(Math.max((800 / 300) * speed(120), (1600 / 300) * speed(60)), 12);
    const hour = [{ load: "0.18 kip", time: "1 h" }, { time: "1" }];
    expect(only(shaft, hour).steps[0]).toMatchObject({ time: 60 });
    // what a step leaves empty is as above; 1 kip is 4448.2216152605 N (NIST SP 811, 2008, app. B)
    expect(only(shaft, hour).steps[1]!.bore!.pressure).toBeCloseTo((180 * 4.4482216152605) / 300, 9);
    expect(dutyWords(read(shaft, steps).duty!, "metric").slice(0, 3)).toEqual(["turning", "3 steps", "5.333 MPa"]);
  });

  test("faults and what is missing stand at the step", () => {
    const rows = (more: Texts) => read(shaft, [{ time: "10" }, more]).rows[1]!;
    expect(rows({ load: "800" }).missing).toEqual(["time"]);
    expect(rows({ load: "-4", time: "1" }).faults).toEqual({ load: 'load must be 0 N or more, got "-4"' });
    expect(rows({ time: "0" }).faults.time).toBe('time must be above 0 min, got "0"');
    expect(rows({ motion: "swinging", time: "1" }).faults).toEqual({ swing: "swing is missing" });
    expect(todoText(read({ ...shaft, load: "" }, [{ time: "10" }, { load: "x", time: "1" }]))).toBe(
      "To mend: load of step 2. Still needed: load.",
    );
    expect(todoText(read(shaft, [{ time: "10" }, {}]))).toBe("Still needed: time of step 2.");
  });

  test("taking one out leaves the others as they were", () => {
    const form = formOf(shaft, steps);
    expect(withoutStep(form, 1)).toEqual([form[0], form[2]]);
    const [first, second] = withoutStep(form, 0);
    expect(first).toMatchObject({ bore: "20", load: "1600", rpm: "60", time: "5" });
    expect(second).toBe(form[2]);
    expect(keysAt(withStep(form), 3)).toEqual(expect.arrayContaining(["load", "time", "temperature"]));
    expect(keysAt(form, 2)).not.toContain("bore");
  });

  test("a cycle that begins at rest asks what its motion asks of the whole duty, and judges its hours", () => {
    const rest = { ...shaft, motion: "static", rpm: "", hours: "1000", allowance: "0.3" };
    const form = formOf(rest, [{ time: "10" }, { motion: "turning", rpm: "60", time: "50" }]);
    expect(keysAt(form, 0)).toEqual(expect.arrayContaining(["hours", "allowance", "friction", "timeConstant"]));
    expect(keysAt(form, 0)).not.toContain("rpm");
    expect(keysAt(form.slice(0, 1) as unknown as Form, 0)).not.toContain("hours");
    const turned = [
      { ...form[0], motion: "turning", rpm: "60", time: "50" },
      { motion: "static", time: "10" },
    ];
    const lives = [form, turned as unknown as Form].map((one) => {
      const { duty } = readDuty(one, "metric");
      return found(judge(findGrade("Demo Quince", libraryOf()), duty!), "wearLife")?.limit;
    });
    expect(lives[0]).toBeGreaterThan(0);
    // a cycle has no beginning
    expect(lives[0]).toBeCloseTo(lives[1]!, 9);
  });

  test("they change the verdict: a step at rest is judged by the static limit", () => {
    const own = readGrades(
      [
        [
          "grade",
          "static pressure limit [MPa]",
          "running pressure limit [MPa]",
          "speed limit turning [m/s]",
          "PV limit [MPa*m/s]",
          "lowest temperature",
          "highest temperature",
        ],
        ["Own", 40, 10, 2, 1, -40, 100],
      ],
      "metric",
      "grades",
    );
    const verdict = (second: Texts) =>
      verdictOf(judge(findGrade("Own", own), read(shaft, [{ time: "10" }, { ...second, time: "1" }]).duty!));
    // 3300 N on 300 mm² are 11 MPa against 10 MPa in motion, and hold at rest
    expect(verdict({ load: "3300", rpm: "10" })).toMatchObject({
      word: "fails",
      governing: { criterion: { id: "runningPressure" } },
    });
    expect(verdict({ load: "3300", motion: "static" }).word).toBe("fits");
    expect(verdict({ load: "12300", motion: "static" })).toMatchObject({
      word: "fails",
      governing: { criterion: { id: "staticPressure" } },
    });
  });
});

describe("a row by its headings", () => {
  const cell = (value: string | number | boolean | null): ReadCell => ({ value, text: String(value ?? "") });
  const row = (...values: (string | number | boolean | null)[]) => values.map(cell);
  /** A sheet that begins with these cells, one of its rows selected, and what is written to it. */
  const portOn = (cells: ReadCell[][], selected: number) => {
    const written: [Corner, Block][] = [];
    const port = {
      selection: () => ({ sheet: "S", row: selected, col: 0, rows: 1, cols: 1 }),
      read: (at: { row: number; col: number; rows: number; cols: number }) =>
        cells
          .slice(at.row, at.row + at.rows)
          .map((line) => Array.from({ length: at.cols }, (_, c) => line[at.col + c] ?? cell(null))),
      write: (at: Corner, block: Block) => void written.push([at, block]),
    } as unknown as SheetPort;
    return { port, written };
  };
  const readRow = async (cells: ReadCell[][], selected = cells.length - 1) => {
    const found = await readSelectedRow(portOn(cells, selected).port, "metric");
    return { ...found, ...found.origin, texts: found.origin.form[0] };
  };

  test("units, either from the heading or from the cell, and spans; what is not named is emptied", async () => {
    const headings = row(
      "Name",
      "Load (lbf)",
      "BORE [in]",
      "length",
      "Temperature [°F]",
      "wet",
      "Shaft hardness [HB]",
      "Swing",
      "hours",
    );
    const found = await readRow([headings, row("Vent", 100, "20 mm", 15, "-10 to 40", "yes", 150, null, "2000")]);
    expect(found.texts).toEqual({
      part: "sleeve",
      motion: "turning",
      duty: "Vent",
      load: "100 lbf",
      bore: "20 mm",
      length: "15",
      temperature: "-10 to 40 °F",
      moisture: "wet",
      hardness: "150",
      hours: "2000",
    });
    expect([found.form.length, found.unread]).toEqual([1, []]);
    const { values, missing } = read(found.texts).rows[0];
    expect(missing).toEqual(["rpm"]);
    // 40 °F is (40 − 32)·5/9 °C
    expect(values.temperature!.high).toBeCloseTo(((40 - 32) * 5) / 9, 9);
    const spanOf = async (heading: string, value: string | number) =>
      (await readRow([row(heading, "load"), row(value, 1)])).texts.temperature;
    expect(await spanOf("temperature", "14 to 104 °F")).toBe("14 to 104 °F");
    expect(await spanOf("ambient [°F]", "5/45")).toBe("5/45 °F");
    expect(await spanOf("temperature", 20)).toBe("20");
  });

  test("what cannot be read is marked at its field and said; what the form could settle by itself is left out", async () => {
    const found = await readRow([
      row("motion", "moisture", "shaft", "load [N]", "bore", "length", "rpm", "share of grip kept", "remark"),
      row("rotating", "soaked", "Soft steel", "plenty", 20, "#REF!", 0, 0.6, "hall 2"),
    ]);
    const marked = { moisture: "soaked", load: "plenty", length: "#REF!" };
    expect(found.texts).toEqual({ part: "sleeve", motion: "turning", shaft: "soft steel", bore: "20", ...marked });
    expect(Object.keys(read(found.texts).rows[0].faults).sort()).toEqual(Object.keys(marked).sort());
    expect(found.unread).toEqual([
      'moisture must be "dry", "humid" or "wet", got "soaked".',
      'load must be a number or text like "12.5 N", got "plenty".',
      "length: #REF!.",
      'rpm must be typed as "static" under motion where it is 0, got 0.',
      "share of grip kept 0.6 could be % or a ratio: put [%] or [ratio] in the heading.",
      "Of no known heading: remark.",
    ]);
    expect(fromRowText(found)).toBe(
      `Read by the headings in row 1: motion, shaft, bore, part. ${found.unread.join(" ")}`,
    );
    const moist = async (value: string | boolean) =>
      (await readRow([row("load", "moisture"), row(1, value)])).texts.moisture;
    expect([await moist(true), await moist("no"), await moist("Humid")]).toEqual(["wet", "dry", "humid"]);
  });

  test("the motion follows from what is filled; what it does not use is said and does not count", async () => {
    const headings = row("load", "stroke", "cycles", "rpm", "dirt", "hours", "motion");
    const found = await readRow([headings, row(900, 40, 12, null, "none", 500, null)]);
    expect(found.texts).toMatchObject({ motion: "linear", stroke: "40", cycles: "12", dirt: "none", hours: "500" });
    expect(found.unread).toEqual([]);
    const stated = await readRow([headings, row(900, 40, 12, null, "heavy", null, "turning")]);
    expect(stated.texts).toMatchObject({ motion: "turning", dirt: "heavy" });
    expect(stated.unread).toEqual(["Not asked of this part and motion: stroke, cycles."]);
    expect(keysAt(stated.form, 0)).not.toContain("stroke");
  });

  test("a washer's row is a washer, a flanged one flanged", async () => {
    const headings = row("part", "load", "bore", "length", "inner Ø", "outer Ø", "rpm", "temperature");
    const washer = { part: "washer", load: "900", inner: "18", outer: "36", rpm: "30" };
    for (const word of ["thrust washer", null]) {
      const { texts: found } = await readRow([headings, row(word, 900, null, null, 18, 36, 30, 20)]);
      expect(found).toMatchObject(washer);
      expect(found).not.toHaveProperty("bore");
      // 900 N on π/4·(36² − 18²) mm²
      expect(only(found).steps[0].face!.pressure).toBeCloseTo(900 / ((Math.PI / 4) * (36 ** 2 - 18 ** 2)), 9);
    }
    const flanged = await readRow([headings, row("flanged", 900, 18, 20, null, null, 30, 20)]);
    expect(flanged.texts).toMatchObject({ part: "flanged", bore: "18" });
    const cone = await readRow([headings, row("cone", 900, 18, 20, null, null, 30, 20)]);
    expect(cone.texts.part).toBe("cone");
    expect(read(cone.texts).rows[0].faults.part).toMatch(/^part must be/);
    expect((await readRow([headings, row("bush", 900, 18, 20, null, null, 30, 20)])).texts.bore).toBe("18");
  });

  test("rows that are the steps of one duty are its steps, from whichever of them is selected", async () => {
    const cells = [
      row("duty", "load [N]", "bore", "length", "motion", "rpm", "temperature", "time [min]"),
      row("Other", 1, 2, 3, null, 4, 5, 6),
      row("Mixer", 800, 20, 15, null, 120, "5 to 45", 10),
      row(null, 1600, null, null, null, null, 60, "1 h"),
      row(null, null, null, null, "at rest", null, null, 15),
      row("Next", 1, 2, 3, null, 4, 5, 6),
    ];
    const found = await readRow(cells, 3);
    expect(found.form).toEqual([
      {
        ...{ part: "sleeve", motion: "turning", duty: "Mixer", load: "800" },
        ...{ bore: "20", length: "15", rpm: "120", temperature: "5 to 45", time: "10" },
      },
      { load: "1600", temperature: "60", time: "1 h" },
      { motion: "static", time: "15" },
    ]);
    expect([found.table, found.duty, found.rows]).toEqual([
      { sheet: "S", row: 0, col: 0, rows: 6, cols: 8 },
      "Mixer",
      [2, 3, 4],
    ]);
    expect(await readRow(cells, 2)).toEqual(found);
    expect(await readRow(cells, 4)).toEqual(found);
    expect((await readRow(cells, 1)).form).toHaveLength(1);
    // what only a later step says would be lost
    const moved = cells.map((line, i) => (i === 3 ? [...line.slice(0, 3), cell(22), ...line.slice(4)] : line));
    await expect(readRow(moved, 2)).rejects.toThrow(/^The duty's length changes from step to step/);
    const untimed = await readRow(
      cells.map((line) => line.slice(0, 7)),
      2,
    );
    expect(readDuty(untimed.form, "metric").rows[1]!.missing).toEqual(["time"]);
  });

  test("two figures of two motions are not taken for one of them", async () => {
    const cells = [row("load", "rpm", "swing"), row(800, 120, 90)];
    await expect(readRow(cells)).rejects.toThrow("motion is missing: rpm and swing are both filled");
  });

  test("the nearest heading row above counts, for a card those beside; without one the message says what to name", async () => {
    const cells = [row("load", "bore"), row(1, 2), row("Load [lbf]", "Bore [mm]"), row(null, null), row(3, 4)];
    expect(await readRow(cells, 4)).toMatchObject({ texts: { load: "3 lbf", bore: "4" }, headingRow: 3 });
    expect(await readRow(cells, 1)).toMatchObject({ texts: { load: "1", bore: "2" }, headingRow: 1 });
    await expect(readRow(cells, 3)).rejects.toThrow("Row 4 is empty.");
    await expect(readRow(cells.slice(0, 1), 0)).rejects.toThrow(/No headings above row 1/);
    const card = [row("Spindle", null), row(null, "load [N]", 180), row(null, "bore", 15), row(null, "rpm", 120)];
    const found = await readRow(card, 2);
    expect(found.texts).toMatchObject({ load: "180", bore: "15", rpm: "120", motion: "turning" });
    expect(found.table).toEqual({ sheet: "S", row: 1, col: 1, rows: 3, cols: 2 });
  });

  describe("written back", () => {
    const cells = () => [
      row("duty", "load [lbf]", "bore [in]", "length", "rpm", "temperature [°F]"),
      [cell("Idler"), cell(100), { ...cell(0.75), formula: "=6/8" }, cell(1), cell(120), cell("40 to 90")],
    ];
    const back = async (change: Texts, on = cells()) => {
      const { port, written } = portOn(on, 1);
      const { origin } = await readSelectedRow(port, "inch");
      const outcome = await writeBack(port, origin, [{ ...origin.form[0], ...change }], "inch");
      return { ...outcome, written };
    };

    test("only what was changed, in one block, as its heading takes it; what lies between stays as it was", async () => {
      const { written, text, isWhole } = await back({ load: "640 to 960 N", length: "30 mm", rpm: "90" });
      expect(written).toEqual([[{ sheet: "S", row: 1, col: 1 }, [["640 to 960 N", { formula: "=6/8" }, "30 mm", 90]]]]);
      expect([text, isWhole]).toEqual(["Written to B2, D2, E2 on S. Undo takes it back.", true]);
      expect((await back({ load: "120" })).written[0]![1]).toEqual([[120]]);
      expect((await back({})).text).toBe("Nothing was written.");
    });

    test("a formula is never overwritten, and what has no column is said", async () => {
      await expect(back({ bore: "20 mm" })).rejects.toThrow("C2 holds a formula. Nothing was written.");
      const { text, isWhole } = await back({ load: "120", hours: "500" });
      expect([text, isWhole]).toEqual(["Written to B2 on S. Undo takes it back. No column there for: hours.", false]);
    });
  });
});
