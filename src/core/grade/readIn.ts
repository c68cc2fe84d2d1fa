import type { Kind, System } from "../kinds";
import { splitNumber } from "../numbers";
import { fromUnit, readQuantity, toWorking } from "../units";

/** A cell under a heading: its own unit counts first, then the heading's, then the sheet's system. */
export function readIn(
  name: string,
  kind: Kind,
  cell: number | string,
  unit: string | undefined,
  system: System,
): number {
  if (unit === undefined)
    return typeof cell === "number" ? toWorking(kind, cell, system) : readQuantity(name, kind, cell, system);
  const found = typeof cell === "number" ? { value: cell, rest: "" } : splitNumber(cell.trim());
  if (found?.rest !== "") return readQuantity(name, kind, cell as string, system);
  return fromUnit(name, kind, found.value, unit);
}
