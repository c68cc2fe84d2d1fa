import { clash } from "../errors";
import { formula } from "../formula";
import { numberText } from "../measure";

/** The steepest slope, degrees: up to it the small angles of beam theory are within a few thousandths. */
export const steepest = 5;

/**
 * Slopes of a shaft of constant section over two bushes that do not resist its tilt (simply supported beam); real bushes do, so that the slopes are
 * high: the safe side, by how much depends on them. Shear is left out (low, unsafe, for a span of a few diameters), and so is misalignment: add it.
 */
export const SHAFTSLOPE = formula(
  {
    id: "SHAFTSLOPE",
    text: "Slope of a bent shaft at the nearer and the farther of its two bushes, taken as knife edges: high, the safe side, since a bush resists; add misalignment. Above 5° no answer: the theory is one of small slopes",
    args: {
      loadcase: {
        kind: "choice",
        choices: ["central", "uniform", "offset", "overhung"],
        text: "Where the load stands; half way, spread over the span, at a position between the bushes, or beyond the nearer one",
      },
      load: { kind: "force", symbol: "F", from: 0, text: "Load on the shaft, the whole of it" },
      span: { kind: "length", symbol: "s", above: 0, text: "Distance between the middles of the bushes" },
      diameter: { kind: "length", symbol: "d", above: 0, text: "Diameter of the shaft" },
      modulus: { kind: "pressure", symbol: "E", above: 0, text: "Modulus of the shaft" },
      position: {
        kind: "length",
        symbol: "a",
        above: 0,
        optional: true,
        text: 'Distance of the load from the nearer bush; needed with "offset" and "overhung", blank with the others',
      },
      inner: {
        kind: "length",
        symbol: "di",
        from: 0,
        default: 0,
        optional: true,
        text: "Inner diameter of a hollow shaft",
      },
    },
    units: true,
    result: {
      shape: "row",
      columns: [
        { name: "slope at the nearer bush", kind: "angle", symbol: "φ_near" },
        { name: "slope at the farther bush", kind: "angle", symbol: "φ_far" },
      ],
      text: "Slope at the nearer and the farther bush, degrees",
    },
    requires: ({ loadcase, inner }) => [
      inner === 0 ? "di = 0" : "di < d",
      ...(loadcase === "offset" ? ["a <= s / 2"] : []),
      `φ_near <= ${steepest}`,
      `φ_far <= ${steepest}`,
    ],
    working: (values) => [
      values.inner === 0 ? "I = pi * d^4 / 64" : "I = pi * (d^4 - di^4) / 64",
      ...(values.loadcase === "offset" ? ["b = s - a"] : []),
      ...linesOf[values.loadcase],
    ],
    factors: {
      "64": "of the second moment of a circle's area",
      "16": "of the slope under a load half way",
      "24": "of the slope under a load spread evenly",
      "6": "of the slope under a load at one place",
    },
    between: {
      I: { unit: "mm⁴", text: "Second moment of area" },
      b: { unit: "mm", text: "Distance of the load from the farther bush" },
    },
    source: { key: "shigley", at: "tables of beams, simply supported and overhanging" },
    example: ["overhung", 600, 200, 16, 206000, 60],
    see: ["EDGEPRESSURE", "MAXTILT", "FREETILT"],
  },
  (given) => {
    const slopes = slopesOf(given);
    const most = Math.max(...slopes);
    if (most > steepest)
      throw clash(
        "load",
        `load bends the shaft by ${numberText(most, 3)}°, at most ${steepest}° is small enough for the theory of beams`,
      );
    return slopes;
  },
);

interface Shaft {
  readonly loadcase: "central" | "uniform" | "offset" | "overhung";
  readonly load: number;
  readonly span: number;
  readonly diameter: number;
  readonly modulus: number;
  readonly position?: number | undefined;
  readonly inner: number;
}

/** Slopes at the nearer and the farther bush, degrees, however steep. */
export function slopesOf({ loadcase, load: F, span: s, diameter, modulus, position, inner }: Shaft): [number, number] {
  if (inner >= diameter) throw clash("inner", "inner must be below diameter: a hollow shaft has a wall");
  const needsPosition = loadcase === "offset" || loadcase === "overhung";
  if (!needsPosition && position !== undefined)
    throw clash("position", `position must be blank with "${loadcase}", which says where the load stands`);
  const bending = (modulus * Math.PI * (diameter ** 4 - inner ** 4)) / 64;
  const degrees = (slope: number) => (slope / bending) * (180 / Math.PI);
  switch (loadcase) {
    case "central":
      return [degrees((F * s * s) / 16), degrees((F * s * s) / 16)];
    case "uniform":
      return [degrees((F * s * s) / 24), degrees((F * s * s) / 24)];
    case "offset": {
      const a = known(position);
      if (a > s / 2) throw clash("position", "position must be at most half of span: it counts from the nearer bush");
      const b = s - a;
      return [degrees((F * b * (s * s - b * b)) / (6 * s)), degrees((F * a * (s * s - a * a)) / (6 * s))];
    }
    case "overhung":
      return [degrees((F * known(position) * s) / 3), degrees((F * known(position) * s) / 6)];
  }
}

const both = (line: string): string[] => [`φ_near = ${line} * 180 / pi`, "φ_far = φ_near"];
const linesOf = {
  central: both("F * s^2 / (16 * E * I)"),
  uniform: both("F * s^2 / (24 * E * I)"),
  offset: [
    "φ_near = F * b * (s^2 - b^2) / (6 * s * E * I) * 180 / pi",
    "φ_far = F * a * (s^2 - a^2) / (6 * s * E * I) * 180 / pi",
  ],
  overhung: ["φ_near = F * a * s / (3 * E * I) * 180 / pi", "φ_far = F * a * s / (6 * E * I) * 180 / pi"],
} as const;

function known(position: number | undefined): number {
  if (position === undefined) throw clash("position", 'position is missing: "offset" and "overhung" need it');
  return position;
}
