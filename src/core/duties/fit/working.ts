import type { Between } from "../../formula";
import { complianceLinesOf, complianceUnits } from "../../fit/ringArgs";
import { assemblyTemperature } from "../../fit/running";
import { figure, metalFigure } from "../judging/criterion";
import type { Known, Working } from "../judging/criterion";
import type { Climate } from "./climates";
import { extremesAt } from "./states";
import { stepOf } from "./strains";
import type { FitState } from "./states";

/** What of a state is worked: an end of its clearance, or the interference that is left. */
type End = "least" | "greatest" | "grip";

/** A working as it grows. */
interface Draft {
  readonly lines: string[];
  readonly known: Record<string, Known>;
  readonly between: Record<string, Between>;
}

/**
 * The lines that lead from sizes, tolerances and strains to the clearance of a state, which they call C, or to its
 * interference δ, where it is worst: those of `extremesAt`.
 */
export function fitWorking(state: FitState, end: End): Working {
  const draft: Draft = { lines: [], known: {}, between: {} };
  addSizes(draft, state, end);
  addStrains(draft, state, state, "");
  if (state.isAfter || end !== "grip") addCompliances(draft, state);
  if (state.isAfter) addRelaxation(draft, state);
  draft.lines.push(`δ = δ_0 + D * (ε_b - ε_h)${state.isAfter ? " - S" : ""}`);
  if (end !== "grip") addClearance(draft, state, end);
  return draft;
}

const whenOf = ({ name }: FitState): string => (name === "assembly" ? "at assembly" : `when ${name}`);

/** Sizes, temperatures and expansions, and the interference that pressing in makes, at the end of the tolerances that is worse. */
function addSizes({ lines, known, between }: Draft, state: FitState, end: End): void {
  const { course } = state;
  const { ring, outside, seat, expansion, housing } = course.assembly;
  const [slack, tight] = course.ends.map((begun) => extremesAt(course, state, begun)[end]) as [number, number];
  const isSlack = end === "greatest" ? slack >= tight : slack <= tight;
  Object.assign(known, {
    d: figure(ring.bore, "length", "Bore of the bush"),
    w: figure((ring.outside - ring.bore) / 2, "length", "Wall thickness of the bush"),
    e_o: isSlack
      ? figure(outside.least - ring.outside, "length", "Lower deviation of the bush's outside")
      : figure(outside.greatest - ring.outside, "length", "Upper deviation of the bush's outside"),
    e_h: isSlack
      ? figure(seat.greatest - ring.outside, "length", "Upper deviation of the housing's bore")
      : figure(seat.least - ring.outside, "length", "Lower deviation of the housing's bore"),
    T_0: figure(assemblyTemperature, "temperature", "Temperature at assembly"),
    α: figure(expansion, "expansion", "Thermal expansion of the bush", "expansion"),
    α_h: metalFigure(housing, "expansion", "Thermal expansion of the housing"),
  });
  Object.assign(between, {
    D: { unit: "mm", text: "Outside diameter of the bush" },
    δ_0: { unit: "mm", text: `${isSlack ? "Least" : "Greatest"} interference of bush and housing at assembly` },
    δ: { unit: "mm", text: `Interference ${whenOf(state)}` },
  });
  lines.push("D = d + 2 * w", "δ_0 = e_o - e_h");
}

/** Strains of bush and housing in a climate of the course; their symbols end in `as`. */
function addStrains({ lines, known, between }: Draft, state: FitState, at: Climate, as: "" | "_hot"): void {
  const when = as === "" ? whenOf(state) : "when hottest";
  const { isHeld, step, poisson } = state.course.assembly;
  const isStepped = stepOf(state.course.assembly, at) > 0;
  const swells = [state, state.course.hottest].some(({ swelling }) => swelling !== 0);
  const isEven = at.bush === at.housing;
  const [T, T_h] = [`T${as}`, isEven ? `T${as}` : `T_h${as}`];
  known[T] = figure(at.bush, "temperature", `Temperature of ${isEven ? "bush and housing" : "the bush"} ${when}`);
  if (!isEven) known[T_h] = figure(at.housing, "temperature", `Temperature of the housing ${when}`);
  if (swells) known[`s${as}`] = figure(at.swelling, "percent", `Linear swelling of the bush since assembly, ${when}`);
  if (isStepped) known.s_t = figure(step, "percent", "Growth of the bush in one step", "expansionStep");
  const [free, bush, housing] = [`ε_f${as}`, `ε_b${as}`, `ε_h${as}`];
  lines.push(
    `${housing} = α_h * (${T_h} - T_0)`,
    `${isHeld ? free : bush} = α * (${T} - T_0)${isStepped ? " + s_t" : ""}${swells ? ` + s${as}` : ""}`,
  );
  between[housing] = { unit: "", text: `Strain of the housing ${when}` };
  between[bush] = { unit: "", text: `Strain of the bush ${when}` };
  if (!isHeld) return;
  known.ν = poissonOf(poisson);
  lines.push(`${bush} = ${free} + ν * max(0, ${free} - ${housing})`);
  between[free] = { unit: "", text: `Free strain of the bush ${when}` };
}

const poissonOf = (poisson: number): Known => figure(poisson, "ratio", "Poisson's ratio of the bush", "poisson");

/** Symbols of the bush's modulus and Poisson's ratio: those of plane strain where its ends are held. */
const elasticOf = (isHeld: boolean) => (isHeld ? (["E_p", "ν_p"] as const) : (["E", "ν"] as const));

/** How bush and housing give way to the pressure between them. */
function addCompliances({ lines, known, between }: Draft, { course }: FitState): void {
  const { ring, modulus, poisson, housing, isHeld } = course.assembly;
  const isBounded = ring.housing !== Infinity;
  Object.assign(known, {
    E: figure(modulus, "pressure", "Compressive modulus of the bush", "compressiveModulus"),
    ν: poissonOf(poisson),
    Eh: metalFigure(housing, "modulus", "Modulus of the housing"),
    νh: metalFigure(housing, "poisson", "Poisson's ratio of the housing"),
    ...(isBounded ? { Dh: figure(ring.housing, "length", "Outside diameter of the housing") } : {}),
  });
  if (isHeld) lines.push("E_p = E / (1 - ν^2)", "ν_p = ν / (1 - ν)");
  lines.push(...complianceLinesOf(isBounded, ...elasticOf(isHeld)));
  Object.assign(between, complianceUnits, {
    E_p: { unit: "MPa", text: "Modulus of the bush that cannot lengthen" },
    ν_p: { unit: "", text: "Poisson's ratio of the bush that cannot lengthen" },
  });
}

/** The interference that the hottest hold uses up. */
function addRelaxation(draft: Draft, state: FitState): void {
  const { course } = state;
  draft.known.R = figure(course.kept, "percent", "Share of the press fit that the hottest hold leaves");
  addStrains(draft, state, course.hottest, "_hot");
  draft.lines.push(
    "δ_hot = δ_0 + D * (ε_b_hot - ε_h_hot)",
    "R_p = (ch + cb) / (ch + cb / R)",
    "S = (1 - R_p) * max(0, δ_hot)",
  );
  Object.assign(draft.between, {
    δ_hot: { unit: "mm", text: "Interference when hottest, before it relaxes" },
    R_p: { unit: "", text: "Share of the pressure that is left" },
    S: { unit: "mm", text: "Interference that relaxation has used up" },
  });
}

/** The clearance of bore and shaft, each at its end of tolerance. */
function addClearance({ lines, known, between }: Draft, state: FitState, end: "least" | "greatest"): void {
  const { ring, bore, shaft, shaftMetal, isPressed, isHeld } = state.course.assembly;
  const then = whenOf(state);
  const [E] = elasticOf(isHeld);
  const [boreEnd, shaftEnd] = end === "least" ? (["least", "greatest"] as const) : (["greatest", "least"] as const);
  Object.assign(known, {
    e_b: figure(bore[boreEnd] - ring.bore, "length", `${sideOf[boreEnd]} deviation of the bore`),
    e_s: figure(shaft[shaftEnd] - ring.bore, "length", `${sideOf[shaftEnd]} deviation of the shaft`),
    T_s: figure(state.shaft, "temperature", `Temperature of the shaft ${then}`),
    α_s: metalFigure(shaftMetal, "expansion", "Thermal expansion of the shaft"),
  });
  Object.assign(between, {
    k: { unit: "1/MPa", text: "Narrowing of the bore over the outside diameter, for a unit of pressure" },
    d_b: { unit: "mm", text: `${extremeOf[boreEnd]} bore by its zone` },
    d_f: { unit: "mm", text: "Bore if the bush were free" },
    d_s: { unit: "mm", text: `${extremeOf[shaftEnd]} shaft by its zone` },
    ε_s: { unit: "", text: `Strain of the shaft ${then}` },
    d_now: { unit: "mm", text: `Bore ${then}, closed in by the housing` },
    d_shaft: { unit: "mm", text: `Shaft ${then}` },
    C: { unit: "mm", text: `${extremeOf[end]} clearance of the fit` },
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
}
const sideOf = { least: "Lower", greatest: "Upper" } as const;
const extremeOf = { least: "Least", greatest: "Greatest" } as const;
