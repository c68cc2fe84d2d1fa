import { clash } from "../errors";
import { formula } from "../formula";
import { frictionArg } from "../heat/friction";
import { checkRing } from "./washerPressure";

/**
 * Two surfaces on one bush: each has its own pressure and PV, and both heat it. The PV to compare is all friction heat on the sleeve's area: high, the
 * safe side, as it gives the flange no cooling of its own; low only for a flange so small that its own PV is the greater: compare that too. The flange
 * counts as new, pressure uniform: the greater torque.
 */
export const FLANGEDBUSH = formula(
  {
    id: "FLANGEDBUSH",
    text: "Flanged bush under radial and axial load, turning shaft: pressure and PV of sleeve and flange, the PV to compare with the limit, which puts all heat on the sleeve and so is safe, friction torque (new flange, the greater) and heat",
    args: {
      radial: { kind: "force", symbol: "Fr", from: 0, text: "Radial load on the sleeve" },
      axial: { kind: "force", symbol: "Fa", from: 0, text: "Axial load on the flange" },
      bore: { kind: "length", symbol: "d", above: 0, text: "Bore of the bush" },
      length: { kind: "length", symbol: "L", above: 0, text: "Length of the bearing surface of the sleeve" },
      inner: {
        kind: "length",
        symbol: "Di",
        above: 0,
        text: "Inner diameter of the flange's bearing face; bore and corner chamfer",
      },
      outer: { kind: "length", symbol: "Do", above: 0, text: "Outer diameter of the flange's bearing face" },
      rpm: { kind: "rate", symbol: "n", from: 0, text: "Speed of the shaft" },
      friction: { ...frictionArg, text: "Coefficient of friction of both surfaces" },
    },
    units: true,
    result: {
      shape: "row",
      columns: [
        { name: "sleeve pressure", kind: "pressure", symbol: "p_r" },
        { name: "face pressure", kind: "pressure", symbol: "p_a" },
        { name: "sleeve PV", kind: "pv", symbol: "PV_r" },
        { name: "face PV", kind: "pv", symbol: "PV_a" },
        { name: "PV to compare", kind: "pv", symbol: "PV" },
        { name: "torque", kind: "torque", symbol: "T" },
        { name: "heat", kind: "power", symbol: "Q" },
      ],
      text: "Sleeve pressure, face pressure, sleeve PV, face PV, PV to compare, torque, heat",
    },
    requires: ["Di >= d", "Di < Do"],
    working: [
      "ω = 2 * pi * n / 60",
      "v_r = ω * d / 2 / 1000",
      "r_f = (Do^2 + Do * Di + Di^2) / (3 * (Do + Di))",
      "v_a = ω * r_f / 1000",
      "p_r = Fr / (d * L)",
      "p_a = Fa / (pi / 4 * (Do^2 - Di^2))",
      "PV_r = p_r * v_r",
      "PV_a = p_a * v_a",
      "PV = (Fr * v_r + Fa * v_a) / (d * L)",
      "T = μ * (Fr * d / 2 + Fa * r_f) / 1000",
      "Q = T * ω",
    ],
    between: {
      ω: { unit: "1/s", text: "Angular speed" },
      v_r: { unit: "m/s", text: "Sliding speed in the bore" },
      r_f: { unit: "mm", text: "Friction radius of the flange, pressure uniform" },
      v_a: { unit: "m/s", text: "Sliding speed at that radius" },
    },
    source: [
      { key: "shigley", at: "frictional-contact axial clutches: uniform pressure" },
      { key: "own", at: "heat of both surfaces on one PV limit" },
    ],
    example: [600, 300, 20, 20, 21, 30, 60, 0.15],
    see: ["PRESSURE", "WASHERPRESSURE", "WASHERTORQUE", "RUNTEMP"],
  },
  ({ radial, axial, bore, length, inner, outer, rpm, friction }) => {
    if (inner < bore) throw clash("inner", "inner must be at least bore: the flange's face begins outside the bore");
    checkRing(inner, outer);
    const turning = (2 * Math.PI * rpm) / 60;
    const faceRadius = (outer ** 2 + outer * inner + inner ** 2) / (3 * (outer + inner));
    const [sleeveSpeed, faceSpeed] = [(turning * bore) / 2000, (turning * faceRadius) / 1000];
    const sleeve = radial / (bore * length);
    const face = axial / ((Math.PI / 4) * (outer ** 2 - inner ** 2));
    const shared = (radial * sleeveSpeed + axial * faceSpeed) / (bore * length);
    const torque = (friction * (radial * (bore / 2) + axial * faceRadius)) / 1000;
    return [sleeve, face, sleeve * sleeveSpeed, face * faceSpeed, shared, torque, torque * turning];
  },
);
