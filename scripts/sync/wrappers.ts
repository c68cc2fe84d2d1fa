import { families } from "../../src/core";
import type { Family } from "../../src/core";
import { functionText, parametersOf } from "../../src/core/describe";
import type { Formula } from "../../src/core/formula";

const head = "// Written by `npm run sync` from the specs in src/core; edits here are lost.";
/** Excel's generator of metadata knows a cell of any kind by this type alone. */
const hostsType =
  "/* oxlint-disable typescript/no-explicit-any -- a cell of any kind, as Excel's generator wants it */";

/** The text of each wrapper file, by family; "index" imports the others: what has one root is bundled into one scope. */
export function wrappers(): Map<string, string> {
  const files = new Map(
    Object.entries<Family>(families).map(([name, { functions }]) => [name, fileText(Object.values(functions))]),
  );
  return files.set("index", [head, "", ...[...files.keys()].map((file) => `import "./${file}";`)].join("\n"));
}

const fileText = (formulas: readonly Formula[]): string =>
  [
    `${head}\n${hostsType}`,
    'import { functions } from "../core";\nimport { answer } from "../edge/sheet";',
    formulas.map(wrapper).join("\n"),
  ].join("\n\n");

function wrapper(f: Formula): string {
  const { spec } = f;
  const parameters = parametersOf(spec);
  const repeating = (name: string) => spec.args[name]?.kind === "rest";
  const doc = [
    functionText(spec),
    `@customfunction ${spec.id}`,
    ...parameters.map((p) => `@param ${p.optional ? `[${p.name}]` : p.name} ${p.text}`),
  ];
  const typed = parameters.map((p) => `${p.name}${p.optional ? "?" : ""}: any[][]${repeating(p.name) ? "[]" : ""}`);
  return `/**\n${doc.map((line) => ` * ${line}`).join("\n")}\n */
export function ${spec.id}(${typed.join(", ")}): any[][] {
  return answer(functions.${spec.id}, [${parameters.map((p) => p.name).join(", ")}]);
}`;
}
