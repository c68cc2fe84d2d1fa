import wearFactors from "../../data/wearFactors.json";
import texts from "../../data/grades/families.json";
import notes from "../../data/grades/mediaNotes.json";
import { propertyCell, originText, properties, standardLibrary } from "../../src/core/grades/model";
import type { Grade } from "../../src/core/grades/model";
import { ratingText } from "../../src/core/grades/model/media";
import { Measure } from "../../src/core/formula";
import { measureText } from "../../src/core/measure";
import { sourceTitle } from "../../src/core/sources";
import { table } from "../reference/tables";
import type { MarkdownPage } from "./page";

const families = standardLibrary().grades.filter(({ kind }) => kind === "generic");
const fileOf = ({ name }: Grade): string => `${name.toLowerCase().replace(/[^a-z0-9]+/g, "-")}.html`;

/** A page for all generic families, one for each, and one for the factors of the handbooks' wear formula. */
export function familyPages(): MarkdownPage[] {
  return [overview(), ...families.map(familyPage), factorPage()];
}

function overview(): MarkdownPage {
  const text = [
    "# Generic families",
    "Typical figures of polymer families: the safe end of what handbooks print, are remembered to print, or the trade keeps to. A maker's grade may differ widely: ask for its own figures.",
    table(
      ["family", "what it is", "good for", "not for"],
      families.map((grade) => [`[${grade.name}](${fileOf(grade)})`, grade.values.family!, ...textsOf(grade)]),
    ),
    "A label says how well a figure is founded: *read* in its source, *derived* from what was read, from *memory* of a table, *common practice* of the trade, or *memory, band only*: known to lie in a band, its safe end taken.",
    "The [factors of the wear formula](wear-factors.html) are shown for those who want them, and never applied unasked.",
  ];
  return { file: "families/index.html", title: "Generic families", text: text.join("\n\n") };
}

const textsOf = ({ name }: Grade): [string, string] => (texts as Record<string, string[]>)[name] as [string, string];

function familyPage(grade: Grade): MarkdownPage {
  const [good, poor] = textsOf(grade);
  const { family, description } = grade.values;
  const text = [
    `# ${grade.name}`,
    `${family}. ${description}.`,
    `- Good for: ${good}\n- Not for: ${poor}`,
    "## Figures",
    "Behind each value stand its source and the place in it, what is printed of which band, how well that is known, and its condition.",
    table(["property", "value", "from where"], figureRows(grade)),
    "## Media",
    "A temperature says up to where the rating was found; hotter is care, and what is attacked stays so.",
    table(["medium", "rating", "label", "note"], mediaRows(grade)),
  ];
  return { file: `families/${fileOf(grade)}`, title: grade.name, text: text.join("\n\n") };
}

function figureRows(grade: Grade): string[][] {
  return properties.flatMap((p) => {
    if (p.group === "identity" || p.key === "media") return [];
    const cell = propertyCell(grade, p, "metric");
    if (cell === undefined) return p.kind === "curve" ? [] : [[p.heading, "no data", ""]];
    // what was printed in other units has no more digits than it had there
    const value =
      cell instanceof Measure ? measureText(cell.kind, Number(cell.value.toPrecision(3)), "metric") : String(cell);
    return [[p.heading, value, originText(grade, p.key)]];
  });
}

function mediaRows({ name, values }: Grade): string[][] {
  const told = (notes as Record<string, Record<string, string>>)[name] ?? {};
  return values.media!.map((rated) => [
    rated.medium,
    ratingText(rated, "metric"),
    rated.origin!.label,
    told[rated.medium] ?? "",
  ]);
}

function factorPage(): MarkdownPage {
  const text = [
    "# Factors of the wear formula",
    `Depth of wear over time is taken as rate × pressure × speed × the product of five factors (${sourceTitle("neale")}, A5, p. A5.3). The form and the cases were read, the numbers are from memory. No function applies them: a duty takes them in its own fields.`,
    table(
      ["factor", "case", "value", "band"],
      wearFactors.map(({ factor, case: of, value, band }) => [
        factor,
        of,
        String(value),
        band ? band.join(" to ") : "",
      ]),
    ),
  ];
  return { file: "families/wear-factors.html", title: "Factors of the wear formula", text: text.join("\n\n") };
}
