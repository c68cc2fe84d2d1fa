import { isSpareRow, readCell } from "../cell";
import { clash, noDatum } from "../errors";
import { formula } from "../formula";
import type { Cell } from "../formula";
import { splitNumber } from "../numbers";

export interface PriceBreak {
  readonly quantity: number;
  readonly price: number;
}

/** Price of the greatest break not above the quantity. A quantity below the least break is no datum: no price was quoted for it. */
export const PRICEAT = formula(
  {
    id: "PRICEAT",
    text: "Unit price for an order quantity, from a table of price breaks",
    args: {
      quantity: { kind: "count", symbol: "n", above: 0, text: "Pieces ordered" },
      breaks: {
        kind: "table",
        what: "two columns: quantity from which a price holds, price; in any order, with or without a heading row",
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
    const reached = breaks.findLast((b) => b.quantity <= quantity);
    if (!reached)
      throw noDatum("quantity", `quantity ${quantity} is below the least price break, ${breaks[0]!.quantity}`);
    return reached.price;
  },
);

/** Least quantity first. */
function readBreaks(cells: Cell[][], _system: unknown, name: string): PriceBreak[] {
  const width = cells[0]?.length ?? 0;
  if (width !== 2) throw clash(name, `${name} must be two columns, quantity and price, got ${width}`);
  const breaks = cells.flatMap((row, i) =>
    isSpareRow(row) || (i === 0 && isHeading(row)) ? [] : [readBreak(row, i, name)],
  );
  if (breaks.length === 0) throw clash(name, `${name} holds no price`);
  breaks.sort((a, b) => a.quantity - b.quantity);
  breaks.forEach((b, i) => {
    const next = breaks[i + 1];
    if (next?.quantity === b.quantity && next.price !== b.price)
      throw clash(name, `${name} gives two prices for quantity ${b.quantity}: ${b.price} and ${next.price}`);
  });
  return breaks;
}

const isHeading = (row: Cell[]): boolean =>
  row.every((cell) => cell === null || (typeof cell === "string" && !splitNumber(cell)));

function readBreak([quantity, price]: Cell[], i: number, name: string): PriceBreak {
  const place = `${name} row ${i + 1},`;
  return {
    quantity: readCell(`${place} quantity`, { kind: "count", from: 0 }, quantity, "metric"),
    price: readCell(`${place} price`, { kind: "money", above: 0 }, price, "metric"),
  };
}
