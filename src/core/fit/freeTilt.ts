import { formula } from "../formula";

/** θ = atan(C/L): a shaft slope above it loads the edges of the bush. */
export const freeTilt = formula(
  {
    id: "FREETILT",
    family: "Fits and clearance",
    text: "Angle by which the shaft may tilt before the edges of the bush touch it; a greater slope is edge loaded",
    args: {
      clearance: { kind: "length", symbol: "C", from: 0, text: "Diametral running clearance" },
      length: { kind: "length", symbol: "L", above: 0, text: "Length of the bush" },
    },
    units: true,
    result: { kind: "angle", symbol: "θ" },
    working: ["θ = atan(C / L) * 180 / pi"],
    source: { key: "geometry" },
    example: [0.04, 20],
    see: ["RUNCLEARANCE"],
  },
  ({ clearance, length }) => (Math.atan(clearance / length) * 180) / Math.PI,
);
