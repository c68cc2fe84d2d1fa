import type { Family } from "../../src/core/formula";

/** The wrappers' file of each family. */
export const fileOf: Record<Family, string> = {
  "Loading, motion, PV": "loading",
  "Grades, limits, verdicts": "grades",
  Duties: "duties",
  "Heat and friction": "heat",
  "Fits and clearance": "fits",
  "Wear and cost": "wear",
  "Units and teaching": "teaching",
};
