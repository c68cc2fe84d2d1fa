/**
 * What of a source file ran: its text with a mark set before every statement, branch and body of a function. A fault changes
 * nothing for a test that sets no mark of the place where it stands.
 */
import { readFileSync } from "node:fs";
import ts from "typescript";

/** Per source file, the marks that were set since `marksSet` was asked last; a place's mark is its offset, a module's is 0. */
const marks = new Map();
/** Per source file, the places that bear a mark. */
const places = new Map();
globalThis.marksOf = (/** @type {string} */ file) => marks.get(file);

/** The text of a source file that marks what runs of it. */
export function markedText(file) {
  const text = readFileSync(file, "utf8");
  marks.set(file, new Uint8Array(text.length));
  const edits = [{ at: 0, insert: `const $ran = marksOf(${JSON.stringify(file)}); $ran[0] = 1; ` }];
  for (const { from, to, isStatement, isBare } of placesIn(file, text)) {
    const [open, close] = isBare ? ["{", "}"] : ["", ""];
    edits.push({ at: from, insert: isStatement ? `${open}$ran[${from}] = 1; ` : `($ran[${from}] = 1, ` });
    if (!isStatement || isBare) edits.push({ at: to, insert: isStatement ? close : ")" });
  }
  let marked = text;
  for (const { at, insert } of edits.map((edit, i) => ({ ...edit, i })).sort((a, b) => b.at - a.at || b.i - a.i))
    marked = marked.slice(0, at) + insert + marked.slice(at);
  return marked;
}

/** The places marked since the last call, as `file:offset`. */
export function marksSet() {
  const set = [];
  for (const [file, ran] of marks) {
    ran.forEach((isSet, offset) => isSet && set.push(`${file}:${offset}`));
    ran.fill(0);
  }
  return set;
}

/** The mark that is set whenever the code at an offset runs: that of the smallest place around it. */
export function markAt(file, offset) {
  const around = placesIn(file).filter(({ from, to }) => from <= offset && offset < to);
  const smallest = around.sort((a, b) => a.to - a.from - (b.to - b.from))[0];
  return `${file}:${smallest?.from ?? 0}`;
}

function placesIn(file, text = readFileSync(file, "utf8")) {
  if (!places.has(file)) places.set(file, placesOf(text));
  return places.get(file);
}

/** Statements within functions, bodies of arrows, branches and right sides of `&&`, `||` and `??`. */
function placesOf(text) {
  const source = ts.createSourceFile("", text, ts.ScriptTarget.ES2022, true);
  const found = [];
  const add = (node, isStatement, isBare = false) =>
    found.push({ from: node.getStart(), to: node.getEnd(), isStatement, isBare });
  const visit = (node) => {
    if (ts.isTypeNode(node)) return;
    const { parent } = node;
    if (ts.isStatement(node) && !ts.isBlock(node) && !ts.isFunctionDeclaration(node) && !ts.isSourceFile(parent))
      add(node, true, !ts.isBlock(parent) && !ts.isCaseOrDefaultClause(parent));
    if (parent && isBranch(node, parent)) add(node, false);
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

const lazy = new Set(["&&", "||", "??"]);
function isBranch(node, parent) {
  if (ts.isArrowFunction(parent)) return node === parent.body && !ts.isBlock(node);
  if (ts.isConditionalExpression(parent)) return node === parent.whenTrue || node === parent.whenFalse;
  return ts.isBinaryExpression(parent) && node === parent.right && lazy.has(parent.operatorToken.getText());
}
