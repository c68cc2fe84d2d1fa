import { CellError, plainHost as host } from "../src/edge/host";
import type { Host } from "../src/edge/host";
import { gathered } from "../src/edge/gathered";
import type { Arg, Formula } from "../src/core/formula";
import { isNumberArg } from "../src/core/formula";
import { kinds } from "../src/core/kinds";
import type { Kind, System } from "../src/core/kinds";
import { convert } from "../src/core/units/conversion";
import { fromWorking } from "../src/core/units/scale";
import { answer } from "../src/edge/sheet";

/** The host of the tests and its error cells. */
export { CellError, host };

/** A host whose errors are text: "#N/A why". */
export const textHost: Host = { error: (code, why) => String(new CellError(code, why)) };

/** The message of an answer whose first cell is an error. */
export const message = (cells: unknown[][]): string | undefined => (cells[0]![0] as CellError).message;

/** The card of a bush 20/23 at rest, pressed dry into an aluminium housing, on a steel shaft; other or further fields over it, blank ones out. */
export function pressedBush(more: Readonly<Record<string, unknown>> = {}): [string, unknown][] {
  const fields = {
    ...{ load: 500, bore: 20, length: 20, outside: 23, motion: "static", temperature: "-20 to 80" },
    ...{ "bore zone": "E10", "outside zone": "+0.05/+0.10", "housing zone": "H7", "shaft zone": "f7" },
    ...{
      housing: "aluminium alloy",
      shaft: "soft steel",
      "moisture at assembly": "dry",
      "share of grip kept": "100 %",
    },
  };
  return Object.entries({ ...fields, ...more }).filter(([, value]) => value !== "");
}

export type Typed = number | string | readonly (readonly unknown[])[];

/** Calls a formula with arguments as typed in a sheet, `units` last where given; what follows a rest argument is gathered. */
export function call(f: Formula, given: readonly unknown[], units?: System): unknown[][] {
  const args = Object.values<Arg>(f.spec.args);
  const shaped = padTo(gathered(f, given), args.length);
  return answer(f, units ? [...shaped, units] : shaped, host);
}

const padTo = (given: readonly unknown[], length: number): unknown[] => [
  ...given,
  ...Array(length - given.length).fill(null),
];

/** An argument typed in metric, as it would be typed in inch units; text that carries its meaning stays. */
export function inInch(arg: Arg, value: unknown): unknown {
  if (Array.isArray(value))
    return value.map((row: unknown[]) =>
      row.map((cell) =>
        arg.kind === "list" && arg.of !== "text" ? inInch({ ...arg, kind: arg.of, symbol: "" }, cell) : cell,
      ),
    );
  if (arg.kind === "span")
    return typeof value === "string" ? `${value} °C` : fromWorking("temperature", value as number, "inch");
  if (arg.kind === "notation" && /^[+-]/.test(String(value)))
    return String(value).replace(/[+-][\d.]+/g, (x) => signed(fromWorking("length", Number(x), "inch")));
  return isNumberArg(arg) && typeof value === "number" ? fromWorking(arg.kind, value, "inch") : value;
}
const signed = (x: number): string => `${x < 0 ? "" : "+"}${x}`;

/** The kind or unit of each column of a spilled answer, from its heading and its own unit column. */
export function asInch(metric: unknown, unit: string): unknown {
  const kind = (Object.keys(kinds) as Kind[]).find((k) => kinds[k].metric === unit && kinds[k].inch !== unit);
  return typeof metric === "number" && kind ? convertKind(kind, metric) : metric;
}
const convertKind = (kind: Kind, value: number): number =>
  kind === "temperature" || kind === "rise"
    ? fromWorking(kind, value, "inch")
    : convert(value, kinds[kind].metric, kinds[kind].inch);
