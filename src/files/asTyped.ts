import { decode } from "./decode";
import { readDelimited } from "./delimited";
import { knows } from "./kinds";
import type { ListCell } from "./list";

const anyHeading = (heading: string): boolean => Object.values(knows).some((known) => known(heading));

/** A list as text in cells as a person would have typed them: only what reads the same as a number is one, all else stays as it is written. */
export function readAsTyped(data: Uint8Array): { readonly rows: ListCell[][]; readonly remarks: readonly string[] } {
  const { text, remarks } = decode(data);
  const { rows } = readDelimited(text, anyHeading, remarks);
  return { rows: rows.map((row) => row.map(typedCell)), remarks };
}

function typedCell(cell: ListCell): ListCell {
  const number = Number(cell);
  return cell !== null && Number.isFinite(number) && String(number) === String(cell) ? number : cell;
}
