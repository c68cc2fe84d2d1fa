import { formula } from "../formula";
import { boreAt } from "./derating";
import { checkHighest, limitArgs, riseLines } from "./limitArgs";

/**
 * T = Ta + (T_max − T_ref)·(PV/PV_ref)^(1/m), the law of DERATEDPV turned round. Exact at the limit. Below it the law is low (unsafe)
 * where friction falls as the bush warms up: at half the limit 113 K where 142 were measured (PTFE composite, T_max 250), by up to 4 K
 * for a T_max of 90.
 */
export const boreTemperature = formula(
  {
    id: "BORETEMP",
    family: "Heat and friction",
    text: "Temperature of the bore that a PV implies, as the PV limit brings the bush to its highest temperature; low below that limit where friction falls with heat: by up to 4 K for a highest temperature of 90 °C, by a fifth of the rise for 250 °C",
    args: {
      pv: { kind: "pv", symbol: "PV", from: 0, text: "PV of the duty" },
      pvlimit: limitArgs.pvlimit,
      highest: limitArgs.highest,
      ambient: limitArgs.ambient,
      reference: limitArgs.reference,
      exponent: limitArgs.exponent,
    },
    units: true,
    result: { kind: "temperature", symbol: "T" },
    working: [...riseLines, "T = Ta + ΔT_ref * (PV / PV_ref)^(1 / m)"],
    between: { ΔT_ref: { unit: "K", text: "Rise that the PV limit makes" } },
    source: { key: "own", at: "steady heat balance of one heat path" },
    example: [0.06, 0.12, 90, 40],
    see: ["DERATEDPV", "RUNTEMP"],
  },
  ({ pv, pvlimit, highest, ambient, reference, exponent }) => {
    checkHighest(highest, reference);
    return boreAt(pv, pvlimit, highest, ambient, reference, exponent);
  },
);
