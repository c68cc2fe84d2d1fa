import path from "node:path";
import { root, run } from "./run";

/** What `npm test` runs first, on a machine without a browser: files, user and programs are stood in for, nothing is installed. */
function ready(where: { readonly isRoot: boolean; readonly named?: string }) {
  const standIns = `
    import child from "node:child_process";
    import fs from "node:fs";
    import { syncBuiltinESMExports } from "node:module";
    const installed = [];
    const { existsSync } = fs;
    fs.existsSync = (file) =>
      /chrom/i.test(file) ? installed.includes("chromium-headless-shell") : file === "/etc/debian_version" || existsSync(file);
    fs.statSync = () => ({ mtimeMs: 0 });
    child.spawnSync = (command, args) => {
      console.log("RUNS", command, ...args);
      installed.push(args.at(-1));
      return { status: 0 };
    };
    process.getuid = () => ${where.isRoot ? 0 : 1000};
    process.env.CHROMIUM = "${where.named ?? ""}";
    syncBuiltinESMExports();`;
  const before = `data:text/javascript,${encodeURIComponent(standIns)}`;
  return run(process.execPath, ["--import", before, path.join(root, "scripts/ready/main.mjs"), "browser"]);
}

test("before a browser is installed, what, why and how to avoid it are said", () => {
  const { code, out, err } = ready({ isRoot: true });
  expect([code, err]).toEqual([0, ""]);
  const [said, ...runs] = out.split("RUNS ");
  for (const words of [
    "The browser tests need a Chromium",
    "apt-get now installs Debian's package chromium-headless-shell",
    "CHROMIUM=",
  ])
    expect(said).toContain(words);
  expect(runs.map((line) => line.trim())).toEqual([
    "apt-get update -qq",
    "apt-get install -y -qq --no-install-recommends chromium-headless-shell",
  ]);
});

test.each([
  ["a user who may not install", { isRoot: false }, "name one in the variable CHROMIUM"],
  ["a named browser that is not there", { isRoot: true, named: "/nowhere/chromium" }, "/nowhere/chromium"],
])("%s is told, and nothing is run", (_, where, told) => {
  expect(ready(where)).toEqual({ code: 1, out: "", err: expect.stringContaining(told) });
});
