/** What the library that writes .xlsx files leaves to be done: values stay as they came on opening, and errors are errors. */
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";

export type Parts = Record<string, Uint8Array>;

/** Calculation engine of the Excel that introduced spilling; a workbook of an older one is recalculated on opening. */
const calculation = "191029";

export function changePart(parts: Parts, name: string, edit: (text: string) => string): void {
  const part = parts[name];
  if (!part) throw new Error(`the file has no part ${name}`);
  const text = strFromU8(part);
  const edited = edit(text);
  if (edited === text) throw new Error(`nothing to change in ${name}`);
  parts[name] = strToU8(edited);
}

/** The written file with these mended, and `more` done to its parts. */
export function finishFile(
  file: Uint8Array,
  application: string,
  written: Date,
  more?: (parts: Parts) => void,
): Uint8Array {
  const parts = unzipSync(file);
  changePart(parts, "xl/workbook.xml", (text) => text.replace(/<calcPr[^>]*\/>/, `<calcPr calcId="${calculation}"/>`));
  changePart(parts, "docProps/app.xml", (text) => text.replace(/<Application>[^<]*/, `<Application>${application}`));
  for (const [name, part] of Object.entries(parts)) {
    if (!/^xl\/worksheets\/sheet\d+\.xml$/.test(name)) continue;
    parts[name] = strToU8(
      strFromU8(part).replace(
        / t="str"((?:(?!<\/c>).)*<v>#(?:N\/A|VALUE!|DIV\/0!|NUM!|REF!|NAME\?)<\/v>)/g,
        ' t="e"$1',
      ),
    );
  }
  more?.(parts);
  return zipSync(parts, { mtime: written });
}
