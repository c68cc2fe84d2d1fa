import { tridiagonal } from "./tridiagonal";

export interface Held {
  readonly bore: number;
  readonly outside: number;
  readonly modulus: number;
  readonly poisson: number;
  readonly interference: number;
  /** Share of the modulus that never relaxes. */
  readonly kept: number;
  /** Free strain of the bush less that of the housing, when hot and now. */
  readonly hot: number;
  readonly now: number;
}

/**
 * Interference left of a bush in a rigid housing after a long hot hold: a ring of a standard linear solid by finite elements along its radius (plane
 * stress), its viscous strains followed in steps of time while it touches the housing, then let go in its last state. It knows no Lamé.
 */
export function interferenceLeft(h: Held): number {
  const n = 60;
  const size = (h.outside - h.bore) / 2 / n;
  const radius = Array.from({ length: n + 1 }, (_, i) => h.bore / 2 + i * size);
  const stiffness = h.modulus / (1 - h.poisson ** 2);
  /** Viscous strains of each element, radial and hoop, at its middle. */
  const viscous = Array.from({ length: n }, (): [number, number] => [0, 0]);

  /** Displacements for a free strain, the outside moved by `held` or left free. */
  function displaced(free: number, held: number | undefined): number[] {
    const diagonal = new Array<number>(n + 1).fill(0);
    const beside = new Array<number>(n).fill(0);
    const load = new Array<number>(n + 1).fill(0);
    for (let e = 0; e < n; e++) {
      const r = (radius[e]! + radius[e + 1]!) / 2;
      const weight = stiffness * r * size;
      const rates = [-1 / size, 1 / size] as const;
      const hoop = 0.5 / r;
      const strain = viscous[e]!.map((own) => free + (1 - h.kept) * own) as [number, number];
      const pull = [strain[0] + h.poisson * strain[1], strain[1] + h.poisson * strain[0]] as const;
      const term = (a: number, b: number) => weight * (a * b + h.poisson * hoop * (a + b) + hoop * hoop);
      diagonal[e]! += term(rates[0], rates[0]);
      diagonal[e + 1]! += term(rates[1], rates[1]);
      beside[e]! += term(rates[0], rates[1]);
      load[e]! += weight * (rates[0] * pull[0] + hoop * pull[1]);
      load[e + 1]! += weight * (rates[1] * pull[0] + hoop * pull[1]);
    }
    if (held !== undefined) {
      const spring = 1e12 * stiffness;
      diagonal[n]! += spring;
      load[n]! += spring * held;
    }
    return tridiagonal([0, ...beside], diagonal, beside, load);
  }

  const atHousing = -h.interference / 2;
  const steps = 400;
  const fading = 1 - Math.exp(-24 / steps);
  for (let step = 0; step < steps; step++) {
    const free = displaced(h.hot, undefined);
    const u = free[n]! > atHousing ? displaced(h.hot, atHousing) : free;
    for (let e = 0; e < n; e++) {
      const strain = [(u[e + 1]! - u[e]!) / size, (u[e]! + u[e + 1]!) / (radius[e]! + radius[e + 1]!)] as const;
      for (const i of [0, 1] as const) viscous[e]![i] += fading * (strain[i] - h.hot - viscous[e]![i]);
    }
  }
  return 2 * (displaced(h.now, undefined)[n]! - atHousing);
}
