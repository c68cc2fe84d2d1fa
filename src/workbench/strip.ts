import { addressOf } from "./address";
import { sheetName, signature } from "./adapter/metadata";
import type { FunctionMeta, Metadata } from "./adapter/metadata";
import type { ReadCell, SheetPort } from "./port";

/** The strip beside the sheet: what stands in the selected cell, why it is an error, what its functions do. */
export function showSelection(strip: HTMLElement, spoken: HTMLElement, port: SheetPort, metadata: Metadata): void {
  const update = (): void => {
    const place = port.selection();
    if (!place) return;
    const cell = port.read({ ...place, rows: 1, cols: 1 })[0]?.[0];
    if (!cell) return;
    const at = addressOf(place.row, place.col);
    strip.replaceChildren(...describe(at, place.sheet, cell, metadata));
    const said = sentence(at, cell);
    if (spoken.textContent !== said) spoken.textContent = said;
  };
  port.watch(update);
  update();
}

/** One line for the screen reader: the grid itself is a canvas. */
function sentence(at: string, cell: ReadCell): string {
  if (cell.error) return `${at}: ${cell.error.code}, ${messageOf(cell)}`;
  return `${at}: ${cell.text === "" ? "empty" : cell.text}`;
}

const messageOf = (cell: ReadCell): string =>
  cell.error?.message ?? "no message came with it: it was made by a built-in function or by the sheet itself";

function describe(at: string, sheet: string, cell: ReadCell, metadata: Metadata): Node[] {
  const formula = cell.formula ?? cell.spilledFrom?.formula;
  const out: Node[] = [element("h2", `${at} on ${sheet}`)];
  if (cell.error) out.push(errorBox(cell));
  else out.push(element("p", cell.text === "" ? "empty" : cell.text, cell.text === "" ? "quiet" : "value"));
  if (!formula) return out;
  out.push(element("p", element("code", formula)));
  const from = cell.spilledFrom;
  if (from) out.push(element("p", `Spilled from ${addressOf(from.row, from.col)}.`, "quiet"));
  return [...out, ...functionsIn(formula, metadata).flatMap(help)];
}

function errorBox(cell: ReadCell): HTMLElement {
  const message = messageOf(cell);
  const box = element("div", element("strong", cell.error?.code ?? ""), "error");
  box.append(message.charAt(0).toUpperCase() + message.slice(1));
  return box;
}

/** The functions of ours that a formula uses, in the order in which they stand. */
function functionsIn(formula: string, { functions }: Metadata): FunctionMeta[] {
  const text = formula.toUpperCase().replaceAll(/"[^"]*"/g, '""');
  return functions
    .map((meta) => ({ meta, at: text.indexOf(`${sheetName(meta)}(`) }))
    .filter(({ at }) => at >= 0)
    .sort((a, b) => a.at - b.at)
    .map(({ meta }) => meta);
}

function help(meta: FunctionMeta): Node[] {
  const list = document.createElement("dl");
  for (const { name, description = "", optional } of meta.parameters) {
    const term = element("dt", name);
    if (optional) term.append(element("span", " optional"));
    list.append(term, element("dd", description));
  }
  return [
    element("h3", sheetName(meta)),
    element("p", meta.description ?? ""),
    element("p", element("code", signature(meta))),
    list,
  ];
}

function element(tag: string, content: string | Node, className = ""): HTMLElement {
  const node = document.createElement(tag);
  node.append(content);
  if (className) node.className = className;
  return node;
}
