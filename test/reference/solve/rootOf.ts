/** Where a rising function crosses zero, by halving the interval. */
export function rootOf(rising: (x: number) => number, low: number, high: number): number {
  let [below, above] = [low, high];
  for (let i = 0; i < 80; i++) {
    const middle = (below + above) / 2;
    if (rising(middle) < 0) below = middle;
    else above = middle;
  }
  return (below + above) / 2;
}
