import { clash } from "../errors";
import { formula } from "../formula";

export const WASHERPRESSURE = formula(
  {
    id: "WASHERPRESSURE",
    text: "Mean pressure on the face of a thrust washer",
    args: {
      load: { kind: "force", symbol: "F", from: 0, text: "Axial load" },
      inner: { kind: "length", symbol: "Di", from: 0, text: "Inner diameter of the bearing face" },
      outer: { kind: "length", symbol: "Do", above: 0, text: "Outer diameter of the bearing face" },
    },
    units: true,
    result: { kind: "pressure", symbol: "p", label: "Mean pressure" },
    requires: ["Di < Do"],
    working: ["A = pi / 4 * (Do^2 - Di^2)", "p = F / A"],
    between: { A: { unit: "mm²", text: "Area of the face" } },
    source: { key: "geometry", at: "area of a ring" },
    example: [500, 21, 40],
    see: ["PRESSURE", "WASHERSPEED"],
  },
  ({ load, inner, outer }) => {
    checkRing(inner, outer);
    return load / ((Math.PI / 4) * (outer ** 2 - inner ** 2));
  },
);

/** A ring needs an outer diameter above its inner one. */
export function checkRing(inner: number, outer: number): void {
  if (outer <= inner) throw clash("outer", "outer must be above inner: the face of a washer is a ring");
}
