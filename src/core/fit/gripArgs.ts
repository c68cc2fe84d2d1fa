import type { NumberArg } from "../formula";
import { frictionArg } from "../heat/friction";

/** A bush gripped by its housing; shared by what it holds. */
export const gripArgs = {
  pressure: {
    kind: "pressure",
    symbol: "p",
    from: 0,
    text: "Fit pressure; the one that is left in the state that is asked for",
  },
  outside: { kind: "length", symbol: "D", above: 0, text: "Outside diameter of the bush" },
  length: { kind: "length", symbol: "L", above: 0, text: "Length of the bush in the housing" },
} as const satisfies Record<string, NumberArg>;

export const gripFriction = {
  ...frictionArg,
  text: "Coefficient of friction between bush and housing",
} as const satisfies NumberArg;
