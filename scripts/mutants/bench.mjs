/**
 * Runs the project's own tests in this process, again and again, with one file of the core replaced by a mutation of it.
 * Our modules are loaded anew each time, packages once; a run stops at the first test that fails.
 */
import { existsSync, readFileSync, statSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import vm from "node:vm";
import { transformSync } from "esbuild";
import { expect } from "expect";

const nodeRequire = createRequire(import.meta.url);

function compile(file, text) {
  const loader = /** @type {import("esbuild").Loader} */ (path.extname(file).slice(1));
  const { code } = transformSync(text, { loader, format: "cjs", sourcefile: file, logLevel: "silent" });
  const names = ["module", "exports", "require", "__dirname", "describe", "test", "beforeAll", "expect"];
  return vm.compileFunction(code, names, { filename: file });
}

function resolve(from, target) {
  const place = path.resolve(path.dirname(from), target);
  const isFile = (file) => existsSync(file) && statSync(file).isFile();
  return [place, `${place}.ts`, `${place}.tsx`, `${place}/index.ts`, `${place}.mjs`].find(isFile) ?? place;
}

const asItStands = (file) => readFileSync(file, "utf8");

/**
 * A runner of test files, that reads sources by `textOf`; it answers the first test that fails, by its file and name, or nothing
 * where all hold.
 */
export function runner(textOf = asItStands) {
  const compiled = new Map();
  const own = (file) => {
    if (!compiled.has(file)) compiled.set(file, compile(file, textOf(file)));
    return compiled.get(file);
  };
  return (testFiles, mutation) =>
    firstFailure(testFiles, (file) => (mutation?.file === file ? compile(file, mutation.text) : own(file)));
}

async function firstFailure(testFiles, own) {
  const loaded = new Map();
  const load = (file, globals) => {
    if (loaded.has(file)) return loaded.get(file).exports;
    const module = { exports: {} };
    loaded.set(file, module);
    const required = (target) => (target.startsWith(".") ? load(resolve(file, target), globals) : nodeRequire(target));
    const { describe, test, beforeAll } = globals;
    own(file)(module, module.exports, required, path.dirname(file), describe, test, beforeAll, expect);
    return module.exports;
  };
  for (const file of testFiles) {
    const tests = [];
    try {
      load(file, collector(tests));
    } catch (error) {
      return { file, name: `${path.basename(file)} does not load: ${error.message}` };
    }
    for (const { name, run } of tests)
      try {
        await run();
      } catch {
        return { file, name };
      }
  }
  return undefined;
}

/** `describe`, `test` and `beforeAll` as the tests use them, which only gather what is to be run. */
function collector(tests) {
  const outer = [];
  const describe = (name, body) => {
    outer.push(name);
    body();
    outer.pop();
  };
  const test = (name, run) => tests.push({ name: [...outer, name].join(" > "), run });
  const each = (of) => (table) => (name, body) => {
    for (const row of table) {
      const args = Array.isArray(row) ? row : [row];
      of(`${name} ${args.map(String).join(" ").slice(0, 60)}`, () => body(...args));
    }
  };
  test.each = each(test);
  describe.each = each(describe);
  test.skip = describe.skip = () => {};
  const beforeAll = (run) => tests.push({ name: "beforeAll", run });
  return { describe, test, beforeAll };
}
