import type { ReferenceCase } from "../case";
import { ambientCases } from "./ambient";
import { bandCases } from "./bands";
import { boreWearCases } from "./boreWear";
import { contactCases } from "./contact";
import { exampleCases } from "./examples";
import { fitCases } from "./fits";
import { flangedCases } from "./flanged";
import { gradeCases } from "./grades";
import { gripCases } from "./grip";
import { heatCases } from "./heat";
import { heatPathCases } from "./heatPaths";
import { loadingCases } from "./loading";
import { unitCases } from "./units";
import { wearCases } from "./wear";

/** Every check against something outside the project, in the order of the families. */
export const referenceCases: readonly ReferenceCase[] = [
  ...exampleCases,
  ...loadingCases,
  ...flangedCases,
  ...contactCases,
  ...gradeCases,
  ...bandCases,
  ...heatCases,
  ...heatPathCases,
  ...ambientCases,
  ...fitCases,
  ...gripCases,
  ...wearCases,
  ...boreWearCases,
  ...unitCases,
];
