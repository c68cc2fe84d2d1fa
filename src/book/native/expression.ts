import type { Condition, Tree } from "../../core/teach/working";
import { numberText } from "./given";

/** What a symbol of a working is called in the sheet: its cell's address. */
export type CellOf = (symbol: string) => string;

const names: Readonly<Record<string, string>> = {
  ln: "LN",
  sqrt: "SQRT",
  max: "MAX",
  min: "MIN",
  exp: "EXP",
  sin: "SIN",
  cos: "COS",
  tan: "TAN",
  acos: "ACOS",
  atan: "ATAN",
  tanh: "TANH",
  abs: "ABS",
};

/** An expression of a working in a spreadsheet's own terms. */
export function expression(tree: Tree, cellOf: CellOf): string {
  const inside = (part: Tree): string => (isWhole(part) ? expression(part, cellOf) : `(${expression(part, cellOf)})`);
  switch (tree.type) {
    case "number":
      return numberText(tree.value);
    case "symbol":
      return tree.name === "pi" ? "PI()" : cellOf(tree.name);
    case "sum":
      return tree.terms
        .map(({ isMinus, tree: term }, i) => (isMinus ? "-" : i === 0 ? "" : "+") + inside(term))
        .join("");
    case "product": {
      const [over, under] = [tree.over.map(inside).join("*"), tree.under.map(inside).join("*")];
      return under === "" ? over : `${over === "" ? "1" : over}/${tree.under.length > 1 ? `(${under})` : under}`;
    }
    case "power":
      return `${inside(tree.base)}^${inside(tree.exponent)}`;
    case "call":
      return `${names[tree.name]}(${tree.args.map((arg) => expression(arg, cellOf)).join(",")})`;
  }
}

/** Needs no brackets; a sheet takes the sign of a number before its power. */
const isWhole = (tree: Tree): boolean =>
  tree.type === "symbol" || tree.type === "call" || (tree.type === "number" && tree.value >= 0);

export const conditionText = ({ left, sign, right }: Condition, cellOf: CellOf): string =>
  `${expression(left, cellOf)}${sign}${expression(right, cellOf)}`;
