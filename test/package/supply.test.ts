import { existsSync, readFileSync, statSync } from "node:fs";
import path from "node:path";
import { node, root, run } from "./run";

// oxlint-disable-next-line typescript/no-explicit-any -- npm's own files
const json = (file: string) => JSON.parse(readFileSync(path.join(root, file), "utf8")) as Record<string, any>;
interface Locked {
  readonly version?: string;
  readonly integrity?: string;
  readonly link?: boolean;
}

test("every package in what is shipped has a licence that lets us, and docs/third-party.md names it", () => {
  const before = readFileSync(path.join(root, "docs/third-party.md"), "utf8");
  const { code, out } = node("scripts/licences/main.mjs");
  expect(code).toBe(0);
  expect(out).not.toMatch(/GPL|none named/);
  expect(readFileSync(path.join(root, "docs/third-party.md"), "utf8")).toBe(before);
});

test("dist carries the licence texts: MIT's permission, Apache's terms, BSD's conditions, ISC's permission", () => {
  const notices = readFileSync(path.join(root, "dist/third-party-notices.txt"), "utf8");
  for (const words of [
    /^jsep 1\S* \(MIT\), in functions/m,
    /^react 19\S* \(MIT\), in taskpane/m,
    /^@univerjs\/core \S+ \(Apache-2\.0\), in workbench/m,
    "TERMS AND CONDITIONS FOR USE, REPRODUCTION, AND DISTRIBUTION",
    "Permission is hereby granted, free of charge",
    "Redistributions in binary form must reproduce the above copyright",
    "Permission to use, copy, modify, and/or distribute this software",
  ])
    expect(notices).toMatch(words);
  expect(notices.split(/^-{78}$/m).filter((block) => block.trim().length < 20)).toEqual([]);
});

test("a licence that is not on the list is refused", () => {
  const code = `import { mayShip } from "./scripts/licences/shipped.mjs";
    console.log(["MIT", "(MIT OR GPL-3.0)", "GPL-3.0-only", "LGPL-2.1", "MIT AND GPL-2.0", "", "SEE LICENSE IN x"].map(mayShip).join(" "));`;
  const { out } = run(process.execPath, ["--input-type=module", "-e", code]);
  expect(out.trim()).toBe("true true false false false false false");
});

test("versions are exact in package.json and held by hash in the lockfile", () => {
  const { dependencies, devDependencies } = json("package.json");
  for (const [name, version] of Object.entries<string>({ ...dependencies, ...devDependencies }))
    expect([name, version]).toEqual([name, expect.stringMatching(/^(npm:[a-z-]+@)?\d+\.\d+\.\d+$/)]);
  const { packages } = json("package-lock.json");
  for (const [place, locked] of Object.entries<Locked>(packages))
    if (place !== "" && !locked.link)
      expect([place, locked.integrity]).toEqual([place, expect.stringMatching(/^sha(512|1)-/)]);
});

test("installing runs no script: neither a package's nor one of ours", () => {
  expect(readFileSync(path.join(root, "scripts/ready/main.mjs"), "utf8")).toContain('["ci", "--ignore-scripts"');
  const { scripts } = json("package.json");
  for (const name of ["preinstall", "install", "postinstall", "prepare"])
    expect(Object.keys(scripts as object)).not.toContain(name);
});

test.each(["index.html", "taskpane.html", "help.html"])(
  "%s: its policy comes first and allows only known addresses",
  (name) => {
    const file = path.join(root, "dist", name);
    expect(existsSync(file)).toBe(true);
    const [, policy] = /<head>\s*<meta http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(
      readFileSync(file, "utf8"),
    )!;
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("connect-src 'self'");
    expect(policy).not.toContain("unsafe-eval");
    expect(/script-src ([^;]*)/.exec(policy!)![1]).toMatch(
      name === "taskpane.html" ? /^'self' https:\/\/appsforoffice\.microsoft\.com$/ : /^'self'$/,
    );
  },
);

test.each([
  ["--only=src/core/nowhere", "--only must begin the path of a file of formulas"],
  ["--workers=two", '--workers must be a whole number from 1, got "two"'],
  ["--quick", "Unknown option '--quick'"],
])("npm run mutants, asked for %s, says what it takes and writes nothing", (option, told) => {
  const written = path.join(root, "dist/docs/mutation.md");
  const stamp = () => (existsSync(written) ? statSync(written).mtimeMs : undefined);
  const before = stamp();
  const { code, err } = node("scripts/mutants/main.mjs", option);
  expect([code, err]).toEqual([1, expect.stringContaining(told)]);
  expect(stamp()).toBe(before);
});

test("what was judged of a fault that may stay speaks of a fault that is planted", () => {
  const code = 'import { stale } from "./scripts/mutants/files.mjs"; console.log(JSON.stringify(stale()))';
  expect(JSON.parse(run(process.execPath, ["--input-type=module", "-e", code]).out)).toEqual([]);
});
