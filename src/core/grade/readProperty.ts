import { checkDomain } from "../domain";
import { mustBe, orList } from "../errors";
import type { System } from "../kinds";
import { readCurve } from "./curve";
import { readMedia } from "./media";
import { ratings } from "./properties";
import type { Property } from "./properties";
import { readIn } from "./readIn";

/** A cell under a property's heading as that property's value; `unit` is the heading's. */
export function readProperty(
  p: Property,
  cell: number | string | boolean,
  unit: string | undefined,
  system: System,
): unknown {
  const name = p.heading;
  switch (p.kind) {
    case "text":
      return String(cell).trim();
    case "list":
      return splitList(String(cell));
    case "rating":
      return oneOf(name, ratings, cell);
    case "choice":
      return oneOf(name, p.choices, cell);
    case "media":
      return readMedia(name, String(cell));
    case "curve":
      if (typeof cell !== "string") throw mustBe(name, 'points as "23: 40; 80: 25"', cell);
      return readCurve(name, { ...p, kind: p.of }, cell, unit, system);
    default: {
      if (typeof cell === "boolean") throw mustBe(name, "a number", cell);
      const value = readIn(name, p.kind, cell, unit, system);
      checkDomain(name, p, value, system, cell);
      return value;
    }
  }
}

function oneOf(name: string, words: readonly string[], cell: number | string | boolean): string {
  const found = words.find((word) => word.toLowerCase() === String(cell).trim().toLowerCase());
  if (found === undefined) throw mustBe(name, orList(words), cell);
  return found;
}

const splitList = (text: string): string[] =>
  text
    .split(/[,;]/)
    .map((word) => word.trim())
    .filter((word) => word !== "");
