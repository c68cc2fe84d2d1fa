import { element } from "./html";
import { markOf, pageOf, text } from "./page";
import type { RecordLine } from "./page";

const title = "Which offer to buy";

/** So many offers stand on the page; the rest are counted. */
const mostRows = 14;
/** Columns of QUOTES that the page shows; their units stand in its headings. */
const shown = [
  ...["rank", "part", "supplier", "grade", "quantity", "unit price", "landed", "currency"],
  ...["all in per 1000 h", "verdict", "lead time"],
];

/**
 * The decision on a page for whoever signs it, from DECISION's answer: which and why, the runner-up, what turns the order
 * round, what to ask; below it the offers from QUOTES' answer, where that is at hand. Both answers with their headings.
 */
export function decisionBody(decision: readonly RecordLine[], quotes?: readonly RecordLine[]): string {
  const lines = decision.slice(1).map(([what, answer]) => [String(what), answer] as const);
  const of = (wanted: string) => lines.filter(([what]) => what === wanted).map(([, answer]) => answer);
  const [chosen, ...more] = lines.filter(([what]) => answers.has(what));
  const asked = lines.filter(([what]) => what.startsWith("ask ")).map(question);
  const open = [...asked, ...of("state in the duty").map((answer) => `State in the duty: ${answer}.`)];
  const [headings = [], ...rows] = quotes ?? [];
  const offers = rows.filter(([rank]) => rank !== "note");
  const duties = [...new Set(offers.map((row) => row[headings.indexOf("for duty")]))].filter(Boolean);
  const body = [
    element("h1", title),
    duties.length > 0 ? element("p", `For ${duties.map(text).join(", ")}.`) : "",
    element("dl", [item(chosen, "chosen"), ...more.map((line) => item(line))].join("")),
    list("What would turn the order round, each alone", of("turns round")),
    list("What to ask", open.length > 0 ? open : ["Nothing: every figure is there."]),
    list("Not ranked", of("not ranked")),
    offers.length > 0 ? offersTable(headings, offers) : "",
    list("Exchange rates", of("rate")),
    element("h2", "Cautions"),
    element(
      "ul",
      of("caution")
        .map((caution) => element("li", text(caution)))
        .join(""),
      "cautions",
    ),
    element("p", `answer ${markOf([...decision, ...(quotes ?? [])])}`, "mark"),
    element("p", "Decided by: ____________________ Date: ____________", "sign"),
  ];
  return element("div", body.filter(Boolean).join("\n"), "decision");
}

/** What is answered, in DECISION's order. */
const answers: ReadonlySet<string> = new Set([
  ...["buy", "because", "price", "shortest life", "cost a year", "note", "runner-up", "nearest"],
]);

const item = (line: readonly [string, string | number | undefined] | undefined, className = ""): string =>
  line === undefined ? "" : element("dt", text(line[0])) + element("dd", text(line[1]), className);

const question = ([what, answer]: readonly [string, string | number | undefined]): string =>
  `${what.slice("ask ".length)}: ${answer}`;

const list = (heading: string, told: readonly (string | number | undefined)[]): string =>
  told.length === 0
    ? ""
    : element("h2", heading) + element("ul", told.map((line) => element("li", text(line))).join(""));

function offersTable(headings: RecordLine, offers: readonly RecordLine[]): string {
  const columns = shown.flatMap((name) => {
    const at = headings.findIndex((heading) => String(heading).replace(/ \[.*\]$/, "") === name);
    return at < 0 ? [] : [at];
  });
  const cells = (tag: string, row: RecordLine) => columns.map((at) => element(tag, short(row[at]))).join("");
  const rest = offers.length - mostRows;
  return (
    element("h2", "The offers") +
    element(
      "table",
      element("thead", element("tr", cells("th", headings))) +
        element(
          "tbody",
          offers
            .slice(0, mostRows)
            .map((row) => element("tr", cells("td", row)))
            .join(""),
        ),
    ) +
    (rest > 0 ? element("p", `${rest} more in the ranking.`) : "")
  );
}

/** Two decimals, of small prices four. */
const short = (cell: string | number | undefined): string =>
  text(typeof cell === "number" ? Number(cell.toFixed(Math.abs(cell) < 10 ? 4 : 2)) : cell);

/** The decision as a page of its own, for a file. */
export const decisionPage = (decision: readonly RecordLine[], quotes?: readonly RecordLine[]): string =>
  pageOf(title, decisionBody(decision, quotes));
