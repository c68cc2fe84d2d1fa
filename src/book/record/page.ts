import { escaped } from "./html";

/** A line of a function's answer. */
export type RecordLine = readonly (string | number)[];

const digits = 6;
/** A cell of an answer inside a page. */
export const text = (cell: string | number | undefined): string =>
  escaped(typeof cell === "number" ? String(Number(cell.toPrecision(digits))) : (cell ?? ""));

/** 32 bits by FNV-1a (Fowler, Noll, Vo), to tell whether two pages start from the same inputs. */
export function markOf(lines: readonly RecordLine[]): string {
  let hash = 0x811c9dc5;
  for (const byte of new TextEncoder().encode(JSON.stringify(lines))) hash = Math.imul(hash ^ byte, 0x01000193) >>> 0;
  return hash.toString(16).padStart(8, "0");
}

/** No page size: A4 and Letter both do. */
export const recordStyle = `
.record { font: 8pt/1.25 system-ui, "DejaVu Sans", sans-serif; color: #1f2b2d; }
.record h1 { font-size: 14pt; margin: 0; color: #1d545c; }
.record h2 { font-size: 8.5pt; margin: 3pt 0 0; color: #1d545c; break-after: avoid; }
.record p { margin: 2pt 0; }
.record table { border-collapse: collapse; margin-bottom: 8pt; }
.record tr { break-inside: avoid; }
.record th, .record td { text-align: left; vertical-align: top; padding: 1pt 6pt 1pt 0; border-bottom: 0.4pt solid #c3cdc8; }
.record .pair { display: grid; grid-template-columns: 1fr 1.4fr; gap: 0 12pt; font-size: 7pt; line-height: 1.2; }
.record .worked { columns: 17rem 2; column-gap: 12pt; font-size: 7pt; line-height: 1.2; }
.record .pair p, .record .worked p { margin: 0; overflow-wrap: anywhere; break-inside: avoid; }
.record small { color: #526062; font-size: 7pt; font-weight: 400; }
.record .criteria { font-size: 7pt; line-height: 1.2; margin-bottom: 3pt; }
.record .criteria th, .record .criteria td { padding: 0 8pt 0 0; }
.record .annex { break-before: page; }
.record .rule, .record .mark { color: #526062; }
.record svg { font-size: 9px; max-width: 70%; height: auto; display: block; margin: 2pt 0; }
.record ol, .record ul { margin: 0; padding-left: 14pt; font-size: 6.5pt; line-height: 1.2; }
.record .cautions { break-inside: avoid; background: #e6e2d3; padding-top: 2pt; padding-bottom: 2pt; }
.record .sign { margin-top: 14pt; break-inside: avoid; break-before: avoid; }
.record .decision { font-size: 9.5pt; line-height: 1.3; }
.record .decision h2 { font-size: 10.5pt; margin-top: 7pt; }
.record .decision dl { margin: 4pt 0; display: grid; grid-template-columns: max-content 1fr; gap: 1pt 10pt; }
.record .decision dt { color: #526062; }
.record .decision dd { margin: 0; }
.record .decision .chosen { font-size: 12pt; font-weight: 600; }
.record .decision ul { font-size: 9pt; line-height: 1.3; }
.record .decision table { font-size: 7.5pt; width: 100%; }
.record .decision .cautions, .record .decision .mark { font-size: 7pt; }
@media print { .record .cautions { print-color-adjust: exact; } }
`;

/** A body as a page of its own, for a file; with a style of its own, where it needs one. */
export const pageOf = (title: string, body: string, style = ""): string => `<!doctype html>
<html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)}</title><style>${recordStyle}${style}body { margin: 12pt auto; max-width: 60rem; padding: 0 12pt; } @media print { body { margin: 0; padding: 0; max-width: none; } }</style></head>
<body class="record">
${body}
</body></html>
`;
