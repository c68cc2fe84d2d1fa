import type { Look, Mark } from "./book";

/** What a look is made of; sizes in points. */
export interface LookStyle {
  readonly size?: number;
  readonly bold?: true;
  readonly italic?: true;
  readonly underline?: true;
  readonly mono?: true;
  readonly ink?: string;
  readonly fill?: string;
  readonly align?: "left" | "right" | "center";
  readonly wrap?: true;
  /** A line under the cell. */
  readonly line?: string;
}

/** The sheet's colours; each pair used for text has a contrast of at least 4.5 to 1. */
export const palette = {
  ink: "#1f2b2d",
  quiet: "#526062",
  accent: "#1d545c",
  line: "#c3cdc8",
  headingFill: "#dfe8e3",
  groupFill: "#f1f4f0",
  inputFill: "#fbf6e6",
  failsInk: "#6b1d12",
  failsFill: "#f4d7cd",
  unknownInk: "#4a4433",
  unknownFill: "#e6e2d3",
  careInk: "#544005",
  careFill: "#f7e8b5",
} as const;

export const looks: Readonly<Record<Look, LookStyle>> = {
  title: { size: 16, bold: true, ink: palette.accent },
  text: { wrap: true, align: "left" },
  quiet: { ink: palette.quiet },
  heading: { bold: true, fill: palette.headingFill, wrap: true, line: palette.line },
  group: { bold: true, ink: palette.accent, fill: palette.groupFill, line: palette.line },
  caption: { italic: true, ink: palette.quiet, fill: palette.groupFill, align: "right", line: palette.line },
  label: { bold: true },
  input: { fill: palette.inputFill, align: "right", line: palette.line },
  words: { fill: palette.inputFill, align: "left", line: palette.line },
  phrase: { fill: palette.inputFill, align: "left", wrap: true, line: palette.line },
  result: { align: "right" },
  answer: { align: "left" },
  formula: { mono: true, ink: palette.accent },
  bar: { mono: true, ink: palette.accent, align: "left" },
  barLeft: { mono: true, ink: palette.accent, align: "right" },
  caution: { wrap: true, fill: palette.unknownFill, ink: palette.unknownInk },
};

/** Shade and weight, slant or line together, so that a mark is seen without colour too. */
export const markStyles: Readonly<Record<Mark["as"], LookStyle>> = {
  fails: { bold: true, ink: palette.failsInk, fill: palette.failsFill },
  unknown: { italic: true, ink: palette.unknownInk, fill: palette.unknownFill },
  care: { underline: true, ink: palette.careInk, fill: palette.careFill },
};
