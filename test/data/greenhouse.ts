import greenhouse from "../../data/greenhouse/duties.json";
import { sleevePressure, strokeSpeed, swingSpeed, turningSpeed, washerPressure, washerSpeed } from "../../src/core";
import type { Duty } from "../../src/core/grade";
import type { Motion } from "../../src/core/grade";
import { readSpan } from "../../src/core/span";
import { readQuantity } from "../../src/core/units";

/** The greenhouse's rows as duties, by the core's own pressures and speeds. */
export interface Row {
  readonly id: string;
  readonly name: string;
  readonly part: "sleeve" | "washer";
  readonly motion: Motion;
  readonly load: number | string;
  readonly bore?: number | string;
  readonly length?: number | string;
  readonly inner?: number | string;
  readonly outer?: number | string;
  readonly rpm?: number;
  readonly swing?: number;
  readonly stroke?: number;
  readonly cycles?: number;
  readonly temperature: number | string;
  readonly wet: boolean;
  readonly shock: boolean;
  readonly shaft: string;
  readonly grade: string;
  readonly wear?: { readonly hours: number; readonly allowance: number };
  readonly outside?: number;
  readonly clearance?: number;
  readonly note: string;
}

export const rows = greenhouse as readonly Row[];

const mm = (cell: number | string | undefined) => readQuantity("length", "length", String(cell), "metric");

export function dutyOf(row: Row): Duty {
  const { motion, wet, shock, shaft, wear } = row;
  const fit =
    row.outside === undefined ? {} : { fit: { bore: mm(row.bore), outside: row.outside, clearance: row.clearance! } };
  return {
    pressure: pressureOf(row),
    speed: speedOf(row),
    temperature: readSpan("temperature", row.temperature, "metric"),
    motion,
    wet,
    shock,
    shaft,
    ...(wear ? { wear } : {}),
    ...fit,
  };
}

function pressureOf(row: Row): number {
  const load = readQuantity("load", "force", String(row.load), "metric");
  return row.part === "sleeve"
    ? sleevePressure({ load, bore: mm(row.bore), length: mm(row.length) })
    : washerPressure({ load, inner: mm(row.inner), outer: mm(row.outer) });
}

function speedOf(row: Row): number {
  const { motion, part, cycles = 0 } = row;
  if (motion === "static") return 0;
  if (motion === "linear") return strokeSpeed({ stroke: row.stroke!, cycles });
  if (motion === "swinging") return swingSpeed({ bore: mm(row.bore), swing: row.swing!, cycles });
  return part === "sleeve"
    ? turningSpeed({ bore: mm(row.bore), rpm: row.rpm! })
    : washerSpeed({ inner: mm(row.inner), outer: mm(row.outer), rpm: row.rpm! });
}
