import { formula } from "../formula";

/** θ = atan(C/L), where both ends of the bush touch. It is not the onset of edge loading: the edges carry more long before. */
export const freeTilt = formula(
  {
    id: "FREETILT",
    family: "Fits and clearance",
    text: "Angle at which both ends of the bush touch the shaft; the pressure at its edge rises long before",
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
