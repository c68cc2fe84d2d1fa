import { present } from "../../core/present";
import type { Picture } from "../../port/sheet";
import { wrapped } from "./wrapped";

/** What stands above a picture that is taken along: its title, then lines of words. */
export interface Heading {
  readonly title: string;
  readonly lines: readonly string[];
}

/** Each goes from an element to those in it, so that only what differs is written. */
const inherited = ["fill", "stroke", "stroke-width", "stroke-dasharray", "font-size", "font-family", "font-weight"];
const namespace = "http://www.w3.org/2000/svg";
const margin = 8;
const titleSize = 13;
const lineSize = 11;
/** Characters of a line that the least wide picture holds. */
const longest = 50;

/** The drawings in a box below each other under their heading, as they look here, as one picture on the ground that they stand on. */
export function pictureOf(box: HTMLElement, { title, lines }: Heading, words: string): Picture {
  const drawings = [...box.querySelectorAll("svg")];
  const width = Math.max(...drawings.map(({ viewBox }) => viewBox.baseVal.width));
  const { color, fontFamily } = getComputedStyle(box);
  const picture = drawn("svg", { xmlns: namespace });
  const ground = drawn("rect", { width: "100%", height: "100%", fill: groundOf(box) });
  const heading = drawn("g", { fill: color, "font-family": fontFamily });
  picture.append(ground, heading);
  let bottom = margin;
  const write = (text: string, size: number, weight: string): void => {
    bottom += size + 4;
    const line = drawn("text", { x: margin, y: bottom - 4, "font-size": size, "font-weight": weight });
    line.textContent = text;
    heading.append(line);
  };
  wrapped(title, longest).forEach((line) => write(line, titleSize, "600"));
  lines.flatMap((line) => wrapped(line, longest)).forEach((line) => write(line, lineSize, "400"));
  for (const drawing of drawings) {
    const { width: own, height } = drawing.viewBox.baseVal;
    const part = copyOf(drawing);
    set(part, { x: 0, y: bottom + margin, width: own, height });
    picture.append(part);
    bottom += margin + height;
  }
  const height = bottom + margin;
  set(picture, { width, height, viewBox: `0 0 ${width} ${height}` });
  return { svg: new XMLSerializer().serializeToString(picture), width, height, name: title, words };
}

type Attributes = Readonly<Record<string, string | number>>;
function set(element: Element, attributes: Attributes): void {
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, String(value));
}
function drawn<K extends keyof SVGElementTagNameMap>(tag: K, attributes: Attributes): SVGElementTagNameMap[K] {
  const made = document.createElementNS(namespace, tag);
  set(made, attributes);
  return made;
}

/** With the styles of the page as attributes, which every program that draws pictures reads. */
function copyOf(drawing: SVGSVGElement): SVGSVGElement {
  const copy = drawing.cloneNode(true) as SVGSVGElement;
  const from = [drawing, ...drawing.querySelectorAll<SVGElement>("*")];
  const to = [copy, ...copy.querySelectorAll<SVGElement>("*")];
  from.forEach((element, i) => {
    const target = present(to[i]);
    const style = getComputedStyle(element);
    const around = element === drawing ? undefined : element.parentElement && getComputedStyle(element.parentElement);
    for (const name of ["class", "role", "aria-labelledby", ...inherited]) target.removeAttribute(name);
    for (const name of inherited) {
      const value = style.getPropertyValue(name);
      if (value !== around?.getPropertyValue(name)) target.setAttribute(name, value.replace(/px\b/g, ""));
    }
    if (style.getPropertyValue("paint-order").startsWith("stroke")) outline(target);
  });
  return copy;
}

/** Not every program draws a stroke below its letters: it becomes a text of its own. */
function outline(text: Element): void {
  text.before(text.cloneNode(true));
  text.setAttribute("stroke", "none");
}

function groundOf(element: Element | null): string {
  for (let at = element; at; at = at.parentElement) {
    const { backgroundColor } = getComputedStyle(at);
    if (!/^rgba\(.*, 0\)$|^transparent$/.test(backgroundColor)) return backgroundColor;
  }
  return "white";
}
