import jsep from "jsep";
import { BushError } from "../errors";

// powers bind tighter than products and from the right, as on paper
jsep.addBinaryOp("^", 11, true);

/** One line of a working: the symbol that it defines and the expression for it. */
export interface Line {
  readonly symbol: string;
  readonly expression: string;
}

export function splitLine(line: string): Line {
  const at = line.indexOf("=");
  return { symbol: line.slice(0, at).trim(), expression: line.slice(at + 1).trim() };
}

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
const operators: Record<string, (a: number, b: number) => number> = {
  "+": (a, b) => a + b,
  "-": (a, b) => a - b,
  "*": (a, b) => a * b,
  "/": (a, b) => a / b,
  "^": (a, b) => a ** b,
};

/** The value of an expression, its symbols looked up in `scope`. */
export function evaluate(expression: string, scope: ReadonlyMap<string, number>): number {
  return valueOf(jsep(expression), scope);
}

function valueOf(node: jsep.Expression, scope: ReadonlyMap<string, number>): number {
  switch (node.type) {
    case "Literal":
      return node.value as number;
    case "Identifier": {
      const name = node.name as string;
      const value = name === "pi" ? Math.PI : scope.get(name);
      if (value === undefined) throw new BushError("value", name, `${name} has no value in this working`);
      return value;
    }
    case "UnaryExpression":
      return -valueOf(node.argument as jsep.Expression, scope);
    case "BinaryExpression":
      return operators[node.operator as string]!(
        valueOf(node.left as jsep.Expression, scope),
        valueOf(node.right as jsep.Expression, scope),
      );
    case "CallExpression":
      return functions[(node.callee as jsep.Identifier).name]!(
        ...(node.arguments as jsep.Expression[]).map((x) => valueOf(x, scope)),
      );
    default:
      throw new Error(`a working does not use ${node.type}`);
  }
}

const symbols = /[\p{L}_][\p{L}\p{N}_]*/gu;

/** The expression with each symbol replaced by what `show` says of it; names of functions and pi stay. */
export const substitute = (expression: string, show: (symbol: string) => string | undefined): string =>
  expression.replace(symbols, (symbol) => show(symbol) ?? symbol);
