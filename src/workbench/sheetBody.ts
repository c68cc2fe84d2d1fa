import { element, escaped } from "../book/record/html";
import { present } from "../core/present";
import { addressOf, columnName } from "../port/address";
import type { ReadCell } from "../port/sheet";
import type { LaidPicture } from "./grid/port";

/** So many signs stand side by side on the narrower of A4 and Letter. */
const paperWidth = 112;
/** A column is wide enough for its longest word, and for so many signs where it has a sentence. */
const sentenceWidth = 12;
const gap = 2;

type Line = readonly ReadCell[];
const textAt = (line: Line, col: number): string => present(line[col]).text;

/**
 * The filled part of a sheet with its addresses: as many tables below each other as it needs to lose no column. Columns that
 * stay in view begin each of them, and the last row that stays in view heads them again on each page. A hidden row is left out,
 * as its number then is.
 */
export function sheetBody(
  name: string,
  cells: readonly Line[],
  frozen: { readonly rows: number; readonly columns: number },
  isShown: (row: number) => boolean = () => true,
): string {
  const width = Math.max(0, ...cells.map((line) => line.findLastIndex(({ text }) => text !== "") + 1));
  const cols = Array.from({ length: width }, (_, c) => c).filter((c) => cells.some((line) => textAt(line, c) !== ""));
  const filledOf = (line: Line): number[] => cols.filter((c) => textAt(line, c) !== "");
  const heading = frozen.rows - 1;
  const rowOf = (line: Line, r: number, band: readonly number[]): string => {
    const number = element("td", String(r + 1));
    const [only, ...others] = filledOf(line);
    // a sentence has the line to itself, and stands once
    if (only !== undefined && others.length === 0 && r !== heading) {
      const isHere = band.includes(only) && (band === bands[0] || !held.includes(only));
      return isHere ? element("tr", `${number}<td colspan="${band.length}">${escaped(textAt(line, only))}</td>`) : "";
    }
    const texts = band.map((c) => textAt(line, c));
    if (texts.every((text) => text === "")) return "";
    return element("tr", number + texts.map((text) => element("td", escaped(text))).join(""));
  };
  const tabled = cells.filter((line) => filledOf(line).length > 1);
  const signs = (c: number): number => gap + Math.max(...tabled.map((line) => narrowest(textAt(line, c))));
  const held = cols.filter((c) => c < frozen.columns);
  const bands = bandsOf(cols, held, signs);
  const tables = bands.flatMap((band) => {
    const letters = element("tr", ["", ...band.map(columnName)].map((letter) => element("th", letter)).join(""));
    const rows = cells.map((line, r) => (isShown(r) ? rowOf(line, r, band) : ""));
    const table = (head: string, body: readonly string[]): string =>
      element("table", element("thead", head) + element("tbody", body.join("")));
    const above = rows.slice(0, Math.max(0, heading));
    const below = table(letters + (rows[heading] ?? ""), rows.slice(heading + 1));
    return above.some((row) => row !== "") ? [table(letters, above), below] : [below];
  });
  return element("div", element("h1", escaped(name)) + tables.join(""), "record");
}

const narrowest = (text: string): number =>
  Math.max(Math.min(sentenceWidth, text.length), ...text.split(/\s+/).map((word) => word.length));

/** Columns from left to right, broken where the paper ends; those that are held begin every band. */
function bandsOf(cols: readonly number[], held: readonly number[], signs: (col: number) => number): number[][] {
  const start = held.reduce((sum, col) => sum + signs(col), 0);
  let band = [...held];
  const bands = [band];
  let used = start;
  for (const col of cols.filter((one) => !held.includes(one))) {
    const wide = signs(col);
    const isStarted = band.length > held.length;
    if (isStarted && used + wide > paperWidth) {
      band = [...held];
      bands.push(band);
      used = start;
    }
    band.push(col);
    used += wide;
  }
  return bands;
}

/** Pictures below the cells, each with where it lies and what it shows. */
export function picturesBody(pictures: readonly LaidPicture[]): string {
  const figures = pictures.map(({ place: { row, col }, source, width, name, words }) => {
    const image = `<img src="${escaped(source)}" width="${width}" alt="${escaped(words)}">`;
    return element("figure", image + element("figcaption", escaped(`${addressOf(row, col)} ${name}`.trim())));
  });
  return figures.length > 0 ? element("div", figures.join(""), "record") : "";
}
