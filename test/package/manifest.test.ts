import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { node, root, temporaryFolder } from "./run";

const sound = readFileSync(path.join(root, "manifest.xml"), "utf8");

test("the manifest of the repository is sound", () => {
  expect(node("scripts/manifest/main.mjs")).toEqual({ code: 0, out: "manifest.xml: sound\n", err: "" });
});

/** A broken copy for each rule: what is broken, what takes its place, the fault that must be named. */
const broken: readonly [find: string | RegExp, put: string, fault: string][] = [
  ["</Hosts>\n  <Requirements>", "<Requirements>", "not well-formed"],
  [/ {2}<ProviderName>.*\n/, "", "OfficeApp/ProviderName is missing"],
  [/ {8}<Runtimes>[^]*<\/Runtimes>\n/, "", "Runtimes is missing"],
  [/( {2}<Version>.*\n)( {2}<Provider.*\n)/, "$2$1", "children of OfficeApp must stand as"],
  ["5f5dbb9c", "6f5dbb9c", "Id must stay"],
  [/<Version>[^<]*/, "<Version>0.0.9.0", "Version must be"],
  ["ReadWriteDocument", "Restricted", "Permissions must be"],
  ['<Host Name="Workbook"/>', '<Host Name="Document"/>', "Host Workbook is missing"],
  [/ *<Set Name="SharedRuntime".*\n/, "", "Requirements must name SharedRuntime 1.1"],
  [
    'Name="CustomFunctionsRuntime" MinVersion="1.3"',
    'Name="CustomFunctionsRuntime" MinVersion="1.4"',
    "CustomFunctionsRuntime 1.3",
  ],
  [/ *<Set Name="ExcelApi".*\n/, "", "Requirements must name ExcelApi 1.12"],
  [/ *<TaskpaneId>.*\n/, "", "Action/TaskpaneId is missing"],
  ["AutoShowTaskpaneWithDocument", "Pane", "TaskpaneId must be Office.AutoShowTaskpaneWithDocument"],
  ['id="Functions.Script" DefaultValue="https', 'id="Functions.Script" DefaultValue="http', "must be https"],
  ["<AppDomain>https", "<AppDomain>http", "must be https"],
  ['<Label resid="Group.Label"/>', '<Label resid="Group.Name"/>', "resid Group.Name is not defined"],
  [
    "<bt:Images>",
    '<bt:Images><bt:Image id="Icon.20" DefaultValue="https://x.example/y.png"/>',
    "resource Icon.20 is not used",
  ],
  [
    "<bt:Images>",
    '<bt:Images><bt:Image id="Icon.16" DefaultValue="https://x.example/y.png"/>',
    "resource Icon.16 is defined twice",
  ],
  [/Button\.Text/g, "Button.Text.That.Is.Longer.Than.Allowed", "longer than 32 characters"],
  ['"BUSH"', '"BUSHES"', "Namespace must be BUSH, not BUSHES"],
  [
    '<FunctionFile resid="Pane.Page"',
    '<FunctionFile resid="Help.Page"',
    "DesktopFormFactor/FunctionFile must have the resid of Runtime",
  ],
  [/(<Page>\s*<SourceLocation resid=")Pane/, "$1Help", "Page/SourceLocation must have the resid of Runtime"],
  [/(<\/TaskpaneId>\s*<SourceLocation resid=")Pane/, "$1Help", "Action/SourceLocation must have the resid of Runtime"],
  ['lifetime="long"', 'lifetime="short"', "Runtime must have lifetime long"],
  [' size="80"', ' size="48"', "lacks size 80"],
  ["Opens the pane:", `Opens the pane: ${"x".repeat(250)}`, "Button.Text is longer than 250 characters"],
  ['"Bushcell is ready"', `"${"x".repeat(126)}"`, "Welcome.Title is longer than 125 characters"],
];

test("a broken copy is caught for every rule", () => {
  const folder = temporaryFolder();
  const files = broken.map(([find, put], i) => {
    const copy = sound.replace(find, put);
    expect([find, copy === sound]).toEqual([find, false]);
    const file = path.join(folder, `${i}.xml`);
    writeFileSync(file, copy);
    return file;
  });
  const { code, err } = node("scripts/manifest/main.mjs", ...files);
  expect(code).toBe(1);
  const lines = err.split("\n");
  broken.forEach(([, , fault], i) => {
    const named = lines.filter((line) => line.startsWith(`${files[i]}: `)).join("\n");
    expect(named).toContain(fault);
  });
});

test("each icon is there in the size of its name", () => {
  for (const size of [16, 32, 64, 80, 128]) {
    const png = readFileSync(path.join(root, `assets/icon-${size}.png`));
    expect(png.subarray(1, 4).toString()).toBe("PNG");
    expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([size, size]);
  }
});
