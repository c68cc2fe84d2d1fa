/** "PV limit [psi*ft/min]" as name and unit; round brackets serve too, and a percent sign needs none: "duty %". */
export function splitHeading(heading: string): { name: string; unit?: string } {
  const text = heading.trim();
  const at = unitAt(text);
  if (at < 0) return { name: text };
  const unit = (text.endsWith("%") ? "%" : text.slice(at + 1, -1)).trim();
  const name = text.slice(0, at).trim();
  if (unit === "" || unit === "-" || unit === "–") return { name };
  return { name, unit: unit === "1" ? "ratio" : unit };
}

/** Where the unit of a heading begins; a unit may hold round brackets of its own, but no square ones. */
function unitAt(text: string): number {
  if (text.endsWith("%")) return text.length - 1;
  if (text.endsWith("]")) return text.lastIndexOf("[");
  return text.endsWith(")") ? text.indexOf("(") : -1;
}
