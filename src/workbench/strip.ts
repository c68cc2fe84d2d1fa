import { capitalised } from "../core/capitalised";
import { errorAnchor, functionPage } from "../core/helpPage";
import { addressOf } from "../port/address";
import { sheetName, signature } from "./adapter/metadata";
import type { FunctionMeta, Metadata } from "./adapter/metadata";
import { blockerText } from "./blocker";
import { causeOf } from "./cause";
import type { GridPort, LaidPicture } from "./grid/port";
import type { Corner, Place, ReadCell } from "../port/sheet";

/** The strip beside the sheet: what stands in the selected cell, why it is an error, what its functions do. */
export function showSelection(strip: HTMLElement, spoken: HTMLElement, port: GridPort, metadata: Metadata): void {
  const update = (): void => {
    const place = port.selection();
    const cell = port.read({ ...place, rows: 1, cols: 1 })[0]?.[0];
    if (!cell) return;
    const at = addressOf(place.row, place.col);
    const fault = faultOf(port, place, cell);
    const below = port.pictures(place.sheet).filter((picture) => reaches(picture.place, place));
    strip.replaceChildren(...describe(`${at} on ${place.sheet}`, cell, fault, metadata), ...below.map(shown));
    const held = fault ? [fault.code, fault.message, fault.where].join(" ") : cell.text || "empty";
    const said = [`${at}: ${held}`, ...below.map(pictureText)].join(" ");
    // the grid itself is a canvas, so a screen reader hears the selection from here
    if (spoken.textContent !== said) spoken.textContent = said;
  };
  port.watch(update);
  update();
}

const reaches = ({ row, col, rows, cols }: Place, cell: Corner): boolean =>
  cell.row >= row && cell.row < row + rows && cell.col >= col && cell.col < col + cols;
/** What a picture over the cell shows, which the canvas tells nobody. */
const pictureText = ({ name, words }: LaidPicture): string =>
  `Picture ${[name, words].filter(Boolean).join(": ")}`.trim();
const shown = (picture: LaidPicture): HTMLElement => element("p", pictureText(picture));

interface Fault {
  readonly code: string;
  readonly message: string;
  readonly where: string;
  /** The id of the function that made it. */
  readonly by?: string;
}

function faultOf(port: GridPort, place: Place, cell: ReadCell): Fault | undefined {
  if (!cell.error) return undefined;
  const { code, message, by } = cell.error;
  if (code === "#SPILL!") return { code, message: blockerText(port, place), where: "" };
  if (message) return { code, message: sentence(message), where: "", by };
  const cause = causeOf(port, place, cell);
  if (!cause)
    return { code, message: "A function of the sheet itself made this error; it carries no message.", where: "" };
  const where = `It came in with ${addressOf(cause.row, cause.col)}${cause.sheet === place.sheet ? "" : ` on ${cause.sheet}`}.`;
  return { code, message: sentence(cause.message), where, by: cause.by };
}

const sentence = (message: string): string => `${capitalised(message)}.`;

function describe(title: string, cell: ReadCell, fault: Fault | undefined, metadata: Metadata): Node[] {
  const formula = cell.formula ?? cell.spilledFrom?.formula;
  const out: Node[] = [element("h2", title)];
  if (fault) out.push(errorBox(fault, metadata));
  else out.push(element("p", cell.text || "empty", cell.text === "" ? "quiet" : "value"));
  if (!formula) return [...out, element("p", "No formula. Type = and BUSH. to see the functions.", "quiet")];
  out.push(element("p", element("code", formula)));
  const from = cell.spilledFrom;
  if (from) out.push(element("p", `Spilled from ${addressOf(from.row, from.col)}.`, "quiet"));
  return [...out, ...functionsIn(formula, metadata).flatMap(help)];
}

function errorBox({ code, message, where, by }: Fault, { functions }: Metadata): HTMLElement {
  const box = element("div", element("strong", code), "error");
  box.append(element("p", message));
  if (where) box.append(element("p", where));
  const maker = functions.find(({ id }) => id === by);
  if (maker) box.append(element("p", errorLink(maker, message)));
  return box;
}

/** Leads to what the documentation says of such an error. */
function errorLink(maker: FunctionMeta, message: string): HTMLElement {
  const link = document.createElement("a");
  const names = maker.parameters.map(({ name }) => name);
  link.href = `docs/${functionPage(maker.id)}#${errorAnchor(names, message)}`;
  link.target = "_blank";
  link.rel = "noopener";
  link.textContent = `Errors of ${sheetName(maker)}`;
  return link;
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
