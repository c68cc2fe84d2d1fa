/** Solves below·x[i−1] + on·x[i] + above·x[i+1] = right by elimination. */
export function tridiagonal(
  below: readonly number[],
  on: readonly number[],
  above: readonly number[],
  right: readonly number[],
): number[] {
  const c = [...on];
  const x = [...right];
  for (let i = 1; i < c.length; i++) {
    const factor = below[i]! / c[i - 1]!;
    c[i]! -= factor * above[i - 1]!;
    x[i]! -= factor * x[i - 1]!;
  }
  for (let i = c.length - 1; i >= 0; i--) x[i] = (x[i]! - (i + 1 < c.length ? above[i]! * x[i + 1]! : 0)) / c[i]!;
  return x;
}
