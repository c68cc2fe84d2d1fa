import { mkdirSync, readFileSync, renameSync, symlinkSync, writeFileSync } from "node:fs";
import path from "node:path";
import { root, run, temporaryFolder } from "./run";

/** The package as `npm pack` makes it, installed by hand into a folder of its own and used from there. */

const folder = temporaryFolder();
const inFolder = (command: string, ...args: string[]) => run(command, args, { cwd: folder });
let names: string[];

beforeAll(() => {
  const packed = run("npm", ["pack", "--json", "--pack-destination", folder]);
  expect([packed.code, packed.err]).toEqual([0, expect.not.stringContaining("ERR")]);
  const [{ filename, files }] = JSON.parse(packed.out) as [{ filename: string; files: { path: string }[] }];
  names = files.map((f) => f.path);
  expect(inFolder("tar", "-xzf", filename).code).toBe(0);
  mkdirSync(path.join(folder, "node_modules"));
  renameSync(path.join(folder, "package"), path.join(folder, "node_modules/bushcell"));
  const { dependencies } = JSON.parse(readFileSync(path.join(root, "package.json"), "utf8")) as {
    dependencies: object;
  };
  for (const name of Object.keys(dependencies))
    symlinkSync(path.join(root, "node_modules", name), path.join(folder, "node_modules", name));
  writeFileSync(path.join(folder, "package.json"), '{ "type": "module" }');
}, 300_000);

test("holds the built modules, their types, licence and readme, and nothing of the workshop", () => {
  expect(names).toEqual(
    expect.arrayContaining([
      "lib/src/core/index.js",
      "lib/src/core/index.d.ts",
      "lib/src/cli/main.js",
      "LICENSE",
      "package.json",
    ]),
  );
  expect(
    names.filter(
      (name) =>
        !/^(lib\/(src\/(core|edge|cli)|data)\/.*\.(js|d\.ts)|lib\/package\.json\.js|LICENSE|README\.md|package\.json)$/.test(
          name,
        ),
    ),
  ).toEqual([]);
});

test("its core imports as an ES module, computes, and leaves nothing behind in the global scope", () => {
  writeFileSync(
    path.join(folder, "use.mjs"),
    `const before = Object.getOwnPropertyNames(globalThis).length;
import("bushcell").then(({ functions, catalogue }) => console.log(JSON.stringify([
  functions.PRESSURE({ load: 800, bore: 20, length: 15 }),
  catalogue.length > 40,
  functions.VERDICT({ grade: "Demo Medlar", pressure: 0.6, speed: 0.094, temperature: { low: 5, high: 45 } }),
  Object.getOwnPropertyNames(globalThis).length - before,
])));`,
  );
  const { out, err } = inFolder(process.execPath, "use.mjs");
  expect([JSON.parse(out || "null"), err]).toEqual([[800 / 300, true, "fits, PV 56 %", 0], ""]);
});

test("its types hold for a strict program, and refuse a misspelt argument", () => {
  const program = (argument: string) =>
    `import { functions } from "bushcell";\nexport const p: number = functions.PRESSURE({ load: 800, bore: 20, ${argument}: 15 });\n`;
  writeFileSync(path.join(folder, "right.ts"), program("length"));
  writeFileSync(path.join(folder, "wrong.ts"), program("lenght"));
  const tsc = path.join(root, "node_modules/typescript/bin/tsc");
  const options = ["--noEmit", "--strict", "--module", "nodenext", "--target", "es2022"];
  const { out } = inFolder(process.execPath, tsc, ...options, "right.ts", "wrong.ts");
  // every fault is the misspelt argument's
  const faults = out.trim().split("\n");
  expect(faults).toEqual(faults.map(() => expect.stringMatching(/^wrong\.ts.*lenght/)));
});

test("its command runs", () => {
  writeFileSync(
    path.join(folder, "duties.csv"),
    "duty,grade,load,bore,length,rpm,temperature\nSeed drum,Demo Medlar,180,15,20,120,5 to 45\n",
  );
  const bin = (
    JSON.parse(readFileSync(path.join(folder, "node_modules/bushcell/package.json"), "utf8")) as {
      bin: { bushcell: string };
    }
  ).bin.bushcell;
  const { code, out } = inFolder(
    process.execPath,
    path.join(folder, "node_modules/bushcell", bin),
    "check",
    "duties.csv",
  );
  expect(code).toBe(0);
  expect(out).toContain("fits, PV 56 %");
});
