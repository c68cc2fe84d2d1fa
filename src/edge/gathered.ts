import type { Arg, Formula } from "../core/formula";

/** Arguments as a host hands them over: from a repeating argument on, what follows is one list. */
export function gathered(f: Formula, given: readonly unknown[]): unknown[] {
  const rest = Object.values<Arg>(f.spec.args).findIndex((arg) => arg.kind === "rest");
  return rest < 0 ? [...given] : [...given.slice(0, rest), given.slice(rest)];
}
