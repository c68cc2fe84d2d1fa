import { emptyTexts, keepUnits, readBack, readDuty } from "../../src/taskpane/duty/fields";
import type { Texts } from "../../src/taskpane/duty/fields";
import { readSelectedRow, textsOf } from "../../src/taskpane/duty/fromRow";
import { keepStepUnits, readSpectrum } from "../../src/taskpane/duty/spectrum";
import type { ReadCell, SheetPort } from "../../src/port/sheet";

const texts = (given: Partial<Texts>): Texts => ({ ...emptyTexts, ...given });
const shaft = texts({ load: "800", bore: "20", length: "15", rpm: "120", lowest: "5", highest: "45" });

test("a duty is what its fields say: p = F/(d·L), v = π·d·n/60 000", () => {
  const { duty, faults, missing } = readDuty(shaft, "metric");
  expect([faults, missing]).toEqual([{}, []]);
  expect(duty!.pressure).toBeCloseTo(800 / 300, 12);
  expect(duty!.speed).toBeCloseTo((Math.PI * 20 * 120) / 60000, 12);
  expect(duty).toMatchObject({ motion: "turning", temperature: { low: 5, high: 45 }, wet: false, lengthRatio: 0.75 });
});

test("only the fields of the motion are asked for", () => {
  expect(readDuty(emptyTexts, "metric").missing).toEqual(["load", "bore", "length", "rpm", "lowest", "highest"]);
  expect(readDuty(texts({ motion: "linear" }), "metric").missing).toContain("stroke");
  const atRest = readDuty({ ...shaft, motion: "static", rpm: "nonsense" }, "metric");
  expect(atRest.duty).toMatchObject({ speed: 0, motion: "static" });
});

test("a swinging shaft: travel there and back, 2·φ/360·π·d a cycle", () => {
  const { duty } = readDuty({ ...shaft, motion: "swinging", swing: "90", cycles: "12" }, "metric");
  expect(duty!.speed).toBeCloseTo((2 * 90 * Math.PI * 20 * 12) / (360 * 60000), 12);
});

test("faults stay at their field and name it, what was found and what is accepted", () => {
  const { faults, duty } = readDuty({ ...shaft, bore: "0", length: "15 kg", designFactor: "0.5" }, "metric");
  expect(duty).toBeUndefined();
  expect(faults.bore).toBe('bore of the bush must be above 0 mm, got "0"');
  expect(faults.length).toMatch(/^length of the bush must be in a unit like mm or in, got "kg"/);
  expect(faults.designFactor).toMatch(/^design factor must be 1 or more/);
  expect(readDuty({ ...shaft, lowest: "60" }, "metric").faults.highest).toMatch(/below the lowest/);
});

test("an impact factor counts only with shock, hardness and design factor when given", () => {
  const blows = { ...shaft, impactFactor: "2", hardness: "200", designFactor: "1.5", shaft: "soft steel" };
  expect(readDuty(blows, "metric").duty).not.toHaveProperty("impactFactor");
  expect(readDuty({ ...blows, shock: "shock" }, "metric").duty).toMatchObject({
    impactFactor: 2,
    hardness: 200,
    designFactor: 1.5,
    shaft: "soft steel",
    shock: true,
  });
});

test("changing the unit system keeps the duty", () => {
  const kept = keepUnits({ ...shaft, load: "180 lbf" }, "metric");
  expect(kept).toMatchObject({ load: "180 lbf", bore: "20 mm", lowest: "5 °C", rpm: "120", motion: "turning" });
  const before = readDuty({ ...shaft, load: "180 lbf" }, "metric").duty!;
  const after = readDuty(kept, "inch").duty!;
  expect(after.pressure).toBeCloseTo(before.pressure, 12);
  expect(after.temperature.high).toBeCloseTo(45, 9);
  // 1 in = 25.4 mm exactly
  expect(readBack("bore", 25.4, "inch")).toBe("1 in");
});

describe("a row by its headings", () => {
  const cell = (value: string | number | null): ReadCell => ({ value, text: String(value ?? "") });
  const row = (...values: (string | number | null)[]) => values.map(cell);

  test("units, either from the heading or from the cell, and spans", () => {
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
    expect(textsOf(headings, row("Vent", 100, "20 mm", 15, "-10 to 40", "yes", 150, null))).toEqual({
      load: "100 lbf",
      bore: "20 mm",
      length: "15",
      lowest: "-10 °F",
      highest: "40 °F",
      wet: "wet",
      hardness: "150 HB",
    });
    expect(textsOf(row("temperature"), row("14 to 104 °F"))).toEqual({ lowest: "14 °F", highest: "104 °F" });
    expect(textsOf(row("temperature"), row(20))).toEqual({ lowest: "20", highest: "20" });
    expect(textsOf(row("motion", "moisture"), row("spinning", "soaked"))).toEqual({});
  });

  const portOn = (cells: ReadCell[][], selected: number): SheetPort =>
    ({
      selection: () => ({ sheet: "S", row: selected, col: 0, rows: 1, cols: 1 }),
      read: () => cells.slice(0, selected + 1),
    }) as unknown as SheetPort;

  test("the nearest heading row above counts; without one the message says what to name", async () => {
    const cells = [row("load", "bore"), row(1, 2), row("Load [N]", "Bore [mm]"), row(null, null), row(3, 4)];
    expect(await readSelectedRow(portOn(cells, 4))).toEqual({ texts: { load: "3 N", bore: "4 mm" }, headingRow: 3 });
    expect(await readSelectedRow(portOn(cells, 1))).toEqual({ texts: { load: "1", bore: "2" }, headingRow: 1 });
    await expect(readSelectedRow(portOn(cells, 3))).rejects.toThrow("Row 4 is empty.");
    await expect(readSelectedRow(portOn(cells, 0))).rejects.toThrow(/No headings above row 1/);
  });
});

test("changing the unit system keeps the steps of a spectrum", () => {
  const kept = keepStepUnits("800; 120; 10\n0.18 kip; 60; 5\n", "metric");
  expect(kept).toBe("800 N; 120; 10\n0.18 kip; 60; 5\n");
  const inch = readDuty(keepUnits(shaft, "metric"), "inch");
  const loads = (text: string) => readSpectrum(text, shaft, inch, "inch").steps.map(({ load }) => load);
  expect(loads(kept)[0]).toBeCloseTo(800, 9);
});

test("a spectrum's mean PV is weighted by time, rest included", () => {
  const read = readDuty(shaft, "metric");
  const { steps, pv } = readSpectrum("800; 120; 10\n1600; 60; 5\n0; 0; 15", shaft, read, "metric");
  expect(steps.map(({ duty }) => duty.pressure)).toEqual([800 / 300, 1600 / 300, 0]);
  const speed = (n: number) => (Math.PI * 20 * n) / 60000;
  expect(pv).toBeCloseTo(((800 / 300) * speed(120) * 10 + (1600 / 300) * speed(60) * 5) / 30, 12);
  expect(readSpectrum("800; 120", shaft, read, "metric").fault).toMatch(/^step 1 must be load; rpm; time/);
  expect(readSpectrum("800; 120; 1\n-4; 1; 1", shaft, read, "metric").fault).toMatch(/^step 2 load must be 0 or more/);
  expect(readSpectrum("0.18 kip; 120; 1", shaft, read, "metric").steps[0]!.load).toBeCloseTo(180 * 4.4482216152605, 9);
});
