import { readFileSync } from "node:fs";
import path from "node:path";
import { isoDeviations } from "../../../src/core/fit/zones/iso286";
import { ToleranceClass } from "../../../src/core/fit/zones/zone";

/** Rows of limit deviations in µm, ISO 286-2, compiled apart from the tables in data/. */
const file = path.join(process.cwd(), "test/reference/fit/iso286_deviations.csv");

/** Upper and lower deviation of a class, µm. */
export function limits(letter: string, grade: number, size: number): [number, number] {
  const { lower, upper } = isoDeviations(new ToleranceClass(letter, grade), size)!;
  return [Math.round(upper * 1e4) / 10, Math.round(lower * 1e4) / 10];
}

/** How many rows agree at the upper end, in the middle and at the lower end of their range; the first that does not is thrown. */
export function agreeingRows(): number {
  const rows = readFileSync(file, "utf8").trim().split("\n").slice(1);
  for (const row of rows) {
    const [, letter, grade, , over, upTo, upper, lower, it] = row.split(",") as [string, string, ...string[]];
    if (Number(upper) - Number(lower) !== Number(it)) throw new Error(`${row}: its own limits do not give its IT`);
    for (const size of [Number(upTo), (Number(over) + Number(upTo)) / 2, Number(over) + 0.001]) {
      // the a and b rows start above 1 mm, as does N above grade 8
      if (size <= 1 && (/^[ab]$/i.test(letter) || (letter === "N" && Number(grade) > 8))) continue;
      const found = limits(letter, Number(grade), size);
      if (found[0] !== Number(upper) || found[1] !== Number(lower))
        throw new Error(`${row}: got ${found.join("/")} at ${size} mm`);
    }
  }
  return rows.length;
}
