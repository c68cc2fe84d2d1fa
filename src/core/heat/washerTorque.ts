import { formula } from "../formula";
import { frictionArg } from "./friction";
import { checkRing } from "../loading/washerPressure";

export const WASHERTORQUE = formula(
  {
    id: "WASHERTORQUE",
    text: "Friction torque of a thrust washer",
    args: {
      load: { kind: "force", symbol: "F", from: 0, text: "Axial load" },
      inner: { kind: "length", symbol: "Di", from: 0, text: "Inner diameter of the bearing face" },
      outer: { kind: "length", symbol: "Do", above: 0, text: "Outer diameter of the bearing face" },
      friction: frictionArg,
      wearstate: {
        kind: "choice",
        choices: ["new", "worn"],
        default: "new",
        optional: true,
        label: "State of the face",
        text: '"new": pressure uniform over the face, the greater torque; "worn": wear uniform over the face, after running in',
      },
    },
    units: true,
    result: { kind: "torque", symbol: "T", label: "Friction torque" },
    requires: ["Di < Do"],
    working: ({ wearstate }) => [
      "ro = Do / 2",
      "ri = Di / 2",
      wearstate === "worn" ? "rm = (ro + ri) / 2" : "rm = 2 / 3 * (ro^3 - ri^3) / (ro^2 - ri^2)",
      "T = μ * F * rm / 1000",
    ],
    between: {
      ro: { unit: "mm", text: "Outer radius of the face" },
      ri: { unit: "mm", text: "Inner radius of the face" },
      rm: { unit: "mm", text: "Effective friction radius" },
    },
    source: { key: "shigley", at: "frictional-contact axial clutches: uniform wear, uniform pressure" },
    example: [500, 21, 40, 0.2],
    see: ["TORQUE", "WASHERPRESSURE"],
  },
  ({ load, inner, outer, friction, wearstate }) => {
    checkRing(inner, outer);
    const radius = wearstate === "worn" ? meanRadius(inner, outer) : frictionRadius(inner, outer);
    return (friction * load * radius) / 1000;
  },
);

const meanRadius = (inner: number, outer: number): number => (outer + inner) / 4;

/** (2/3)(ro³ − ri³)/(ro² − ri²) with the common factor ro − ri divided out, so that a narrow ring keeps its digits. */
export const frictionRadius = (inner: number, outer: number): number =>
  (outer ** 2 + outer * inner + inner ** 2) / (3 * (outer + inner));
