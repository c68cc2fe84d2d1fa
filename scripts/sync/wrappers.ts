import { functionText, parametersOf, resultText, signatureOf } from "../../src/core/describe";
import type { Formula } from "../../src/core/formula";
import { fileOf } from "./files";

const head = "// Written by `npm run sync` from the specs in src/core; edits here are lost.";

/** The text of each wrapper file, by file name; "index" imports the others: what has one root is bundled into one scope. */
export function wrappers(catalogue: readonly Formula[]): Map<string, string> {
  const files = new Map<string, string>();
  for (const [family, file] of Object.entries(fileOf)) {
    const own = catalogue.filter((f) => f.spec.family === family);
    if (own.length > 0) files.set(file, fileText(own));
  }
  return files.set("index", [head, "", ...[...files.keys()].map((file) => `import "./${file}";`)].join("\n"));
}

function fileText(formulas: readonly Formula[]): string {
  const names = formulas.map((f) => `${exportName(f)} as ${f.spec.id}_`);
  return [
    head,
    `import { ${names.join(", ")} } from "../core";`,
    'import { answer } from "../edge/sheet";',
    ...formulas.map(wrapper),
  ].join("\n\n");
}

const names = new Map<Formula, string>();
/** The core's name of each formula, needed because a spec does not know what it is exported as. */
export function nameFormulas(core: Record<string, unknown>): void {
  for (const [name, value] of Object.entries(core))
    if (typeof value === "function" && "spec" in value) names.set(value as Formula, name);
}
function exportName(f: Formula): string {
  const name = names.get(f);
  if (!name) throw new Error(`${f.spec.id} is in the catalogue but not exported from src/core/index.ts`);
  return name;
}

function wrapper(f: Formula): string {
  const { spec } = f;
  const parameters = parametersOf(spec);
  const repeating = (name: string) => spec.args[name]?.kind === "rest";
  const doc = [
    functionText(spec),
    `@customfunction ${spec.id}`,
    ...parameters.map((p) => `@param ${p.optional ? `[${p.name}]` : p.name} ${p.text}`),
    `@returns ${resultText(spec)}`,
  ];
  const typed = parameters.map((p) => `${p.name}${p.optional ? "?" : ""}: any[][]${repeating(p.name) ? "[]" : ""}`);
  return `/**\n${doc.map((line) => ` * ${line}`).join("\n")}\n */
export function ${spec.id}(${typed.join(", ")}): any[][] {
  return answer(${spec.id}_, [${parameters.map((p) => p.name).join(", ")}]);
}`;
}

/** The functions of each family with what they answer, for the README. */
export function functionTable(catalogue: readonly Formula[]): string {
  const families = [...new Set(catalogue.map((f) => f.spec.family))];
  const tables = families.map((family) => {
    const rows = catalogue
      .filter((f) => f.spec.family === family)
      .map((f) => `| \`${signatureOf(f.spec)}\` | ${f.spec.text.replaceAll("|", "\\|")} |`);
    return `### ${family}\n\n| function | answer |\n|---|---|\n${rows.join("\n")}`;
  });
  return tables.join("\n\n");
}
