/**
 * webpack's loader for functions.js, read whole before the first cell answers: leaves out of each `formula(spec, …)` the
 * words that only the documentation, the metadata and the pane show, and of the list of properties what only docs, pane and the checks of the data read. STEPS names symbols by their texts, so a spec with a working keeps them.
 */
import { parse } from "acorn";

const shownBeside = new Set(["see", "example"]);
const ofProperties = new Set(["text", "method", "plausible", "group"]);

export default function withoutDocs(code) {
  const cuts = [];
  visit(parse(code, { ecmaVersion: "latest", sourceType: "module" }), (node) => {
    if (node.type === "VariableDeclarator" && node.id.name === "propertyList")
      for (const { value } of node.init.properties)
        cuts.push(...value.properties.filter((entry) => ofProperties.has(nameOf(entry))));
    if (node.type !== "CallExpression" || node.callee.name !== "formula") return;
    const { properties } = node.arguments[0];
    cuts.push(...properties.filter((entry) => shownBeside.has(nameOf(entry))));
    if (properties.some((entry) => nameOf(entry) === "working")) return;
    cuts.push(...properties.filter((entry) => nameOf(entry) === "text"));
    for (const entry of properties.filter((each) => ["args", "result"].includes(nameOf(each))))
      visit(entry.value, (within) => within.type === "Property" && nameOf(within) === "text" && cuts.push(within));
  });
  return without(code, cuts);
}

const nameOf = (entry) => entry.key?.name;

/** The code without these properties of objects, nor the comma behind each. */
function without(code, cuts) {
  let kept = "";
  let from = 0;
  for (const { start, end } of cuts.toSorted((a, b) => a.start - b.start)) {
    kept += code.slice(from, start);
    from = end + (/^\s*,?/.exec(code.slice(end))?.[0].length ?? 0);
  }
  return kept + code.slice(from);
}

function visit(node, see) {
  see(node);
  for (const part of Object.values(node).flat()) if (typeof part?.type === "string") visit(part, see);
}
