import { mustBe, orList } from "../../errors";
import type { System } from "../../kinds";
import type { OwnReader } from "../../table/entry";
import { readValue } from "../../table/readValue";
import { readCurve } from "./curve";
import { readMedia } from "./media";
import { property, ratings } from "./properties";
import type { Property, PropertyKey } from "./properties";

/** Reads the kinds that only grades have: curves, ratings, media. */
export const readOwnKind: OwnReader = (entry, cell, unit, system) => {
  const name = entry.heading;
  switch (entry.kind) {
    case "rating":
      return readRating(name, cell);
    case "media":
      return readMedia(name, String(cell), system);
    default: {
      if (typeof cell !== "string") throw mustBe(name, 'points as "23: 40; 80: 25"', cell);
      const { of } = entry as Extract<Property, { kind: "curve" }>;
      return readCurve(name, { ...entry, kind: of }, cell, unit, system);
    }
  }
};

function readRating(name: string, cell: number | string): string {
  const found = ratings.find((word) => word === String(cell).trim().toLowerCase());
  if (found === undefined) throw mustBe(name, orList(ratings), cell);
  return found;
}

/** A value of a shipped grade, written as in a table. */
export const readProperty = (
  key: PropertyKey,
  cell: number | string,
  unit: string | undefined,
  system: System,
): unknown => readValue(property(key), cell, unit, system, readOwnKind);
