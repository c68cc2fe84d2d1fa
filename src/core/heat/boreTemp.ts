import misses from "../../../data/misses.json";
import { formula } from "../formula";
import { boreAt } from "./derating";
import { checkHighest, limitArgs, riseConditions, riseLines } from "./limitArgs";

const { at90, at150, at250 } = misses.boreLowBy;

/**
 * T = Ta + (T_max − T_ref)·(PV/PV_ref)^(1/m), the law of DERATEDPV turned round. Exact at the limit. Below it the law is low (unsafe)
 * where friction falls as the bush warms up, by the figures of data/misses.json; not at the highest temperature itself, whose friction is that of
 * the limit.
 */
export const BORETEMP = formula(
  {
    id: "BORETEMP",
    text: `Temperature of the bore that a PV implies, as the PV limit brings the bush to its highest temperature; low below that limit where friction falls with heat: by up to ${at90} K for a highest temperature of 90 °C, ${at150} K for 150 °C, ${at250} K for 250 °C`,
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
    requires: riseConditions,
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
