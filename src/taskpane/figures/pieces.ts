import type { WearCourse } from "../../core/duties";
import { functions } from "../../core";
import { property } from "../../core/grades/model";
import type { PropertyKey } from "../../core/grades/model";
import type { Layer } from "../../core/loading/layer";
import { kinds } from "../../core/kinds";
import type { Kind } from "../../core/kinds";
import { present } from "../../core/present";
import { fromWorking } from "../../core/units/scale";
import { addressOf, areaText } from "../../port/address";
import type { Written } from "../../port/sheet";
import type { PieceOrder, Standing } from "../insert/blocks";
import { below, beside, call, plain, spilled, text, unitsOf } from "../insert/spill";
import type { Given, Piled } from "../insert/spill";

const heading = (value: string): Written => ({ value, heading: true });

/** A column of values under a heading, as a range. */
function column(
  { at }: Standing,
  name: string,
  values: readonly number[],
  down: number,
): { pile: Piled; range: Given } {
  const area = areaText({ row: at.row + down + 1, col: at.col, rows: values.length, cols: 1 });
  return {
    pile: plain([[heading(name)], ...values.map((value): Written[] => [value])]),
    range: { text: area, value: values.map((value) => [value]) },
  };
}

/** DUTYSWEEP beside the values that it is asked for. */
export const sweepPiece =
  (name: string, values: readonly number[], gradeName: string): PieceOrder =>
  (standing) => {
    const { at, placed, order } = standing;
    const { pile, range } = column(standing, name, values, 1);
    const grade: Given = { text: addressOf(at.row, at.col), value: gradeName };
    const field: Given = { text: addressOf(at.row + 1, at.col), value: name };
    const swept = spilled(functions.DUTYSWEEP, [
      placed.area,
      field,
      range,
      placed.duty,
      grade,
      order.own,
      unitsOf(standing.order.system),
    ]);
    return stacked(plain([[heading(gradeName)]]), beside(pile, swept));
  };

/** Without a free line between them. */
const stacked = (first: Piled, second: Piled): Piled => ({
  rows: [...first.rows, ...second.rows],
  widths: below(first, second).widths,
});

/** Inputs down two columns below the grade's name, each a cell that formulas refer to. */
function inputs(standing: Standing, gradeName: string, lines: readonly (readonly [string, Input])[]) {
  const { at } = standing;
  const grade = addressOf(at.row, at.col);
  const rows: Written[][] = [
    [heading(gradeName)],
    ...lines.map(([name, input]): Written[] => [
      name,
      "formula" in input ? { formula: input.formula(grade, standing) } : input.value,
    ]),
  ];
  const refs = lines.map(([, { value }], i): Given => ({ text: addressOf(at.row + 1 + i, at.col + 1), value }));
  return { pile: plain(rows), refs };
}
type Input =
  | { readonly value: number | string }
  | { readonly value: number | string; readonly formula: (grade: string, standing: Standing) => string };

const named = (name: string, kind: Kind, { order: { system } }: Standing): string =>
  kinds[kind][system] === "" ? name : `${name} [${kinds[kind][system]}]`;

/** A figure of the grade, looked up where the sheet has its name. */
const figure =
  (key: PropertyKey) =>
  (grade: string, standing: Standing): string =>
    `=${call(functions.GRADE, [{ text: grade, value: "" }, text(property(key).heading), standing.order.own, unitsOf(standing.order.system)])}`;

/** EDGEPRESSURE over a column of slopes, at the greatest load and clearance of the duty. */
export const edgePiece =
  (layer: Layer, tilts: readonly number[], gradeName: string): PieceOrder =>
  (standing) => {
    const shown = (kind: Kind, value: number) => Number(fromWorking(kind, value, standing.order.system).toPrecision(9));
    const plainInput = (name: string, kind: Kind, value: number): [string, Input] => [
      named(name, kind, standing),
      { value: shown(kind, value) },
    ];
    const { pile, refs } = inputs(standing, gradeName, [
      plainInput("greatest load, impact included", "force", layer.load),
      plainInput("bore", "length", layer.bore),
      plainInput("length", "length", layer.length),
      plainInput("wall", "length", layer.wall),
      plainInput("greatest clearance of the fit", "length", layer.clearance),
      [
        named(property("compressiveModulus").heading, "pressure", standing),
        { value: shown("pressure", layer.modulus), formula: figure("compressiveModulus") },
      ],
      ["Poisson's ratio", { value: layer.poisson }],
    ]);
    const { pile: slopes, range } = column(standing, "slope [°]", tilts, pile.rows.length);
    const answered = spilled(functions.EDGEPRESSURE, [...refs, range, unitsOf(standing.order.system)], false);
    const heads = [
      named("lower", "pressure", standing),
      named("upper", "pressure", standing),
      named("length in contact", "length", standing),
      "contact",
    ];
    return stacked(pile, beside(slopes, stacked(plain([heads.map(heading)]), answered)));
  };

/** WEAR over a column of hours, by the grade's high rate. */
export const wearPiece =
  ({ factors, work, from, clearance }: WearCourse, hours: readonly number[], gradeName: string): PieceOrder =>
  (standing) => {
    const { system, library } = standing.order;
    const shown = (kind: Kind, value: number) => Number(fromWorking(kind, value, system).toPrecision(9));
    const rate = present(library.grades.find(({ name }) => name === gradeName)?.values.wearHigh);
    const anHour = shown("distance", 3.6);
    const { pile, refs } = inputs(standing, gradeName, [
      [
        `${named(property("wearHigh").heading, "wearRate", standing)} × factors`,
        {
          value: rate * factors,
          formula: (grade, at) => `${figure("wearHigh")(grade, at)}*${factors}`,
        },
      ],
      [named("mean PV as pressure at 1 m/s", "pressure", standing), { value: shown("pressure", work) }],
      ["tests of the rate", { value: from }],
      [
        named("greatest clearance of the fit", "length", standing),
        { value: clearance === undefined ? "" : shown("length", clearance) },
      ],
    ]);
    const top = standing.at.row + pile.rows.length;
    const cell = (i: number, across: number) => addressOf(top + 1 + i, standing.at.col + across);
    const times = plain([
      [heading("hours"), heading(named("distance at 1 m/s", "distance", standing))],
      ...hours.map((time, i): Written[] => [time, { formula: `=${cell(i, 0)}*${anHour}` }]),
    ]);
    const distance: Given = {
      text: `${cell(0, 1)}:${cell(hours.length - 1, 1)}`,
      value: hours.map((time) => [time * anHour]),
    };
    const [k, p, test, play] = refs as [Given, Given, Given, Given];
    const rateNow: Given = { ...k, value: shown("wearRate", rate * factors) };
    const given = [rateNow, p, distance, test, from === "flat" ? play : undefined, unitsOf(standing.order.system)];
    const answered = spilled(functions.WEAR, given, false);
    return stacked(pile, beside(times, stacked(plain([[heading(named("wear depth", "length", standing))]]), answered)));
  };
