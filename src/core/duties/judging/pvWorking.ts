import { cycleLine, peakLine } from "../../heat/firstOrder";
import { present } from "../../present";
import { figure, joined } from "./criterion";
import type { Known, Working } from "./criterion";
import { pvOf } from "../model/duty";
import type { Duty, Face, Step } from "../model/duty";

/** "p2 * v2" of one face of a step, and the figures that it takes; symbols are numbered where there are several steps. */
export function product({ pressure, speed }: Face, mark: string, where: string) {
  const [p, v] = [`p${mark}`, `v${mark}`];
  const known: Record<string, Known> = {
    [p]: figure(pressure, "pressure", `Mean pressure${where}`),
    [v]: figure(speed, "speed", `Sliding speed${where}`),
  };
  return { text: `${p} * ${v}`, known };
}

/** What marks the symbols and the words of one of several steps. */
export const markOf = (steps: readonly Step[], i: number): string => (steps.length > 1 ? String(i + 1) : "");
export const whereOf = (steps: readonly Step[], i: number): string => (steps.length > 1 ? ` of step ${i + 1}` : "");

/** Pressure times speed of a step, as `pvOf` has it: all heat of a flanged bush on its bore, or its flange alone. */
function stepPv(
  steps: readonly Step[],
  { bore, face }: Step,
  i: number,
): Pick<Working, "known"> & { readonly text: string } {
  const [mark, where] = [markOf(steps, i), whereOf(steps, i)];
  if (!bore) return product(face, mark, where);
  if (!face) return product(bore, mark, where);
  const [ofBore, ofFace] = [
    product(bore, mark, ` in the bore${where}`),
    product(face, `_f${mark}`, ` on the flange${where}`),
  ];
  return {
    text: `max(${ofFace.text}, ${ofBore.text} + ${ofFace.text} * A_f / A)`,
    known: { ...ofBore.known, ...ofFace.known },
  };
}

/** The areas of a flanged bush, which `stepPv` takes. */
const areasOf = ({ bore, length, flangeOutside }: Duty["given"]): Working => ({
  lines: ["A = d * L", "A_f = pi / 4 * (D_f^2 - d^2)"],
  known: {
    d: figure(present(bore), "length", "Bore of the bush"),
    L: figure(present(length), "length", "Length of the bush"),
    D_f: figure(present(flangeOutside), "length", "Outside diameter of the flange"),
  },
  between: {
    A: { unit: "mm²", text: "Projected area of the bore" },
    A_f: { unit: "mm²", text: "Area of the flange's face" },
  },
});

/** V, the PV to compare: of the one step, of the greatest one, or with a time constant at the first-order peak of the cycle. */
export function pvWorking(duty: Duty): Working {
  const isShared = duty.steps.some(({ motion, bore, face }) => motion !== "static" && bore && face);
  return isShared ? joined(areasOf(duty.given), cycleWorking(duty)) : cycleWorking(duty);
}

function cycleWorking(duty: Duty): Working {
  const { steps, given } = duty;
  const { timeConstant, runningTime, restTime } = given;
  const [first] = steps;
  const isIntermittent = runningTime !== undefined && restTime !== undefined;
  if (steps.length === 1 && !(isIntermittent && timeConstant !== undefined)) {
    const { text, known } = stepPv(steps, first, 0);
    return { lines: [`V = ${text}`], known };
  }
  const known: Record<string, Known> = {};
  const lines: string[] = [];
  // the parts of the cycle, how long each lasts and what that time is called
  const parts = isIntermittent
    ? [
        { step: first, time: runningTime, text: "Running time" },
        { step: { ...first, motion: "static" as const }, time: restTime, text: "Rest time" },
      ]
    : steps.map((step, i) => ({ step, time: step.time, text: `Time of step ${i + 1}` }));
  const moving = parts.flatMap(({ step }, i) => (step.motion === "static" ? [] : [i]));
  parts.forEach(({ step }, i) => {
    if (step.motion === "static") return;
    const { text, known: figures } = stepPv(steps, step, i);
    lines.push(`PV${i + 1} = ${text}`);
    Object.assign(known, figures);
  });
  const between: Working["between"] = {
    ...Object.fromEntries(
      moving.map((i) => [
        `PV${i + 1}`,
        { unit: "MPa·m/s", text: `Pressure times speed${isIntermittent ? " while running" : whereOf(steps, i)}` },
      ]),
    ),
    t_c: { unit: "min", text: "Duration of the cycle" },
  };
  if (timeConstant === undefined)
    return { lines: [...lines, `V = max(${moving.map((i) => `PV${i + 1}`).join(", ")})`], known, between };
  const cycle = parts.map(({ step, time: stated, text }, i) => {
    const time = present(stated);
    known[`t${i + 1}`] = figure(time, "minutes", text);
    const isAtRest = step.motion === "static";
    if (isAtRest)
      known[`PV${i + 1}`] = figure(0, "pv", `Pressure times speed at rest${isIntermittent ? "" : whereOf(steps, i)}`);
    return { steady: isAtRest ? 0 : pvOf(step), time };
  });
  known.τ = figure(timeConstant, "minutes", "Time constant");
  return { lines: [...lines, cycleLine(cycle), peakLine("V", (i) => `PV${i}`, cycle, timeConstant)], known, between };
}
