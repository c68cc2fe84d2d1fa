import { BushError } from "../errors";
import { expression } from "../units/expression";
import type { Expression } from "../units/expression";
import { present } from "../present";

/** One change of unit inside a number that only changes units: 60 s/min to a power. */
export interface Step {
  readonly count: number;
  readonly unit: string;
  readonly power: number;
}

/** An expression of a working, products and quotients gathered as they are written on paper: all over one stroke. */
export type Tree =
  /** `steps` where the number only turns units into one another. */
  | { readonly type: "number"; readonly value: number; readonly steps?: readonly Step[] }
  | { readonly type: "symbol"; readonly name: string }
  | { readonly type: "sum"; readonly terms: readonly Term[] }
  | { readonly type: "product"; readonly over: readonly Tree[]; readonly under: readonly Tree[] }
  | { readonly type: "power"; readonly base: Tree; readonly exponent: Tree }
  | { readonly type: "call"; readonly name: string; readonly args: readonly Tree[] };
export type Product = Extract<Tree, { type: "product" }>;
export interface Term {
  readonly isMinus: boolean;
  readonly tree: Tree;
}

/** One line of a working: the symbol that it defines and the expression for it. */
export interface Line {
  readonly symbol: string;
  readonly tree: Tree;
}

export function readLine(line: string): Line {
  const at = line.indexOf("=");
  return { symbol: line.slice(0, at).trim(), tree: treeOf(expression(line.slice(at + 1))) };
}

/** A condition between two expressions. */
export interface Condition {
  readonly left: Tree;
  readonly sign: "<" | "<=" | ">" | ">=" | "=";
  readonly right: Tree;
}

/** "Di < Do" */
export function readCondition(text: string): Condition {
  const [, left = "", sign, right = ""] = /^(.*?)(<=|>=|<|>|=)(.*)$/.exec(text) ?? [];
  if (!sign) throw new Error(`no condition: ${text}`);
  return { left: treeOf(expression(left)), sign: sign as Condition["sign"], right: treeOf(expression(right)) };
}

function treeOf(node: Expression): Tree {
  switch (node.type) {
    case "Literal":
      return { type: "number", value: node.value as number };
    case "Identifier":
      return { type: "symbol", name: node.name as string };
    case "UnaryExpression": {
      const tree = treeOf(node.argument as Expression);
      return tree.type === "number"
        ? { ...tree, value: -tree.value }
        : { type: "sum", terms: [{ isMinus: true, tree }] };
    }
    case "BinaryExpression":
      return joined(node.operator as string, treeOf(node.left as Expression), treeOf(node.right as Expression));
    case "CallExpression":
      return {
        type: "call",
        name: (node.callee as { name: string }).name,
        args: (node.arguments as Expression[]).map(treeOf),
      };
    default:
      throw new Error(`a working does not use ${node.type}`);
  }
}

function joined(operator: string, left: Tree, right: Tree): Tree {
  if (operator === "^") return { type: "power", base: left, exponent: right };
  if (operator === "+" || operator === "-") {
    const terms = left.type === "sum" ? left.terms : [{ isMinus: false, tree: left }];
    return { type: "sum", terms: [...terms, { isMinus: operator === "-", tree: right }] };
  }
  const [a, b] = [productOf(left), productOf(right)];
  const [over, under] = operator === "*" ? [b.over, b.under] : [b.under, b.over];
  return { type: "product", over: [...a.over, ...over], under: [...a.under, ...under] };
}

export const productOf = (tree: Tree): Product =>
  tree.type === "product" ? tree : { type: "product", over: [tree], under: [] };

const functions: Record<string, (...x: number[]) => number> = {
  ln: Math.log,
  sqrt: Math.sqrt,
  max: Math.max,
  min: Math.min,
  exp: Math.exp,
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
  acos: Math.acos,
  atan: Math.atan,
  tanh: Math.tanh,
  abs: Math.abs,
};

/** The value of an expression, its symbols looked up by `valueOf`. */
export function evaluate(tree: Tree, valueOf: (symbol: string) => number | undefined): number {
  const value = (part: Tree): number => evaluate(part, valueOf);
  switch (tree.type) {
    case "number":
      return tree.value;
    case "symbol": {
      const found = tree.name === "pi" ? Math.PI : valueOf(tree.name);
      if (found === undefined) throw new BushError("value", tree.name, `${tree.name} has no value in this working`);
      return found;
    }
    case "sum":
      return tree.terms.reduce((sum, { isMinus, tree: term }) => (isMinus ? sum - value(term) : sum + value(term)), 0);
    case "product":
      return tree.over.reduce((x, part) => x * value(part), 1) / tree.under.reduce((x, part) => x * value(part), 1);
    case "power":
      return value(tree.base) ** value(tree.exponent);
    case "call":
      return present(functions[tree.name])(...tree.args.map(value));
  }
}

/** The symbols of an expression, each once. */
export function symbolsOf(tree: Tree): string[] {
  const all = partsOf(tree).flatMap(symbolsOf);
  return [...new Set(tree.type === "symbol" && tree.name !== "pi" ? [tree.name] : all)];
}

/** The numbers written in an expression. */
export const numbersOf = (tree: Tree): Extract<Tree, { type: "number" }>[] =>
  tree.type === "number" ? [tree] : partsOf(tree).flatMap(numbersOf);

function partsOf(tree: Tree): readonly Tree[] {
  switch (tree.type) {
    case "sum":
      return tree.terms.map((term) => term.tree);
    case "product":
      return [...tree.over, ...tree.under];
    case "power":
      return [tree.base, tree.exponent];
    case "call":
      return tree.args;
    default:
      return [];
  }
}
