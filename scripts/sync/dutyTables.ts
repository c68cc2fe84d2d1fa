import { unitText } from "../../src/core/describe";
import { orList } from "../../src/core/errors";
import { criteria, field, fieldKeys, isAskedFor, parts } from "../../src/core/duties";
import type { Criterion, FieldEntry, FieldKey } from "../../src/core/duties";
import { motions, property } from "../../src/core/grades/model";
import { kinds } from "../../src/core/kinds";
import type { Kind } from "../../src/core/kinds";
import { cell } from "../lib/functionPages";

/** What a table of duties may say, from the list of fields. */
export function fieldTable(): string {
  const rows = fieldKeys.map((key) => {
    const entry = field(key);
    return [entry.group, headings(entry), unitOf(entry), askedFor(key), entry.text].map(cell).join(" | ");
  });
  return [
    "| group | heading | unit or words | for | what it is |\n|---|---|---|---|---|",
    ...rows.map((row) => `| ${row} |`),
  ].join("\n");
}

const headings = ({ heading, also = [] }: FieldEntry): string =>
  also.length > 0 ? `${heading} (or ${also.join(", ")})` : heading;

function unitOf({ kind, words, default: preset }: FieldEntry): string {
  const unit =
    kind === "choice"
      ? orList(words!)
      : kind === "list"
        ? "list, separated by commas"
        : kind === "zone"
          ? '"H7" or "+0.05/+0.10"'
          : kind === "span"
            ? unitText("temperature")
            : kind in kinds
              ? unitText(kind as Kind)
              : "text";
  return [unit, preset === undefined ? "" : `default ${preset}`].filter(Boolean).join("; ");
}

/** The parts and motions that ask for a field; needed ones are marked. */
function askedFor(key: FieldKey): string {
  const ofParts = parts.filter((part) => motions.some((motion) => isAskedFor(key, part, motion)));
  const inMotions = motions.filter((motion) => parts.some((part) => isAskedFor(key, part, motion)));
  const said = [
    ofParts.length === parts.length ? "" : ofParts.join(", "),
    inMotions.length === motions.length ? "" : inMotions.join(", "),
  ];
  return [said.filter(Boolean).join("; ") || "all", field(key).required ? "**needed**" : ""].filter(Boolean).join("; ");
}

/** What a duty is judged by, from the list of criteria. */
export function criterionTable(): string {
  const rows = criteria.map((criterion) =>
    [criterion.heading, criterion.asked, criterion.text, figuresOf(criterion)].map(cell).join(" | "),
  );
  return [
    "| criterion | asked | what is judged | figures of the grade |\n|---|---|---|---|",
    ...rows.map((row) => `| ${row} |`),
  ].join("\n");
}

const figuresOf = ({ properties }: Criterion): string => properties.map((key) => property(key).heading).join(", ");
