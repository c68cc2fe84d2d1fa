/**
 * mathjs' Unit for functions.js, which is read whole before the first cell answers: leaves out the methods
 * that neither our unit algebra calls (its types say which) nor what is left of that file, such as those that write a unit as text;
 * the tables of the units to write it in; and the words of its errors, which our unit algebra catches.
 */
import { parse } from "acorn";
import { visit } from "./visit.mjs";

/** Methods of `UnitClass` and `Unit` in src/core/units/unitAlgebra.ts. */
const called = [".parse", ".createUnit", ".deleteUnit", ".equalBase"];
/** What is called on paths that plain numbers and our definitions, which are texts, do not take. */
const notReached = [".clone"];
/** What the unit algebra is set up with. */
const settings = [
  [/\bconfig\.number\b/g, '"number"'],
  [/\bif \(on\)/g, "if (false)"],
];
/** Variables that methods which nobody calls would read: all that the others do is write them. */
const writtenOnly = ["UNIT_SYSTEMS", "currentUnitSystem"];

export function withoutUncalled(source) {
  const code = settings.reduce((text, [name, value]) => text.replace(name, value), source);
  const program = parse(code, { ecmaVersion: "latest", sourceType: "module" });
  const definitions = definitionsIn(program);
  const reached = (node) => [...namesIn(node, definitions)].filter((name) => !notReached.includes(name));
  // outside of all definitions, then within those that are named there, and so on
  const named = new Set([...called, ...reached(program)]);
  for (const name of named)
    for (const [node] of [...definitions].filter(([, own]) => own === name))
      for (const within of reached(node)) named.add(within);
  const uncalled = [...definitions].filter(([, name]) => !named.has(name)).map(([node]) => node);
  return [...uncalled, ...unread(program, new Set(uncalled))]
    .sort((a, b) => b.start - a.start)
    .reduce((kept, { start, end }) => kept.slice(0, start) + kept.slice(end), code);
}

/** What only writes variables that nobody reads, and what errors say. */
function unread(program, uncalled) {
  const found = [];
  const isWritten = (node) =>
    node.type === "MemberExpression" ? isWritten(node.object) : writtenOnly.includes(node.name);
  visit(
    program,
    (node) => {
      if (node.type === "VariableDeclaration" && node.declarations.every(({ id }) => isWritten(id))) found.push(node);
      if (node.type === "ExpressionStatement" && node.expression.type === "AssignmentExpression") {
        const { left, right } = node.expression;
        if (isWritten(left) || isWritten(right)) found.push(node);
      }
      if (node.type === "ThrowStatement" && node.argument.type === "NewExpression")
        found.push(...node.argument.arguments);
    },
    (node) => uncalled.has(node),
  );
  return found;
}

/** Methods, ".toBest", and functions, "formatBest", with the names that they are called by. */
function definitionsIn(program) {
  const found = new Map();
  visit(program, (node) => {
    const { type, id, expression } = node;
    if (type === "FunctionDeclaration") found.set(node, id.name);
    if (type !== "ExpressionStatement" || expression.type !== "AssignmentExpression") return;
    const { left, right } = expression;
    // one method under two names, too
    if (isOfUnit(left) && (right.type === "FunctionExpression" || isOfUnit(right))) found.set(node, nameOf(left));
  });
  return found;
}

/** Unit.parse, Unit.prototype.toSI */
const isOfUnit = ({ type, object, computed }) =>
  type === "MemberExpression" &&
  !computed &&
  (object.name === "Unit" || (object.object?.name === "Unit" && nameOf(object) === ".prototype"));
const nameOf = ({ property }) => `.${property.name}`;

/** Math's, and what every object has: who writes "toString" means no unit. */
const isOfAll = ({ object, property }) => object.name === "Math" || property.name in Object.prototype;

/** The names that a node uses, but for those within definitions inside it. */
function namesIn(node, definitions) {
  const names = new Set();
  const inside = (part) => part !== node && definitions.has(part);
  visit(
    node,
    (part) => {
      if (part.type === "Identifier") names.add(part.name);
      if (part.type === "MemberExpression" && !part.computed && !isOfAll(part)) names.add(nameOf(part));
    },
    inside,
  );
  return names;
}
