import { readFileSync } from "node:fs";
import path from "node:path";
import { catalogue } from "../../src/core";
import { chart, curve } from "../../scripts/docs/chart";
import { pictures } from "../../scripts/docs/pictures";
import { root } from "../package/run";

/** The pictures of the models: what a reader sees, and what one who cannot see is told. */
const drawn = Object.entries(pictures).map(([id, of]) => [id, of()] as const);
const wanted = [
  ...["DERATEDPV", "BORETEMP", "PEAKRISE", "CONTACTSHARE", "EDGEPRESSURE", "PEAKPRESSURE", "GRIPLEFT"],
  ...["WEAR", "WORNPEAK", "RUNNINGIN", "BEDDING"],
];

test("the models that need one have a picture, each of a function", () => {
  expect(Object.keys(pictures)).toEqual(expect.arrayContaining(wanted));
  const ids = catalogue.map(({ spec }) => spec.id);
  for (const [id] of drawn) expect(ids).toContain(id);
});

test.each(drawn)("%s: named and described, every line tells itself by its label and its dashes", (_, one) => {
  const svg = chart(one);
  expect(svg).toContain(`<title id="${one.id}-title">${one.title}</title>`);
  expect(svg).toContain(`aria-labelledby="${one.id}-title ${one.id}-text"`);
  expect(svg).toMatch(/role="img"/);
  expect(svg).not.toMatch(/NaN|Infinity|undefined|style=|\n\n/);
  for (const of of ["label", "look"] as const)
    expect(new Set(one.series.map((series) => series[of])).size).toBe(one.series.length);
  for (const { label, points } of one.series) {
    expect(svg).toContain(`>${label}</text>`);
    const seen = points.filter(([x, y]) => x >= one.x.from && x <= one.x.to && y >= one.y.from && y <= one.y.to);
    expect(seen.length).toBeGreaterThanOrEqual(2);
  }
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
