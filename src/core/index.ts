import type { Formula } from "./formula";
import { sleevePressure } from "./load/pressure";

/** Every function in the order of the docs; wrappers, hints, docs, tests and benches iterate it. */
export const catalogue: readonly Formula[] = [sleevePressure];

export { sleevePressure };
