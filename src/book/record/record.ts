import { element, escaped } from "./html";
import { markOf, pageOf, text } from "./page";
import type { RecordLine } from "./page";
import { usesPicture } from "./uses";

/**
 * The calculation record of a duty from DUTYSHEET's answer, whose lines are section, what, formula, numbers, result, unit,
 * from where: every number on it is a number of that answer.
 */
export function recordBody(answer: readonly RecordLine[]): string {
  const lines = answer.slice(1);
  const of = (wanted: string) => lines.filter(([name]) => name === wanted);
  const named = (wanted: string, what: string) => of(wanted).find((line) => line[1] === what)?.[4];
  const sections = [...new Set(lines.map(([name]) => String(name)))].filter((name) => !plainSections.has(name));
  const sources = sourcesOf([...of("grade"), ...sections.flatMap(of)]);
  const origin = (cell: string | number | undefined): string => text(numbered(String(cell ?? ""), sources));
  const uses = sections.flatMap((name) => {
    const use = of(name).find((line) => line[1] === "Use")?.[4];
    return typeof use === "number" ? [[name, use] as const] : [];
  });
  const inputs = (name: string) =>
    element("h2", name) +
    of(name)
      .map((line) => item(text(line[1]), valued(line), line[6] === "as read" ? "" : origin(line[6])))
      .join("");
  return [
    element("h1", `Calculation record: ${text(named("record", "duty"))}`),
    element(
      "p",
      `Grade: <b>${text(named("record", "grade"))}</b> · Verdict: <b>${text(named("verdict", "verdict"))}</b> · Data: ${text(named("verdict", "data"))}`,
    ),
    element("div", element("div", inputs("input")) + element("div", inputs("grade")), "pair"),
    uses.length > 0 ? usesPicture(uses) : "",
    element("h2", "Criteria") + criteriaTable(sections.map((name) => [name, of(name)])),
    element(
      "p",
      `Not asked: ${of("not asked")
        .map((line) => text(line[1]))
        .join(", ")}.`,
    ),
    element("h2", "Cautions") +
      element(
        "ul",
        of("caution")
          .map((line) => element("li", text(line[1])))
          .join(""),
        "cautions",
      ),
    element("p", `${text(named("record", "add-in"))} · inputs ${markOf([...of("input"), ...of("grade")])}`, "mark"),
    element(
      "p",
      "Worked by: ____________________ Date: ____________ Checked by: ____________________ Date: ____________",
      "sign",
    ),
    element("h2", "Worked line by line", "annex"),
    element("div", sections.map((name) => section(name, of(name), origin)).join(""), "worked"),
    sources.length > 0
      ? element("h2", "Sources") + element("ol", sources.map((s) => element("li", escaped(s))).join(""))
      : "",
  ].join("\n");
}

/** Each source once. What stands behind a verdict or is not read has its reason there; shorter words are told where they stand. */
function sourcesOf(lines: readonly RecordLine[]): string[] {
  const found = lines.filter(([name, what]) => what !== "verdict" && name !== "not read");
  return [...new Set(found.map((line) => String(line[6])))].filter((one) => one.length > 24);
}

/** "[3]" for a source; in a reason each source that is part of it. */
function numbered(said: string, sources: readonly string[]): string {
  const mark = (source: string) => `[${sources.indexOf(source) + 1}]`;
  if (sources.includes(said)) return mark(said);
  const longest = [...sources].sort((a, b) => b.length - a.length);
  return longest.reduce((left, source) => left.replaceAll(source, mark(source)), said);
}

/** Shown in tables of their own. */
const plainSections: ReadonlySet<string> = new Set(["record", "input", "grade", "not asked", "caution", "verdict"]);

const valued = (line: RecordLine): string => [text(line[4]), text(line[5])].filter(Boolean).join(" ");

const item = (what: string, said: string, from: string): string =>
  element("p", `${what}: ${said}${from && ` <small>${from}</small>`}`);

/** Each criterion in a row: what the duty asks, what the grade bears, use and verdict. */
function criteriaTable(sections: readonly (readonly [name: string, lines: readonly RecordLine[]])[]): string {
  const rows = sections.flatMap(([name, lines]) => {
    const find = (what: string) => lines.find((line) => line[1] === what);
    const verdict = find("verdict");
    if (!verdict) return [];
    const value = ended(lines, "V") ?? find("Value");
    const limit = ended(lines, "Z") ?? find("Limit");
    const use = find("Use")?.[4];
    const cells = [
      escaped(name),
      value ? valued(value) : "",
      limit ? valued(limit) : "",
      typeof use === "number" ? `${Math.round(use * 100)} %` : "",
      text(verdict[4]),
    ];
    return [element("tr", cells.map((cell) => element("td", cell)).join(""))];
  });
  const head = ["criterion", "asked", "borne", "use", "verdict"].map((cell) => element("th", cell)).join("");
  return element("table", element("thead", element("tr", head)) + element("tbody", rows.join("")), "criteria");
}

/** What a working ends in: the last line of its symbol is in the sheet's units. */
const ended = (lines: readonly RecordLine[], symbol: string): RecordLine | undefined =>
  lines.findLast((line) => String(line[2]).split(" = ")[0] === symbol);

/** A criterion with its verdict in the heading, its rule, and each line as formula and numbers put in. */
function section(
  name: string,
  lines: readonly RecordLine[],
  origin: (cell: string | number | undefined) => string,
): string {
  const find = (what: string) => lines.find((line) => line[1] === what);
  const [rule, verdict] = [find("rule"), find("verdict")];
  const heading = element(
    "h2",
    `${escaped(name)}${verdict ? `: ${text(verdict[4])} <small>${origin(verdict[6])}</small>` : ""}`,
  );
  const about = rule ? element("p", `${text(rule[3])} <small>${origin(rule[6])}</small>`, "rule") : "";
  const worked = lines
    .filter((line) => line !== rule && line !== verdict)
    .map((line) => item(text(line[1]), workedOut(line) || valued(line), origin(line[6])));
  return heading + about + worked.join("");
}

/** "V = p·K = 0.6 MPa × 1 = 0.6 MPa": the formula, then the same with its numbers. */
function workedOut([, , formula, numbers]: RecordLine): string {
  if (!formula) return text(numbers);
  const [left = "", right] = String(formula).split(" = ");
  const put = String(numbers).replace(`${left} = `, "");
  return [left, right, put].flatMap((part) => (part ? [text(part)] : [])).join(" = ");
}

/** The record as a page of its own, for a file. */
export const recordPage = (answer: readonly RecordLine[]): string => {
  const duty = answer.find((line) => line[0] === "record" && line[1] === "duty")?.[4];
  return pageOf(`Calculation record: ${duty ?? ""}`, recordBody(answer));
};
