/**
 * `npm run workbooks [-- --offer-add-in --out=folder]`: the worked example files of the greenhouse, into workbooks/ for
 * Excel and into workbooks/plain/ for programs without the add-in.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { options } from "../lib/command.mjs";
import { root } from "../lib/root.mjs";
import { books } from "./books";
import { writeBook } from "./write";

const values = options({
  out: { type: "string", default: "workbooks" },
  "offer-add-in": { type: "boolean", default: false },
});
const out = path.resolve(root, values.out);
mkdirSync(path.join(out, "plain"), { recursive: true });
for (const book of books) {
  const name = `${book.file}.xlsx`;
  writeFileSync(path.join(out, name), await writeBook(book, { offerAddIn: values["offer-add-in"] }));
  writeFileSync(path.join(out, "plain", name), await writeBook(book, { plain: true }));
  console.log(`${name}: ${book.title}`);
}
