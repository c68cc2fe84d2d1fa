import { isNumberArg, requiresOf, workingOf } from "../../core/formula";
import type { Formula } from "../../core/formula";
import { readCondition, symbolsOf } from "../../core/teach/working";

type Values = Readonly<Record<string, unknown>>;

/**
 * The arguments whose values decide which lines hold or which figures are looked up: what is written for one value of them
 * holds for no other. A number that only chooses between lines is let go where the conditions of these lines name it.
 */
export function decidingArgs(f: Formula, values: Values): ReadonlySet<string> {
  const chooses = readBy(values, (seen) => workingOf(f, seen));
  const looksUp = readBy(values, (seen) => f.spec.lookups?.(seen));
  const told = new Set(
    requiresOf(f, values).flatMap((text) => {
      const { left, right } = readCondition(text);
      return [...symbolsOf(left), ...symbolsOf(right)];
    }),
  );
  const isTold = (name: string): boolean => {
    const arg = f.spec.args[name];
    return arg !== undefined && isNumberArg(arg) && told.has(arg.symbol);
  };
  return new Set([...[...chooses].filter((name) => !isTold(name)), ...looksUp]);
}

/** The names that a function reads of its values. */
function readBy(values: Values, run: (values: Values) => unknown): ReadonlySet<string> {
  const read = new Set<string>();
  const see = (name: string | symbol): void => {
    if (typeof name === "string") read.add(name);
  };
  run(
    new Proxy(values, {
      get: (target, name) => (see(name), Reflect.get(target, name) as unknown),
      has: (target, name) => (see(name), Reflect.has(target, name)),
    }),
  );
  return read;
}
