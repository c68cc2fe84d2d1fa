import fc from "fast-check";

/** Laws over random numbers from one seed; without a matcher, of which there would be thousands. */
export const seed = 20261125;
export const check = <T>(arbitrary: fc.Arbitrary<T>, law: (given: T) => void, numRuns = 300): void =>
  fc.assert(fc.property(arbitrary, law), { seed, numRuns });
export const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
export function equal(a: number, b: number, relative = 1e-9): void {
  const isEqual = Math.abs(a - b) <= relative * Math.max(Math.abs(a), Math.abs(b)) + 1e-300;
  if (!isEqual) throw new Error(`${a} is not ${b}`);
}

/** The answer for a rising argument, which may never go the other way. */
export function rises(direction: 1 | -1, range: [number, number], answer: (x: number) => number): void {
  check(fc.tuple(between(...range), between(...range)), ([a, b]) => {
    const [low, high] = a < b ? [a, b] : [b, a];
    const step = direction * (answer(high) - answer(low));
    const isRising = step >= -1e-9 * Math.abs(answer(low));
    if (!isRising) throw new Error(`from ${low} to ${high} the answer goes the other way: ${step}`);
  });
}
