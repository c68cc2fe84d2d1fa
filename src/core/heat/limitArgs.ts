import { clash } from "../errors";
import type { NumberArg } from "../formula";
import { statedAt } from "./derating";

/** What DERATEDPV and BORETEMP know of a PV limit. */
export const limitArgs = {
  pvlimit: { kind: "pv", symbol: "PV_ref", above: 0, text: "PV limit at the reference temperature" },
  highest: { kind: "temperature", symbol: "T_max", text: "Highest temperature of the bush" },
  ambient: { kind: "temperature", symbol: "Ta", text: "Temperature of the surroundings, without the bush's own heat" },
  reference: {
    kind: "temperature",
    symbol: "T_ref",
    default: statedAt,
    optional: true,
    text: "Temperature of the surroundings at which the PV limit holds",
  },
  exponent: {
    kind: "ratio",
    symbol: "m",
    from: 1,
    to: 2,
    default: 1,
    optional: true,
    text: "How the cooling grows with the rise: 1 in proportion, 1.25 still air alone",
  },
} as const satisfies Record<string, NumberArg>;

export const riseLines = ["ΔT_ref = T_max - T_ref"] as const;

/** What `checkHighest` asks, in the symbols. */
export const riseConditions = ["T_max > T_ref"] as const;

export function checkHighest(highest: number, reference: number): void {
  if (highest <= reference)
    throw clash("highest", "highest must be above reference, the temperature at which the PV limit holds");
}
