import { checkDomain } from "./domain";
import { between, inOneUnit } from "./band";
import { BushError, checkLength, mustBe } from "./errors";
import type { Span } from "./args";
import type { System } from "./kinds";
import { behindNumber } from "./numbers";
import { readQuantity } from "./units/quantity";
import { fromUnit, toWorking } from "./units/scale";

const bounds = { kind: "temperature" } as const;

/**
 * One temperature, or two with "to", "bis", ".." or "/" between them; a unit behind one of them counts for both, and
 * where neither has one the heading's does.
 */
export function readSpan(name: string, cell: number | string | boolean, system: System, unit?: string): Span {
  if (typeof cell === "number") {
    const one = unit === undefined ? toWorking("temperature", cell, system) : fromUnit(name, "temperature", cell, unit);
    checkDomain(name, bounds, one, system, cell);
    return { low: one, high: one };
  }
  if (typeof cell === "boolean") throw mustBe(name, "a temperature", cell);
  checkLength(name, cell);
  const parts = cell.split(/\s*\/\s*/).flatMap((part) => part.split(between));
  if (parts.length > 2) throw mustBe(name, accepted, cell);
  const [first, second = first] = parts as [string, string?];
  const ends = inOneUnit([first, second]).map((end) => (behindNumber(end) === "" ? `${end} ${unit ?? ""}` : end));
  const [low, high] = ends.map((end) => readEnd(name, end, system, cell)) as [number, number];
  for (const end of [low, high]) checkDomain(name, bounds, end, system, cell);
  if (low > high) throw mustBe(name, accepted, cell);
  return { low, high };
}
const accepted = 'like "12.5 °C", or two, lowest first, as "-20 to 60"';

/** One end; the whole of what was typed is shown where it cannot be read. */
function readEnd(name: string, end: string, system: System, cell: string): number {
  try {
    return readQuantity(name, "temperature", end, system);
  } catch (error) {
    throw error instanceof BushError ? mustBe(name, accepted, cell) : error;
  }
}
