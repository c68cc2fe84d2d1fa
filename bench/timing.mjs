/** The best of many runs, in milliseconds: noise only ever adds. */
export const best = (run, options) => bestOfEach([run], options)[0];

/** The best of each where they take turns, so that a slow moment of the machine falls on all of them. */
export function bestOfEach(runs, { rounds = 50, least = 2000 } = {}) {
  const fastest = runs.map(() => Infinity);
  const end = performance.now() + least;
  for (let i = 0; i < rounds || performance.now() < end; i++)
    runs.forEach((run, k) => {
      const start = performance.now();
      run();
      fastest[k] = Math.min(fastest[k], performance.now() - start);
    });
  return fastest;
}
