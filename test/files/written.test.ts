import { inOneMark } from "../../src/core/table/decimals";
import type { Cell } from "../../src/core/formula";
import { readTable } from "../../src/core/table/readTable";
import type { Reading } from "../../src/core/table/readTable";
import type { EntryList } from "../../src/core/table/entry";
import { readDelimited } from "../../src/files/delimited";
import { knows, readings } from "../../src/files/kinds";
import { tableFrom } from "../../src/files/list";
import { sent } from "./sent";
import type { Sent } from "./sent";
import { fileOf, styles } from "./styles";
import type { Meant, Style } from "./styles";

/** The rows of a file by their fields, as whoever reads it gets them. */
function valuesIn(text: string, kind: Sent["kind"]) {
  const list = readDelimited(text, knows[kind]);
  const { headings, rows } = tableFrom(list, list.top);
  const reading = { ...readings[kind], system: "metric", name: kind, decimals: "ask" } as unknown as Reading<EntryList>;
  return readTable<EntryList>([headings, ...rows] as Cell[][], reading).rows.map(({ values, faults }) => {
    expect([...faults.values()].map(({ message }) => message)).toEqual([]);
    return values;
  });
}

/** What a cell must be read as, in working units. */
function wanted(cell: Meant, field: string, factor: number): unknown {
  if (cell === null) return undefined;
  if (typeof cell === "string") return cell;
  const number = (value: number) => expect.closeTo(value * factor, 9) as number;
  if (field === "temperature") {
    const [low, high] = typeof cell === "number" ? [cell, cell] : cell;
    return { low: number(low), high: number(high) };
  }
  const value = number(cell as number);
  return ["price", "tooling", "freight"].includes(field)
    ? (expect.objectContaining({ amount: value }) as unknown)
    : value;
}

function check({ kind, columns, rows, titles }: Sent, style: Style): void {
  const found = valuesIn(
    fileOf(
      columns.map(([heading]) => heading),
      rows,
      style,
      titles,
    ),
    kind,
  );
  expect(found).toHaveLength(rows.length);
  rows.forEach((row, r) =>
    row.forEach((cell, c) => {
      const [, field, factor] = columns[c]!;
      expect([field, found[r]![field]]).toEqual([field, wanted(cell, field, factor)]);
    }),
  );
}

describe.each(Object.entries(styles))("written in the %s way", (_, style) => {
  test.each(sent.map((list) => [list.name, list] as const))("%s", (__, list) => check(list, style));
});

/** Park and Miller's minimal standard generator, 16807 modulo 2³¹ − 1 (Communications of the ACM 31, 1988, memory). */
function random(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 16807) % 2147483647) / 2147483647;
}

test("a table written in any way of writing is read back, whatever the order of its columns", () => {
  const next = random(7);
  const pick = <T>(of: readonly T[]): T => of[Math.floor(next() * of.length)]!;
  for (let i = 0; i < 150; i++) {
    const decimal = pick([",", "."] as const);
    const group = pick(["", "\u00a0", "\u2009", "'", "\u2019", decimal === "," ? "." : ","]);
    const delimiter = pick([";", "\t", "|", ","]);
    const base = pick(sent);
    const order = base.columns.map((_, c) => [next(), c] as const).sort(([a], [b]) => a - b);
    // numbers of three decimals, thousands and parts alike; the first row keeps one that tells the way
    const numbers = base.rows.map((row, r) =>
      row.map((cell, c): Meant => {
        const field = base.columns[c]![1];
        if (r === 0 || typeof cell !== "number" || !["load", "price", "hours"].includes(field)) return cell;
        return Math.ceil(next() * 10 ** (2 + Math.floor(next() * 5))) / pick([1, 10, 1000]);
      }),
    );
    const turned = { ...base, columns: order.map(([, c]) => base.columns[c]!) };
    check(
      { ...turned, rows: numbers.map((row) => order.map(([, c]) => row[c]!)) },
      { decimal, group, delimiter, to: " to " },
    );
  }
});

test("cells that contradict each other are refused with both; a cell that could be either is asked about", () => {
  const place = (row: number) => `line ${row + 2}`;
  const columns = [{ index: 0, heading: "load" }];
  const marks = (cells: string[], wantedMark: "ask" | "comma") =>
    inOneMark(
      cells.map((cell) => [cell]),
      columns,
      { name: "duties", place, wanted: wantedMark },
    ).map(([cell]) => cell);
  expect(() => marks(["0,5", "1.5"], "ask")).toThrow(
    '"0,5" has a decimal comma (line 2, load), "1.5" a point (line 3, load)',
  );
  expect(() => marks(["1.180"], "ask")).toThrow("could be 1180 or 1.18");
  expect(marks(["1.180", "0,050"], "ask")).toEqual(["1180", "0.050"]);
  expect(marks(["1.180"], "comma")).toEqual(["1180"]);
});
