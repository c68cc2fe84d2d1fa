import { outsideTexts } from "../port/references";

/** The add-in's functions and newer operators by the names under which Excel stores them. */
export const stored = (formula: string): string =>
  outsideTexts(formula.replace(/^=/, ""), (part) =>
    part
      .replace(/\bBUSH\.([A-Z]+)\(/gi, (_, name: string) => `_xldudf_BUSH_${name.toUpperCase()}(`)
      .replace(/((?:\w+!)?\$?[A-Z]{1,2}\$?\d+)#/g, "_xlfn.ANCHORARRAY($1)"),
  );

/** A stored formula as it is typed; other programs write the names in lower case. */
export const typedFormula = (formula: string): string =>
  `=${outsideTexts(formula.replace(/^=/, ""), (part) =>
    part
      .replace(/_xldudf_BUSH_([A-Z]+)\(/gi, (_, name: string) => `BUSH.${name.toUpperCase()}(`)
      .replace(/_xlfn\.ANCHORARRAY\(([^()]+)\)/gi, "$1#")
      .replace(/_xlfn\.(?:_xlws\.)?|_xlpm\./gi, ""),
  )}`;
