/** "PV limit [psi*ft/min]" as name and unit; round brackets serve too. */
export function splitHeading(heading: string): { name: string; unit?: string } {
  const found = /^(.*?)\s*(?:\[([^\]]*)\]|\((.*)\))\s*$/.exec(heading);
  if (!found) return { name: heading.trim() };
  const unit = (found[2] ?? found[3] ?? "").trim();
  return { name: found[1]!.trim(), ...(unit && unit !== "-" && unit !== "–" ? { unit } : {}) };
}
