/** What stands in a file of its own and not in the list that makes it count; in words. */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { catalogue, families } from "../../src/core";
import type { Family } from "../../src/core";
import { fields } from "../../src/core/duties/model/fields";
import type { FieldEntry } from "../../src/core/duties/model/fields";
import { kinds } from "../../src/core/kinds";
import { root } from "../lib/root.mjs";

export const halfAdded = (): string[] => [
  ...functionFaults(),
  ...unlisted(
    "src/core/grades/model/properties",
    "src/core/grades/model/properties.ts",
    /satisfies Record<string, PropertyEntry>/,
  ),
  ...unlisted(
    "src/core/duties/model/fields",
    "src/core/duties/model/fields.ts",
    /satisfies Record<string, FieldEntry>/,
  ),
  ...unlisted(
    "src/core/duties/criteria",
    "src/core/duties/criteria/index.ts",
    /^export const \w+ = (criterion|rated)\(/m,
  ),
  ...unbounded(),
];

const read = (file: string): string => readFileSync(path.join(root, file), "utf8");

/** Functions that their family does not list, that stand in another file than their name says, or point to one that is not there. */
function functionFaults(): string[] {
  const files = readdirSync(path.join(root, "src/core"), { recursive: true, encoding: "utf8" }).filter((name) =>
    name.endsWith(".ts"),
  );
  return files.flatMap((name) => {
    const file = `src/core/${name.split(path.sep).join("/")}`;
    const id = /^export const (\w+)(?:: \w+)? = formula\(/m.exec(read(file))?.[1];
    return id === undefined ? [] : faultsOf(file, id);
  });
}

function faultsOf(file: string, id: string): string[] {
  const f = Object.values<Family>(families).find(({ functions }) => id in functions)?.functions[id];
  if (!f) return [`${file} makes the function ${id}, which src/core/families.ts does not list in its family`];
  const said = [
    f.spec.id === id ? "" : `${file} exports ${id}, and its spec's id is ${f.spec.id}`,
    path.basename(file, ".ts").toUpperCase() === id ? "" : `${file} makes the function ${id} and must be named as it`,
    ...(f.spec.see ?? []).map((other) =>
      catalogue.some(({ spec }) => spec.id === other) ? "" : `${file} points to ${other}, which is no function`,
    ),
  ];
  return said.filter(Boolean);
}

/** Files of a folder that hold a part of a list, and that the list does not import. */
function unlisted(folder: string, list: string, part: RegExp): string[] {
  const listed = read(list);
  return readdirSync(path.join(root, folder)).flatMap((file) => {
    if (!part.test(read(`${folder}/${file}`)) || listed.includes(`/${path.basename(file, ".ts")}"`)) return [];
    return [`${folder}/${file} is in no list: ${list} must import it`];
  });
}

/** A number without a least value would take a slipped sign; a temperature has one by its kind. */
const unbounded = (): string[] =>
  Object.entries<FieldEntry>(fields).flatMap(([key, { kind, above, from }]) =>
    kind === "temperature" || !(kind in kinds) || above !== undefined || from !== undefined
      ? []
      : [`the field ${key} is a number and needs its least value, above or from`],
  );
