import { DUTYROOM } from "../../core/duties";
import { Measure } from "../../core/formula";
import type { Answer } from "../../core/formula";
import { withUnit } from "../state/quantity";
import type { Bar } from "./told";
import type { Subject, Told } from "./told";
import { answerText, tableOf } from "./table";

/** How far a number of the duty may move: a row of DUTYROOM. */
export interface Room {
  readonly field: string;
  readonly value: number;
  readonly unit: string;
  /** Where the verdict turns, in the sheet's units; nothing where it does not. */
  readonly least?: Turn | undefined;
  readonly greatest?: Turn | undefined;
}
export interface Turn {
  readonly at: number;
  /** The word beyond it. */
  readonly word: string;
  readonly by: string;
}

export interface RoomFigure extends Told {
  readonly rooms: readonly Room[];
  readonly bars: readonly Bar[];
}

/** Beyond this share of its value a number's room is drawn no further. */
const widest = 2;

export function roomsOf({ duty, one, library, system }: Subject): readonly (readonly Answer[])[] {
  return DUTYROOM.calc(
    { duties: tableOf(duty), duty: undefined, grade: one.grade.name, grades: library },
    system,
  ).slice(1);
}

/** One bar for each number of the duty, in shares of its value, from where the verdict turns below it to where it turns above. */
export function roomFigure(subject: Subject): RoomFigure {
  const { one, system } = subject;
  const lines = roomsOf(subject);
  const text = (answer: Answer | undefined) => answerText(answer, system);
  const rooms = lines.map((line): Room => {
    const turn = (from: number): Turn | undefined =>
      line[from] instanceof Measure
        ? { at: Number(text(line[from])), word: text(line[from + 1]), by: text(line[from + 2]) }
        : undefined;
    return {
      field: text(line[0]),
      value: Number(text(line[1])),
      unit: text(line[2]),
      least: turn(3),
      greatest: turn(6),
    };
  });
  const bars = rooms.map(({ field, value, unit, least, greatest }): Bar => {
    const share = (at: number | undefined, open: number) =>
      at === undefined || value === 0 ? open : Math.max(-widest, Math.min(widest, (at - value) / Math.abs(value)));
    const ends = [least ? least.at : "…", greatest ? greatest.at : "…"].join(" to ");
    return {
      name: `${withUnit(`${field} ${value}`, unit)}: ${ends}`,
      from: share(least?.at, -widest),
      to: share(greatest?.at, widest),
    };
  });
  const tight = rooms.flatMap(({ field, value, least, greatest }) =>
    [least, greatest].flatMap((turn) =>
      turn && value !== 0 ? [{ field, turn, by: Math.abs(turn.at / value - 1) }] : [],
    ),
  );
  const [nearest] = [...tight].sort((a, b) => a.by - b.by);
  return {
    rooms,
    bars,
    summary: nearest
      ? `${one.grade.name}, ${one.word}: the nearest turn is ${nearest.field} at ${nearest.turn.at} (${nearest.turn.by}, then ${nearest.turn.word}).`
      : `${one.grade.name}, ${one.word}: no number turns the verdict within a thousandth to a thousand times its value.`,
    numbers: {
      headings: ["field", "value", "unit", "least", "below it", "by", "greatest", "above it", "by"],
      rows: lines.map((line) => line.map(text)),
    },
    piece: "room",
  };
}
