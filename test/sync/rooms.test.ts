import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

const root = path.join(__dirname, "../..");
const lines = 250;
const files = 20;

const under = (folder: string): readonly (readonly [folder: string, files: readonly string[]])[] => {
  const entries = readdirSync(path.join(root, folder), { withFileTypes: true });
  const own = entries.filter((entry) => entry.isFile()).map(({ name }) => name);
  return [[folder, own], ...entries.flatMap((entry) => (entry.isDirectory() ? under(`${folder}/${entry.name}`) : []))];
};

/** Generated ones are as long as what they are made from. */
const isByHand = (text: string): boolean => !/^(\/\/|<!--) Written by/.test(text);

test("no file of the house is too long to read, no room too full to remember; the criteria stand one to a file", () => {
  const rooms = ["src", "scripts", "bench"].flatMap(under);
  const long = rooms.flatMap(([folder, own]) =>
    own.flatMap((name) => {
      const text = /\.(json|html)$/.test(name) ? "" : readFileSync(path.join(root, folder, name), "utf8");
      const count = text.split("\n").length - 1;
      return isByHand(text) && count > lines ? [`${folder}/${name} has ${count} lines: ${lines} are the most`] : [];
    }),
  );
  const full = rooms
    .filter(([folder, own]) => own.length > files && folder !== "src/core/duties/criteria")
    .map(
      ([folder, own]) =>
        `${folder} holds ${own.length} files: ${files} are the most, put what belongs together into a folder`,
    );
  expect([...long, ...full]).toEqual([]);
});
