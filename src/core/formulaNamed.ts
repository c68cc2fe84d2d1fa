import { catalogue } from "./families";
import type { Formula } from "./formula";

const byName: ReadonlyMap<string, Formula> = new Map(catalogue.map((f) => [f.spec.id, f]));

/** The function of this name, as formulas write it behind "BUSH."; nothing where there is none. */
export const formulaNamed = (id: string): Formula | undefined => byName.get(id);
