import { criterionPages } from "../../scripts/docs/criteria";
import { criteria } from "../../src/core/duties";

const pages = new Map(criterionPages().map(({ file, text }) => [file, text]));

test("a page for each criterion: its rule, what it asks of duty and grade, an example with its word, its errors", () => {
  for (const { id, heading, text } of criteria) {
    const page = pages.get(`criteria/${id.toLowerCase()}.html`)!;
    expect(page.startsWith(`# Criterion: ${heading}\n\n${text}.`)).toBe(true);
    for (const part of ["- Asked: ", "[Fields of the duty]", "[Figures of the grade]", "- Source: ", "## Errors"])
      expect([id, page.includes(part)]).toEqual([id, true]);
    expect([id, /Found: \*\*(fits|care|fails|no data)\*\*, ./.test(page)]).toEqual([id, true]);
    expect(page).not.toMatch(/undefined|NaN/);
    expect(pages.get("criteria/index.html")).toContain(`[${heading}](${id.toLowerCase()}.html)`);
  }
});

/** What is judged in figures that a number of the duty moves, and the states of a fit. */
const pictured = [
  ...["staticPressure", "runningPressure", "facePressure", "speed", "pv", "boreTemperature", "shortPeak"],
  ...["peakPressure", "edgePressure", "tilt", "wearLife", "clearance", "grip"],
];

test("criteria in figures have one picture each, the others none", () => {
  for (const { id } of criteria) {
    const drawn = pages.get(`criteria/${id.toLowerCase()}.html`)!.match(/<svg/g) ?? [];
    expect([id, drawn.length]).toEqual([id, pictured.includes(id) ? 1 : 0]);
  }
});

test("the symbols explained are those that the lines above them define", () => {
  let explained = 0;
  for (const [file, page] of pages)
    for (const [, lines, told] of page.matchAll(/```text\n([^`]*)```\n\nIn it (.*)/g))
      for (const [, symbol] of told!.matchAll(/`([^`]+)`:/g)) {
        explained++;
        expect([file, symbol, lines!.split("\n").some((line) => line.startsWith(`${symbol} = `))]).toEqual([
          ...[file, symbol, true],
        ]);
      }
  expect(explained).toBeGreaterThan(40);
});

test("the bore's temperature is worked by the PV, by the ways out for the heat and by the two nodes of a flanged bush", () => {
  const page = pages.get("criteria/boretemperature.html")!;
  const [, ...worked] = page.split("## Worked for the duty");
  for (const lines of [
    ["V = T + (T_max"],
    ["Gw = ", "Gs = ", "Q = ", "ΔT = Q / G"],
    ["κ = ", "N = ", "ΔT_s = ", "ΔT_f = "],
  ])
    expect([lines, worked.filter((one) => lines.every((line) => one.includes(`\n${line}`))).length]).toEqual([
      lines,
      1,
    ]);
});

test("PV of the greenhouse's roller by hand: 55 lbf on 0.75 × 1 in at 45 rpm, the limit derated for 40 °C", () => {
  // 244.65/(19.05·25.4) = 0.5056; π·19.05·45/60000 = 0.04489; 0.03503·(90 − 40)/(90 − 23) = 0.02614; their ratio 0.87
  const page = pages.get("criteria/pv.html")!;
  for (const part of ["| p | Mean pressure | 0.505616 MPa |", "u = V / Z", "Found: **fits**, PV 87 %", "<svg"])
    expect(page).toContain(part);
  expect(page).toContain("../measured/peakrise.html");
});
