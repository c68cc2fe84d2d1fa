/** `npm run oracle`: the core's quantities against native formulas that LibreOffice recalculates, and a wrong one that it must catch. */
import { mkdtempSync } from "node:fs";
import os from "node:os";
import path from "node:path";
import { officePath } from "../lib/office";
import { canary, cases } from "./cases";
import { compare, tolerance } from "./compare";

if (!officePath()) {
  console.error("LibreOffice is not installed (Debian: apt-get install --no-install-recommends libreoffice-calc).");
  process.exit(1);
}
const found = await compare([...cases, canary], mkdtempSync(path.join(os.tmpdir(), "bushcell-oracle-")));
const caught = found.pop()!;
for (const { id, computed, core, relative } of found)
  console.log(
    `${relative <= tolerance ? "ok   " : "WRONG"} ${id.padEnd(16)} ${String(core).padEnd(24)} ${String(computed).padEnd(24)} ${relative.toExponential(1)}`,
  );
const isSound = found.every(({ relative }) => relative <= tolerance) && caught.relative > tolerance;
console.log(
  `The wrong value was ${caught.relative > tolerance ? "caught" : "NOT caught"} (${caught.relative.toExponential(1)}).`,
);
process.exit(isSound ? 0 : 1);
