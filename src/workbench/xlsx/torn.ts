import { strFromU8, unzipSync } from "fflate";

const read = /^xl\/(?:workbook|sharedStrings|worksheets\/[^/]+)\.xml$/;
/** So many bytes at a part's ends hold the tag of its first element and the end of it. */
const looked = 4000;

/** Parts whose first element is never closed: what they lack would be left out in silence. */
export function tornParts(data: Uint8Array): string[] {
  const parts = unzipSync(data, { filter: ({ name }) => read.test(name) });
  return Object.entries(parts).flatMap(([name, part]) => (isClosed(part) ? [] : [name]));
}

function isClosed(part: Uint8Array): boolean {
  const textOf = (bytes: Uint8Array): string => strFromU8(bytes).replace(/<!--[^]*?-->/g, "");
  const [, root] = /<([^\s/>?!]+)[\s/>]/.exec(textOf(part.subarray(0, looked))) ?? [];
  if (root === undefined) return false;
  const end = textOf(part.subarray(-looked)).trimEnd();
  const isEmpty = end.endsWith("/>") && end.slice(end.lastIndexOf("<")).startsWith(`<${root}`);
  return isEmpty || end.endsWith(`</${root}>`);
}
