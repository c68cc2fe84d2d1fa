import { readFileSync } from "node:fs";
import path from "node:path";
import { root } from "../package/run";
import { isError } from "./cells";
import type { CellValue } from "./cells";
import { openInWindows } from "./windows";
import type { WindowsHost } from "./windows";

/** What docs/try-in-excel.md promises, typed into the emulated Excel for Windows. */
const guide = readFileSync(path.join(root, "docs/try-in-excel.md"), "utf8");
const rows = [...guide.matchAll(/^\| `(=BUSH\.[^`]*)` \| (.*) \|$/gm)].map((m) => [m[1]!, m[2]!] as const);
const column = [[], [800], [], ["fair words"], [], [900]];

let host: WindowsHost;
beforeAll(async () => {
  host = await openInWindows(({ book }) => void book.addSheet("Sheet1", column));
}, 60_000);
afterAll(async () => {
  await host.excel.settled;
  await host.close();
});

test("each formula of the guide that is not in its table is one of these", () => {
  const all = new Set(guide.match(/=BUSH\.[A-Z]+(?:\([^`]*\))?/g));
  rows.forEach(([formula]) => all.delete(formula));
  // the beginning of a name, and a column that the test of 10 000 rows calls
  expect([...all]).toEqual(["=BUSH.PR", "=BUSH.PRESSURE(A1:A10000,20,15)"]);
  expect(rows.length).toBeGreaterThanOrEqual(9);
});

test("the guide asks at most ten things of a person", () => {
  const asked = guide.match(/^\d+\. \*\*/gm)!;
  expect(asked.length).toBeLessThanOrEqual(10);
});

test.each(rows)("%s answers %s", async (formula, promised) => {
  const sheet = host.excel.book.find("Sheet1")!;
  // the error that =1/0 leaves
  sheet.type(4, 0, { error: "#DIV/0!" });
  sheet.type(0, 2, formula);
  await host.excel.recalculate();
  const answer = sheet.formulas.get("C1")!.answer!.map((line) => line[0]!);
  const wanted = promised.split(/, (?=`|an empty)|; (?=`)/);
  expect(answer.map((cell, i) => told(cell, wanted[i] ?? ""))).toEqual(wanted);
});

/** A cell as the guide writes it, a number with as many decimals as the guide prints. */
function told(cell: CellValue, wanted: string): string {
  if (isError(cell)) return [`\`${cell.error}\``, cell.message].filter(Boolean).join(" ");
  if (cell === "") return "an empty cell";
  const decimals = /\.(\d+)`/.exec(wanted)?.[1]?.length ?? 0;
  return `\`${typeof cell === "number" ? cell.toFixed(decimals) : String(cell)}\``;
}
