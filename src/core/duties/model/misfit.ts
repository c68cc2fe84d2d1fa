import { clash } from "../../errors";
import type { BushError } from "../../errors";
import type { System } from "../../kinds";
import { measureText } from "../../measure";

/** A size in the sheet's unit; digits enough to tell two that nearly agree. */
export const sizeText = (size: number, system: System): string => measureText("length", size, system, 7);

/** A size on the wrong side of another one: "outside must be above the bore of 15 mm, got 14 mm". */
export const misfit = (name: string, side: string, than: number, size: number, system: System): BushError =>
  clash(name, `${name} must be ${side} of ${sizeText(than, system)}, got ${sizeText(size, system)}`);
