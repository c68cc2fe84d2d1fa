/**
 * `npm run workbooks [-- --offer-add-in --out=folder]`: the worked example files of the greenhouse, into workbooks/ for
 * Excel, into workbooks/plain/ for programs without the add-in, and into workbooks/handed-over/ the sheets of the local sheet
 * as they calculate without it.
 */
import { mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { options } from "../lib/command.mjs";
import { root } from "../lib/root.mjs";
import { greenhouse } from "../../src/book/greenhouse/book";
import { books } from "./books";
import { handedOver } from "./handedOver";
import { writeBook } from "./write";

const values = options({
  out: { type: "string", default: "workbooks" },
  "offer-add-in": { type: "boolean", default: false },
});
const out = path.resolve(root, values.out);
for (const folder of ["plain", "handed-over"]) mkdirSync(path.join(out, folder), { recursive: true });
for (const book of books) {
  const name = `${book.file}.xlsx`;
  writeFileSync(path.join(out, name), await writeBook(book, { offerAddIn: values["offer-add-in"] }));
  writeFileSync(path.join(out, "plain", name), await writeBook(book, { plain: true }));
  console.log(`${name}: ${book.title}`);
}
const { book, entries } = handedOver(greenhouse, "greenhouse");
writeFileSync(path.join(out, "handed-over", "greenhouse.xlsx"), await writeBook(book));
const natives = entries.filter(({ became }) => became === "native").length;
console.log(`handed-over/greenhouse.xlsx: ${natives} formulas are native, ${entries.length - natives} stay values`);
