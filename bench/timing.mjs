/** The best of many runs, in milliseconds: noise only ever adds. */
export function best(run, { rounds = 15, least = 30 } = {}) {
  let least_ = Infinity;
  const end = performance.now() + least;
  for (let i = 0; i < rounds || performance.now() < end; i++) {
    const start = performance.now();
    run();
    least_ = Math.min(least_, performance.now() - start);
  }
  return least_;
}
