/** "PV limit [psi*ft/min]" as name and unit; round brackets serve too, and a percent sign needs none: "duty %". */
export function splitHeading(heading: string): { name: string; unit?: string } {
  const found = /^(.*?)\s*(?:\[([^\]]*)\]|\((.*)\)|(%))\s*$/.exec(heading);
  if (!found) return { name: heading.trim() };
  const unit = (found[2] ?? found[3] ?? found[4] ?? "").trim();
  if (unit === "" || unit === "-" || unit === "–") return { name: found[1]!.trim() };
  return { name: found[1]!.trim(), unit: unit === "1" ? "ratio" : unit };
}
