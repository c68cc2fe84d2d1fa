import { Unreadable } from "./list";

export interface Decoded {
  readonly text: string;
  readonly remarks: readonly string[];
}

const begins = (bytes: Uint8Array, ...first: number[]): boolean => first.every((byte, i) => bytes[i] === byte);
export const isZip = (bytes: Uint8Array): boolean => begins(bytes, 0x50, 0x4b, 0x03, 0x04);

/** Files that are no text, by their first bytes, and what to do with them. */
function refuseOthers(bytes: Uint8Array): void {
  if (isZip(bytes)) throw new Unreadable("It is a workbook (.xlsx), not text: save its sheet as CSV.");
  if (begins(bytes, 0xd0, 0xcf, 0x11, 0xe0))
    throw new Unreadable("It is an old workbook (.xls): save it as .xlsx or CSV.");
  if (begins(bytes, 0x25, 0x50, 0x44, 0x46))
    throw new Unreadable("It is a PDF: copy its table into a sheet, or ask for a CSV.");
}

/** UTF-8 or UTF-16 by its mark, UTF-16 without one by its zero bytes, else UTF-8, and where it is none Latin-1 as Windows writes it. */
export function decode(bytes: Uint8Array): Decoded {
  refuseOthers(bytes);
  const plain = (encoding: string): Decoded => ({ text: new TextDecoder(encoding).decode(bytes), remarks: [] });
  if (begins(bytes, 0xff, 0xfe)) return plain("utf-16le");
  if (begins(bytes, 0xfe, 0xff)) return plain("utf-16be");
  const [even, odd] = zeros(bytes.subarray(0, 2000));
  if (odd > 0.3 && even < 0.1) return plain("utf-16le");
  if (even > 0.3 && odd < 0.1) return plain("utf-16be");
  if (even + odd > 0) throw new Unreadable("It is no text: it holds bytes that no text has.");
  try {
    return { text: new TextDecoder("utf-8", { fatal: true }).decode(bytes), remarks: [] };
  } catch {
    return {
      text: new TextDecoder("windows-1252").decode(bytes),
      remarks: ["read as Latin-1 (Windows-1252), not UTF-8"],
    };
  }
}

/** Shares of zero bytes at even and at odd places. */
function zeros(bytes: Uint8Array): [number, number] {
  let [even, odd] = [0, 0];
  bytes.forEach((byte, i) => {
    if (byte !== 0) return;
    if (i % 2 === 0) even++;
    else odd++;
  });
  const half = Math.max(1, bytes.length / 2);
  return [even / half, odd / half];
}
