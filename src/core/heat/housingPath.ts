import { formula, Measure } from "../formula";

/**
 * Gh = 2π·λ·t·r·q·K₁(qr)/K₀(qr) with q = √(2h/(λ·t)): a plate without end round the bush, cooled on both faces. A smaller one carries less:
 * 2 to 4 % where it ends 2/q beyond the seat, a quarter at 1/q, so the figure errs high (unsafe) there.
 */
export const HOUSINGPATH = formula(
  {
    id: "HOUSINGPATH",
    text: "Thermal conductance of a wide plate round the bush, from its seat to the air on both faces; up to 4 % too high where the plate ends two lengths √(λ·t/2h) beyond the seat, a quarter too high at one",
    args: {
      outside: { kind: "length", symbol: "D", above: 0, text: "Outside diameter of the bush" },
      thickness: { kind: "length", symbol: "t", above: 0, text: "Thickness of the plate" },
      conductivity: { kind: "conductivity", symbol: "λ", above: 0, text: "Thermal conductivity of the plate" },
      film: {
        kind: "film",
        symbol: "h",
        above: 0,
        default: 10,
        optional: true,
        text: "Heat transfer coefficient from plate to air; the default is still air",
      },
    },
    units: true,
    result: { kind: "conductance", symbol: "Gh" },
    lookups: (values) => ({
      κ: { value: new Measure(besselRatio(seatOf(values)), "ratio"), text: "Bessel functions K₁/K₀ at q·r, summed" },
    }),
    working: ["r = D / 2000", "q = sqrt(2 * h / (λ * t / 1000))", "Gh = 2 * pi * λ * t / 1000 * r * q * κ"],
    between: {
      r: { unit: "m", text: "Radius of the seat" },
      q: { unit: "1/m", text: "Decay of the rise along the plate" },
    },
    source: { key: "incropera", at: "extended surfaces: annular fin without end" },
    example: [23, 8, 50],
    see: ["RUNTEMP", "HEATPV"],
  },
  (values) => {
    const seat = seatOf(values);
    return 2 * Math.PI * values.conductivity * (values.thickness / 1000) * seat * besselRatio(seat);
  },
);

interface Plate {
  readonly outside: number;
  readonly thickness: number;
  readonly conductivity: number;
  readonly film: number;
}
/** q·r */
const seatOf = ({ outside, thickness, conductivity, film }: Plate): number =>
  (outside / 2000) * Math.sqrt((2 * film) / (conductivity * (thickness / 1000)));

/** K₁(x)/K₀(x) from K_n(x)·e^x = ∫₀^∞ e^(−x(cosh u − 1))·cosh nu du by the trapezium rule, which is exact to 1e-15 for so smooth a curve. */
function besselRatio(x: number): number {
  const step = Math.min(0.1, 0.7 / Math.sqrt(x));
  let [zero, one] = [0.5, 0.5];
  for (let u = step, term = 1; term > 1e-18; u += step) {
    const weight = Math.exp(-2 * x * Math.sinh(u / 2) ** 2);
    term = weight * Math.cosh(u);
    zero += weight;
    one += term;
  }
  return one / zero;
}
