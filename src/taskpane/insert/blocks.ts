import type { FieldKey, NamedDuty } from "../../core/duties";
import { functions } from "../../core";
import type { Formula } from "../../core/formula";
import { mapped } from "../../core/keyed";
import { kindText } from "../../core/grades/model";
import type { Library } from "../../core/grades/model";
import type { System } from "../../core/kinds";
import { standingCautions } from "../../core/grades/cautionsOf";
import { present } from "../../core/present";
import { addressOf } from "../../port/address";
import type { Block, Corner, Place, Written } from "../../port/sheet";
import { valueOf } from "../../port/sheet";
import { dutyCard, dutyTable } from "./dutyTable";
import type { DutyTable } from "./dutyTable";
import type { Piece } from "./pieces";
import { nativeSteps } from "./native";
import { below, beside, plain, spilled, unitsOf } from "./spill";
import type { Given, Piled } from "./spill";
import { workedSteps } from "./worked";

/** A duty that stands in the sheet already. */
export interface Placed {
  readonly area: Given;
  readonly duty?: Given | undefined;
  /** Where a field of a step stands, as an argument. */
  readonly refs: readonly Readonly<Partial<Record<FieldKey, Given>>>[];
}

/** A piece of the list, or one that a picture makes for itself. */
export type PieceOrder = Piece | ((standing: Standing) => Piled);

export interface Order {
  readonly piece: PieceOrder;
  readonly duty: NamedDuty;
  readonly system: System;
  /** Names of the grades to judge; the first is that of what judges one. */
  readonly grades: readonly string[];
  readonly library: Library;
  /** The table of own grades. */
  readonly own?: Given | undefined;
  /** The duty's own cells; without them it is written with the piece. */
  readonly placed?: Placed | undefined;
}

export interface Ordered {
  /** The rows to write from the corner on, room for what spills included. */
  readonly block: Block;
  /** Characters that each column needs. */
  readonly widths: readonly number[];
  /** Where the duty stands, where the block holds it. */
  readonly table?: Place;
}

/** What stands in the sheet, and where: a formula refers to cells wherever a cell holds the figure. */
export interface Standing {
  readonly order: Order;
  readonly placed: Placed;
  /** The corner at which the piece itself begins. */
  readonly at: Corner;
}

export function blockOf(order: Order, at: Corner): Ordered {
  const isDuty = order.piece === "row" || order.piece === "card";
  if (order.placed && !isDuty) return squared(pieceOf({ order, placed: order.placed, at }));
  const table = (order.piece === "card" ? dutyCard : dutyTable)(order.duty, order.system, at);
  const placed = placedIn(table, at);
  const own = plain(table.rows);
  const place = { ...at, rows: table.rows.length, cols: own.widths.length };
  if (order.piece === "card") return { ...squared(own), table: place };
  if (order.piece === "row") return { ...squared(beside(own, dutiesBeside(order, placed))), table: place };
  const piece = pieceOf({ order, placed, at: { ...at, row: at.row + table.rows.length + 1 } });
  return { ...squared(below(own, piece)), table: place };
}

/** Cells of a table that is about to be written, as arguments. */
function placedIn({ rows, area, refs }: DutyTable, at: Corner): Placed {
  const value = rows.map((row) => row.map((cell) => valueOf(cell)));
  const cellAt = new Map(
    value.flatMap((row, r) => row.map((cell, c) => [addressOf(at.row + r, at.col + c), cell] as const)),
  );
  return {
    area: { text: area, value },
    refs: refs.map((row) => mapped(row, (ref): Given => ({ text: ref, value: cellAt.get(ref) }))),
  };
}

const dutiesBeside = (order: Order, { area }: Placed): Piled =>
  spilled(functions.DUTIES, [area, order.own, unitsOf(order.system)]);

const cautions: Piled = plain(standingCautions.map((caution): Written[] => [caution]));

function pieceOf(standing: Standing): Piled {
  const { order, placed } = standing;
  if (typeof order.piece === "function") return order.piece(standing);
  switch (order.piece) {
    case "row":
    case "card":
      return dutiesBeside(order, placed);
    case "checks":
      return checksOf(standing);
    case "rank":
      return below(cautions, spilled(functions.DUTYRANK, [placed.area, placed.duty, order.own, unitsOf(order.system)]));
    case "room":
      return ofFirst(standing, functions.DUTYROOM);
    case "fit":
      return ofFirst(standing, functions.FITTABLE);
    case "record":
      return ofFirst(standing, functions.DUTYSHEET);
    case "worked":
      return workedSteps(order.duty, placed, order.system);
    case "native":
      return nativeSteps(order.duty, placed, order.system, standing.at);
  }
}

/** A function of one duty and one grade, below the grade's name, which its formula refers to. */
function ofGrade({ order, placed, at }: Standing, name: string, f: Formula): Piled {
  const kind = order.library.grades.find((grade) => grade.name === name)?.kind;
  const head = plain([[{ value: name, heading: true }, kind ? kindText[kind] : null]]);
  const grade: Given = { text: addressOf(at.row, at.col), value: name };
  const answered = spilled(f, [placed.area, placed.duty, grade, order.own, unitsOf(order.system)]);
  return { rows: [...head.rows, ...answered.rows], widths: below(head, answered).widths };
}

const ofFirst = (standing: Standing, f: Formula): Piled => ofGrade(standing, present(standing.order.grades[0]), f);

/** Every criterion grade by grade; cautions stand at the end. */
function checksOf({ order, placed, at }: Standing): Piled {
  let row = at.row;
  const piles = order.grades.map((name) => {
    const pile = ofGrade({ order, placed, at: { ...at, row } }, name, functions.DUTYCHECKS);
    row += pile.rows.length + 1;
    return pile;
  });
  return below(...piles, cautions);
}

/** A longer text may run over its neighbours. */
const widest = 44;

function squared({ rows, widths }: Piled): Ordered {
  const width = Math.max(...rows.map((row) => row.length));
  return {
    block: rows.map((row) => Array.from({ length: width }, (_, i) => row[i] ?? null)),
    widths: Array.from({ length: width }, (_, c) => Math.min(widest, (widths[c] ?? 0) + 1)),
  };
}
