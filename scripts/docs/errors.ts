import { escaped } from "../../src/book/record/html";
import { parametersOf } from "../../src/core/describe";
import { isInside } from "../../src/core/domain";
import { isNumberArg } from "../../src/core/formula";
import type { Arg, Formula } from "../../src/core/formula";
import { errorAnchor } from "../../src/core/helpPage";
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

/**
 * What a function's cell tells, under the argument that the message names: an anchor for each argument, with what it takes,
 * for the local sheet to lead to.
 */
export function errorSection(f: Formula): string[] {
  const parameters = parametersOf(f.spec);
  if (parameters.length === 0) return [];
  const names = parameters.map(({ name }) => name);
  const messages = messagesOf(f);
  const toldAt = (anchor: string): string[] =>
    messages
      .filter((told) => errorAnchor(names, told.replace(/^#\S+ /, "")) === anchor)
      .map((told) => `<dd><code>${escaped(told)}</code></dd>`);
  const entries = parameters.map(({ name, text }) => {
    const anchor = errorAnchor(names, name);
    return [`<dt id="${anchor}">${name}</dt>`, `<dd>${escaped(text)}.</dd>`, ...toldAt(anchor)].join("\n");
  });
  return [
    "## Errors",
    "What each argument takes, and what the cell tells when the example has it wrong:",
    `<dl>\n${[...entries, ...toldAt("errors")].join("\n")}\n</dl>`,
  ];
}

/** Messages as the function gives them, from its example with one argument gone wrong at a time. */
function messagesOf(f: Formula): string[] {
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
