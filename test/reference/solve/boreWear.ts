import { rootOf } from "./rootOf";

/**
 * Depth at the bottom of a bore worn by a rigid shaft: the bore as cells on a stiff foundation, each worn by k·p·Δs step by step while
 * the pressures of all carry the load. It knows nothing of the closed form. mm, MPa, m.
 */
export function wornBore(wearrate: number, pressure: number, metres: number, clearance: number): number {
  const cells = 1200;
  const steps = 60;
  const stiffness = 1e7;
  const width = Math.PI / 2 / cells;
  const cosine = Array.from({ length: cells }, (_, i) => Math.cos((i + 0.5) * width));
  const worn = new Array<number>(cells).fill(0);
  const wearPerPressure = wearrate * (metres / steps);
  const softness = 1 / stiffness + wearPerPressure;
  const pressureAt = (sink: number, i: number): number =>
    Math.max(0, sink * cosine[i]! - (clearance / 2) * (1 - cosine[i]!) - worn[i]!) / softness;
  let sink = 0;
  for (let step = 0; step < steps; step++) {
    // each half of the bore carries half of the load: Σ p·cos φ·dφ is the mean pressure
    const carried = (at: number) => cosine.reduce((sum, cos, i) => sum + pressureAt(at, i) * cos * width, 0);
    sink = rootOf((at) => carried(at) - pressure, sink, sink + 4 * pressure * softness + clearance, 45);
    for (let i = 0; i < cells; i++) worn[i]! += wearPerPressure * pressureAt(sink, i);
  }
  return worn[0]!;
}
