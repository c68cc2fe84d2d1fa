/** A call of the add-in inside a formula: where it stands there, and its arguments as typed. */
export interface CallText {
  readonly start: number;
  readonly end: number;
  readonly id: string;
  readonly args: readonly string[];
}

/** The add-in's calls of a formula; those inside the arguments of another one are left to that. */
export function callsIn(formula: string): CallText[] {
  const found: CallText[] = [];
  const start = /"(?:[^"]|"")*"|\bBUSH[._]([A-Z]+)\(/gi;
  for (let match = start.exec(formula); match; match = start.exec(formula)) {
    if (match[1] === undefined) continue;
    const { args, end } = argumentsFrom(formula, start.lastIndex);
    found.push({ start: match.index, end, id: match[1].toUpperCase(), args });
    start.lastIndex = end;
  }
  return found;
}

/** What stands between the commas of a call from behind its bracket on. */
function argumentsFrom(formula: string, from: number): { args: string[]; end: number } {
  const args: string[] = [];
  const part = /"(?:[^"]|"")*"|'(?:[^']|'')*'|[([{]|[)\]}]|,/g;
  part.lastIndex = from;
  let [depth, begun] = [0, from];
  for (let match = part.exec(formula); match; match = part.exec(formula)) {
    const [sign] = match;
    const isOwn = depth === 0 && (sign === "," || sign === ")");
    if (isOwn) {
      args.push(formula.slice(begun, match.index).trim());
      begun = part.lastIndex;
      if (sign === ")") return { args: args.length === 1 && args[0] === "" ? [] : args, end: begun };
    } else if ("([{".includes(sign)) depth++;
    else if (")]}".includes(sign)) depth--;
  }
  throw new Error(`${formula}: a bracket is not closed`);
}

/** The formula with another text in the place of each call. */
export function withCalls(formula: string, calls: readonly CallText[], textOf: (call: CallText) => string): string {
  let [out, done] = ["", 0];
  for (const call of calls) {
    out += formula.slice(done, call.start) + textOf(call);
    done = call.end;
  }
  return out + formula.slice(done);
}
