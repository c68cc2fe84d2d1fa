import { clash } from "../errors";
import { formula } from "../formula";

/** Least and greatest from the worst case of the limits; the root-sum-square band is the middle ± √(Σ (tolerance/2)²). */
export const CLEARANCE = formula(
  {
    id: "CLEARANCE",
    text: "Clearance of a bore and a shaft from their limits of size: worst case and root-sum-square band; negative is interference",
    args: {
      boreleast: { kind: "length", symbol: "Bl", above: 0, text: "Least bore" },
      boregreatest: { kind: "length", symbol: "Bg", above: 0, text: "Greatest bore" },
      shaftleast: { kind: "length", symbol: "Sl", above: 0, text: "Least shaft diameter" },
      shaftgreatest: { kind: "length", symbol: "Sg", above: 0, text: "Greatest shaft diameter" },
    },
    units: true,
    result: {
      shape: "row",
      columns: [
        { name: "least clearance", kind: "length", symbol: "C_min" },
        { name: "greatest clearance", kind: "length", symbol: "C_max" },
        { name: "root-sum-square least", kind: "length", symbol: "R_min" },
        { name: "root-sum-square greatest", kind: "length", symbol: "R_max" },
      ],
      text: "Least and greatest clearance, root-sum-square least and greatest",
    },
    requires: ["Bl <= Bg", "Sl <= Sg"],
    working: [
      "Cm = (Bl + Bg) / 2 - (Sl + Sg) / 2",
      "t = sqrt(((Bg - Bl) / 2)^2 + ((Sg - Sl) / 2)^2)",
      "C_min = Bl - Sg",
      "C_max = Bg - Sl",
      "R_min = Cm - t",
      "R_max = Cm + t",
    ],
    between: {
      Cm: { unit: "mm", text: "Mean clearance" },
      t: { unit: "mm", text: "Root sum square of the half tolerances" },
    },
    source: [
      { key: "iso286", at: "terms: clearance, interference, limits of size" },
      { key: "practice", at: "root sum square of half tolerances: independent sizes, each centred in its tolerance" },
    ],
    example: [20, 20.021, 19.959, 19.98],
    see: ["LIMITS", "RUNCLEARANCE", "FITOF"],
  },
  ({ boreleast, boregreatest, shaftleast, shaftgreatest }) => {
    if (boreleast > boregreatest) throw outOfOrder("boreleast", "boregreatest");
    if (shaftleast > shaftgreatest) throw outOfOrder("shaftleast", "shaftgreatest");
    const middle = (boreleast + boregreatest) / 2 - (shaftleast + shaftgreatest) / 2;
    const half = Math.hypot((boregreatest - boreleast) / 2, (shaftgreatest - shaftleast) / 2);
    return [boreleast - shaftgreatest, boregreatest - shaftleast, middle - half, middle + half];
  },
);

const outOfOrder = (least: string, greatest: string) => clash(least, `${least} must be at most ${greatest}`);
