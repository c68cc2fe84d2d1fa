import { formula } from "../formula";
import { checkRing } from "./washerPressure";

export const WASHERSPEED = formula(
  {
    id: "WASHERSPEED",
    text: "Sliding speed of a thrust washer at its mean diameter",
    args: {
      inner: { kind: "length", symbol: "Di", from: 0, text: "Inner diameter of the bearing face" },
      outer: { kind: "length", symbol: "Do", above: 0, text: "Outer diameter of the bearing face" },
      rpm: { kind: "rate", symbol: "n", from: 0, text: "Shaft speed" },
    },
    units: true,
    result: { kind: "speed", symbol: "v", label: "Sliding speed at the mean diameter" },
    requires: ["Di < Do"],
    working: ["dm = (Di + Do) / 2", "v = pi * dm * n / 60000"],
    between: { dm: { unit: "mm", text: "Mean diameter of the face" } },
    source: { key: "geometry", at: "circumference at the mean diameter; the rim runs faster: SPEED(outer, rpm)" },
    example: [21, 40, 120],
    see: ["WASHERPRESSURE", "SPEED"],
  },
  ({ inner, outer, rpm }) => {
    checkRing(inner, outer);
    return (Math.PI * ((inner + outer) / 2) * rpm) / 60000;
  },
);
