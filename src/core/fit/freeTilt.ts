import { formula } from "../formula";

/**
 * θ = atan(C/L), where both ends of the bush touch; geometry alone, and low (safe) for that, as the loaded end sinks in. It is not the onset of edge
 * loading: at a tenth of it the edge may carry 7 to 10 times the mean pressure.
 */
export const FREETILT = formula(
  {
    id: "FREETILT",
    text: "Angle at which both ends of the bush touch the shaft; low for that, the safe side, but no onset of edge loading; at a tenth of it the edge may carry seven to ten times the mean pressure",
    args: {
      clearance: { kind: "length", symbol: "C", from: 0, text: "Diametral running clearance" },
      length: { kind: "length", symbol: "L", above: 0, text: "Length of the bush" },
    },
    units: true,
    result: { kind: "angle", symbol: "θ", label: "Free tilt" },
    working: ["θ = atan(C / L) * 180 / pi"],
    source: { key: "geometry" },
    example: [0.04, 20],
    see: ["EDGEPRESSURE", "MAXTILT", "RUNCLEARANCE"],
  },
  ({ clearance, length }) => (Math.atan(clearance / length) * 180) / Math.PI,
);
