import { loadText } from "../loading/conforming";
import { formula } from "../formula";
import { isFitted } from "../loading/conforming";
import { conformityArgs, flatWearOf, shapingClearance } from "./conformity";

/**
 * Hours until the allowance is worn: h/(k·p·v·3600). A rate from flat tests used so gives a life at least 27 % too long; "flat" takes
 * the flat wear at which the bottom of the bore has lost the allowance. Without pressure or speed nothing wears: an error.
 */
export const LIFE = formula(
  {
    id: "LIFE",
    text: "Running hours until the wear allowance is used up; times 60 and the cycles per minute it gives cycles; a rate from flat tests needs from and clearance, without them the life is at least 27 % too long",
    args: {
      wearrate: {
        kind: "wearRate",
        symbol: "k",
        above: 0,
        text: "Specific wear rate; with your own factors from WEARRATE where you have them",
      },
      pressure: {
        kind: "pressure",
        symbol: "p",
        above: 0,
        text: "Mean pressure; without any there is no wear and no finite life",
      },
      speed: {
        kind: "speed",
        symbol: "v",
        above: 0,
        text: "Mean sliding speed; at rest there is no wear and no finite life",
      },
      allowance: { kind: "length", symbol: "h", above: 0, text: "Wear depth that may be used up" },
      ...conformityArgs,
    },
    units: true,
    result: { kind: "time", symbol: "t", label: "Life" },
    requires: (values) => {
      const clearance = shapingClearance(values);
      if (clearance === undefined) return [];
      // a much smaller depth the lines below would tell with few digits
      return isFitted(clearance, values.allowance) ? ["C <= 1e-12 * h"] : ["h > C / 20"];
    },
    working: (values) => {
      const clearance = shapingClearance(values);
      if (clearance === undefined) return ["t = h / (k * p * v * 3600)"];
      const shape = isFitted(clearance, values.allowance)
        ? ["h0 = pi / 4 * h"]
        : ["u = 1 + 2 * h / C", `Λ = ${loadText("u")}`, "h0 = C / 4 * Λ"];
      return [...shape, "t = h0 / (k * p * v * 3600)"];
    },
    between: {
      u: { unit: "", text: "Depth of contact over half of the clearance, plus one" },
      Λ: { unit: "", text: "Wear of a flat over a quarter of the clearance" },
      h0: { unit: "mm", text: "Wear depth of a flat face in the same time" },
    },
    source: [
      { key: "archard", at: "linear wear law, solved for the time" },
      { key: "own", at: "the same law at each place of a bore under a rigid shaft" },
    ],
    example: [2e-6, 2.67, 0.1257, 0.2, "flat", 0.08],
    see: ["WEARRATE", "WEAR", "LIFEBAND", "RUNCOST"],
  },
  (values) => {
    const { wearrate, pressure, speed, allowance } = values;
    const clearance = shapingClearance(values);
    const worn = clearance === undefined ? allowance : flatWearOf(allowance, clearance);
    return worn / (wearrate * pressure * speed * 3600);
  },
);
