import { rootOf } from "./rootOf";

export interface Tilted {
  readonly load: number;
  readonly bore: number;
  readonly length: number;
  readonly clearance: number;
  /** Slope, rad. */
  readonly slope: number;
  /** Pressure per depth of the layer. */
  readonly stiffness: number;
}

/** Edge pressure and length in contact of a rigid tilted shaft on cells of an elastic layer, the depth found by bisection on their sum. */
export function tiltedByCells(t: Tilted): { readonly pressure: number; readonly length: number } {
  const [across, along] = [400, 300];
  const width = Math.PI / 2 / across;
  const cosine = Array.from({ length: across }, (_, i) => Math.cos((i + 0.5) * width));
  const gap = t.clearance / 2;
  const carried = (deepest: number): number => {
    let sum = 0;
    for (let k = 0; k < along; k++) {
      const depth = deepest - t.slope * ((k + 0.5) / along) * t.length;
      if (depth <= 0) break;
      for (const cos of cosine) {
        const pressed = depth * cos - gap * (1 - cos);
        if (pressed <= 0) break;
        sum += pressed * cos;
      }
    }
    return (sum * t.stiffness * t.bore * width * t.length) / along;
  };
  const most = t.slope * t.length + gap + (4 * t.load) / (t.stiffness * t.bore * t.length);
  const deepest = rootOf((depth) => carried(depth) - t.load, 0, 4 * most, 45);
  return { pressure: t.stiffness * deepest, length: Math.min(t.length, deepest / t.slope) };
}
