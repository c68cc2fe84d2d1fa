import exampleSources from "../../data/exampleSources.json";
import sources from "../../data/sources.json";
import { referenceCases } from "./cases";

/** Citations with what they say was read, those of worked examples among them, which no answer names. */
const known = Object.values({ ...sources, ...exampleSources }).map(({ citation, edition }) => `${citation} ${edition}`);
/** Programs and tables that say themselves what they are. */
const told = /^(mathjs|js-quantities|GoldenSequences|Table of ISO 286-2)/;

test("every book, standard and report that a printed, measured or remembered value comes from is listed with what was read", () => {
  const cited = referenceCases.filter(({ kind }) => ["printed example", "measurement", "memory"].includes(kind));
  expect(cited.length).toBeGreaterThan(100);
  const unlisted = cited.map(({ source }) => source).filter((source) => !told.test(source) && !isListed(source));
  expect([...new Set(unlisted)]).toEqual([]);
});

/** Author and title stand in a citation, of a standard its number: "Crawford: Plastics Engineering, Table 1.8". */
function isListed(source: string): boolean {
  const [first = ""] = source.split(/, |: (?=RAE)/);
  const [standard] = /^(ISO|ASTM|NIST)[^:,]*/.exec(source) ?? [];
  if (standard !== undefined) return known.some((citation) => citation.includes(standard));
  const parts = first.split(/: /).map((part) => part.replace(/\s*\(.*\)$|:\d{4}.*$/, "").trim());
  return known.some((citation) => parts.every((part) => citation.includes(part.split(" and others")[0]!)));
}
