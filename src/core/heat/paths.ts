import { clash } from "../errors";
import type { NumberArg } from "../formula";

/** Arguments that describe the ways out for the heat; shared by the estimates that use them. */
export const bushArgs = {
  bore: { kind: "length", symbol: "d", above: 0, text: "Bore of the bush" },
  length: { kind: "length", symbol: "L", above: 0, text: "Length of the bush" },
  wall: { kind: "length", symbol: "w", above: 0, text: "Wall thickness of the bush" },
} as const satisfies Record<string, NumberArg>;

export const pathArgs = {
  bushconductivity: { kind: "conductivity", symbol: "λb", above: 0, text: "Thermal conductivity of the bush" },
  shaftconductivity: { kind: "conductivity", symbol: "λs", above: 0, text: "Thermal conductivity of the shaft" },
  endlength: {
    kind: "length",
    symbol: "ℓ",
    from: 0,
    text: "Length of each shaft end in the air; up to half way to the next bush, 0 where none stands out",
  },
  ends: {
    kind: "count",
    symbol: "ne",
    from: 0,
    to: 2,
    default: 1,
    optional: true,
    text: "Number of shaft ends in the air",
  },
  housingpath: {
    kind: "conductance",
    symbol: "Gh",
    above: 0,
    optional: true,
    text: "Conductance from the bush's seat to the surroundings; exposed area times film, or HOUSINGPATH. Without it both ends are told, housing at ambient and no way out through it",
  },
  film: {
    kind: "film",
    symbol: "h",
    above: 0,
    default: 10,
    optional: true,
    text: "Heat transfer coefficient from shaft to air; the default is still air, where 2 to 25 W/(m²·K) are usual",
  },
  contact: {
    kind: "ratio",
    symbol: "f",
    above: 0,
    to: 1,
    default: 0.5,
    optional: true,
    text: "Share of the bore that passes heat on; half is common practice, with a clearance C it is about 1/√(1 + λb·C/(0.027·w))",
  },
} as const satisfies Record<string, NumberArg>;

/** An assembly in working units. */
export interface Paths {
  readonly bore: number;
  readonly length: number;
  readonly wall: number;
  readonly bushconductivity: number;
  readonly shaftconductivity: number;
  readonly endlength: number;
  readonly ends: number;
  readonly housingpath?: number;
  readonly film: number;
  readonly contact: number;
}
/** Whether any heat leaves however the housing is. */
export const hasWayOut = (paths: Paths): boolean => paths.housingpath !== undefined || hasEnds(paths);
const hasEnds = ({ ends, endlength }: Paths): boolean => ends > 0 && endlength > 0;

/** The working of the paths: ends in Gs, and in G_low and G_high, with no way out through the housing and with the housing at ambient. */
export const pathLines = (paths: Paths): string[] => [
  "Gw = f * 2 * pi * λb * L / 1000 / ln((d + 2 * w) / d)",
  ...(hasEnds(paths)
    ? [
        "P = pi * d / 1000",
        "A = pi * d^2 / 4000000",
        "Ge = sqrt(h * P * λs * A) * tanh(sqrt(h * P / (λs * A)) * ℓ / 1000)",
        "Gs = 1 / (1 / (ne * Ge) + L / 1000 / (3 * ne^2 * λs * A))",
      ]
    : ["Gs = 0"]),
  ...(paths.housingpath === undefined
    ? ["G_low = Gs", "G_high = Gs + Gw"]
    : ["G_low = Gs + 1 / (1 / Gw + 1 / Gh)", "G_high = G_low"]),
];
/** What must hold while these lines do; the number of ends stays. */
export const pathConditions = (paths: Paths): string[] => (hasEnds(paths) ? ["ℓ > 0"] : []);
export const pathBetween = {
  Gw: { unit: "W/K", text: "Thermal conductance of the wall" },
  P: { unit: "m", text: "Perimeter of the shaft" },
  A: { unit: "m²", text: "Cross-section of the shaft" },
  Ge: { unit: "W/K", text: "Thermal conductance of one end of the shaft, its tip insulated" },
  Gs: { unit: "W/K", text: "Thermal conductance of the shaft, from the middle of what is heated" },
  G_low: { unit: "W/K", text: "Least thermal conductance of all paths" },
  G_high: { unit: "W/K", text: "Greatest thermal conductance of all paths" },
} as const;
export const pathSources = [
  { key: "incropera", at: "radial conduction in a cylinder; extended surfaces: the fin with an insulated tip" },
  { key: "own", at: "share of the heated length in series with each end" },
  { key: "practice", at: "half of the bore in contact; film coefficient of still air" },
] as const;

/** W/K in all: without and with the way out through the housing, equal where its conductance is known. */
export function conductances(paths: Paths): { readonly least: number; readonly greatest: number } {
  const [shaft, wall] = [shaftConductance(paths), wallConductance(paths)];
  if (paths.housingpath === undefined) return { least: shaft, greatest: shaft + wall };
  const known = shaft + 1 / (1 / wall + 1 / paths.housingpath);
  return { least: known, greatest: known };
}

/** W/K through the wall into the housing: radial conduction in a cylinder, times the part of the bore in contact. */
export const wallConductance = (
  bush: Pick<Paths, "bore" | "length" | "wall" | "bushconductivity" | "contact">,
): number =>
  (bush.contact * 2 * Math.PI * bush.bushconductivity * (bush.length / 1000)) / Math.log1p((2 * bush.wall) / bush.bore);

/** W/K along the shaft into the air: each end a fin whose tip is insulated, behind a third of its share of the heated length. */
export function shaftConductance(
  shaft: Pick<Paths, "bore" | "length" | "shaftconductivity" | "endlength" | "ends" | "film">,
): number {
  const { bore, length, shaftconductivity, endlength, ends, film } = shaft;
  if (!Number.isInteger(ends)) throw clash("ends", `ends must be 0, 1 or 2, got ${ends}`);
  const along = (shaftconductivity * Math.PI * (bore / 1000) ** 2) / 4;
  const into = film * Math.PI * (bore / 1000);
  const fin = Math.sqrt(into * along) * Math.tanh((Math.sqrt(into / along) * endlength) / 1000);
  return ends / (1 / fin + length / 1000 / (3 * ends * along));
}
