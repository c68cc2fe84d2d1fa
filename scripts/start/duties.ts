/** The greenhouse duties with DUTIES' answer, as `bushcell check --table` prints it; a line is that of data/greenhouse/duties.json. */
import { check } from "../../src/cli/check";
import { asTable } from "../../src/cli/print";
import { dutyCells, dutyHeadings } from "../../src/book/greenhouse/dutyRows";

const cells = [dutyHeadings, ...dutyCells].map((row) => [...row]);
const lines = { line: 1, lines: dutyCells.map((_, i) => i + 2) };
process.stdout.write(asTable(check(cells, lines, undefined, "metric")));
