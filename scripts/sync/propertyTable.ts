import { mediaClasses, mediaRatings, properties, ratings } from "../../src/core/grades/model";
import type { Property } from "../../src/core/grades/model";
import { unitText } from "../../src/core/describe";
import { orList } from "../../src/core/errors";
import { cell } from "../lib/functionPages";

/** The headings of a table of own grades, from the list of properties. */
export function propertyTable(): string {
  const rows = properties.map((p) => [headings(p), unitOf(p), p.text, p.method ?? ""].map(cell).join(" | "));
  return [
    "| heading | unit | what it is | usual test |\n|---|---|---|---|",
    ...rows.map((row) => `| ${row} |`),
    `\nThe classes of media, each ${orList(mediaRatings)}: ${mediaClasses.join(", ")}.`,
  ].join("\n");
}

const headings = ({ heading, also }: Property): string =>
  also.length > 0 ? `${heading} (or ${also.join(", ")})` : heading;

function unitOf(p: Property): string {
  switch (p.kind) {
    case "text":
      return "text";
    case "rating":
      return orList(ratings);
    case "choice":
      return orList(p.words);
    case "list":
      return "list, separated by commas";
    case "media":
      return '"water: resistant; fuels: limited"';
    case "curve":
      return `points "23: 40; 80: 25", ${unitText("temperature")}: ${unitText(p.of)}`;
    case "percent":
      return "% or ratio, as the heading says";
    default:
      return unitText(p.kind);
  }
}
