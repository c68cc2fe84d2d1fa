/** A line of a table in Markdown. */
export const row = (cells: readonly (string | number)[]): string =>
  `| ${cells.map((cell) => String(cell).replaceAll("|", "\\|")).join(" | ")} |`;

/** A whole table; numbers of the `right` columns stand to the right. */
export const table = (
  heading: readonly string[],
  lines: readonly (readonly (string | number)[])[],
  right: readonly number[] = [],
): string =>
  [row(heading), row(heading.map((_, i) => (right.includes(i) ? "--:" : "---"))), ...lines.map(row)].join("\n");
