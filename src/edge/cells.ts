import { BushError } from "../core/errors";
import type { Cell } from "../core/formula";
import { hostCodes } from "./host";

/** A host's cell without its wrappings: rich values give their basic value, errors become one that passes through. */
export function plainCell(raw: unknown): Cell {
  if (typeof raw === "number") return Number.isFinite(raw) ? raw : noPlainValue();
  if (raw === null || raw === undefined) return null;
  if (typeof raw === "boolean") return raw;
  if (typeof raw === "string") return plainText(raw);
  if (raw instanceof BushError) return raw;
  if (typeof raw !== "object") return typeof raw === "bigint" ? String(raw) : noPlainValue();
  return richCell(raw);
}

function richCell(rich: Rich): Cell {
  const basic = rich.basicValue ?? rich.primitive;
  const code = [rich.code, rich.errorCode, basic].find((c) => typeof c === "string" && hostCodes.has(c));
  // an entity or picture without a value of its own has #VALUE! in its place, and is no error of a formula
  if (code !== undefined && !pictured.has(rich.type)) return passing(code as string);
  if (rich.type === "Error") return passing("#N/A");
  if (code === undefined && basic !== undefined && typeof basic !== "object") return plainCell(basic);
  return noPlainValue();
}

const noPlainValue = (): BushError =>
  new BushError("value", "cell", "a cell holds something without a plain value, expected a number or text");

/** A cell with more to it than its value; Excel names the value `basicValue`, its older form on the wire `primitive`. */
interface Rich {
  readonly type?: unknown;
  readonly basicValue?: unknown;
  readonly primitive?: unknown;
  readonly code?: unknown;
  readonly errorCode?: unknown;
}
const pictured: ReadonlySet<unknown> = new Set(["Entity", "LinkedEntity", "WebImage", "LocalImage"]);

function plainText(raw: string): Cell {
  const text = raw.trim();
  if (text === "") return null;
  return hostCodes.has(text) ? passing(text) : text;
}

const passing = (code: string) => new BushError("passed", code, code);

/** Any way a host hands over an argument as rows of raw cells; a missing cell of a ragged row is blank. */
export function matrixOf(raw: unknown): unknown[][] {
  if (!Array.isArray(raw)) return [[raw]];
  if (isMatrix(raw)) return raw;
  if (raw.length === 0) return [[null]];
  if (!raw.some(Array.isArray)) return [raw];
  const rows = raw.map((row: unknown): unknown[] => (Array.isArray(row) ? row : [row]));
  const width = rows.reduce((most, row) => Math.max(most, row.length), 1);
  return rows.map((row) => [...row, ...Array<null>(width - row.length).fill(null)]);
}

function isMatrix(raw: readonly unknown[]): raw is unknown[][] {
  const first = raw[0];
  if (!Array.isArray(first) || first.length === 0) return false;
  for (const row of raw) if (!Array.isArray(row) || row.length !== first.length) return false;
  return true;
}
