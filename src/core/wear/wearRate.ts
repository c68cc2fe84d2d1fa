import misses from "../../../data/misses.json";
import { formula } from "../formula";
import type { NumberArg } from "../formula";

const factor = <S extends string>(symbol: S, text: string) =>
  ({ kind: "ratio", symbol, above: 0, default: 1, optional: true, text }) as const satisfies NumberArg;

/**
 * k = k0·a·b·c·d·e: Neale's form and names of the factors; the figures in the texts are recalled, none is applied unasked. It errs to either side, as
 * far as the factors are guessed: low (unsafe) where one that applies is left at 1, high where b and c come on top of a rate of the bore's own temperature.
 */
export const WEARRATE = formula(
  {
    id: "WEARRATE",
    text: `Wear rate of a duty: the rate of the tests times correction factors of your choice, each 1 unless given; figures named with them are recalled, not read. Too low where a factor that applies is left at 1; the rate of another processing was up to ${misses.wear.otherProcessing} times too low. Not for metals with solid lubricant`,
    args: {
      base: { kind: "wearRate", symbol: "k0", from: 0, text: "Specific wear rate of the tests" },
      geometry: factor("a", "Factor of the motion; load that turns with the shaft 0.5, fixed load 1, oscillation 2"),
      heat: factor(
        "b",
        "Factor of the cooling; thin metal housing or intermittent 0.5, metal and continuous 1, non-metal and continuous 2; leave 1 where the rate is of the bore's own temperature",
      ),
      temperature: factor(
        "c",
        "Factor of the temperature; at 20, 100, 200 °C with PTFE 1, 2, 5, with carbon or thermosets 1, 3, 6; leave 1 where the rate is of the bore's own temperature",
      ),
      counterface: factor(
        "d",
        "Factor of the shaft's material; stainless or chromed 0.5, steel 1, soft non-ferrous metal 2 to 5",
      ),
      finish: factor("e", "Factor of the shaft's roughness; Ra 0.1 to 0.2 µm 1, to 0.4 µm 2 to 3, to 0.8 µm 4 to 10"),
    },
    units: true,
    result: { kind: "wearRate", symbol: "k" },
    working: ["k = k0 * a * b * c * d * e"],
    source: { key: "neale", at: "section A5, wear-rate correction factors, p. A5.3 (the numbers from memory)" },
    example: [2e-6, 2, 1, 1, 1, 2],
    see: ["WEAR", "LIFE"],
  },
  ({ base, geometry, heat, temperature, counterface, finish }) =>
    base * geometry * heat * temperature * counterface * finish,
);
