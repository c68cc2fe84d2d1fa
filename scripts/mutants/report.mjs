import path from "node:path";

/** dist/docs/mutation.md: the score of each part of the core, and every fault that no test notices with what was judged of it. */
export function report(outcomes, judged, root) {
  const placed = outcomes.map(({ mutation, noticed }) => ({
    ...mutation,
    noticed,
    at: path.relative(root, mutation.file),
  }));
  const parts = [...new Set(placed.map(({ at }) => partOf(at)))].sort();
  const rows = parts.map((part) => {
    const own = placed.filter(({ at }) => partOf(at) === part);
    return row(part, own);
  });
  const survivors = placed
    .filter(({ noticed }) => !noticed)
    .sort((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : a.from - b.from || (a.now < b.now ? -1 : 1)));
  const open = survivors.filter(({ key }) => !judged[key]);
  return `<!-- Written by \`npm run mutants\`; edits here are lost. -->

# Faults planted in the core

\`npm run mutants\` plants one small fault at a time in the formulas and limits of \`src/core\` (another operator, comparison,
constant, bound or condition) and runs the core's tests on it. A fault that no test notices is listed below.

| part | planted | noticed | score |
|---|--:|--:|--:|
${rows.join("\n")}
${row("**all**", placed)}

## Not noticed

${survivors.length} faults, of which ${survivors.length - open.length} were judged to change no answer and ${open.length} are open.

${survivors.length === 0 ? "None." : ["| where | was | planted | judged |", "|---|---|---|---|", ...survivors.map((s) => survivorRow(s, judged[s.key] ?? "open"))].join("\n")}
`;
}

const partOf = (at) =>
  at
    .replace(/^src\/core\//, "")
    .split("/")[0]
    .replace(/\.ts$/, "");

function row(part, own) {
  const noticed = own.filter((one) => one.noticed).length;
  return `| ${part} | ${own.length} | ${noticed} | ${score(own)} % |`;
}

/** Per cent of the faults that some test noticed. */
export const score = (found) => ((100 * found.filter(({ noticed }) => noticed).length) / found.length).toFixed(1);

const code = (text) => `\`${text.replaceAll("|", "\\|").replace(/\s+/g, " ")}\``;
const survivorRow = ({ at, line, was, now }, judgement) =>
  `| ${at}:${line} | ${code(was)} | ${code(now)} | ${judgement} |`;
