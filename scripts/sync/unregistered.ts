import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { families } from "../../src/core";
import type { Family } from "../../src/core";
import { root } from "../lib/root.mjs";

/** What is half added: a function that its family does not list, or that stands in another file than its name says; in words. */
export function unregistered(): string[] {
  return Object.entries<Family>(families).flatMap(([name, { functions }]) => {
    const folder = path.join(root, "src/core", name);
    return readdirSync(folder).flatMap((file) => {
      const id = /^export const (\w+) = formula\(/m.exec(
        file.endsWith(".ts") ? readFileSync(path.join(folder, file), "utf8") : "",
      )?.[1];
      return id === undefined ? [] : faultsOf(`src/core/${name}/${file}`, id, functions);
    });
  });
}

function faultsOf(file: string, id: string, functions: Family["functions"]): string[] {
  const f = functions[id];
  if (!f) return [`${file} makes the function ${id}, which src/core/families.ts does not list in its family`];
  const said = [
    f.spec.id === id ? "" : `${file} exports ${id}, and its spec's id is ${f.spec.id}`,
    path.basename(file, ".ts").toUpperCase() === id ? "" : `${file} makes the function ${id} and must be named as it`,
  ];
  return said.filter(Boolean);
}
