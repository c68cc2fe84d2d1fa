import { catalogue } from "../../src/core";
import { metadata } from "./browser";
import { isError } from "./cells";
import { rounded, waysToCall } from "./ways";
import { openInWindows } from "./windows";
import type { WindowsHost } from "./windows";

/** The add-in in Microsoft's own client code, as Excel for Windows would run it; behind the bridge stands a workbook of the tests. */
let host: WindowsHost;
beforeAll(async () => {
  host = await openInWindows(({ book }) => void book.addSheet("Duties"));
}, 60_000);
afterAll(async () => {
  const { excel, microsoft } = host;
  console.log(
    `Excel for Windows, emulated: ${metadata.functions.length} functions in ${excel.calls} calls, ` +
      `${excel.batches} batches of Excel.run, ${microsoft.size} files of Microsoft's`,
  );
  await host.excel.settled;
  await host.close();
});

test("office.js takes the page for Excel's, and has every function of functions.json", async () => {
  const found = await host.page.evaluate(() => ({
    host: Office.context.host,
    platform: Office.context.platform,
    ids: Object.keys((CustomFunctions as unknown as { _association: { mappings: object } })._association.mappings),
  }));
  expect([found.host, found.platform]).toEqual(["Excel", "PC"]);
  expect(found.ids.sort()).toEqual(metadata.functions.map(({ id }) => id).sort());
});

test("every function answers as its calculation does, however Excel hands the arguments over", async () => {
  const cases = catalogue.flatMap(waysToCall);
  const answers = await host.excel.callAll(cases.map(({ call }) => call));
  cases.forEach(({ way, call, expected }, i) =>
    expect([call.name, way, rounded(answers[i]!)]).toEqual([call.name, way, rounded(expected)]),
  );
  expect(new Set(cases.map(({ call }) => call.name)).size).toBe(metadata.functions.length);
  expect(cases.length).toBeGreaterThan(6 * metadata.functions.length);
}, 60_000);

test("a column of 10 000 rows is one call", async () => {
  const loads = Array.from({ length: 10_000 }, (_, i) => [i]);
  const [answer] = await host.excel.callAll([{ name: "PRESSURE", args: [loads, [[20]], [[15]]] }]);
  // p = F/(d·L), d·L = 300 mm²
  expect(answer).toEqual(loads.map(([load]) => [load! / 300]));
});

test("the message comes with #VALUE! and with #N/A", async () => {
  const [negative, unknown, passed] = (
    await host.excel.callAll([
      { name: "PRESSURE", args: [[[800]], [[-5]], [[15]]] },
      { name: "GRADE", args: [[["Unheard of"]], [["PV limit"]]] },
      { name: "PRESSURE", args: [[["#REF!"]], [[20]], [[15]]] },
    ])
  ).map((rows) => rows[0]![0]);
  expect(negative).toEqual({ error: "#VALUE!", message: "bore must be above 0 mm, got -5" });
  expect(unknown).toMatchObject({ error: "#N/A", message: expect.stringContaining("Unheard of") });
  expect(passed).toEqual({ error: "#N/A", message: "a cell that this needs holds #REF!" });
  expect([negative, unknown, passed].every(isError)).toBe(true);
});

test("nothing is refused by the pages' policy, nothing complains, nothing is asked for elsewhere", () => {
  expect(host.complaints).toEqual([]);
  expect(host.outside).toEqual([]);
  expect([...host.microsoft]).toEqual(expect.arrayContaining(["office.js", "excel-win32-16.01.js"]));
});
