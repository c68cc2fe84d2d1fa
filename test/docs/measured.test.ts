import { measuredPages } from "../../scripts/docs/measured";
import { scatter } from "../../scripts/docs/scatter";
import { modelErrors } from "../reference/measured/compare";
import { models } from "../reference/measured/models";

const pages = new Map(measuredPages().map((page) => [page.file, page]));
const said = (file: string): string => pages.get(file)!.text;

test("a page for each model, and the first page tells the worst unsafe miss first", () => {
  for (const { key, title } of models) expect(pages.get(`measured/${key.toLowerCase()}.html`)?.title).toBe(title);
  const first = said("measured/index.html");
  const order = modelErrors().filter(({ unsafe }) => unsafe > 0);
  const places = order.map(({ points }) => first.indexOf(points[0]!.what));
  expect(places.every((place) => place > 0)).toBe(true);
  expect(places).toEqual([...places].sort((a, b) => a - b));
});

test("a model's page names every unsafe case before its table, has its picture, or says where was looked", () => {
  for (const { model, points } of modelErrors()) {
    const file = `measured/${model.key.toLowerCase()}.html`;
    const text = said(file);
    for (const { what, isUnsafe } of points)
      if (isUnsafe) expect(text.indexOf(what)).toBeLessThan(text.indexOf("Every measurement"));
    if (points.length === 0) expect(text).toContain(model.looked);
    expect(said(file).includes("<svg")).toBe(points.length > 0);
  }
});

test("a point on the line of equality lies where prediction and measurement are alike; another by its decades", () => {
  const svg = scatter({
    ...{ id: "p", title: "t", text: "t", unit: "K" },
    points: [
      { measured: 1, predicted: 1, isUnsafe: false },
      { measured: 10, predicted: 10, isUnsafe: false },
      { measured: 100, predicted: 10, scatter: 5, isUnsafe: true },
    ],
  });
  const [left, top, bottom, right] = /class="axis" d="M(\d+) (\d+)V(\d+)H(\d+)"/.exec(svg)!.slice(1).map(Number) as [
    number,
    number,
    number,
    number,
  ];
  const [one, ten] = [...svg.matchAll(/<circle class="mark safe" cx="([\d.]+)" cy="([\d.]+)"/g)].map(([, x, y]) => [
    (Number(x) - left) / (right - left),
    (bottom - Number(y)) / (bottom - top),
  ]) as [[number, number], [number, number]];
  expect(one[0]).toBeCloseTo(one[1], 2);
  expect(ten[0]).toBeCloseTo(ten[1], 2);
  // the unsafe point stands as far to the right of ten as ten of one, and as high as ten
  const [, x, y] = /<path class="mark" d="M([\d.]+) ([\d.]+)L/.exec(svg)!.map(Number) as [number, number, number];
  expect((x - left) / (right - left) - ten[0]).toBeCloseTo(ten[0] - one[0], 2);
  expect((bottom - y - 5) / (bottom - top)).toBeCloseTo(ten[1], 2);
  expect(svg.match(/class="spread"/g)).toHaveLength(2);
});
