import Papa from "papaparse";

/** How a list writes its numbers and divides its cells. */
export interface Style {
  readonly decimal: "," | ".";
  /** Between groups of three digits; nothing where it does not group. */
  readonly group: string;
  readonly delimiter: string;
  /** Between the ends of a range. */
  readonly to: string;
}

/** As the trade of five languages writes: common practice, no source. */
export const styles = {
  English: { decimal: ".", group: ",", delimiter: ",", to: " to " },
  German: { decimal: ",", group: ".", delimiter: ";", to: " bis " },
  French: { decimal: ",", group: "\u202f", delimiter: "\t", to: " à " },
  Italian: { decimal: ",", group: ".", delimiter: "|", to: "…" },
  Swiss: { decimal: ".", group: "'", delimiter: ";", to: " – " },
} as const satisfies Record<string, Style>;

/** A cell by what it must be read as: a number, the ends of a range, text as it stands, nothing. */
export type Meant = number | readonly [number, number] | string | null;

/** A number in digits of the style: no more is known of it than JavaScript's own decimal notation. */
export function numeral(value: number, { decimal, group }: Style): string {
  const [whole = "", part] = Math.abs(value).toString().split(".");
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, group);
  return `${value < 0 ? "\u2212" : ""}${grouped}${part === undefined ? "" : decimal + part}`;
}

const written = (cell: Meant, style: Style): string => {
  if (cell === null) return "";
  if (typeof cell === "string") return cell;
  return typeof cell === "number" ? numeral(cell, style) : cell.map((end) => numeral(end, style)).join(style.to);
};

/** The text of a file: titles, headings, rows. */
export const fileOf = (
  headings: readonly string[],
  rows: readonly (readonly Meant[])[],
  style: Style,
  titles: readonly string[] = [],
): string =>
  Papa.unparse(
    [...titles.map((title) => [title]), headings, ...rows.map((row) => row.map((cell) => written(cell, style)))],
    {
      delimiter: style.delimiter,
      newline: "\r\n",
    },
  );
