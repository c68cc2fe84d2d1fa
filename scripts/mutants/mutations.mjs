/** Small faults to plant in a source file: wrong operators, comparisons, constants and conditions, one at a time. */
import path from "node:path";
import ts from "typescript";
import { root } from "../lib/root.mjs";

const swaps = {
  "+": ["-"],
  "-": ["+"],
  "*": ["/"],
  "/": ["*"],
  "**": ["*"],
  "<": ["<=", ">="],
  "<=": ["<", ">"],
  ">": [">=", "<="],
  ">=": [">", "<"],
  "===": ["!=="],
  "!==": ["==="],
  "&&": ["||"],
  "||": ["&&"],
};
const bounds = { above: "from", from: "above", below: "to", to: "below" };
const twins = { max: "min", min: "max", findLast: "find", some: "every", every: "some" };
/** Words, examples and messages are no formulas. */
const passedOver = new Set([
  "example",
  "text",
  "label",
  "working",
  "factors",
  "between",
  "see",
  "source",
  "what",
  "name",
]);
const messages = new Set(["mustBe", "clash", "noDatum", "isMissing", "lacks", "measure", "show"]);

/**
 * Every mutation of a file: where it stands, what stood there, what stands there now, the whole text with it, and `key`, which
 * calls it by its place and change, numbered where the place has several such.
 */
export function mutationsOf(file, text) {
  const source = ts.createSourceFile(file, text, ts.ScriptTarget.ES2022, true);
  const found = [];
  const add = (node, now, from = node.getStart(), to = node.getEnd()) => {
    const { line } = source.getLineAndCharacterOfPosition(from);
    found.push({
      file,
      line: line + 1,
      was: text.slice(from, to),
      now,
      from,
      key: `${path.relative(root, file)} > ${placeOf(node)}: ${text.slice(from, to)} → ${now}`.replace(/\s+/g, " "),
      text: text.slice(0, from) + now + text.slice(to),
    });
  };
  const visit = (node) => {
    if (ts.isTypeNode(node) || ts.isImportDeclaration(node) || ts.isInterfaceDeclaration(node)) return;
    if (ts.isPropertyAssignment(node) && passedOver.has(node.name.getText())) return;
    if (ts.isVariableDeclaration(node) && /^example/.test(node.name.getText())) return;
    if (ts.isCallExpression(node) && messages.has(node.expression.getText())) return;
    if (ts.isTemplateExpression(node) || ts.isThrowStatement(node)) return;
    mutate(node, add);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return numbered(found);
}

/** The innermost function, method, class or outermost constant around a node that has a name. */
function placeOf(node) {
  for (let at = node; at.parent; at = at.parent) if (isNamedPlace(at)) return at.name.getText();
  return "the file";
}

function isNamedPlace(node) {
  if (!node.name || !ts.isIdentifier(node.name)) return false;
  if (ts.isVariableDeclaration(node))
    return ts.isSourceFile(node.parent.parent.parent) || (node.initializer && ts.isFunctionLike(node.initializer));
  return ts.isFunctionLike(node) || ts.isClassLike(node) || ts.isClassElement(node);
}

/** So that what was judged of one of several like faults in a place is held against no other, nor where their number changes. */
function numbered(found) {
  const inOrder = found.toSorted((a, b) => a.from - b.from);
  return inOrder.map((one) => {
    const alike = inOrder.filter(({ key }) => key === one.key);
    return alike.length === 1 ? one : { ...one, key: `${one.key} (${alike.indexOf(one) + 1} of ${alike.length})` };
  });
}

function mutate(node, add) {
  if (ts.isBinaryExpression(node)) mutateOperator(node, add);
  if (ts.isNumericLiteral(node)) add(node, numberInstead(Number(node.getText().replaceAll("_", ""))));
  if (ts.isIfStatement(node)) add(node.expression, "false");
  if (ts.isConditionalExpression(node)) add(node.condition, `!(${node.condition.getText()})`);
  mutateSign(node, add);
  mutateName(node, add);
}

function mutateOperator({ left, right, operatorToken: operator }, add) {
  const isText = [left, right].some((side) => ts.isStringLiteralLike(side) || ts.isTemplateExpression(side));
  if (isText && operator.getText() === "+") return;
  for (const other of swaps[operator.getText()] ?? []) add(operator, other);
}

function mutateSign(node, add) {
  if (ts.isPrefixUnaryExpression(node) && ["-", "!"].includes(node.getText()[0]) && !ts.isNumericLiteral(node.operand))
    add(node, node.operand.getText());
  if (ts.isCallExpression(node) && node.expression.getText() === "Math.abs")
    add(node, `(${node.arguments[0].getText()})`);
}

function mutateName(node, add) {
  if (ts.isPropertyAssignment(node) && bounds[node.name.getText()]) add(node.name, bounds[node.name.getText()]);
  if (ts.isPropertyAccessExpression(node) && ts.isCallExpression(node.parent) && twins[node.name.getText()])
    add(node.name, twins[node.name.getText()]);
}

const numberInstead = (value) => String(Number.isInteger(value) ? value + 1 : value * 1.1);
