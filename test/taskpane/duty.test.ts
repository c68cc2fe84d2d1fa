import { Band } from "../../src/core/band";
import { field, fieldKeys, judge, verdictOf } from "../../src/core/duties";
import { findGrade, readGrades } from "../../src/core/grades/model";
import { emptyTexts, formKeys, hintOf, labelOf, unitOf } from "../../src/taskpane/state/fields";
import type { Texts } from "../../src/taskpane/state/fields";
import { figuresOf } from "../../src/taskpane/state/figures";
import { fromRowText, readSelectedRow } from "../../src/taskpane/duty/fromRow";
import { keepUnits, readBack, withUnit } from "../../src/taskpane/state/quantity";
import { readDuty } from "../../src/taskpane/state/readDuty";
import { keepStepUnits } from "../../src/taskpane/state/spectrum";
import { dutyWords } from "../../src/taskpane/duty/DutyLine";
import type { ReadCell, SheetPort } from "../../src/port/sheet";

const texts = (given: Partial<Texts>): Texts => ({ ...emptyTexts, ...given });
const shaft = texts({ load: "800", bore: "20", length: "15", rpm: "120", temperature: "5 to 45" });
const read = (given: Texts, steps = "", system: "metric" | "inch" = "metric") => readDuty(given, steps, system);
const only = (given: Texts, steps = "") => {
  const { duty } = read(given, steps);
  expect(duty?.corners).toHaveLength(1);
  return duty!.corners[0]!;
};

describe("the form", () => {
  test("what it says of a field stands in the list of duty fields", () => {
    for (const key of formKeys) {
      expect(fieldKeys).toContain(key);
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
  });

  test("a duty is what its fields say: p = F/(d·L), v = π·d·n/60 000", () => {
    const { duty, faults, missing } = read(shaft);
    expect([faults, missing]).toEqual([{}, []]);
    expect(duty!.corners).toHaveLength(1);
    const [{ steps, pv, temperature, given }] = duty!.corners as [(typeof duty & object)["corners"][number]];
    expect(steps).toHaveLength(1);
    expect(steps[0]!.bore!.pressure).toBeCloseTo(800 / 300, 12);
    expect(steps[0]!.bore!.speed).toBeCloseTo((Math.PI * 20 * 120) / 60000, 12);
    expect(pv).toBeCloseTo(((800 / 300) * (Math.PI * 20 * 120)) / 60000, 12);
    expect(temperature).toEqual({ low: 5, high: 45 });
    expect(duty!.steps[0]!.motion).toBe("turning");
    expect(given.moisture).toBe("dry");
  });

  test("only the fields of the motion are asked for", () => {
    expect(read(emptyTexts).missing).toEqual(["load", "bore", "length", "rpm", "temperature"]);
    expect(read(texts({ motion: "linear" })).missing).toContain("stroke");
    const atRest = only({ ...shaft, motion: "static", rpm: "nonsense" });
    expect(atRest.steps[0]).toMatchObject({ motion: "static", bore: { speed: 0 } });
    expect(atRest.isMoving).toBe(false);
  });

  test("a swinging shaft: travel there and back, 2·φ/360·π·d a cycle", () => {
    const { steps } = only({ ...shaft, motion: "swinging", swing: "90", cycles: "12" });
    expect(steps[0]!.bore!.speed).toBeCloseTo((2 * 90 * Math.PI * 20 * 12) / (360 * 60000), 12);
  });

  test("faults stay at their field and name it, what was found and what is accepted", () => {
    const { faults, duty } = read({ ...shaft, bore: "0", length: "15 kg", designFactor: "0.5" });
    expect(duty).toBeUndefined();
    expect(faults.bore).toBe('bore must be above 0 mm, got "0"');
    expect(faults.length).toMatch(/^length must be in a unit like mm or in, got "kg"/);
    expect(faults.designFactor).toBe('design factor must be from 1 to 100, got "0.5"');
    expect(read({ ...shaft, temperature: "60 to 45" }).faults.temperature).toMatch(
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
    expect(dutyWords(read({ ...shaft, impactFactor: "2", moisture: "wet" }).duty!, "metric")).toEqual([
      "turning",
      "2.667 MPa × 2",
      "0.1257 m/s",
      "PV 0.3351 MPa·m/s",
      "surroundings 5 °C to 45 °C",
      "wet",
    ]);
  });

  test("a field may be a band; too many in one duty are told for the whole", () => {
    const { duty, values } = read({ ...shaft, load: "640 to 960" });
    expect(values.load).toEqual(new Band(640, 960));
    expect(duty!.corners.map(({ steps }) => steps[0]!.bore!.pressure * 300)).toEqual([640, 960]);
    const all = { load: "1 to 2", bore: "10 to 11", length: "9 to 10", rpm: "1 to 2", impactFactor: "1 to 2" };
    const many = read({ ...shaft, ...all, hardness: "100 to 200", designFactor: "1 to 2" });
    expect(many.duty).toBeUndefined();
    expect(many.fault).toBe("a duty may hold at most 6 bands, this one holds 7");
  });

  test("changing the unit system keeps the duty", () => {
    const kept = keepUnits({ ...shaft, load: "180 lbf" }, "metric");
    expect(kept).toMatchObject({
      load: "180 lbf",
      bore: "20 mm",
      temperature: "5 to 45 °C",
      rpm: "120",
      motion: "turning",
    });
    const [before] = read({ ...shaft, load: "180 lbf" }).duty!.corners;
    const [after] = read(kept, "", "inch").duty!.corners;
    expect(after!.pv).toBeCloseTo(before!.pv, 12);
    expect(after!.temperature.high).toBeCloseTo(45, 9);
    // 1 in = 25.4 mm exactly
    expect(readBack("bore", 25.4, "inch")).toBe("1 in");
    const band = keepUnits({ ...shaft, load: "800 ± 20 %", length: "14 to 16", temperature: "5/45" }, "metric");
    expect(band).toMatchObject({ load: "800 N ± 20 %", length: "14 to 16 mm", temperature: "5/45 °C" });
    const { values } = read(band, "", "inch");
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

describe("a load spectrum", () => {
  const steps = "800; 120; 10\n1600; 60; 5\n0; 0; 15";

  test("its lines are the steps of the duty: load, rate, and time in minutes", () => {
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
    expect(only(shaft, "0.18 kip; 120; 1 h").steps[0]).toMatchObject({ time: 60 });
    expect(only(shaft, "0.18 kip; 120; 1").steps[0]!.bore!.pressure).toBeCloseTo((180 * 4.4482216152605) / 300, 9);
    expect(dutyWords(read(shaft, steps).duty!, "metric").slice(0, 3)).toEqual(["turning", "3 steps", "5.333 MPa"]);
  });

  test("load and rate of the form are then not asked for and do not count", () => {
    const bare = { ...shaft, load: "", rpm: "nonsense" };
    const { duty, faults, missing, ofSteps } = read(bare, steps);
    expect([faults, missing, ofSteps]).toEqual([{}, [], ["load", "rpm"]]);
    expect(duty).toEqual(read(shaft, steps).duty);
    expect(read({ ...bare, motion: "static", load: "5" }, steps).duty!.steps).toHaveLength(1);
  });

  test("faults name the step; with one there is no duty", () => {
    const fault = (text: string) => {
      const { stepsFault, duty } = read(shaft, text);
      expect(duty).toBeUndefined();
      return stepsFault;
    };
    expect(fault("800; 120")).toBe("step 1 must be load; rpm; time, got 2 parts");
    expect(fault("800; 120; 1\n-4; 1; 1")).toBe('step 2: load must be 0 N or more, got "-4"');
    expect(fault("800; 120; 0")).toBe('step 1: time must be above 0 min, got "0"');
    expect(fault("800; ; 1")).toBe("step 1: rpm is missing");
    const swinging = { ...shaft, motion: "swinging", swing: "90", cycles: "12" };
    expect(read(swinging, "800; 120").stepsFault).toMatch(/^step 1 must be load; cycles; time/);
  });

  test("it changes the verdict", () => {
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
    const verdict = (text: string) => verdictOf(judge(findGrade("Own", own), read(shaft, text).duty!));
    expect(verdict("").word).toBe("fits");
    // 3300 N on 300 mm² are 11 MPa against 10 MPa in motion, and hold at rest
    expect(verdict("800; 120; 10\n3300; 10; 1")).toMatchObject({
      word: "fails",
      governing: { criterion: { id: "runningPressure" } },
    });
    expect(verdict("800; 120; 10\n3300; 0; 1").word).toBe("fits");
    expect(verdict("800; 120; 10\n12300; 0; 1")).toMatchObject({
      word: "fails",
      governing: { criterion: { id: "staticPressure" } },
    });
  });

  test("changing the unit system keeps the steps", () => {
    const kept = keepStepUnits("800; 120; 10\n0.18 kip; 60; 5\n700 to 900; 1; 1\n", "metric");
    expect(kept).toBe("800 N; 120; 10\n0.18 kip; 60; 5\n700 to 900 N; 1; 1\n");
    const inch = read(keepUnits(shaft, "metric"), kept, "inch").duty!;
    expect(inch.steps[0]!.values.load).toBeCloseTo(800, 9);
  });
});

describe("a row by its headings", () => {
  const cell = (value: string | number | boolean | null): ReadCell => ({ value, text: String(value ?? "") });
  const row = (...values: (string | number | boolean | null)[]) => values.map(cell);
  const portOn = (cells: ReadCell[][], selected: number): SheetPort =>
    ({
      selection: () => ({ sheet: "S", row: selected, col: 0, rows: 1, cols: 1 }),
      read: () => cells,
    }) as unknown as SheetPort;
  const readRow = (cells: ReadCell[][], selected = cells.length - 1) =>
    readSelectedRow(portOn(cells, selected), "metric");

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
    );
    const found = await readRow([headings, row("Vent", 100, "20 mm", 15, "-10 to 40", "yes", 150, null)]);
    expect(found.texts).toEqual({
      ...emptyTexts,
      load: "100 lbf",
      bore: "20 mm",
      length: "15",
      temperature: "-10 to 40 °F",
      moisture: "wet",
      hardness: "150 HB",
    });
    expect([found.steps, found.unread]).toEqual(["", []]);
    const { values, missing } = read(found.texts);
    expect(missing).toEqual(["rpm"]);
    // 40 °F is (40 − 32)·5/9 °C
    expect(values.temperature!.high).toBeCloseTo(((40 - 32) * 5) / 9, 9);
    const spanOf = async (heading: string, value: string | number) =>
      (await readRow([row(heading, "load"), row(value, 1)])).texts.temperature;
    expect(await spanOf("temperature", "14 to 104 °F")).toBe("14 to 104 °F");
    expect(await spanOf("ambient [°F]", "5/45")).toBe("5/45 °F");
    expect(await spanOf("temperature", 20)).toBe("20");
  });

  test("words are the list's, with its other spellings; what cannot be read is said and left empty", async () => {
    const found = await readRow([
      row("motion", "moisture", "shaft", "load [N]", "bore", "length", "rpm"),
      row("rotating", "soaked", "Soft steel", "plenty", 20, "#REF!", 0),
    ]);
    expect(found.texts).toEqual({ ...emptyTexts, motion: "turning", shaft: "soft steel", bore: "20" });
    expect(found.unread).toEqual([
      'moisture must be "dry", "humid" or "wet", got "soaked".',
      'load must be a number or text like "12.5 N", got "plenty".',
      "length: #REF!.",
      'rpm must be typed as "static" under motion where it is 0, got 0.',
    ]);
    expect(fromRowText(found)).toBe(`Read by the headings in row 1: motion, shaft, bore. ${found.unread.join(" ")}`);
    const moist = async (value: string | boolean) =>
      (await readRow([row("load", "moisture"), row(1, value)])).texts.moisture;
    expect([await moist(true), await moist("no"), await moist("Humid")]).toEqual(["wet", "dry", "humid"]);
  });

  test("the motion follows from what is filled; what it does not use, and what the form lacks, is said", async () => {
    const headings = row("load", "stroke", "cycles", "rpm", "dirt", "hours", "motion");
    const found = await readRow([headings, row(900, 40, 12, null, "none", 500, null)]);
    expect(found.texts).toMatchObject({ motion: "linear", stroke: "40", cycles: "12", rpm: "" });
    expect(found.unread).toEqual(["Not judged here, as the form has no field for it: hours."]);
    const stated = await readRow([headings, row(900, 40, 12, null, "heavy", null, "turning")]);
    expect(stated.texts).toMatchObject({ motion: "turning", stroke: "", cycles: "" });
    expect(stated.unread).toEqual([
      "Not used where the motion is turning: stroke, cycles.",
      "Not judged here, as the form has no field for it: dirt.",
    ]);
  });

  test("a washer's row is not read as a bush, nor is a flanged one", async () => {
    const washer = /^The row is of a washer, and the form knows plain sleeves only\. Nothing was read/;
    const headings = row("part", "load", "bore", "length", "inner Ø", "outer Ø", "rpm", "temperature");
    await expect(readRow([headings, row("thrust washer", 900, null, null, 18, 36, 30, 20)])).rejects.toThrow(washer);
    await expect(readRow([headings, row(null, 900, null, null, 18, 36, 30, 20)])).rejects.toThrow(washer);
    await expect(readRow([headings, row("flanged", 900, 18, 20, null, null, 30, 20)])).rejects.toThrow(/flanged bush/);
    await expect(readRow([headings, row("cone", 900, 18, 20, null, null, 30, 20)])).rejects.toThrow(
      /^part must be .*Nothing was read/,
    );
    expect((await readRow([headings, row("bush", 900, 18, 20, null, null, 30, 20)])).texts.bore).toBe("18");
  });

  test("rows that are the steps of one duty give its spectrum, from whichever of them is selected", async () => {
    const cells = [
      row("duty", "load [N]", "bore", "length", "motion", "rpm", "temperature", "time [min]"),
      row("Other", 1, 2, 3, null, 4, 5, 6),
      row("Mixer", 800, 20, 15, null, 120, "5 to 45", 10),
      row(null, 1600, null, null, null, null, null, "1 h"),
      row(null, null, null, null, "at rest", null, null, 15),
      row("Next", 1, 2, 3, null, 4, 5, 6),
    ];
    const found = await readRow(cells, 3);
    expect(found.steps).toBe("800 N; 120; 10 min\n1600 N; 120; 1 h\n1600 N; 0; 15 min");
    expect(found.texts).toEqual({ ...emptyTexts, bore: "20", length: "15", temperature: "5 to 45" });
    expect(await readRow(cells, 2)).toEqual(found);
    expect(await readRow(cells, 4)).toEqual(found);
    expect((await readRow(cells, 1)).steps).toBe("");
    const moved = cells.map((line, i) => (i === 3 ? [...line.slice(0, 6), cell("60"), line[7]!] : line));
    await expect(readRow(moved, 2)).rejects.toThrow(/^The duty's temperature changes from step to step/);
  });

  test("steps are the rows that DUTIES takes together", async () => {
    const headings = row(
      "duty",
      "load [N]",
      "bore [mm]",
      "length",
      "rpm",
      "temperature",
      "design factor",
      "time [min]",
    );
    const step = (name: string | null, load: number, factor: number | null, ...more: (string | number | null)[]) => {
      const [bore = null, time = 10] = more;
      return row(name, load, bore, 15, 120, "5 to 45", factor, time);
    };
    const cells = [headings, step("Roller", 800, 2, 20), step(null, 900, null), step("roller ", 700, 2, "20 mm")];
    for (const selected of [1, 2, 3]) {
      const { steps, texts } = await readRow(cells, selected);
      expect(steps).toBe("800 N; 120; 10 min\n900 N; 120; 10 min\n700 N; 120; 10 min");
      expect([texts.bore, texts.designFactor]).toEqual(["20 mm", "2"]);
    }
    // what only a later step says would be lost
    for (const factor of [1.5, "x"] as const) {
      const late = [headings, step("Roller", 800, null, 20), step(null, 900, factor as number, 20)];
      await expect(readRow(late, 1)).rejects.toThrow(/^The duty's design factor changes from step to step/);
    }
    const untimed = [headings, step("Roller", 800, null, 20), step(null, 900, null, 20, null)];
    for (const selected of [1, 2]) await expect(readRow(untimed, selected)).rejects.toThrow(/^time is missing/);
  });

  test("two figures of two motions are not taken for one of them", async () => {
    const cells = [row("load", "rpm", "swing"), row(800, 120, 90)];
    await expect(readRow(cells)).rejects.toThrow("motion is missing: rpm and swing are both filled");
  });

  test("the nearest heading row above counts; without one the message says what to name", async () => {
    const cells = [row("load", "bore"), row(1, 2), row("Load [N]", "Bore [mm]"), row(null, null), row(3, 4)];
    expect(await readRow(cells, 4)).toMatchObject({ texts: { load: "3 N", bore: "4 mm" }, headingRow: 3 });
    expect(await readRow(cells, 1)).toMatchObject({ texts: { load: "1", bore: "2" }, headingRow: 1 });
    await expect(readRow(cells, 3)).rejects.toThrow("Row 4 is empty.");
    await expect(readRow(cells, 0)).rejects.toThrow(/No headings above row 1/);
  });
});
