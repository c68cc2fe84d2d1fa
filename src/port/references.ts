import { areaOf } from "./address";
import type { Place } from "./sheet";

const reference =
  /(?:'((?:[^']|'')+)'!|([\p{L}\p{N}_.]+)!)?(\$?[A-Z]{1,3}\$?\d+(?::\$?[A-Z]{1,3}\$?\d+)?)(?![\p{L}\p{N}(._!])/giu;

/** Changes a formula but for the texts in it. */
export const outsideTexts = (formula: string, change: (part: string) => string): string =>
  formula.replace(/"(?:[^"]|"")*"|[^"]+/g, (part) => (part.startsWith('"') ? part : change(part)));

/** The places that a formula on a sheet names, in its order. */
export const referencesIn = (formula: string, sheet: string): Place[] =>
  [...formula.replace(/"(?:[^"]|"")*"/g, '""').matchAll(reference)].map(([, quoted, bare, range = ""]) => ({
    sheet: quoted?.replace(/''/g, "'") ?? bare ?? sheet,
    ...areaOf(range),
  }));

/** The formula as it would read on any other sheet. */
export const qualified = (formula: string, sheet: string): string =>
  outsideTexts(formula, (part) =>
    part.replace(reference, (all, quoted?: string, bare?: string) =>
      quoted === undefined && bare === undefined ? `${quotedName(sheet)}!${all}` : all,
    ),
  );

/** 'Start here', with whatever its name holds. */
export const quotedName = (sheet: string): string => `'${sheet.replace(/'/g, "''")}'`;
