import { tridiagonal } from "./tridiagonal";

interface Wall {
  readonly inner: number;
  readonly outer: number;
  readonly modulus: number;
  readonly poisson: number;
}
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
  /** A housing that yields; rigid where there is none. */
  readonly housing?: Omit<Wall, "inner">;
}

const n = 60;

/** Linear elements of a ring in plane stress along its radius; loads and stiffness are per radian. */
function elementsOf({ inner, outer, modulus, poisson }: Wall) {
  const size = (outer - inner) / 2 / n;
  const radius = Array.from({ length: n + 1 }, (_, i) => inner / 2 + i * size);
  const stiffness = modulus / (1 - poisson ** 2);
  const diagonal = new Array<number>(n + 1).fill(0);
  const beside = new Array<number>(n).fill(0);
  const each = Array.from({ length: n }, (_, e) => {
    const r = (radius[e]! + radius[e + 1]!) / 2;
    const weight = stiffness * r * size;
    const rates = [-1 / size, 1 / size] as const;
    const hoop = 0.5 / r;
    const term = (a: number, b: number) => weight * (a * b + poisson * hoop * (a + b) + hoop * hoop);
    diagonal[e]! += term(rates[0], rates[0]);
    diagonal[e + 1]! += term(rates[1], rates[1]);
    beside[e]! += term(rates[0], rates[1]);
    return { weight, rates, hoop };
  });
  return { size, radius, stiffness, diagonal, beside, each };
}

/** What a unit of widening of a housing's bore takes. */
function springOf(housing: Wall): number {
  const { diagonal, beside } = elementsOf(housing);
  const load = new Array<number>(n + 1).fill(0);
  load[0] = 1;
  return 1 / tridiagonal([0, ...beside], diagonal, beside, load)[0]!;
}

/**
 * A bush in its housing after a long hot hold: a ring of a standard linear solid by finite elements along its radius (plane stress), its viscous
 * strains followed in steps of time while it touches the housing, then brought to its last state. It knows no Lamé. `left` is the interference left,
 * `bore` the change of the bore.
 */
export function afterHold(h: Held): { readonly left: number; readonly bore: number } {
  const { size, radius, stiffness, diagonal, beside, each } = elementsOf({ ...h, inner: h.bore, outer: h.outside });
  const spring = h.housing ? springOf({ ...h.housing, inner: h.outside }) : 1e12 * stiffness;
  const atHousing = -h.interference / 2;
  /** Viscous strains of each element, radial and hoop, at its middle. */
  const viscous = Array.from({ length: n }, (): [number, number] => [0, 0]);

  /** Displacements for a free strain, against the housing or free. */
  function displaced(free: number, isHeld: boolean): number[] {
    const load = new Array<number>(n + 1).fill(0);
    each.forEach(({ weight, rates, hoop }, e) => {
      const strain = viscous[e]!.map((own) => free + (1 - h.kept) * own) as [number, number];
      const pull = [strain[0] + h.poisson * strain[1], strain[1] + h.poisson * strain[0]] as const;
      load[e]! += weight * (rates[0] * pull[0] + hoop * pull[1]);
      load[e + 1]! += weight * (rates[1] * pull[0] + hoop * pull[1]);
    });
    const on = [...diagonal];
    if (isHeld) {
      on[n]! += spring;
      load[n]! += spring * atHousing;
    }
    return tridiagonal([0, ...beside], on, beside, load);
  }
  const settled = (strain: number): number[] => {
    const free = displaced(strain, false);
    return free[n]! > atHousing ? displaced(strain, true) : free;
  };

  const steps = 400;
  const fading = 1 - Math.exp(-24 / steps);
  for (let step = 0; step < steps; step++) {
    const u = settled(h.hot);
    for (let e = 0; e < n; e++) {
      const strain = [(u[e + 1]! - u[e]!) / size, (u[e]! + u[e + 1]!) / (radius[e]! + radius[e + 1]!)] as const;
      for (const i of [0, 1] as const) viscous[e]![i] += fading * (strain[i] - h.hot - viscous[e]![i]);
    }
  }
  return { left: 2 * (displaced(h.now, false)[n]! - atHousing), bore: 2 * settled(h.now)[0]! };
}
