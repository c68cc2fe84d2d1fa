import fc from "fast-check";
import { catalogue } from "../../src/core";
import { answer } from "../../src/edge/sheet";
import { CellError, host } from "../support";
import { faultIn, hostileCall } from "./hostile";

/**
 * Whatever comes in, only finite numbers, text and named errors come out. FUZZ_CALLS and FUZZ_SEED in the environment
 * ask for more calls or others; a failure prints the seed and the smallest call that fails.
 */
const calls = wholeNumber("FUZZ_CALLS", 200_000);
const seed = wholeNumber("FUZZ_SEED", 20261125);
const isError = (cell: unknown): boolean => cell instanceof CellError;

/** What judges a duty over and over answers a call in milliseconds: a quarter of a share each, and the others take the rest. */
const slow = new Set(["DUTYBAND", "DUTYSHEET", "DUTYROOM", "FITTABLE"]);
const shareOf = (id: string): number => (slow.has(id) ? 1 / 4 : 1);
const shares = catalogue.reduce((sum, { spec }) => sum + shareOf(spec.id), 0);

const each = catalogue.map((f) => [f.spec.id, f] as const);

test.each(each)("%s", (id, f) => {
  const numRuns = Math.ceil((calls * shareOf(id)) / shares);
  fc.assert(
    fc.property(hostileCall(f), (given) => {
      const fault = faultIn(f, answer(f, given, host), isError);
      if (fault) throw new Error(fault);
    }),
    { numRuns, seed },
  );
});

function wholeNumber(name: string, otherwise: number): number {
  const text = process.env[name] ?? String(otherwise);
  if (!/^[1-9]\d*$/.test(text)) throw new Error(`${name} must be a whole number from 1, got "${text}"`);
  return Number(text);
}
