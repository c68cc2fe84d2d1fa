/**
 * A file of the core for functions.js, read whole before the first cell answers: leaves out of each `formula(spec, …)` the
 * words that only the documentation, the metadata and the pane show, and of the list of properties what only docs, pane and
 * the checks of the data read. STEPS and DUTYSHEET name arguments, answers and fields by the label of their texts, so that
 * much of them stays where there is a working. The tests hold the built functions' answers against the core's.
 */
import { parse } from "acorn";
import { visit } from "./visit.mjs";

const shownBeside = new Set(["see", "example", "requires"]);
const ofProperties = new Set(["text", "method", "plausible", "group"]);
/** What says that an object is an argument, an answer or a field. */
const kindOf = new Set(["kind", "shape"]);

/** The files of the list of properties. */
const propertyFile = /grades.model.properties.\w+\.ts$/;

export function withoutDocs(code, file) {
  const cuts = [];
  const rules = new Set();
  const isOfProperties = propertyFile.test(file);
  visit(parse(code, { ecmaVersion: "latest", sourceType: "module" }), (node) => {
    // a criterion's own text is the rule that DUTYSHEET prints
    if (isCallOf(node, "criterion")) rules.add(node.arguments[0]);
    if (isCallOf(node, "formula")) cuts.push(...ofFormula(node.arguments[0], code));
    if (node.type !== "ObjectExpression" || rules.has(node)) return;
    if (node.properties.some((entry) => kindOf.has(nameOf(entry)))) cuts.push(...behindLabels(node, code));
    if (isOfProperties && node.properties.some((entry) => nameOf(entry) === "heading"))
      cuts.push(...node.properties.filter((entry) => ofProperties.has(nameOf(entry))));
  });
  return without(code, cuts);
}

const isCallOf = (node, name) => node.type === "CallExpression" && node.callee.name === name;

/** What of a specification is shown beside its function alone; without a working its labels are, too. */
function ofFormula(spec, code) {
  const { properties } = spec;
  const cuts = properties.filter((entry) => shownBeside.has(nameOf(entry)));
  const texts = properties.filter((entry) => nameOf(entry) === "text");
  const isWorked = properties.some((entry) => nameOf(entry) === "working");
  if (isWorked) return [...cuts, ...(hasNamedAnswer(spec) ? texts : behindLabels(spec, code))];
  cuts.push(...texts);
  for (const entry of properties.filter((each) => ["args", "result"].includes(nameOf(each))))
    visit(entry.value, (within) => within.type === "Property" && nameOf(within) === "text" && cuts.push(within));
  return cuts;
}

const nameOf = (entry) => entry.key?.name;

/** Whether STEPS names what a function answers by the answer's own words, and so not by those of the function. */
function hasNamedAnswer({ properties }) {
  const answer = properties.find((entry) => nameOf(entry) === "result")?.value;
  return answer?.properties?.some((entry) => ["label", "text", "columns"].includes(nameOf(entry))) ?? false;
}

/** What of an object's own text stands behind its label, which ends at the first stop. */
const behindLabels = ({ properties }, code) =>
  properties.flatMap(({ key, value }) => {
    const parts = { Literal: [value], TemplateLiteral: value?.quasis }[value?.type] ?? [];
    if (key?.name !== "text" || parts.length === 0) return [];
    const stop = code.slice(value.start, parts[0].end).search(/[;:,]/);
    return stop < 0 ? [] : [{ start: value.start + stop, end: value.end - 1, within: true }];
  });

/** The code without these properties of objects, nor the comma behind each, and without these parts of texts. */
function without(code, cuts) {
  let kept = "";
  let from = 0;
  for (const { start, end, within } of cuts.toSorted((a, b) => a.start - b.start)) {
    // a text that is left out whole took its end with it
    if (start < from) continue;
    kept += code.slice(from, start);
    from = within ? end : end + (/^\s*,?/.exec(code.slice(end))?.[0].length ?? 0);
  }
  return kept + code.slice(from);
}
