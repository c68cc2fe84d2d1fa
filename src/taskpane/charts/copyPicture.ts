import { present } from "../../core/present";

const scale = 3;

/** The picture as it looks here, its styles written into it, on the ground that it stands on. */
function standalone(svg: SVGSVGElement): { source: string; width: number; height: number } {
  const copy = svg.cloneNode(true) as SVGSVGElement;
  const wanted = [
    "fill",
    "stroke",
    "stroke-width",
    "stroke-dasharray",
    "font-size",
    "font-family",
    "font-weight",
    "paint-order",
  ];
  const from = [svg, ...svg.querySelectorAll<SVGElement>("*")];
  const to = [copy, ...copy.querySelectorAll<SVGElement>("*")];
  from.forEach((element, i) => {
    const style = getComputedStyle(element);
    for (const name of wanted) present(to[i]).style.setProperty(name, style.getPropertyValue(name));
  });
  const { width, height } = svg.viewBox.baseVal;
  copy.setAttribute("xmlns", "http://www.w3.org/2000/svg");
  copy.setAttribute("width", String(width * scale));
  copy.setAttribute("height", String(height * scale));
  copy.style.background = groundOf(svg);
  return { source: new XMLSerializer().serializeToString(copy), width: width * scale, height: height * scale };
}

function groundOf(element: Element | null): string {
  for (let at = element; at; at = at.parentElement) {
    const { backgroundColor } = getComputedStyle(at);
    if (!/^rgba\(.*, 0\)$|^transparent$/.test(backgroundColor)) return backgroundColor;
  }
  return "white";
}

/** The picture as a PNG on the clipboard. */
export async function copyPicture(svg: SVGSVGElement): Promise<void> {
  const { source, width, height } = standalone(svg);
  const image = new Image();
  image.src = `data:image/svg+xml;charset=utf-8,${encodeURIComponent(source)}`;
  await image.decode();
  const canvas = document.createElement("canvas");
  Object.assign(canvas, { width, height });
  const pen = canvas.getContext("2d");
  pen?.drawImage(image, 0, 0);
  const blob = pen && (await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, "image/png")));
  if (!blob) throw new Error("The picture could not be made.");
  await navigator.clipboard.write([new ClipboardItem({ "image/png": blob })]);
}
