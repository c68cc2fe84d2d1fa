import { readFileSync } from "node:fs";
import path from "node:path";
import { loadFunctions } from "./host.mjs";

const file = path.join(import.meta.dirname, "../data/greenhouse/duties.json");

/** The greenhouse duties as a plain-text table, every number from the built functions. */
export async function dutyTable() {
  const { call } = loadFunctions();
  const duties = JSON.parse(readFileSync(file, "utf8"));
  const heading = ["duty", "grade", "pressure", "speed", "PV", "verdict"];
  const units = ["", "", "MPa", "m/s", "MPa·m/s", ""];
  const rows = duties.map((duty) => {
    const pressure = one(pressureOf(call, duty));
    const speed = one(speedOf(call, duty));
    const pv = one(call("PVVALUE", pressure, speed));
    const verdict = one(call("VERDICT", duty.grade, pressure, speed, duty.temperature, duty.motion));
    return [duty.name, duty.grade, number(pressure), number(speed), number(pv), verdict];
  });
  return layOut([heading, units, ...rows]);
}

export const pressureOf = (call, { part, load, bore, length, inner, outer }) =>
  part === "washer" ? call("WASHERPRESSURE", load, inner, outer) : call("PRESSURE", load, bore, length);

export function speedOf(call, { part, motion, bore, inner, outer, rpm, swing, cycles, stroke }) {
  if (motion === "static") return [[0]];
  if (motion === "linear") return call("STROKESPEED", stroke, cycles);
  if (motion === "swinging") return call("SWINGSPEED", bore, swing, cycles);
  return part === "washer" ? call("WASHERSPEED", inner, outer, rpm) : call("SPEED", bore, rpm);
}

/** A single answer as text or number; an error as its message. */
const one = ([[cell]]) => (cell?.message ? `${cell.code} ${cell.message}` : cell);
const number = (value) => (typeof value === "number" ? value.toPrecision(3) : String(value));

function layOut(rows) {
  const widths = rows[0].map((_, i) => Math.max(...rows.map((row) => row[i].length)));
  return rows
    .map((row) =>
      row
        .map((cell, i) => cell.padEnd(widths[i]))
        .join("  ")
        .trimEnd(),
    )
    .join("\n");
}
