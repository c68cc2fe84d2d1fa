/**
 * How far the bore of a bush that is already pressed into a rigid housing closes in when the bush grows by the free
 * linear strain ε: κ·D·ε − d·ε with κ = 2·D·d/((D² + d²) − ν·(D² − d²)). Plane stress, Lamé's thick ring with the outside held.
 */
export function boreCloseIn(bore: number, outside: number, poisson: number, strain: number): number {
  const kappa = (2 * outside * bore) / (outside ** 2 + bore ** 2 - poisson * (outside ** 2 - bore ** 2));
  return strain * (kappa * outside - bore);
}
