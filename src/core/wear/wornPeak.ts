import { formula } from "../formula";
import { halfAngleOf } from "../loading/conforming";

/**
 * p = 2·p_m/(ψ + sin ψ·cos ψ), cos ψ = 1/(1 + 2y/C): a rigid shaft that has sunk by y wears the bore where it touches (Archard's law at each place).
 * Falls to (4/π)·p_m. High (safe) where the wall yields under the load as well; just after the start PEAKPRESSURE of the new bore is the lesser.
 */
export const WORNPEAK = formula(
  {
    id: "WORNPEAK",
    text: "Peak pressure in a bore that the shaft has worn, and the half angle of contact; the peak of the new bore, PEAKPRESSURE, where that is lower",
    args: {
      pressure: { kind: "pressure", symbol: "p_m", from: 0, text: "Mean pressure on the projected area" },
      sinking: { kind: "length", symbol: "y", above: 0, text: "Depth by which the shaft has sunk in, from WEAR" },
      clearance: { kind: "length", symbol: "C", above: 0, text: "Diametral clearance when new" },
    },
    units: true,
    result: {
      shape: "row",
      columns: [
        { name: "peak pressure", kind: "pressure", symbol: "p" },
        { name: "half angle of contact", kind: "angle", symbol: "α" },
      ],
      text: "Peak pressure, half angle of contact in degrees",
    },
    working: ["ψ = acos(1 / (1 + 2 * y / C))", "p = 2 * p_m / (ψ + sin(ψ) * cos(ψ))", "α = ψ * 180 / pi"],
    between: { ψ: { unit: "", text: "Half angle of contact, rad" } },
    source: { key: "own", at: "linear wear law at each place of a bore under a rigid shaft" },
    example: [2.5, 0.02, 0.08],
    see: ["PEAKPRESSURE", "WEAR"],
  },
  ({ pressure, sinking, clearance }) => {
    const worn = halfAngleOf((2 * sinking) / clearance);
    return [(2 * pressure) / (worn + Math.sin(worn) * Math.cos(worn)), (worn * 180) / Math.PI];
  },
);
