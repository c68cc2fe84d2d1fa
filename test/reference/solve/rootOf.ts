/** Where a rising function crosses zero, by halving the interval. */
export function rootOf(rising: (x: number) => number, low: number, high: number, halvings = 80): number {
  let [below, above] = [low, high];
  for (let i = 0; i < halvings; i++) {
    const middle = (below + above) / 2;
    if (rising(middle) < 0) below = middle;
    else above = middle;
  }
  return (below + above) / 2;
}
