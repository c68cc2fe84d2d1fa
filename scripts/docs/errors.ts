import { isInside } from "../../src/core/domain";
import { isNumberArg } from "../../src/core/formula";
import type { Arg, Formula } from "../../src/core/formula";
import { rowsOf } from "../lib/functionPages";

/** Wrong values to put in an argument's place, one for each thing that can be wrong with it. */
function wrongValues(arg: Arg): unknown[] {
  if (isNumberArg(arg)) {
    const outside = [(arg.above ?? arg.from ?? 0) - 5, (arg.below ?? arg.to ?? 0) + 5].filter((x) => !isInside(arg, x));
    return [...outside.slice(0, 1), "12 apples"];
  }
  if (arg.kind === "choice" || arg.kind === "notation") return ["something else"];
  if (arg.kind === "span") return ["60 to 20"];
  return arg.kind === "text" ? ["no such name"] : [];
}

/** Messages as the function gives them, from its example with one argument gone wrong at a time. */
export function errorsOf(f: Formula): string[] {
  const { args, example } = f.spec;
  const required = Object.values<Arg>(args).findIndex((arg) => !arg.optional && arg.kind !== "rest");
  const calls = Object.values<Arg>(args).flatMap((arg, i) =>
    [...(i === required ? [null] : []), ...wrongValues(arg)].map((wrong) => [
      ...example.slice(0, i),
      wrong,
      ...example.slice(i + 1),
    ]),
  );
  const messages = calls.flatMap((given) => rowsOf(f, given, "metric").flat());
  return [...new Set(messages.map(String).filter((text) => /^#(VALUE!|N\/A) ./.test(text)))];
}
