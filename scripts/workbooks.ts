/**
 * `npm run workbooks [-- --offer-add-in --uncomputed --out=folder]`: the worked example files of the greenhouse, into
 * workbooks/ for Excel and into workbooks/plain/ for programs without the add-in. --uncomputed leaves native formulas
 * without values, so that a check can have another program compute them.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { options } from "./command.mjs";
import { books } from "./workbooks/books";
import { writeBook } from "./workbooks/write";

const values = options({
  out: { type: "string", default: "workbooks" },
  "offer-add-in": { type: "boolean", default: false },
  uncomputed: { type: "boolean", default: false },
});
const settings = { nativeUncomputed: values.uncomputed };
const out = path.resolve(import.meta.dirname, "..", values.out);
mkdirSync(path.join(out, "plain"), { recursive: true });
for (const book of books) {
  const name = `${book.file}.xlsx`;
  writeFileSync(path.join(out, name), await writeBook(book, { ...settings, offerAddIn: values["offer-add-in"] }));
  writeFileSync(path.join(out, "plain", name), await writeBook(book, { ...settings, plain: true }));
  console.log(`${name}: ${book.title}`);
}
