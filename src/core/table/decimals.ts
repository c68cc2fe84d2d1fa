import { BushError, clash, show } from "../errors";
import type { Cell } from "../formula";
import { inPoints, markIn, splitNumber } from "../numbers";
import type { DecimalMark } from "../numbers";

/** The mark that a table is known to use, or that it is asked for where its cells leave it open. */
export type Decimals = DecimalMark | "ask";

/** A cell that is one number with a decimal comma and another with a decimal point, in a table that decides for neither. */
export class OpenDecimals extends BushError {
  constructor(
    argument: string,
    place: string,
    /** As it stands. */
    readonly text: string,
  ) {
    const [comma, point] = [inPoints(text, "comma"), inPoints(text, "point")];
    super(
      "value",
      argument,
      `${place} ${show(text)} could be ${asRead(comma)} or ${asRead(point)}: decimal comma or point?`,
    );
  }
}
const asRead = (text: string): string => {
  const found = splitNumber(text);
  return found ? `${found.value} ${found.rest}`.trim() : text;
};

/** A column whose cells hold numbers, and its heading for messages. */
interface NumberColumn {
  readonly index: number;
  readonly heading: string;
}

interface Found {
  readonly place: string;
  readonly text: string;
}
/** The first cell of each way of writing. */
export type Marks = Partial<Record<"comma" | "point" | "either", Found>>;

/** Adds what some rows say of the decimal mark to what those before them said. */
export function findMarks(
  rows: readonly (readonly Cell[])[],
  columns: readonly NumberColumn[],
  place: (row: number) => string,
  found: Marks = {},
): Marks {
  for (const [i, row] of rows.entries())
    for (const { index, heading } of columns) {
      const cell = row[index];
      if (typeof cell !== "string") continue;
      const mark = markIn(cell);
      if (mark !== "same") found[mark] ??= { place: `${place(i)}, ${heading}`, text: cell };
    }
  return found;
}

/** The mark that the cells decide for, or that is wanted; nothing where no cell needs one. Throws where they contradict each other. */
export function markOf(marks: Marks, name: string, wanted: Decimals | undefined): DecimalMark | undefined {
  const known = wanted === "ask" ? undefined : wanted;
  checkOneMark(marks, name, known);
  const { comma, point, either } = marks;
  const mark = known ?? (comma ? "comma" : point ? "point" : undefined);
  if (mark === undefined && either && wanted === "ask") throw new OpenDecimals(name, either.place, either.text);
  return mark;
}

function checkOneMark({ comma, point }: Marks, name: string, known: DecimalMark | undefined): void {
  if (comma && point)
    throw clash(
      name,
      `${show(comma.text)} has a decimal comma (${comma.place}), ${show(point.text)} a point (${point.place})`,
    );
  const other = known && (known === "comma" ? point : comma);
  if (other) throw clash(name, `${other.place} ${show(other.text)} has no decimal ${known}, which was asked for`);
}

/**
 * How a table writes decimals is a property of all its cells: any that can be read one way only decides for the others,
 * and two that contradict each other are an error. Answers the rows with their numerals in digits and points. Where
 * nothing decides, the cells stay as they are, or it is asked.
 */
export function inOneMark(
  rows: Cell[][],
  columns: readonly NumberColumn[],
  { name, place, wanted }: { readonly name: string; place(row: number): string; readonly wanted: Decimals | undefined },
): Cell[][] {
  const found = findMarks(rows, columns, place);
  const mark = markOf(found, name, wanted);
  // a table of points alone reads the same cell by cell
  if (mark === undefined || (mark === "point" && !found.either)) return rows;
  return rows.map((row) => {
    const read = [...row];
    for (const { index } of columns) {
      const cell = read[index];
      if (typeof cell === "string") read[index] = inPoints(cell, mark);
    }
    return read;
  });
}
