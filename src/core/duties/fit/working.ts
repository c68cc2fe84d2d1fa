import type { Between } from "../../formula";
import { complianceLinesOf, complianceUnits } from "../../fit/ringArgs";
import { assemblyTemperature } from "../../fit/running";
import { figure, metalFigure } from "../judging/criterion";
import type { Known, Working } from "../judging/criterion";
import type { Climate } from "./climates";
import { endsOf, extremesAt } from "./states";
import type { FitState } from "./states";

/** What of a state is worked: an end of its clearance, or the interference that is left. */
type End = "least" | "greatest" | "grip";

/**
 * The lines that lead from sizes, tolerances and strains to the clearance of a state, which they call C, or to its
 * interference δ, where it is worst: those of `extremesAt`.
 */
export function fitWorking(state: FitState, end: End): Working {
  const { course } = state;
  const { assembly, kept } = course;
  const { ring, bore, shaft, outside, seat, isPressed, isHeld } = assembly;
  const worth = (delta: number): number => (end === "greatest" ? -1 : 1) * extremesAt(course, state, delta)[end];
  const [slack, tight] = endsOf(assembly).map(worth) as [number, number];
  const isSlack = slack <= tight;
  const isBounded = ring.housing !== Infinity;
  const [E, ν] = isHeld ? (["E_p", "ν_p"] as const) : (["E", "ν"] as const);
  const swells = [state, course.hottest].some(({ swelling }) => swelling !== 0);

  const then = state.name === "assembly" ? "at assembly" : `when ${state.name}`;

  const known: Record<string, Known> = {
    d: figure(ring.bore, "length", "Bore of the bush"),
    w: figure((ring.outside - ring.bore) / 2, "length", "Wall thickness of the bush"),
    e_o: isSlack
      ? figure(outside.least - ring.outside, "length", "Lower deviation of the bush's outside")
      : figure(outside.greatest - ring.outside, "length", "Upper deviation of the bush's outside"),
    e_h: isSlack
      ? figure(seat.greatest - ring.outside, "length", "Upper deviation of the housing's bore")
      : figure(seat.least - ring.outside, "length", "Lower deviation of the housing's bore"),
    T_0: figure(assemblyTemperature, "temperature", "Temperature at assembly"),
    α: figure(assembly.expansion, "expansion", "Thermal expansion of the bush", "expansion"),
    α_h: metalFigure(assembly.housing, "expansion", "Thermal expansion of the housing"),
  };
  const between: Record<string, Between> = {
    D: { unit: "mm", text: "Outside diameter of the bush" },
    δ_0: { unit: "mm", text: `${isSlack ? "Least" : "Greatest"} interference of bush and housing at assembly` },
    δ: { unit: "mm", text: `Interference ${then}` },
  };
  const lines = ["D = d + 2 * w", "δ_0 = e_o - e_h"];

  /** Strains of bush and housing in a climate; their symbols end alike. */
  const strains = (at: Climate, as: string, when: string): void => {
    const isEven = at.bush === at.housing;
    const [T, T_h] = [`T${as}`, isEven ? `T${as}` : `T_h${as}`];
    known[T] = figure(at.bush, "temperature", `Temperature of ${isEven ? "bush and housing" : "the bush"} ${when}`);
    if (!isEven) known[T_h] = figure(at.housing, "temperature", `Temperature of the housing ${when}`);
    if (swells) known[`s${as}`] = figure(at.swelling, "percent", `Linear swelling of the bush since assembly, ${when}`);
    const [free, bush, housing] = [`ε_f${as}`, `ε_b${as}`, `ε_h${as}`];
    lines.push(
      `${housing} = α_h * (${T_h} - T_0)`,
      `${isHeld ? free : bush} = α * (${T} - T_0)${swells ? ` + s${as}` : ""}`,
    );
    between[housing] = { unit: "", text: `Strain of the housing ${when}` };
    between[bush] = { unit: "", text: `Strain of the bush ${when}` };
    if (!isHeld) return;
    lines.push(`${bush} = ${free} + ν * max(0, ${free} - ${housing})`);
    between[free] = { unit: "", text: `Free strain of the bush ${when}` };
  };
  strains(state, "", then);

  if (state.isAfter || end !== "grip") {
    Object.assign(known, {
      E: figure(assembly.modulus, "pressure", "Compressive modulus of the bush", "compressiveModulus"),
      ν: figure(assembly.poisson, "ratio", "Poisson's ratio of the bush", "poisson"),
      Eh: metalFigure(assembly.housing, "modulus", "Modulus of the housing"),
      νh: metalFigure(assembly.housing, "poisson", "Poisson's ratio of the housing"),
      ...(isBounded ? { Dh: figure(ring.housing, "length", "Outside diameter of the housing") } : {}),
    });
    if (isHeld) lines.push("E_p = E / (1 - ν^2)", "ν_p = ν / (1 - ν)");
    lines.push(...complianceLinesOf(isBounded, E, ν));
    Object.assign(between, complianceUnits, {
      E_p: { unit: "MPa", text: "Modulus of the bush that cannot lengthen" },
      ν_p: { unit: "", text: "Poisson's ratio of the bush that cannot lengthen" },
    });
  }
  if (state.isAfter) {
    known.R = figure(kept, "percent", "Share of the press fit that the hottest hold leaves");
    strains(course.hottest, "_hot", "when hottest");
    lines.push(
      "δ_hot = δ_0 + D * (ε_b_hot - ε_h_hot)",
      "R_p = (ch + cb) / (ch + cb / R)",
      "S = (1 - R_p) * max(0, δ_hot)",
    );
    Object.assign(between, {
      δ_hot: { unit: "mm", text: "Interference when hottest, before it relaxes" },
      R_p: { unit: "", text: "Share of the pressure that is left" },
      S: { unit: "mm", text: "Interference that relaxation has used up" },
    });
  }
  lines.push(`δ = δ_0 + D * (ε_b - ε_h)${state.isAfter ? " - S" : ""}`);
  if (end === "grip") return { lines, known, between };

  const isLeast = end === "least";
  Object.assign(known, {
    e_b: figure(
      (isLeast ? bore.least : bore.greatest) - ring.bore,
      "length",
      `${isLeast ? "Lower" : "Upper"} deviation of the bore`,
    ),
    e_s: figure(
      (isLeast ? shaft.greatest : shaft.least) - ring.bore,
      "length",
      `${isLeast ? "Upper" : "Lower"} deviation of the shaft`,
    ),
    T_s: figure(state.shaft, "temperature", `Temperature of the shaft ${then}`),
    α_s: metalFigure(assembly.shaftMetal, "expansion", "Thermal expansion of the shaft"),
  });
  Object.assign(between, {
    k: { unit: "1/MPa", text: "Narrowing of the bore over the outside diameter, for a unit of pressure" },
    d_b: { unit: "mm", text: `${isLeast ? "Least" : "Greatest"} bore by its zone` },
    d_f: { unit: "mm", text: "Bore if the bush were free" },
    d_s: { unit: "mm", text: `${isLeast ? "Greatest" : "Least"} shaft by its zone` },
    ε_s: { unit: "", text: `Strain of the shaft ${then}` },
    d_now: { unit: "mm", text: `Bore ${then}, closed in by the housing` },
    d_shaft: { unit: "mm", text: `Shaft ${then}` },
    C: { unit: "mm", text: `${isLeast ? "Least" : "Greatest"} clearance of the fit` },
  });
  lines.push(
    `k = 2 * D * d / (${E} * (D^2 - d^2))`,
    "d_b = d + e_b",
    ...(isPressed ? ["d_f = d_b + k * max(0, δ_0) / (ch + cb)"] : []),
    `d_now = ${isPressed ? "d_f" : "d_b"} * (1 + ε_b) - k * max(0, δ) / (ch + cb)${state.isAfter ? " - k * S / cb" : ""}`,
    "d_s = d + e_s",
    "ε_s = α_s * (T_s - T_0)",
    "d_shaft = d_s * (1 + ε_s)",
    "C = d_now - d_shaft",
  );
  return { lines, known, between };
}
