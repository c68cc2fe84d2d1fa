import { readFileSync } from "node:fs";
import path from "node:path";
import vm from "node:vm";
import { root } from "./root.mjs";

const dist = path.join(root, "dist");

/** An error as a host sees it: a code for the cell and a message behind it. */
export class HostError {
  constructor(code, message) {
    this.code = code;
    this.message = message;
  }
}

/**
 * The smallest host that runs the built functions.js: it supplies `CustomFunctions` and shapes arguments as the
 * metadata says, a single value as a 1×1 range. `call("PRESSURE", 800, 20, 15)` answers rows of cells.
 */
export function loadFunctions(folder = dist) {
  const functions = new Map();
  const CustomFunctions = { associate: (id, fn) => functions.set(id, fn), Error: HostError };
  const code = readFileSync(path.join(folder, "functions.js"), "utf8");
  vm.compileFunction(code, ["CustomFunctions"], { filename: "functions.js" })(CustomFunctions);
  const metadata = JSON.parse(readFileSync(path.join(folder, "functions.json"), "utf8"));
  const shapes = new Map(metadata.functions.map((f) => [f.id, f.parameters]));
  return {
    ids: [...functions.keys()],
    metadata,
    call(id, ...given) {
      const parameters = shapes.get(id);
      const shaped = parameters.map((parameter, i) =>
        parameter.repeating ? given.slice(i).map(matrix) : given[i] === undefined ? null : matrix(given[i]),
      );
      return functions.get(id)(...shaped);
    },
  };
}

const matrix = (value) => (Array.isArray(value) ? value : [[value]]);
