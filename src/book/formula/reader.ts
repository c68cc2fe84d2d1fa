import { CellError, plainHost } from "../../edge/host";
import { formulaNamed } from "../../core/families";
import { gathered } from "../../edge/gathered";
import { answer } from "../../edge/sheet";
import { native } from "./natives";
import { arithmetic, passing, same, spread } from "./values";
import type { Grid, Value } from "./values";
import { present } from "../../core/present";

/** Where a formula finds what it refers to; each may throw what is not there. */
export interface Sources {
  range(sheet: string | undefined, address: string): Grid;
  spill(sheet: string | undefined, address: string): Grid;
  column(table: string, column: string): Grid;
}

const token =
  /\s*(?:("(?:[^"]|"")*")|(\d+\.?\d*(?:[eE][-+]?\d+)?)|([A-Za-z]\w*\[[^\]]*\])|((?:(?:'[^']+'|[A-Za-z]\w*)!)?\$?[A-Z]{1,2}\$?\d+(?::\$?[A-Z]{1,2}\$?\d+|#)?)(?![\w(])|([A-Za-z][\w.]*)(?=\()|(TRUE|FALSE)|(<>|<=|>=|[-+*/^&=<>(),%]))/y;

/**
 * A recursive-descent reader of one formula, written without its "=": the add-in's functions by the core, and of the
 * spreadsheet's own the few in `native`. Anything else throws.
 */
export class Reader {
  private readonly tokens: { kind: number; text: string }[] = [];
  private at = 0;

  constructor(
    private readonly text: string,
    private readonly sources: Sources,
  ) {
    token.lastIndex = 0;
    while (token.lastIndex < text.length) {
      const start = token.lastIndex;
      const found = token.exec(text);
      if (!found) throw new Error(`cannot read ${text} at ${text.slice(start)}`);
      const kind = found.findIndex((group, i) => i > 0 && group !== undefined);
      this.tokens.push({ kind, text: present(found[kind]) });
    }
  }

  run(): Grid {
    const grid = this.level(0);
    if (this.at < this.tokens.length) throw new Error(`cannot read the end of ${this.text}`);
    return grid.map((line) => line.map((cell) => cell ?? 0));
  }

  private readonly operators: readonly Readonly<Record<string, (a: Value, b: Value) => Value>>[] = [
    {
      "=": (a, b) => same(a, b),
      "<>": (a, b) => !same(a, b),
      "<": (a, b) => Number(a) < Number(b),
      ">": (a, b) => Number(a) > Number(b),
      "<=": (a, b) => Number(a) <= Number(b),
      ">=": (a, b) => Number(a) >= Number(b),
    },
    { "&": (a, b) => `${a ?? ""}${b ?? ""}` },
    { "+": (a, b) => arithmetic(a, b, (x, y) => x + y), "-": (a, b) => arithmetic(a, b, (x, y) => x - y) },
    { "*": (a, b) => arithmetic(a, b, (x, y) => x * y), "/": (a, b) => arithmetic(a, b, (x, y) => x / y) },
    { "^": (a, b) => arithmetic(a, b, (x, y) => x ** y) },
  ];

  private level(depth: number): Grid {
    const here = this.operators[depth];
    if (!here) return this.atom();
    let left = this.level(depth + 1);
    for (;;) {
      const next = this.tokens[this.at];
      const operator = next?.kind === 7 ? here[next.text] : undefined;
      if (!operator) return left;
      this.at++;
      left = spread([left, this.level(depth + 1)], (a, b) => passing([a, b]) ?? operator(a, b));
    }
  }

  private atom(): Grid {
    const { kind, text } = this.tokens[this.at++] ?? { kind: 0, text: "" };
    if (kind === 1) return [[text.slice(1, -1).replaceAll('""', '"')]];
    if (kind === 2) return [[Number(text)]];
    if (kind === 3) return this.sources.column(text.slice(0, text.indexOf("[")), text.slice(text.indexOf("[") + 1, -1));
    if (kind === 4) return this.reference(text);
    if (kind === 5) return this.call(text);
    if (kind === 6) return [[text === "TRUE"]];
    if (text === "-") return spread([this.atom()], (a) => arithmetic(0, a, (x, y) => x - y));
    if (text !== "(") throw new Error(`cannot read ${this.text}`);
    const inner = this.level(0);
    this.expect(")");
    return inner;
  }

  private expect(text: string): void {
    if (this.tokens[this.at++]?.text !== text) throw new Error(`${this.text}: ${text} expected`);
  }

  private reference(text: string): Grid {
    const mark = text.lastIndexOf("!");
    const sheet = mark < 0 ? undefined : text.slice(0, mark).replace(/^'|'$/g, "");
    const address = text.slice(mark + 1);
    return address.endsWith("#")
      ? this.sources.spill(sheet, address.slice(0, -1).replaceAll("$", ""))
      : this.sources.range(sheet, address);
  }

  private call(name: string): Grid {
    this.expect("(");
    const given: Grid[] = [];
    while (this.tokens[this.at]?.text !== ")") {
      given.push(this.isEmptyArgument() ? [] : this.level(0));
      if (this.tokens[this.at]?.text === ",") this.at++;
    }
    this.at++;
    return name.startsWith("BUSH.") ? bush(name.slice(5), given) : native(name, given);
  }

  private isEmptyArgument = (): boolean => [",", ")"].includes(this.tokens[this.at]?.text ?? "");
}

/** An argument left out is null; STEPS takes the arguments behind its first as one list. */
function bush(id: string, given: readonly Grid[]): Grid {
  const f = formulaNamed(id);
  if (!f) throw new Error(`no function BUSH.${id}`);
  const raw = given.map((grid) => (grid.length === 0 ? null : grid.map((line) => line.map(asGiven))));
  return answer(f, gathered(f, raw), plainHost) as Grid;
}
const asGiven = (cell: Value): unknown => (cell instanceof CellError ? cell.code : cell);
