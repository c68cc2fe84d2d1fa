import { readDuties } from "../../src/core/duties";
import type { NamedDuty } from "../../src/core/duties";
import { dutyCells, dutyHeadings } from "../../src/book/greenhouse/dutyRows";

/** The greenhouse's duties as their table reads. */
export const table = readDuties(
  [dutyHeadings, ...dutyCells].map((row) => [...row]),
  "metric",
  "duties",
);
export const duties = table.lines.map(({ duty }) => duty as NamedDuty);
