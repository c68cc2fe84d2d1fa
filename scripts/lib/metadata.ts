import { generateCustomFunctionsMetadata } from "custom-functions-metadata";
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";

const folder = path.resolve("src/functions");

/** The wrapper files: those that declare custom functions. */
export const wrapperFiles = (): string[] =>
  readdirSync(folder)
    .map((name) => path.join(folder, name))
    .filter((file) => readFileSync(file, "utf8").includes("@customfunction"));

export interface Metadata {
  functions: {
    id: string;
    name: string;
    description?: string;
    parameters: {
      name: string;
      description?: string;
      type?: string;
      dimensionality?: string;
      optional?: boolean;
      repeating?: boolean;
    }[];
    result: { dimensionality?: string };
  }[];
}

/** What the real generator makes of the wrappers. */
export async function generate(files: string[]): Promise<Metadata> {
  const { errors, metadataJson } = await generateCustomFunctionsMetadata(files, false);
  if (errors.length > 0) throw new Error(errors.join("\n"));
  return JSON.parse(metadataJson) as Metadata;
}

/** The house rules for metadata; each fault in words. The generator accepts all of these silently. */
export function faults({ functions }: Metadata): string[] {
  const found: string[] = [];
  for (const { id, name, description, parameters, result } of functions) {
    const say = (fault: string) => found.push(`${id}: ${fault}`);
    // hosts ask for at least three letters
    if (!/^[A-Z]{3,}$/.test(id) || name !== id) say("an id is three capital letters or more, and its name is the same");
    if (!description) say("has no description");
    if (result.dimensionality !== "matrix") say("answers a range");
    parameters.forEach((p, i) => {
      if (!p.description) say(`${p.name} has no description`);
      if (p.type !== "any" || p.dimensionality !== "matrix") say(`${p.name} takes any range`);
      if (!p.optional && parameters[i - 1]?.optional) say(`${p.name} is required after an optional argument`);
      if (p.repeating && i !== parameters.length - 1) say(`${p.name} repeats and is not last`);
    });
  }
  const ids = functions.map((f) => f.id);
  for (const id of ids.filter((candidate, i) => ids.indexOf(candidate) !== i)) found.push(`${id}: declared twice`);
  return found;
}
