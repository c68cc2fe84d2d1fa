import { tridiagonal } from "./tridiagonal";

/** W/K through a sector of a tube's wall by finite differences over its radius, inside one degree above outside. SI units, `sector` in radians. */
export function wallByDifferences(
  inner: number,
  outer: number,
  length: number,
  conductivity: number,
  sector: number,
): number {
  const n = 2000;
  const dr = (outer - inner) / n;
  const face = (i: number) => (conductivity * sector * (inner + (i + 0.5) * dr) * length) / dr;
  const unknown = Array.from({ length: n - 1 }, (_, i) => i + 1);
  const temperature = tridiagonal(
    unknown.map((i) => -face(i - 1)),
    unknown.map((i) => face(i - 1) + face(i)),
    unknown.map((i) => -face(i)),
    unknown.map((i) => (i === 1 ? face(0) : 0)),
  );
  return face(0) * (1 - temperature[0]!);
}

/** W/K of a rod that cools in air, by finite differences along it; its far end is insulated. Without a length it is very long. SI units. */
export function finByDifferences(diameter: number, conductivity: number, film: number, length?: number): number {
  const area = (Math.PI / 4) * diameter ** 2;
  const perimeter = Math.PI * diameter;
  const reach = Math.sqrt((conductivity * area) / (film * perimeter));
  const n = 6000;
  const dx = (length ?? 20 * reach) / n;
  const along = (conductivity * area) / dx;
  const loss = film * perimeter * dx;
  const cells = Array.from({ length: n }, (_, i) => i);
  // cell centres: half a cell between the root, one degree above the air, and the first of them
  const temperature = tridiagonal(
    cells.map((i) => (i === 0 ? 0 : -along)),
    cells.map((i) => (i === 0 ? 2 * along : along) + (i === n - 1 ? 0 : along) + loss),
    cells.map((i) => (i === n - 1 ? 0 : -along)),
    cells.map((i) => (i === 0 ? 2 * along : 0)),
  );
  return 2 * along * (1 - temperature[0]!);
}

/** W/K of a plate round a hole, cooled on both faces, by finite differences over rings that widen outwards, far beyond where it is warm. SI units. */
export function plateByDifferences(radius: number, thickness: number, conductivity: number, film: number): number {
  const reach = Math.sqrt((conductivity * thickness) / (2 * film));
  const n = 4000;
  const ds = Math.log1p((40 * reach) / radius) / n;
  const across = (2 * Math.PI * conductivity * thickness) / ds;
  const rings = Array.from({ length: n }, (_, i) => i);
  const loss = rings.map((i) => 2 * film * Math.PI * radius ** 2 * (Math.exp(2 * ds * (i + 1)) - Math.exp(2 * ds * i)));
  const temperature = tridiagonal(
    rings.map((i) => (i === 0 ? 0 : -across)),
    rings.map((i) => (i === 0 ? 2 * across : across) + (i === n - 1 ? 0 : across) + loss[i]!),
    rings.map((i) => (i === n - 1 ? 0 : -across)),
    rings.map((i) => (i === 0 ? 2 * across : 0)),
  );
  return 2 * across * (1 - temperature[0]!);
}
