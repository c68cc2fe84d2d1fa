import { decode, isZip } from "./decode";
import { readDelimitedInParts } from "./delimited";
import type { Progress } from "./delimited";
import { checkBytes } from "./list";
import type { Knows, List } from "./list";
import { readWorkbook } from "./workbook";

/** Any file that a list may come in, by what it holds and not by its name. */
export async function readFile(file: Blob, knows: Knows, progress: Progress): Promise<List> {
  checkBytes(file.size);
  const bytes = new Uint8Array(await file.arrayBuffer());
  if (isZip(bytes)) return readWorkbook(bytes, knows);
  const { text, remarks } = decode(bytes);
  return readDelimitedInParts(text, knows, progress, remarks);
}
