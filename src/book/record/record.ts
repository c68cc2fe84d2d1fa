import { element, html } from "./html";
import { usesPicture } from "./uses";

/** A line of DUTYSHEET's answer: section, what, formula, numbers, result, unit, from where. */
export type RecordLine = readonly (string | number)[];

const digits = 6;
const text = (cell: string | number | undefined): string =>
  html(typeof cell === "number" ? String(Number(cell.toPrecision(digits))) : (cell ?? ""));

/** 32 bits by FNV-1a (Fowler, Noll, Vo), to tell whether two records start from the same inputs. */
function markOf(lines: readonly RecordLine[]): string {
  let hash = 0x811c9dc5;
  for (const byte of new TextEncoder().encode(JSON.stringify(lines))) hash = Math.imul(hash ^ byte, 0x01000193) >>> 0;
  return hash.toString(16).padStart(8, "0");
}

/** The calculation record of a duty from DUTYSHEET's answer: every number on it is a number of that answer. */
export function recordBody(answer: readonly RecordLine[]): string {
  const lines = answer.slice(1);
  const of = (section: string) => lines.filter(([name]) => name === section);
  const named = (section: string, what: string) => of(section).find((line) => line[1] === what)?.[4];
  const sections = [...new Set(lines.map(([name]) => String(name)))].filter((name) => !plainSections.has(name));
  const sources = [...new Set(sections.flatMap((name) => of(name).map((line) => String(line[6]))))].filter(
    (s) => s.length > 24,
  );
  const origin = (cell: string | number | undefined): string => {
    const at = sources.indexOf(String(cell));
    return at < 0 ? text(cell) : `[${at + 1}]`;
  };
  const uses = sections.flatMap((name) => {
    const use = of(name).find((line) => line[1] === "Use")?.[4];
    return typeof use === "number" ? [[name, use] as const] : [];
  });
  const inputs = (section: string) =>
    element("h2", section) +
    of(section)
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
    element("div", sections.map((name) => section(name, of(name), origin)).join(""), "worked"),
    element(
      "p",
      `Not asked: ${of("not asked")
        .map((line) => text(line[1]))
        .join(", ")}.`,
    ),
    sources.length > 0
      ? element("h2", "Sources") + element("ol", sources.map((s) => element("li", html(s))).join(""))
      : "",
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
  ].join("\n");
}

/** Shown in tables of their own. */
const plainSections: ReadonlySet<string> = new Set(["record", "input", "grade", "not asked", "caution", "verdict"]);

const valued = (line: RecordLine): string => [text(line[4]), text(line[5])].filter(Boolean).join(" ");

const item = (what: string, said: string, from: string): string =>
  element("p", `${what}: ${said}${from && ` <small>${from}</small>`}`);

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
    `${html(name)}${verdict ? `: ${text(verdict[4])} <small>${origin(verdict[6])}</small>` : ""}`,
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

/** No page size: A4 and Letter both do. */
export const recordStyle = `
.record { font: 8pt/1.25 system-ui, "DejaVu Sans", sans-serif; color: #1f2b2d; }
.record h1 { font-size: 14pt; margin: 0; color: #1d545c; }
.record h2 { font-size: 8.5pt; margin: 3pt 0 0; color: #1d545c; break-after: avoid; }
.record p { margin: 2pt 0; }
.record table { border-collapse: collapse; margin-bottom: 8pt; }
.record tr { break-inside: avoid; }
.record th, .record td { text-align: left; vertical-align: top; padding: 1pt 6pt 1pt 0; border-bottom: 0.4pt solid #c3cdc8; }
.record .pair { display: grid; grid-template-columns: 1fr 1.4fr; gap: 0 12pt; font-size: 7pt; line-height: 1.2; }
.record .worked { columns: 17rem 2; column-gap: 12pt; font-size: 7pt; line-height: 1.2; }
.record .pair p, .record .worked p { margin: 0; overflow-wrap: anywhere; break-inside: avoid; }
.record small { color: #526062; font-size: 7pt; font-weight: 400; }
.record .rule, .record .mark { color: #526062; }
.record svg { font-size: 9px; max-width: 70%; height: auto; display: block; margin: 2pt 0; }
.record ol, .record ul { margin: 0; padding-left: 14pt; font-size: 6.5pt; line-height: 1.2; }
.record .cautions { break-inside: avoid; background: #e6e2d3; padding-top: 2pt; padding-bottom: 2pt; }
.record .sign { margin-top: 14pt; break-inside: avoid; break-before: avoid; }
@media print { .record .cautions { print-color-adjust: exact; } }
`;

/** The record as a page of its own, for a file. */
export function recordPage(answer: readonly RecordLine[]): string {
  const duty = String(answer.find((line) => line[0] === "record" && line[1] === "duty")?.[4] ?? "");
  return `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>${html(`Calculation record: ${duty}`)}</title><style>${recordStyle}body { margin: 12pt auto; max-width: 60rem; padding: 0 12pt; } @media print { body { margin: 0; padding: 0; max-width: none; } }</style></head>
<body class="record">
${recordBody(answer)}
</body></html>
`;
}
