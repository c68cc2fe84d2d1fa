import path from "node:path";
import { functions } from "../core";
import { quoteReading } from "../core/cost";
import { BushError } from "../core/errors";
import type { Cell, Formula } from "../core/formula";
import type { System } from "../core/kinds";
import type { Decimals } from "../core/table/decimals";
import { OpenDecimals } from "../core/table/decimals";
import { answered, isUnread, asShown } from "../edge/shown";
import type { Shown } from "../edge/shown";
import { joined } from "../files/join";
import { Refusal } from "./files";
import type { FileTable } from "./files";

export interface Offered {
  readonly heading: readonly string[];
  readonly lines: readonly (readonly Shown[])[];
}

export interface Asked {
  readonly duties: Cell[][];
  readonly duty: string | undefined;
  readonly grades: Cell[][] | undefined;
  readonly rates: Cell[][] | undefined;
  readonly system: System;
}

/** Offers of several files as one table; each file writes decimals in its own way. */
export function offersOf(tables: readonly FileTable[], decimals: Decimals, system: System): Cell[][] {
  try {
    const sources = tables.map((table) => ({ ...table, of: path.parse(table.name).name, decimals }));
    const { headings, rows } = joined(sources, quoteReading, { system, owner: "supplier" });
    return [[...headings], ...rows.map((row) => [...row])];
  } catch (error) {
    if (!(error instanceof BushError)) throw error;
    throw new Refusal(
      `${error.message}${error instanceof OpenDecimals ? " (--decimal comma or --decimal point)" : ""}`,
    );
  }
}

/** QUOTES, and what DECISION answers, on the same cells. */
export function decideOn(offers: Cell[][], { duties, duty, grades, rates, system }: Asked) {
  const given = [offers, duties, duty ?? null, grades, rates, system];
  return { ranking: offered(functions.QUOTES, given), decision: offered(functions.DECISION, given) };
}

function offered(f: Formula, given: readonly unknown[]): Offered & { hasUnread: boolean } {
  const { heading, lines } = answered(f, given);
  return {
    heading,
    lines: lines.map((line) => line.map(asShown)),
    hasUnread: lines.some((line) => line.some(isUnread)),
  };
}
