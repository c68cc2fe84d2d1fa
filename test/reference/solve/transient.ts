/** A step of a cycle: what is heated towards, and for how long. */
interface Step {
  readonly steady: number;
  readonly time: number;
}

/** The greatest value of τ·dθ/dt = S(t) − θ, marched cycle after cycle (Runge-Kutta) until one ends as it began. */
export function periodicPeak(steps: readonly Step[], timeconstant: number): number {
  let [theta, peak] = [0, 0];
  for (let cycle = 0; cycle < 400; cycle++) {
    const start = theta;
    peak = theta;
    for (const { steady, time } of steps) {
      const n = Math.ceil((time / timeconstant) * 40) + 4;
      const h = time / n;
      const slope = (value: number) => (steady - value) / timeconstant;
      for (let i = 0; i < n; i++) {
        const k1 = slope(theta);
        const k2 = slope(theta + (h / 2) * k1);
        const k3 = slope(theta + (h / 2) * k2);
        const k4 = slope(theta + h * k3);
        theta += (h / 6) * (k1 + 2 * (k2 + k3) + k4);
        peak = Math.max(peak, theta);
      }
    }
    if (Math.abs(theta - start) < 1e-13 * Math.abs(theta)) break;
  }
  return peak;
}
