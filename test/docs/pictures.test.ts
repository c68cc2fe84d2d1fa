import { readFileSync } from "node:fs";
import path from "node:path";
import { catalogue } from "../../src/core";
import { chart, curve } from "../../scripts/docs/chart";
import { drawn, pictures } from "../../scripts/docs/pictures";
import { rowChart } from "../../scripts/docs/rows";
import { root } from "../package/run";

/** The pictures of the models: what a reader sees, and what one who cannot see is told. */
const all = Object.entries(pictures).map(([id, of]) => [id, of()] as const);
const ofLines = all.flatMap(([id, one]) => ("series" in one ? [[id, one] as const] : []));
const ofRows = all.flatMap(([id, one]) => ("rows" in one ? [[id, one] as const] : []));
const wanted = [
  ...["DERATEDPV", "BORETEMP", "PEAKRISE", "CONTACTSHARE", "EDGEPRESSURE", "PEAKPRESSURE", "GRIPLEFT"],
  ...["WEAR", "WORNPEAK", "RUNNINGIN", "BEDDING", "SHAFTSLOPE", "MAXTILT"],
  ...["FITTABLE", "DUTYROOM", "DUTYSWEEP", "DUTYBAND"],
];

test("the models that need one have a picture, each of a function", () => {
  expect(Object.keys(pictures)).toEqual(expect.arrayContaining(wanted));
  const ids = catalogue.map(({ spec }) => spec.id);
  for (const [id] of all) expect(ids).toContain(id);
});

test.each(all)("%s: named and described, nothing drawn that was not computed", (_, one) => {
  const svg = drawn(one);
  expect(svg).toContain(`<title id="${one.id}-title">${one.title}</title>`);
  expect(svg).toContain(`aria-labelledby="${one.id}-title ${one.id}-text"`);
  expect(svg).toMatch(/role="img"/);
  expect(svg).not.toMatch(/NaN|Infinity|undefined|style=|\n\n/);
});

test.each(ofLines)("%s: every line tells itself by its label and its dashes", (_, one) => {
  const svg = chart(one);
  for (const of of ["label", "look"] as const)
    expect(new Set(one.series.map((series) => series[of])).size).toBe(one.series.length);
  for (const { label, points } of one.series) {
    expect(svg).toContain(`>${label}</text>`);
    const seen = points.filter(([x, y]) => x >= one.x.from && x <= one.x.to && y >= one.y.from && y <= one.y.to);
    expect(seen.length).toBeGreaterThanOrEqual(2);
  }
});

test.each(ofRows)("%s: every row has its name and stands within the frame, every part its word", (_, one) => {
  const svg = rowChart(one);
  const names = one.rows.map(({ name }) => name);
  expect(new Set(names).size).toBe(names.length);
  for (const part of names.flatMap((name) => name.split(", ")))
    expect(svg).toMatch(new RegExp(`>[^<]*${part},?</text>`));
  for (const { spread = [], most = [], mark = 0 } of one.rows)
    for (const value of [...spread, ...most, mark]) expect(value >= one.x.from && value <= one.x.to).toBe(true);
  for (const label of [...Object.values(one.legend), one.limit.label]) expect(svg).toContain(`>${label}</text>`);
});

test("a row from one to three on an axis to four covers the half of it, its mark in the middle", () => {
  const svg = rowChart({
    ...{ id: "p", title: "t", text: "t", x: { label: "a", from: 0, to: 4 }, legend: {}, limit: { label: "l", at: 4 } },
    rows: [{ name: "n", spread: [1, 3], mark: 2 }],
  });
  const numbersOf = (found: RegExp) => found.exec(svg)!.slice(1).map(Number) as [number, number];
  const [from, to] = numbersOf(/class="spread" d="M([\d.]+) [\d.]+H([\d.]+)"/);
  const [left, right] = numbersOf(/class="axis" d="M([\d.]+) [\d.]+V[\d.]+H([\d.]+)"/);
  const middle = Number(/class="mark" cx="([\d.]+)"/.exec(svg)![1]);
  expect((to - from) / (right - left)).toBeCloseTo(0.5, 2);
  expect((from - left) / (right - left)).toBeCloseTo(0.25, 2);
  expect((middle - left) / (right - left)).toBeCloseTo(0.5, 2);
});

test("a line goes through its points: a quarter of the way at a quarter of the frame", () => {
  const line = { label: "l", look: "first", points: curve((x) => x * x, 0, 2, 4) } as const;
  const axis = { label: "a", from: 0, to: 4 };
  const [, path] = /class="line first" d="([^"]+)"/.exec(
    chart({ id: "p", title: "t", text: "t", x: axis, y: axis, series: [line] }),
  )!;
  const points = path!
    .slice(1)
    .split("L")
    .map((pair) => pair.split(",").map(Number) as [number, number]);
  const frame = /class="axis" d="M(\d+) (\d+)V(\d+)H(\d+)"/.exec(
    chart({ id: "p", title: "t", text: "t", x: axis, y: axis, series: [line] }),
  )!;
  const [left, top, bottom, right] = frame.slice(1).map(Number) as [number, number, number, number];
  // x² at 0, 0.5, 1, 1.5, 2 on axes from 0 to 4
  expect(points).toHaveLength(5);
  points.forEach(([x, y], i) => {
    expect((x - left) / (right - left)).toBeCloseTo((0.5 * i) / 4, 2);
    expect((bottom - y) / (bottom - top)).toBeCloseTo((0.5 * i) ** 2 / 4, 2);
  });
});

/** Relative luminance and contrast: WCAG 2.2, "relative luminance" and "contrast ratio" (memory). */
const luminance = (hex: string): number => {
  const full = hex.length === 4 ? [...hex.slice(1)].map((c) => c + c).join("") : hex.slice(1);
  const [r, g, b] = [0, 2, 4].map((i) => {
    const part = parseInt(full.slice(i, i + 2), 16) / 255;
    return part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};
test("words have a contrast of 4.5 to 1, lines of 3 to 1, on light ground and on dark", () => {
  const css = readFileSync(path.join(root, "scripts/docs/site.css"), "utf8");
  const grounds = [...css.matchAll(/--paper: (#\w+);\s*--ink: (#\w+);\s*--quiet: (#\w+);\s*--accent: (#\w+);/g)];
  expect(grounds).toHaveLength(2);
  for (const [, paper, ink, quiet, accent] of grounds)
    for (const [colour, least] of [
      [ink, 4.5],
      [quiet, 4.5],
      [accent, 3],
    ] as const) {
      const [a, b] = [luminance(paper!), luminance(colour!)].sort((x, y) => y - x) as [number, number];
      expect([colour, (a + 0.05) / (b + 0.05) >= least]).toEqual([colour, true]);
    }
});
