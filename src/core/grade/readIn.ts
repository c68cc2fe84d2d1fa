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
  const { power, bare } = splitPower(unit);
  return fromUnit(name, kind, found.value * 10 ** power, bare);
}

/** "10⁻⁶/K", "1e-6/K" and "10^-6 mm³/(N·m)": columns of small numbers carry a power of ten before their unit. */
function splitPower(unit: string): { power: number; bare: string } {
  const plain = unit.replace(/[⁻⁰¹²³⁴-⁹]+/, (raised) =>
    /^\s*[×x]?\s*10$/.test(unit.slice(0, unit.indexOf(raised))) ? `^${[...raised].map(lowered).join("")}` : raised,
  );
  const found = /^[×x]?\s*(?:10\s*\^|1[eE])\s*([-+−]?\d+)\s*[·*×]?\s*(.*)$/.exec(plain);
  return found ? { power: Number(found[1]!.replace("−", "-")), bare: found[2]! } : { power: 0, bare: unit };
}
const lowered = (mark: string): string => (mark === "⁻" ? "-" : String("⁰¹²³⁴⁵⁶⁷⁸⁹".indexOf(mark)));
