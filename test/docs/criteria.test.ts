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

test("PV of the greenhouse's slide by hand: 160 N on 750 mm² at 0.24 m/s against a curve at 35 °C", () => {
  // 160/750·0.24 = 0.0512; 0.08 + (0.04 − 0.08)·(35 − 23)/(45 − 23) = 0.05818; their ratio 0.88
  const page = pages.get("criteria/pv.html")!;
  for (const part of ["| p | Mean pressure | 0.213333 MPa |", "u = V / Z", "Found: **fits**, PV 88 %", "<svg"])
    expect(page).toContain(part);
  expect(page).toContain("../measured/peakrise.html");
});
