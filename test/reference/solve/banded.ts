/** Solver of a symmetric banded system, factored once (Cholesky without roots). */
export function bandSolver(band: readonly Float64Array[]): (right: Float64Array) => Float64Array {
  const width = band[0]!.length - 1;
  band.forEach((row, i) => {
    for (let k = 1; k <= width && i + k < band.length; k++) {
      const factor = row[k]! / row[0]!;
      if (factor === 0) continue;
      for (let m = k; m <= width; m++) band[i + k]![m - k]! -= factor * row[m]!;
    }
  });
  return (right) => {
    const x = Float64Array.from(right);
    band.forEach((row, i) => {
      for (let k = 1; k <= width && i + k < x.length; k++) x[i + k]! -= (row[k]! / row[0]!) * x[i]!;
    });
    for (let i = x.length - 1; i >= 0; i--) {
      let rest = x[i]!;
      for (let k = 1; k <= width && i + k < x.length; k++) rest -= band[i]![k]! * x[i + k]!;
      x[i] = rest / band[i]![0]!;
    }
    return x;
  };
}
