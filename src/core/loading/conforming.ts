/**
 * A rigid shaft pressed by the depth u into a bore with the radial clearance c, the gap closing by t·cos φ − 1 in units of c, with
 * t = 1 + x and x = u/c. Both functions rise from 0; their plain forms cancel near x = 0, where their series stand in.
 */

/** Half of the angle over which they touch, ψ = acos(1/t), rad. */
export const halfAngleOf = (x: number): number => Math.atan(Math.sqrt(x * (2 + x)));

/** Λ = t·acos(1/t) − √(t² − 1)/t: what the gap closes by, summed over the angle in the direction of the load. */
export function loadOf(x: number): number {
  if (x < 0.001) return ((4 * Math.SQRT2) / 3) * x ** 1.5 * (1 - x * (13 / 20 - x * (657 / 1120 - x * (1513 / 2688))));
  const psi = halfAngleOf(x);
  return x * psi + (psi - Math.sin(psi));
}

/** J = (t²/2 + 1)·acos(1/t) − 1.5·√(t² − 1): the integral of Λ from 0, for a depth that grows along the bush. */
export function summedLoadOf(x: number): number {
  if (x >= 0.01) {
    const psi = halfAngleOf(x);
    return x * (1 + x / 2) * psi + 1.5 * (psi - Math.tan(psi));
  }
  const tail = 0.2120836520250583 - x * (0.1816841605659965 - x * 0.1591674666598911);
  const series = 1 - x * (13 / 28 - x * (73 / 224 - x * (0.2558509199134199 - x * tail)));
  return ((8 * Math.SQRT2) / 15) * x ** 2.5 * series;
}

/** The x of a Λ: a start within 3 %, then Newton with Λ′ = ψ + sin ψ·cos ψ. */
export function depthOf(load: number): number {
  if (load === 0) return 0;
  const z = Math.cbrt(load);
  let x = (0.65519 * z * z * (1 + z * (0.64 + z * 0.889))) / (1 + 0.91491 * z);
  for (let i = 0; i < 4; i++) {
    const psi = halfAngleOf(x);
    x -= (loadOf(x) - load) / (psi + Math.sin(psi) * Math.cos(psi));
  }
  return x;
}

/** Λ averaged over a depth that falls by `span` along the bush, 0 where it is out of contact; the load of a tilted shaft. */
export function meanLoadOf(x: number, span: number): number {
  if (span > 0.05 * x) return (summedLoadOf(x) - summedLoadOf(Math.max(0, x - span))) / span;
  // a difference of nearly equal numbers: three points of Gauss instead
  const [middle, reach] = [x - span / 2, span * Math.sqrt(0.15)];
  return (5 * loadOf(middle - reach) + 8 * loadOf(middle) + 5 * loadOf(middle + reach)) / 18;
}

/** The x at the deep end of a tilted shaft: Newton on `meanLoadOf`, which rises ever faster with x, so that it comes from above and stays there. */
export function tiltedDepthOf(load: number, span: number): number {
  let x = depthOf(load);
  if (span <= 1e-8 * x) return x + span / 2;
  for (let i = 0, step = Infinity; i < 100 && Math.abs(step) > 1e-15 * x; i++) {
    const slope = (loadOf(x) - loadOf(Math.max(0, x - span))) / span;
    step = (meanLoadOf(x, span) - load) / slope;
    x -= step;
  }
  return x;
}

/** Λ and J as a working writes them, of a symbol for t. */
export const loadText = (t: string): string => `${t} * acos(1 / ${t}) - sqrt(${t}^2 - 1) / ${t}`;
export const summedLoadText = (t: string): string => `(${t}^2 / 2 + 1) * acos(1 / ${t}) - 3 * sqrt(${t}^2 - 1) / 2`;

/** Whether the clearance is nothing beside the depth of pressing or wear, or there is no depth: then the shaft counts as one that fits. */
export const isFitted = (clearance: number, depth: number): boolean => depth === 0 || clearance <= 1e-12 * depth;
