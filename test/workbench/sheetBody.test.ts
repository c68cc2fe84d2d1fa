import type { ReadCell } from "../../src/port/sheet";
import { picturesBody, sheetBody } from "../../src/workbench/sheetBody";

const cell = (text: string): ReadCell => ({ value: text || null, text });
const sheet = (lines: readonly (readonly string[])[]): ReadCell[][] => {
  const cols = Math.max(...lines.map((line) => line.length));
  return lines.map((line) => Array.from({ length: cols }, (_, c) => cell(line[c] ?? "")));
};
/** A table's rows with their cells' texts, by the part that they stand in. */
const tablesOf = (page: string) =>
  [...page.matchAll(/<table>(.*?)<\/table>/g)].map(([, table = ""]) => {
    const [head = "", body = ""] = table.split("<tbody>");
    const rows = (part: string) =>
      [...part.matchAll(/<tr>(.*?)<\/tr>/g)].map(([, row = ""]) =>
        [...row.matchAll(/<t[hd][^>]*>(.*?)<\/t[hd]>/g)].map(([, text]) => text),
      );
    return { head: rows(head), body: rows(body) };
  });

// 20 signs and a gap of 2 each: a name and four figures fill 110 of the 112 signs of a line
const wide = (text: string): string => text.padEnd(20, "_");
const duties = sheet([
  ["Duties of a house"],
  ["duty", ...["a", "b", "c", "d", "e", "f"].map(wide)],
  [wide("Vent"), "1", "2", "3", "4", "5", "6"],
  ["A sentence has the line to itself"],
  [wide("Drum"), "", "", "", "", "", "12"],
]);

test("columns that do not fit follow in a further table, headed and named again", () => {
  const [title, first, second, ...more] = tablesOf(sheetBody("Duties", duties, { rows: 2, columns: 1 }));
  expect(more).toEqual([]);
  expect(title!.body).toEqual([["1", "Duties of a house"]]);
  expect(first!.head[0]).toEqual(["", "A", "B", "C", "D", "E"]);
  expect(second!.head).toEqual([
    ["", "A", "F", "G"],
    ["2", "duty", wide("e"), wide("f")],
  ]);
  expect(second!.body).toEqual([
    ["3", wide("Vent"), "5", "6"],
    ["5", wide("Drum"), "", "12"],
  ]);
});

test("no cell is lost, and a sentence stands once", () => {
  const page = sheetBody("Duties", duties, { rows: 2, columns: 1 });
  for (const { text } of duties.flat()) expect(page).toContain(text);
  expect(page.match(/A sentence has the line to itself/g)).toHaveLength(1);
});

test("a sheet without frozen titles is one table under its letters", () => {
  const [table, ...more] = tablesOf(sheetBody("Mine", sheet([["a <b>", "2"]]), { rows: 0, columns: 0 }));
  expect(more).toEqual([]);
  expect(table).toEqual({ head: [["", "A", "B"]], body: [["1", "a &lt;b&gt;", "2"]] });
});

test("a row that a filter hides is left out, and those around it keep their numbers", () => {
  const lines = sheet([
    ["load", "p"],
    ["300", "1"],
    ["150", "0.5"],
    ["450", "1.5"],
  ]);
  const [table] = tablesOf(sheetBody("Mine", lines, { rows: 1, columns: 0 }, (row) => row !== 2));
  expect(table!.body).toEqual([
    ["2", "300", "1"],
    ["4", "450", "1.5"],
  ]);
});

test("pictures follow the cells, each with where it lies and what it shows", () => {
  const place = { sheet: "Mine", row: 3, col: 9, rows: 15, cols: 4 };
  const picture = { place, source: "data:image/png;base64,AA", width: 320, name: "Room", words: 'a "b" & c' };
  expect(picturesBody([picture])).toBe(
    '<div class="record"><figure><img src="data:image/png;base64,AA" width="320" alt="a &quot;b&quot; &amp; c"><figcaption>J4 Room</figcaption></figure></div>',
  );
  expect(picturesBody([])).toBe("");
});
