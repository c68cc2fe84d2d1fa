import { depthOf, isFitted, loadOf } from "../loading/conforming";
import { clash } from "../errors";
import type { ChoiceArg, NumberArg } from "../formula";

/** Where a wear rate comes from, and what a rate from flat tests needs beside it. */
export const conformityArgs = {
  from: {
    kind: "choice",
    choices: ["bush", "flat"],
    default: "bush",
    optional: true,
    text: "Tests that gave the wear rate; bushes on their projected area, or flats and pins, whose rate knows nothing of how a load gathers at the bottom of a bore",
  },
  clearance: {
    kind: "length",
    symbol: "C",
    from: 0,
    optional: true,
    text: 'Diametral clearance when new; needed with "flat", 0 is a shaft that fits its bore',
  },
} as const satisfies Record<string, NumberArg | ChoiceArg>;

interface Conformity {
  readonly from: "bush" | "flat";
  readonly clearance?: number;
}

/** Diametral clearance that shapes the wear; none where the rate already holds the shape of a bush. */
export function shapingClearance(wear: Conformity): number | undefined {
  if (wear.from === "bush") return undefined;
  const { clearance } = wear;
  if (clearance === undefined) throw clash("clearance", "clearance is missing: a wear rate from flat tests needs it");
  return clearance;
}

/**
 * A rigid shaft under a load fixed to the bush wears the bore where it touches (Archard's law at each place): it sinks by y with
 * Λ(1 + 2y/C) = 4·k·p·s/C, k·p·s being the wear of a flat. Without clearance y = (4/π)·k·p·s; always y ≤ that + (4/π − 1)·C/2.
 */
export const sinkOf = (flatWear: number, clearance: number): number =>
  isFitted(clearance, flatWear) ? (4 / Math.PI) * flatWear : (clearance / 2) * depthOf((4 * flatWear) / clearance);

/** The wear of a flat at which a shaft has sunk so far: `sinkOf` turned round. */
export const flatWearOf = (sink: number, clearance: number): number =>
  isFitted(clearance, sink) ? (Math.PI / 4) * sink : (clearance / 4) * loadOf((2 * sink) / clearance);
