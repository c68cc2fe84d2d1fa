import type { NumberArg } from "../args";

/** Above it a coefficient of friction was typed in per cent, or slipped by a decimal: no polymer on metal comes near (common practice, no source). */
export const mostFriction = 2;

export const frictionArg = {
  kind: "ratio",
  symbol: "μ",
  from: 0,
  to: mostFriction,
  text: "Coefficient of friction",
} as const satisfies NumberArg;
