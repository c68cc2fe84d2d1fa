import { escaped } from "./html";

const width = 520;
const left = 150;
const row = 16;

/** A bar for each criterion with a use, and a line at 100 %; the bar of one that exceeds it is hatched and named. */
export function usesPicture(uses: readonly (readonly [name: string, use: number])[]): string {
  const most = Math.max(1.2, ...uses.map(([, use]) => Math.min(use, 3)));
  const x = (use: number): number => left + ((width - 45 - left) * use) / most;
  const bars = uses.map(([name, use], i) => {
    const y = 4 + i * row;
    const end = x(Math.min(use, most));
    const fill = use > 1 ? "url(#over)" : "#5a9193";
    return `<text x="${left - 6}" y="${y + 10}" text-anchor="end">${escaped(name)}</text><rect x="${left}" y="${y}" width="${(end - left).toFixed(1)}" height="11" fill="${fill}" stroke="#1d545c"/><text x="${(end + 4).toFixed(1)}" y="${y + 10}">${Math.round(use * 100)} %</text>`;
  });
  const height = uses.length * row + 8;
  const words = uses.map(([name, use]) => `${name} ${Math.round(use * 100)} %`).join(", ");
  return `<svg viewBox="0 0 ${width} ${height}" width="${width}" height="${height}" role="img" aria-label="${escaped(`Use of each limit: ${words}`)}"><defs><pattern id="over" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><rect width="5" height="5" fill="#f4d7cd"/><path d="M0 0V5" stroke="#6b1d12" stroke-width="2"/></pattern></defs>${bars.join("")}<path d="M${x(1)} 0V${height}" stroke="#6b1d12" stroke-dasharray="3 2"/></svg>`;
}
