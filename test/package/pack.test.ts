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

const bin = (JSON.parse(readFileSync(path.join(root, "package.json"), "utf8")) as { bin: { bushcell: string } }).bin
  .bushcell;

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
        !/^(lib\/(src\/(core|edge|cli|files|book\/record)|data|cjs\/core)\/.*\.(js|d\.ts)|lib\/cjs\/(index\.js|index\.d\.ts|package\.json)|lib\/package\.json\.js|docs\/.*\.(md|png)|LICENSE|README\.md|DEVELOPERS\.md|package\.json)$/.test(
          name,
        ),
    ),
  ).toEqual([]);
});

test("what its readme shows and leads to is in it", () => {
  const readme = readFileSync(path.join(root, "README.md"), "utf8");
  const targets = [...readme.matchAll(/\]\(([^)#:]+)\)/g)].map((found) => found[1]!);
  expect(targets.length).toBeGreaterThan(10);
  expect(targets.filter((target) => !names.includes(target))).toEqual([]);
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
  expect([JSON.parse(out || "null"), err]).toEqual([[800 / 300, true, "fits, PV 55 %", 0], ""]);
});

test("its core can be required, and answers and refuses as the module does", () => {
  writeFileSync(
    path.join(folder, "use.cjs"),
    `const { functions, readers, BushError } = require("bushcell");
const zone = readers.zone("H7");
let refused;
try { functions.PRESSURE({ load: NaN, bore: 20, length: 15 }); } catch (error) { refused = error instanceof BushError && error.message; }
console.log(JSON.stringify([functions.PRESSURE({ load: 800, bore: 20, length: 15 }), functions.LIMITS({ size: 25, zone }), refused]));`,
  );
  const { out, err } = inFolder(process.execPath, "use.cjs");
  expect([JSON.parse(out || "null"), err]).toEqual([
    [800 / 300, [25, 25.021], "load must be 0 N or more, got NAN"],
    "",
  ]);
});

const readmeExample = /^```js\n([^]*?)^```$/m.exec(readFileSync(path.join(root, "README.md"), "utf8"))![1]!;

test("the readme's example answers what stands beside it", () => {
  const asked = readmeExample.replaceAll(/^(functions.*);(.*)$/gm, "console.log($1);$2");
  writeFileSync(path.join(folder, "readme.mjs"), asked);
  const { out, err } = inFolder(process.execPath, "readme.mjs");
  // p = F/(d·L) = 800/(20·15) MPa; ISO 286-1: H7 at 25 mm is 0 to +21 µm
  expect([out.split("\n").slice(0, 2), err]).toEqual([[String(800 / 300), "[ 25, 25.021 ]"], ""]);
  expect(readmeExample).toContain("// 2.667 MPa");
  expect(readmeExample).toContain("// [25, 25.021] mm");
});

/** Of a page's or of Node's types the package needs none; the last of its users, a page, has them all. */
const bare = ["--lib", "es2022", "--skipDefaultLibCheck"];
/** Each way of finding modules that TypeScript has, for modules and for CommonJS where both exist. */
const resolutions = [
  [
    "node10",
    "right.ts",
    ["--module", "commonjs", "--moduleResolution", "node10", "--ignoreDeprecations", "6.0", ...bare],
  ],
  ["node16", "right.mts", ["--module", "node16", ...bare]],
  ["node16", "right.cts", ["--module", "node16", ...bare]],
  ["nodenext", "right.mts", ["--module", "nodenext", ...bare]],
  ["nodenext", "right.cts", ["--module", "nodenext", ...bare]],
  ["bundler", "right.ts", ["--module", "esnext", "--moduleResolution", "bundler"]],
] as const;

test.each(resolutions)(
  "its types hold under %s for a strict %s, and refuse a misspelt argument",
  (how, right, module) => {
    const wrong = right.replace("right", "wrong");
    for (const [file, argument] of [
      [right, "length"],
      [wrong, "lenght"],
    ] as const)
      writeFileSync(path.join(folder, file), readmeExample.replaceAll("length:", `${argument}:`));
    // the newest compiler has left the oldest way out
    const compiler = how === "node10" ? "typescript" : "typescript-native";
    const tsc = path.join(root, "node_modules", compiler, "bin/tsc");
    const options = ["--noEmit", "--strict", "--target", "es2022", ...module];
    const { out } = inFolder(process.execPath, tsc, ...options, right, wrong);
    // every fault is the misspelt argument's
    const faults = out.trim().split("\n");
    expect(faults).toEqual(faults.map(() => expect.stringMatching(/^wrong\.[mc]?ts.*lenght/)));
  },
);

describe("its command", () => {
  const write = (name: string, times: number) => {
    const rows = Array.from({ length: times }, (_, i) => `Seed drum ${i + 1},Demo Medlar,180,15,20,120,5 to 45\n`);
    writeFileSync(path.join(folder, name), `duty,grade,load,bore,length,rpm,temperature\n${rows.join("")}`);
  };
  const command = () => path.join(folder, "node_modules/bushcell", bin);

  test("runs", () => {
    write("duties.csv", 1);
    const { code, out } = inFolder(process.execPath, command(), "check", "duties.csv");
    expect(code).toBe(0);
    expect(out).toContain("fits, PV 55 %");
  });

  test("ends without a word where its reader has enough", () => {
    // far more than a pipe holds
    write("many.csv", 5000);
    const { code, out, err } = inFolder("sh", "-c", `"${process.execPath}" "${command()}" check many.csv | head -n 1`);
    // no more than the cautions, which go beside every answer
    expect([code, err]).toEqual([0, inFolder(process.execPath, command(), "check", "duties.csv").err]);
    expect(out.split(",").length).toBeGreaterThan(5);
  });
});
