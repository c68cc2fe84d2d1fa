/** An argument as it is typed into a formula, and what it stands for now. */
export interface Given {
  readonly text: string;
  readonly value: unknown;
}

const cell = String.raw`\$?[A-Z]{1,3}\$?\d+`;
const sheet = String.raw`(?:(?:'(?:[^']|'')+'|[\p{L}_][\p{L}\p{N}_.]*)!)?`;
const oneCell = new RegExp(`^${sheet}${cell}$`, "iu");
const oneRange = new RegExp(`^${sheet}${cell}(?::${cell})?$`, "iu");

/** One cell by its address, with or without a sheet. */
export const isOneCell = (text: string): boolean => oneCell.test(text);
/** One cell or a range of them. */
export const isOneRange = (text: string): boolean => oneRange.test(text);

/** A value as a formula writes it. */
export const literal = (value: number | string): string =>
  typeof value === "number" ? numberText(value) : `"${value.replace(/"/g, '""')}"`;

export const numberText = (value: number): string => String(value).toUpperCase();
