import type { Corner, Picture, Place, SheetPort } from "../../src/port/sheet";
import { putBeside } from "../../src/taskpane/charts/takeAlong";

const picture: Picture = { svg: "<svg/>", width: 320, height: 100, name: "Room", words: "" };

/** A sheet in whose rows these columns are filled, and where the selected cell is. */
function sheetWith(filled: readonly number[], selected?: Place) {
  const laid: Corner[] = [];
  const selections: Place[] = [];
  const port = {
    selection: () => selected,
    read: ({ row, col, rows, cols }: Place) =>
      Array.from({ length: rows }, (_, r) =>
        Array.from({ length: cols }, (__, c) => ({
          value: null,
          text: row + r === 6 && filled.includes(col + c) ? "filled" : "",
        })),
      ),
    addPicture: (at: Corner) => void laid.push(at),
    select: (place: Place) => void selections.push(place),
  } as unknown as SheetPort;
  return { port, laid, selections };
}
const at = { sheet: "S", row: 4, col: 1, rows: 1, cols: 1 };

test.each([
  ["at the selected cell, where nothing stands", [0], 1],
  ["right of what stands there", [1, 2, 3], 4],
  ["not in a gap that is too narrow: 320 pixels may take six columns of 60", [3, 9, 20], 10],
  ["behind all, where no gap is wide enough", Array.from({ length: 300 }, (_, i) => 5 * i), 201],
])("a picture goes %s", async (_, filled, col) => {
  const { port, laid, selections } = sheetWith(filled, at);
  expect(await putBeside(port, picture)).toMatch(/^Put beside the cells at [A-Z]+5 on S\. Undo takes it away\.$/);
  expect(laid).toEqual([{ sheet: "S", row: 4, col }]);
  // 100 pixels cover five rows of 20: the next picture goes below them
  expect(selections.at(-1)).toEqual({ sheet: "S", row: 9, col, rows: 1, cols: 1 });
});

// Excel's sheets have 16384 columns and 1048576 rows, of which 320 pixels may take six and 100 five
test.each<[string, number[], Partial<Place>, number | string]>([
  ["in the last columns that hold it", [], { col: 16378 }, 16378],
  ["behind what stands there", [16370], { col: 16368 }, 16371],
  ["where columns are lacking", [], { col: 16379 }, "No room is left to its right: select a cell further left."],
  [
    "where what stands there leaves too few",
    [16380],
    { col: 16376 },
    "No room is left to its right: select a cell further left.",
  ],
  ["where rows are lacking", [], { row: 1048572 }, "The picture needs 5 rows: select a cell further up."],
])("at the end of the sheet: %s", async (_, filled, place, expected) => {
  const { port, laid } = sheetWith(filled, { ...at, ...place });
  const told = await putBeside(port, picture).then(
    () => laid[0]!.col,
    (error: Error) => error.message,
  );
  expect(told).toBe(expected);
});

test("without a selected cell nothing is put", async () => {
  const { port, laid } = sheetWith([]);
  await expect(putBeside(port, picture)).rejects.toThrow("Select the cell where it shall begin.");
  expect(laid).toEqual([]);
});
