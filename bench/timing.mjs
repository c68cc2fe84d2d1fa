/** The best of many runs, in milliseconds: noise only ever adds. */
export function best(run, { rounds = 50, least = 1500 } = {}) {
  let fastest = Infinity;
  const end = performance.now() + least;
  for (let i = 0; i < rounds || performance.now() < end; i++) {
    const start = performance.now();
    run();
    fastest = Math.min(fastest, performance.now() - start);
  }
  return fastest;
}
