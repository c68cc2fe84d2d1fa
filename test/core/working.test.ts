import { create, all } from "mathjs";
import { catalogue } from "../../src/core";
import { BushError } from "../../src/core/errors";
import { isInside } from "../../src/core/domain";
import { betweenOf, isNumberArg, isSpill, resultSymbols, workingOf } from "../../src/core/formula";
import type { Arg, Formula } from "../../src/core/formula";
import { answer } from "../../src/edge/sheet";
import { host } from "../support";

/** The working of every formula, evaluated by a full mathjs, against its calculation: what STEPS shows cannot lie. */

const math = create(all!);
type Given = Record<string, unknown>;

const plainFunctions = ["ln", "exp", "sqrt", "max", "min", "sin", "cos", "tan", "acos", "atan", "tanh", "abs"];

const worked = catalogue.filter((f) => f.spec.working).map((f) => [f.spec.id, f] as const);

/** The example as the calculation receives it, read by the sheet's own edge. */
function exampleOf(f: Formula): Given {
  let received: Given | undefined;
  const spy: Formula = {
    spec: f.spec,
    calc(values) {
      received = values;
      return f.calc(values);
    },
  };
  const out = answer(spy, [...f.spec.example], host);
  if (!received) throw new Error(`${f.spec.id}: its example does not reach the calculation: ${JSON.stringify(out)}`);
  return received;
}

const times = (value: unknown, factor: number): unknown =>
  Array.isArray(value) ? value.map((one: unknown) => times(one, factor)) : (value as number) * factor;

/** The example, each number of it scaled alone and all at once, and every word of its choices; those in the domain. */
function variants(f: Formula, example: Given): Given[] {
  const args = Object.entries<Arg>(f.spec.args);
  const isScalable = (arg: Arg) => isNumberArg(arg) || (arg.kind === "list" && arg.of !== "text") || arg.kind === "any";
  const numbers = args.filter(([name, arg]) => isScalable(arg) && example[name] !== undefined).map(([name]) => name);
  const scaled = (names: string[], factor: number) => ({
    ...example,
    ...Object.fromEntries(names.map((name) => [name, times(example[name], factor)])),
  });
  const single = [0.83, 1.07, 2].flatMap((factor) => numbers.map((name) => scaled([name], factor)));
  const chosen = args.flatMap(([name, arg]) =>
    arg.kind === "choice" ? arg.choices.map((choice) => ({ ...example, [name]: choice })) : [],
  );
  const lacking = args.flatMap(([name, arg]) =>
    arg.optional && !("default" in arg && arg.default !== undefined) ? [{ ...example, [name]: undefined }] : [],
  );
  const isValid = (values: Given) =>
    args.every(([name, arg]) => {
      const value = values[name];
      return !isNumberArg(arg) || value === undefined || isInside(arg, value as number);
    });
  return [...single, scaled(numbers, 0.9), scaled(numbers, 1.1), ...chosen, ...lacking].filter(isValid);
}

/** What the working gives for the result, or for each column of a spilled row that has a symbol. */
function evaluateWorking(f: Formula, values: Given): number[] {
  const scope = new Map<string, unknown>([["ln", Math.log]]);
  for (const [name, arg] of Object.entries<Arg>(f.spec.args))
    if (isNumberArg(arg) && values[name] !== undefined) scope.set(arg.symbol, values[name]);
  const lines = workingOf(f, values);
  const words = new Set(lines.flatMap((line) => line.split(/[\s()*/^+,=-]+/)));
  for (const [symbol, { value }] of Object.entries(f.spec.lookups?.(values) ?? {})) {
    if (!words.has(symbol)) throw new Error(`${symbol} is looked up and stands in no line of ${lines.join("; ")}`);
    scope.set(symbol, value.value);
  }
  for (const line of lines) math.evaluate(line, scope);
  // where a figure was found by iteration, a line puts it into its equation: one side over the other
  for (const [symbol, value] of scope) if (/^one(_|$)/.test(symbol)) expect(value).toBeCloseTo(1, 9);
  return resultSymbols(f.spec.result).map(({ symbol }) => scope.get(symbol) as number);
}

/** The calculation's numbers, or undefined where these arguments do not go together. */
function calculated(f: Formula, values: Given): number[] | undefined {
  try {
    return [f.calc(values) as number | (number | string)[]].flat().filter((cell) => typeof cell === "number");
  } catch (error) {
    if (error instanceof BushError) return undefined;
    throw error;
  }
}

/** The largest difference of the two, relative to the largest number in play. */
function relativeDifference(a: number[], b: number[]): number {
  if (a.length !== b.length) return NaN;
  const scale = Math.max(1e-300, ...b.map(Math.abs));
  return Math.max(
    ...a.map((value, i) => Math.abs(value - b[i]!) / (a.length === 1 ? scale : Math.abs(b[i]!) || scale)),
  );
}

test("most calculations show their working", () => {
  expect(worked.length).toBeGreaterThan(10);
});

describe.each(worked)("%s", (_, f) => {
  const example = exampleOf(f);

  test("its working gives the calculation's answer for the example and around it", () => {
    expect(relativeDifference(evaluateWorking(f, example), calculated(f, example)!)).toBeLessThan(1e-11);
    let compared = 0;
    for (const values of variants(f, example)) {
      const expected = calculated(f, values);
      if (expected === undefined || expected.every((value) => value === 0)) continue;
      compared++;
      const difference = relativeDifference(evaluateWorking(f, values), expected);
      if (!(difference < 1e-11)) throw new Error(`differs by ${difference} for ${JSON.stringify(values)}`);
    }
    expect(compared).toBeGreaterThanOrEqual(3);
  });

  test("every symbol is an argument's, has a unit between, or is the result's", () => {
    const args = Object.values<Arg>(f.spec.args).filter(isNumberArg);
    const symbols = args.map((arg) => arg.symbol);
    expect(new Set(symbols).size).toBe(symbols.length);
    const results = resultSymbols(f.spec.result).map((r) => r.symbol);
    expect(results).toHaveLength(isSpill(f.spec.result) ? calculated(f, example)!.length : 1);
    const lines = workingOf(f, example);
    const defined = lines.map((line) => line.slice(0, line.indexOf("=")).trim());
    expect(defined.slice(-results.length)).toEqual(results);
    const between = betweenOf(f, example);
    for (const symbol of defined.slice(0, -results.length)) expect(Object.keys(between)).toContain(symbol);
    for (const symbol of defined) expect(symbols).not.toContain(symbol);
  });

  test("every symbol that no argument explains says what it is", () => {
    const told = [...Object.values(betweenOf(f, example)), ...Object.values(f.spec.lookups?.(example) ?? {})];
    const texts = told.map(({ text }) => text);
    for (const text of texts) expect(text).toMatch(/^\p{Lu}[^;.]{3,}[^;.\s]$/u);
    expect(new Set(texts).size).toBe(texts.length);
  });

  test("it uses plain operators and few functions only", () => {
    for (const line of workingOf(f, example))
      math.parse(line).traverse((node) => {
        if (node.type === "FunctionNode") {
          const name = (node as unknown as { fn: { name: string } }).fn.name;
          expect(plainFunctions).toContain(name);
        } else
          expect(["AssignmentNode", "OperatorNode", "ParenthesisNode", "ConstantNode", "SymbolNode"]).toContain(
            node.type,
          );
      });
  });
});
