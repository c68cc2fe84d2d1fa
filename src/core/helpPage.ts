/** Where a function is explained in the documentation, from the site's own folder: "functions/pressure.html". */
export const functionPage = (id: string): string => `functions/${id.toLowerCase()}.html`;

/**
 * The heading on a function's page under which an error is explained: "error-bore" where "bore" is the first of the function's
 * arguments that the message names, "errors" where it names none.
 */
export function errorAnchor(argumentNames: readonly string[], message: string): string {
  const words = message.toLowerCase().match(/\p{L}+/gu) ?? [];
  const named = words.find((word) => argumentNames.includes(word));
  return named === undefined ? "errors" : `error-${named}`;
}
