import { splitHeading } from "../../core/grade";
import { normal } from "../../core/names";
import type { Place, ReadCell, SheetPort } from "../../port/sheet";
import { choiceFields, numberFields } from "./fields";
import type { ChoiceField, Field } from "./fields";

/** Headings under which people keep a field, beside its own name; written without spaces and marks. */
const names: Readonly<Record<Field, readonly string[]>> = {
  load: ["load", "radialload", "force"],
  bore: ["bore", "borediameter", "innerdiameter", "shaftdiameter"],
  length: ["length", "bushlength", "width"],
  rpm: ["rpm", "shaftspeed", "speedrpm", "revolutions"],
  swing: ["swing", "angle", "swingangle"],
  stroke: ["stroke", "travel"],
  cycles: ["cycles", "cyclesperminute"],
  lowest: ["lowesttemperature", "lowest", "coldest", "cold"],
  highest: ["highesttemperature", "highest", "hottest", "hot"],
  impactFactor: ["impactfactor"],
  hardness: ["shafthardness", "hardness"],
  designFactor: ["designfactor"],
  motion: ["motion"],
  wet: ["wet", "moisture", "wetordry"],
  shock: ["shock"],
  shaft: ["shaft", "shaftmaterial"],
};
const fieldNamed = new Map(
  (Object.entries(names) as [Field, readonly string[]][]).flatMap(([field, words]) =>
    words.map((word) => [word, field] as const),
  ),
);

/** How far up a heading row is looked for, and how far right it may reach. */
const above = 500;
const across = 60;

export interface FromRow {
  readonly texts: Partial<Record<Field, string>>;
  /** Row of the headings, counted from 1 as the sheet does. */
  readonly headingRow: number;
}

/** The fields that the selected row holds, found by the headings above it; throws a sentence where there are none. */
export async function readSelectedRow(port: SheetPort): Promise<FromRow> {
  const place = await port.selection();
  if (!place) throw new Error("Select one cell of the row to read.");
  const top = Math.max(0, place.row - above);
  const area: Place = { sheet: place.sheet, row: top, col: 0, rows: place.row - top + 1, cols: across };
  const cells = await port.read(area);
  const row = cells[place.row - top];
  if (!row || row.every((cell) => cell.value === null)) throw new Error(`Row ${place.row + 1} is empty.`);
  for (let r = place.row - top - 1; r >= 0; r--) {
    const texts = textsOf(cells[r]!, row);
    if (Object.keys(texts).length >= 2) return { texts, headingRow: top + r + 1 };
  }
  throw new Error(
    `No headings above row ${place.row + 1} name at least two of: ${Object.keys(numberFields).slice(0, 4).join(", ")}, motion.`,
  );
}

export function textsOf(headings: readonly ReadCell[], row: readonly ReadCell[]): Partial<Record<Field, string>> {
  const texts: Partial<Record<Field, string>> = {};
  headings.forEach((heading, i) => {
    const value = row[i]?.value;
    if (typeof heading.value !== "string" || value === null || value === undefined || row[i]?.error) return;
    const { name, unit } = splitHeading(heading.value);
    const key = normal(name);
    if (key === "temperature") Object.assign(texts, spanTexts(String(value), unit));
    const field = fieldNamed.get(key);
    if (!field || texts[field] !== undefined) return;
    const text = field in choiceFields ? choiceText(field as ChoiceField, value) : numberText(value, unit);
    if (text !== undefined) texts[field] = text;
  });
  return texts;
}

/** A plain number takes the heading's unit; text with a unit of its own keeps it. */
const numberText = (value: string | number | boolean, unit: string | undefined): string =>
  unit && /^[\s\d.,+\-\u2212eE]+$/.test(String(value)) ? `${value} ${unit}` : String(value);

function spanTexts(value: string, unit: string | undefined): Partial<Record<Field, string>> {
  const [low = "", high = low] = value.split(/\s+to\s+|\.\.\.?|…/);
  const tail = /[^\d.,\s+\-\u2212]+.*$/.exec(high)?.[0];
  const lowest = tail && !/[A-Za-z°]/.test(low) ? `${low.trim()} ${tail}` : low.trim();
  return { lowest: numberText(lowest, unit), highest: numberText(high.trim(), unit) };
}

function choiceText(field: ChoiceField, value: string | number | boolean): string | undefined {
  const word = String(value).trim().toLowerCase();
  const yes = ["yes", "true", "1"].includes(word);
  const no = ["no", "false", "0"].includes(word);
  if (field === "wet" || field === "shock") {
    const [off, on] = choiceFields[field];
    if (yes || no) return yes ? on : off;
  }
  return (choiceFields[field] as readonly string[]).find((choice) => choice === word);
}
