import { formula } from "../formula";
import { pvAt } from "./derating";
import { checkHighest, limitArgs, riseConditions, riseLines } from "./limitArgs";

/**
 * PV(Ta) = PV_ref·((T_max − Ta)/(T_max − T_ref))^m: the rise left to the friction, over the rise at which the limit was found.
 * Capped at PV_ref below T_ref, 0 at and above T_max. Exact where the heat path and the friction are those of the test. High
 * (unsafe) where the assembly cools worse than the test, and where still air alone cools: by 2 % at 60 °C, 6 % at 75 °C (T_max 90).
 */
export const DERATEDPV = formula(
  {
    id: "DERATEDPV",
    text: "PV limit at a temperature of the surroundings: it falls with the rise that is left to the highest temperature and is 0 from there on; a few per cent high in still air, more where the bush cools worse than in the test that set the limit",
    args: {
      pvlimit: limitArgs.pvlimit,
      highest: limitArgs.highest,
      ambient: limitArgs.ambient,
      reference: limitArgs.reference,
      exponent: limitArgs.exponent,
    },
    units: true,
    result: { kind: "pv", symbol: "PV" },
    requires: riseConditions,
    working: [...riseLines, "x = max(0, min(1, (T_max - Ta) / ΔT_ref))", "PV = PV_ref * x^m"],
    between: {
      ΔT_ref: { unit: "K", text: "Rise at which the limit was found" },
      x: { unit: "", text: "Share of that rise left for the friction, at most 1" },
    },
    source: { key: "own", at: "steady heat balance of one heat path" },
    example: [0.12, 90, 60],
    see: ["BORETEMP", "RUNTEMP", "PVVALUE"],
  },
  ({ pvlimit, highest, ambient, reference, exponent }) => {
    checkHighest(highest, reference);
    return pvAt(pvlimit, highest, ambient, reference, exponent);
  },
);
