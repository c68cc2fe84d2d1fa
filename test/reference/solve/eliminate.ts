/** Solves rows of coefficients with their right side behind them, by elimination with pivots. */
export function eliminate(rows: number[][]): number[] {
  const n = rows.length;
  for (let i = 0; i < n; i++) {
    let pivot = i;
    for (let k = i + 1; k < n; k++) if (Math.abs(rows[k]![i]!) > Math.abs(rows[pivot]![i]!)) pivot = k;
    [rows[i], rows[pivot]] = [rows[pivot]!, rows[i]!];
    for (let k = i + 1; k < n; k++) {
      const factor = rows[k]![i]! / rows[i]![i]!;
      for (let m = i; m <= n; m++) rows[k]![m]! -= factor * rows[i]![m]!;
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let i = n - 1; i >= 0; i--) {
    let sum = rows[i]![n]!;
    for (let m = i + 1; m < n; m++) sum -= rows[i]![m]! * x[m]!;
    x[i] = sum / rows[i]![i]!;
  }
  return x;
}
