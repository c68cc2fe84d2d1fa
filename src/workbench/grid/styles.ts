import { BooleanNumber, BorderStyleTypes, HorizontalAlign, VerticalAlign, WrapStrategy } from "@univerjs/core";
import type { IStyleData } from "@univerjs/core";
import type { LookStyle } from "../../book/looks";
import { palette } from "../../book/looks";

export const sheetFont = "system-ui";
const monoFont = "monospace";
const aligns = { left: HorizontalAlign.LEFT, right: HorizontalAlign.RIGHT, center: HorizontalAlign.CENTER } as const;

const fontStyle = (look: LookStyle): IStyleData => ({
  ff: look.mono ? monoFont : sheetFont,
  fs: look.size ?? 10,
  cl: { rgb: look.ink ?? palette.ink },
  ...(look.bold && { bl: BooleanNumber.TRUE }),
  ...(look.italic && { it: BooleanNumber.TRUE }),
  ...(look.underline && { ul: { s: BooleanNumber.TRUE } }),
});

/** A look in the grid's own style record. */
export function gridStyle(look: LookStyle, format?: string): IStyleData {
  return {
    ...fontStyle(look),
    vt: VerticalAlign.MIDDLE,
    tb: look.wrap ? WrapStrategy.WRAP : WrapStrategy.OVERFLOW,
    ...(look.fill && { bg: { rgb: look.fill } }),
    ...(look.align && { ht: aligns[look.align] }),
    // else it would touch a text to its right
    ...(look.align === "right" && { pd: { r: 6 } }),
    ...(look.line && { bd: { b: { s: BorderStyleTypes.THIN, cl: { rgb: look.line } } } }),
    ...(format && { n: { pattern: format } }),
  };
}
