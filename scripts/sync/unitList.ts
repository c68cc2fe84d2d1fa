import { prefixes, withoutPrefix, withSymbols, withWords } from "../../src/core/units/definitions";

/** The names of units that are read, from the list of their definitions. */
export function unitList(): string {
  const names = (group: Readonly<Record<string, string>>) =>
    Object.keys(group)
      .flatMap((all) => all.split(" "))
      .join(", ");
  return [
    `- behind a prefix or alone: ${names(withSymbols)}; the prefixes are ${prefixes.map(([, symbol]) => symbol).join(", ")}, u being µ`,
    `- in words, behind a prefix or alone: ${names(withWords)}; the prefixes are ${prefixes.map(([, , word]) => word).join(", ")}`,
    `- alone: ${names(withoutPrefix)}`,
  ].join("\n");
}
