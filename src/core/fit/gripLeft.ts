import misses from "../../../data/misses.json";
import { formula } from "../formula";
import { checkStrain } from "./lame";

/**
 * δ = δ0 + D·e_now − (1 − R)·(δ0 + D·e_hot): the bush, squeezed hardest when hot, keeps the share R of its grip there, and the rest is gone for
 * good. Exact for a stiff housing and a hold to rest; a yielding housing keeps more (safe). A share kept that was extrapolated from an hour errs high
 * (unsafe) near a glass transition, as data/misses.json has it. The check belongs to the coldest state after the hottest.
 */
export const GRIPLEFT = formula(
  {
    id: "GRIPLEFT",
    text: "Interference that is left of a press fit after a hot hold, in a stiff housing, which is the safe side; zero or less is a loose bush. Lengths in one unit; check the coldest state after the hottest",
    args: {
      interference: {
        kind: "length",
        symbol: "δ0",
        from: 0,
        text: "Diametral interference when pressed in; at most a tenth of outside",
      },
      outside: { kind: "length", symbol: "D", above: 0, text: "Outside diameter of the bush" },
      kept: {
        kind: "ratio",
        symbol: "R",
        from: 0,
        to: 1,
        text: `Share of the modulus left after the whole time hot; measured, since extrapolation from an hour kept up to ${misses.keptTooMuch.nearTransition} times too much near a glass transition`,
      },
      mismatchhot: {
        kind: "ratio",
        symbol: "e_hot",
        from: -0.2,
        to: 0.2,
        text: "Free strain of the bush less that of the housing since pressing, when hottest; by heat and moisture, 0.4 % is 0.004",
      },
      mismatchnow: {
        kind: "ratio",
        symbol: "e_now",
        from: -0.2,
        to: 0.2,
        text: "The same in the state that is asked for; below 0 where the bush has shrunk or dried",
      },
    },
    units: false,
    result: { kind: "length", symbol: "δ" },
    requires: ["δ0 <= D / 10"],
    working: ["δ_hot = δ0 + D * e_hot", "δ = δ0 + D * e_now - (1 - R) * max(0, δ_hot)"],
    between: { δ_hot: { unit: "mm", text: "Interference when hottest, before it relaxes" } },
    source: { key: "own", at: "a viscoelastic ring in a stiff housing" },
    example: [0.05, 23, 0.6, 0.0037, 0],
    see: ["PRESSFIT", "PUSHOUT", "RUNCLEARANCE"],
  },
  ({ interference, outside, kept, mismatchhot, mismatchnow }) => {
    checkStrain(interference, outside);
    const hot = Math.max(0, interference + outside * mismatchhot);
    return interference + outside * mismatchnow - (1 - kept) * hot;
  },
);
