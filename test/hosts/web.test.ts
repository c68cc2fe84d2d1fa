import { catalogue } from "../../src/core";
import { eventually } from "../browser/page";
import { pieces } from "../../src/taskpane/insert/pieces";
import { metadata } from "./browser";
import { rounded, waysToCall } from "./ways";
import { openInWeb } from "./web";
import type { WebHost } from "./web";

/** The pane as Excel on the web has it: in a frame of another origin, under its own Content-Security-Policy. */
let host: WebHost;
beforeAll(async () => {
  const rows = [
    ["duty", "load", "bore", "length", "rpm", "temperature"],
    ["roof vent", 300, 12, 10, 30, "'0 to 45"],
  ];
  host = await openInWeb(({ book }) => void book.addSheet("Duties", rows));
}, 60_000);
afterAll(async () => {
  const { excel, microsoft } = host;
  console.log(
    `Excel on the web, emulated: ${metadata.functions.length} functions in ${excel.calls} calls, ` +
      `${excel.batches} batches of Excel.run, ${microsoft.size} files of Microsoft's`,
  );
  await host.excel.settled;
  await host.close();
});

test("office.js takes the frame for Excel's on the web", async () => {
  const found = await host.pane.evaluate(() => [Office.context.host as unknown, Office.context.platform as unknown]);
  expect(found).toEqual(["Excel", "OfficeOnline"]);
});

test("every function answers as its calculation does, with and without what is left out", async () => {
  const cases = catalogue.flatMap(waysToCall);
  const answers = await host.excel.callAll(cases.map(({ call }) => call));
  cases.forEach(({ way, call, expected }, i) =>
    expect([call.name, way, rounded(answers[i]!)]).toEqual([call.name, way, rounded(expected)]),
  );
  expect(new Set(cases.map(({ call }) => call.name)).size).toBe(metadata.functions.length);
}, 60_000);

test("the pane reads the selected row and writes the duty's line through Excel.run", async () => {
  const { pane, excel } = host;
  await excel.select("Duties", 1, 0);
  await pane.getByRole("button", { name: "Read selected row" }).click();
  await pane.getByText("Read by the headings in row 1").waitFor();
  const sheet = excel.book.addSheet("Line");
  await pane.getByRole("tab", { name: "Insert", exact: true }).click();
  await excel.select("Line", 0, 0);
  await pane.getByRole("radio", { name: pieces.row }).check();
  await pane.getByRole("button", { name: "Insert at A1 on Line" }).click();
  await pane.getByText("Written to A1").waitFor();
  // p = F/(d·L) = 300/(12·10) MPa
  await eventually(async () => {
    const answers = [...sheet.formulas.values()].flatMap(({ answer }) => answer?.flat() ?? []);
    expect(answers).toContain(2.5);
  });
});

test("nothing of it was refused, nothing complains, the emulated workbook lacked nothing", () => {
  expect(host.excel.book.notEmulated).toEqual([]);
  // where a browser denies storage to a frame of another origin, office.js says so and goes on
  expect(host.complaints.filter((text) => !text.includes("sessionStorage"))).toEqual([]);
  expect(host.outside).toEqual([]);
});
