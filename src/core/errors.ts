/**
 * The one error of the core, and the one place for its wording.
 * "value": an argument of the wrong kind, unit or domain. "missing": a grade, property or datum that is not there.
 * "passed": an error that came in with a cell and goes out as it came.
 */
export class BushError extends Error {
  constructor(
    readonly code: "value" | "missing" | "passed",
    readonly argument: string,
    message: string,
  ) {
    // an answer to bad input, as many as a table has rows: where in our code it arose is nobody's question and most of its cost
    const depth = Error.stackTraceLimit;
    Error.stackTraceLimit = 0;
    super(message.length > longest ? shortened(message) : message);
    Error.stackTraceLimit = depth;
  }
}

/** Hosts cut a longer message off. */
const longest = 120;
const longestFound = 28;

/** What was found stands at the end and stays; what is accepted is left out in front of it, of a list whole items. */
function shortened(message: string): string {
  const got = message.lastIndexOf(", got ");
  const found = message.length - got < 2 * longestFound ? message.slice(got) : "";
  const room = longest - found.length - 3;
  const item = message.lastIndexOf(", ", room);
  const rest = item > room - longestFound ? `${message.slice(0, item)}, …` : `${message.slice(0, room + 2)}…`;
  return rest + found;
}

/** What was found, short enough for a message. */
export function show(found: unknown): string {
  if (found === null || found === undefined || found === "") return "nothing";
  const text =
    typeof found === "string"
      ? `"${found}"`
      : Array.isArray(found)
        ? "a list"
        : typeof found === "object"
          ? "an object"
          : String(found).toUpperCase();
  return text.length > longestFound ? `${text.slice(0, longestFound - 1)}…` : text;
}

export const mustBe = (argument: string, accepted: string, found: unknown): BushError =>
  new BushError("value", argument, `${argument} must be ${accepted}, got ${show(found)}`);

export const isMissing = (argument: string): BushError => new BushError("value", argument, `${argument} is missing`);

/** The longest text in which a number, a unit or a tolerance is looked for; a cell of a sheet may hold far more. */
const longestRead = 200;

/** Refuses what is far longer than anything that a reader knows, before any pattern runs over it. */
export function checkLength(argument: string, text: string): void {
  if (text.length > longestRead)
    throw new BushError(
      "value",
      argument,
      `${argument} must be at most ${longestRead} characters long, got ${text.length}`,
    );
}

/** What is made, or the fault that is thrown instead; any other error goes on. */
export function orFault<T>(make: () => T): T | BushError {
  try {
    return make();
  } catch (error) {
    if (error instanceof BushError) return error;
    throw error;
  }
}

/** A fault in how arguments stand to each other. */
export const clash = (argument: string, message: string): BushError => new BushError("value", argument, message);

/** Data that the library or the table does not hold. */
export const noDatum = (argument: string, message: string): BushError => new BushError("missing", argument, message);

/** "a, b or c" for messages and docs. */
export const orList = (words: readonly string[]): string =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} or ${words[words.length - 1]}`;
