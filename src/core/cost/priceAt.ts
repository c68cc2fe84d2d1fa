import { isSpareRow, readCell } from "../table/cell";
import { BushError, clash, isMissing, mustBe, noDatum } from "../errors";
import { formula } from "../formula";
import type { Cell } from "../formula";
import { checkOneCurrency } from "../units/money";
import { present } from "../present";
import { breakAt, inOrder, readPieces } from "./priceBreaks";
import type { PriceBreak } from "./priceBreaks";

/** Price of the greatest break not above the quantity. A quantity for which no price was quoted is no datum. */
export const PRICEAT = formula(
  {
    id: "PRICEAT",
    text: "Unit price for an order quantity, from a table of price breaks in one currency",
    args: {
      quantity: { kind: "count", symbol: "n", whole: true, above: 0, text: "Pieces ordered" },
      breaks: {
        kind: "table",
        what: 'two columns: quantity from which a price holds (or "100-499"), price; or three: from, to, price; in any order, with or without a heading row',
        text: "Price breaks",
        read: readBreaks,
      },
    },
    units: false,
    result: { kind: "money", symbol: "c" },
    source: { key: "practice", at: "price break of the greatest quantity not above the order" },
    example: [
      250,
      [
        ["from", "price"],
        [1, 4.2],
        [100, 3.1],
        [500, 2.4],
      ],
    ],
    see: ["LANDED", "QUOTES"],
  },
  ({ quantity, breaks }) => {
    const reached = breakAt(breaks, quantity);
    if (reached) return reached.price;
    const least = present(breaks[0]).from;
    throw noDatum(
      "quantity",
      quantity < least
        ? `quantity ${quantity} is below the least price break, ${least}`
        : `no price break holds for quantity ${quantity}`,
    );
  },
);

/** Least quantity first. */
function readBreaks(cells: Cell[][], _system: unknown, name: string): PriceBreak<number>[] {
  const width = cells[0]?.length ?? 0;
  if (width !== 2 && width !== 3)
    throw clash(name, `${name} must be two columns, quantity and price, or three, from, to and price, got ${width}`);
  const rows = cells.map((row, i) => ({ row, place: `${name} row ${i + 1},` }));
  const filled = rows.filter(({ row }, i) => !isSpareRow(row) && !(i === 0 && isHeading(row)));
  if (filled.length === 0) throw clash(name, `${name} holds no price`);
  const breaks = filled.map(({ row, place }): PriceBreak<number> => {
    const from = piecesIn(`${place} quantity`, row[0]);
    const price = readCell(`${place} price`, { kind: "money", above: 0 }, row[width - 1], "metric");
    if (width === 2) return typeof from === "number" ? { from, price } : { ...from, price };
    const to = row[1] === null ? undefined : piecesIn(`${place} to`, row[1]);
    if (typeof from !== "number" || (to !== undefined && (typeof to !== "number" || to < from)))
      throw mustBe(`${place} to`, "a number of pieces not below that in front of it", row[1]);
    return to === undefined ? { from, price } : { from, to, price };
  });
  checkOneCurrency(
    name,
    filled.map(({ row }) => row[width - 1]),
  );
  return inOrder(name, breaks, String);
}

function piecesIn(place: string, cell: Cell | undefined): ReturnType<typeof readPieces> {
  if (cell instanceof BushError) throw cell;
  if (cell === null || cell === undefined) throw isMissing(place);
  if (typeof cell === "boolean") throw mustBe(place, "a number", cell);
  return readPieces(place, { kind: "count", whole: true, from: 0 }, cell);
}

const isHeading = (row: Cell[]): boolean =>
  row.every((cell) => cell === null || (typeof cell === "string" && !/\d/.test(cell)));
