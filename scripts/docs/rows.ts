import { scaleLinear } from "d3-scale";
import { figureOf, mark as markAt, round, signed, width } from "./chart";
import type { Axis, Told } from "./chart";

/** One thing with what it may come to: from end to end, most of it, and a single figure. */
export interface Row {
  readonly name: string;
  readonly spread?: readonly [number, number];
  readonly most?: readonly [number, number];
  readonly mark?: number;
}
export interface Rows extends Told {
  readonly x: Axis;
  readonly rows: readonly Row[];
  /** What the parts of the rows are, of those that there are. */
  readonly legend: { readonly spread?: string; readonly most?: string; readonly mark?: string };
  readonly limit: { readonly label: string; readonly at: number };
}

const top = 12;
const right = width - 18;
/** Heights of a row, of a line of its name, and of one of the legend. */
const [high, lead, line] = [28, 13, 17];
/** Width of a letter on average, and letters that a line of a name has at most where a comma lets it break. */
const [letter, longest] = [6.9, 16];

/** A picture of bars and marks in rows, each with its name in front. */
export function rowChart({ x, rows, legend, limit, ...told }: Rows): string {
  const names = rows.map(({ name }) => linesOf(name));
  const left = 14 + letter * Math.max(...names.flat().map(({ length }) => length));
  const bottom = top + rows.length * high;
  const across = scaleLinear([x.from, x.to], [left, right]);
  const at = (value: number): number => round(across(value));
  const grid = across.ticks(4).map((value) => {
    const number = `<text x="${at(value)}" y="${bottom + 16}" text-anchor="middle">${signed(value)}</text>`;
    return `<path class="grid" d="M${at(value)} ${top}V${bottom}"/>${number}`;
  });
  const drawn = rows.map(({ spread, most, mark }, i) => {
    const y = top + (i + 0.5) * high;
    return [
      ...names[i]!.map((part, j, { length }) => {
        const down = round(y + 4 + (j - (length - 1) / 2) * lead);
        return `<text x="${round(left - 8)}" y="${down}" text-anchor="end">${part}</text>`;
      }),
      spread && bar("spread", at(spread[0]), at(spread[1]), y),
      most && bar("spread most", at(most[0]), at(most[1]), y),
      mark !== undefined && markAt(at(mark), y),
    ];
  });
  const shown = [
    legend.spread && ([legend.spread, (y: number) => bar("spread", 14, 44, y)] as const),
    legend.most && ([legend.most, (y: number) => bar("spread most", 14, 44, y)] as const),
    legend.mark && ([legend.mark, (y: number) => markAt(29, y)] as const),
    [limit.label, (y: number) => `<path class="line limit" d="M14 ${y}h30"/>`] as const,
  ].filter((one) => typeof one === "object");
  const named = shown.map(([label, sample], i) => {
    const y = bottom + 52 + i * line;
    return `${sample(y - 4)}<text x="52" y="${y}">${label}</text>`;
  });
  return figureOf(told, bottom + 46 + shown.length * line, [
    ...grid,
    `<path class="axis" d="M${round(left)} ${top}V${bottom}H${right}"/>`,
    `<path class="line limit" d="M${at(limit.at)} ${top}V${bottom}"/>`,
    ...drawn.flat().filter((part) => typeof part === "string"),
    `<text x="${round((left + right) / 2)}" y="${bottom + 33}" text-anchor="middle">${x.label}</text>`,
    ...named,
  ]);
}

const bar = (look: string, from: number, to: number, y: number): string =>
  `<path class="${look}" d="M${from} ${y}H${to}"/>`;

/** A name in one line, or in two, the last part below, where it is long. */
function linesOf(name: string): readonly string[] {
  const at = name.lastIndexOf(", ");
  return name.length <= longest || at < 0 ? [name] : [name.slice(0, at + 1), name.slice(at + 2)];
}

/** An axis between round numbers around all values and 0, or another value to begin at. */
export function axisOf(label: string, values: readonly number[], begin = 0): Axis {
  const [from, to] = scaleLinear([Math.min(begin, ...values), Math.max(begin, ...values)], [0, 1])
    .nice(4)
    .domain() as [number, number];
  return { label, from, to };
}
