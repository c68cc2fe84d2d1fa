import { DOMParser, onErrorStopParsing } from "@xmldom/xmldom";
import type { Document, Element } from "@xmldom/xmldom";
import { strFromU8, unzipSync } from "fflate";
import { readFileSync } from "node:fs";

/** An .xlsx file read part by part, independent of the library that wrote it. */
export interface Parts {
  readonly names: readonly string[];
  text(name: string): string;
  /** Throws where a part is not well formed. */
  xml(name: string): Document;
}
export function partsOf(file: string): Parts {
  const parts = unzipSync(new Uint8Array(readFileSync(file)));
  const text = (name: string): string => {
    if (!parts[name]) throw new Error(`${file} has no part ${name}`);
    return strFromU8(parts[name]);
  };
  const xml = (name: string) => new DOMParser({ onError: onErrorStopParsing }).parseFromString(text(name), "text/xml");
  return { names: Object.keys(parts), text, xml };
}

export interface FileCell {
  readonly value?: number | string | boolean;
  readonly isError: boolean;
  readonly formula?: string;
  /** The range into which a formula spills. */
  readonly spill?: string;
  readonly isDynamic: boolean;
}

export const elements = (node: Document | Element, name: string): Element[] => [...node.getElementsByTagName(name)];

/** The cells of each sheet by name and address. */
export function cellsOf(parts: Parts): Map<string, Map<string, FileCell>> {
  const shared = parts.names.includes("xl/sharedStrings.xml")
    ? elements(parts.xml("xl/sharedStrings.xml"), "si").map((si) =>
        elements(si, "t")
          .map((t) => t.textContent ?? "")
          .join(""),
      )
    : [];
  const targets = new Map(
    elements(parts.xml("xl/_rels/workbook.xml.rels"), "Relationship").map((r) => [
      r.getAttribute("Id"),
      r.getAttribute("Target")!,
    ]),
  );
  return new Map(
    elements(parts.xml("xl/workbook.xml"), "sheet").map((sheet) => {
      const target = targets.get(sheet.getAttribute("r:id"))!.replace(/^\/?(xl\/)?/, "xl/");
      const cells = elements(parts.xml(target), "c").map((c) => [c.getAttribute("r")!, cellOf(c, shared)] as const);
      return [sheet.getAttribute("name")!, new Map(cells)];
    }),
  );
}

function cellOf(c: Element, shared: readonly string[]): FileCell {
  const type = c.getAttribute("t");
  const raw = elements(c, "v")[0]?.textContent ?? elements(c, "t")[0]?.textContent ?? undefined;
  const f = elements(c, "f")[0];
  const value =
    raw === undefined
      ? undefined
      : type === "s"
        ? shared[Number(raw)]
        : type === "b"
          ? raw === "1"
          : type
            ? type === "n"
              ? Number(raw)
              : raw
            : Number(raw);
  return {
    value,
    isError: type === "e",
    isDynamic: c.getAttribute("cm") === "1",
    ...(f ? { formula: f.textContent ?? "" } : {}),
    ...(f?.getAttribute("ref") ? { spill: f.getAttribute("ref")! } : {}),
  };
}
