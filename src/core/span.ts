import { checkDomain } from "./domain";
import { between, inOneUnit } from "./band";
import { BushError, mustBe } from "./errors";
import type { Span } from "./args";
import type { System } from "./kinds";
import { readQuantity, toWorking } from "./units";

const bounds = { kind: "temperature" } as const;

/** One temperature, or two with "to", "bis", ".." or "/" between them; a unit behind one of them counts for both. */
export function readSpan(name: string, cell: number | string | boolean, system: System): Span {
  if (typeof cell === "number") {
    const one = toWorking("temperature", cell, system);
    checkDomain(name, bounds, one, system, cell);
    return { low: one, high: one };
  }
  if (typeof cell === "boolean") throw mustBe(name, "a temperature", cell);
  const parts = cell.split(/\s*\/\s*/).flatMap((part) => part.split(between));
  if (parts.length > 2) throw mustBe(name, 'one temperature or two as "-20 to 60"', cell);
  const [first, second = first] = parts as [string, string?];
  const ends = inOneUnit([first, second]);
  try {
    const [low, high] = ends.map((end) => readQuantity(name, "temperature", end, system)) as [number, number];
    for (const end of [low, high]) checkDomain(name, bounds, end, system, cell);
    if (low > high) throw mustBe(name, "lowest temperature first", cell);
    return { low, high };
  } catch (error) {
    if (error instanceof BushError && parts.length > 1)
      throw mustBe(name, 'two temperatures, lowest first, as "-20 to 60"', cell);
    throw error;
  }
}
