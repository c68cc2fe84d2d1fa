import { fieldKeys } from "../../core/duties";
import type { NamedDuty, Step } from "../../core/duties";
import type { Formula } from "../../core/formula";
import type { System } from "../../core/kinds";
import { functions } from "../../core";
import { present } from "../../core/present";
import { fromWorking } from "../../core/units/scale";
import type { Placed } from "./blocks";
import { below, call, spilled, text, unitsOf } from "./spill";
import type { Given, Piled } from "./spill";

const ofSleeve = { turning: functions.SPEED, swinging: functions.SWINGSPEED, linear: functions.STROKESPEED } as const;

/** A function for a duty's own cells, and what it answers now in the sheet's units. */
export interface StepCall {
  readonly f: Formula;
  readonly given: readonly (Given | undefined)[];
  readonly answer: number;
}

/** Pressure and speed of the step with the greatest PV; no speed where nothing moves. */
export function hardestStep(
  duty: NamedDuty,
  { refs }: Placed,
  system: System,
): { readonly pressure: StepCall; readonly speed?: StepCall } {
  if (duty.bands.length > 0) throw new Error("A band has no one value to work with: insert the calculation record.");
  const { steps } = present(duty.corners[0]);
  const work = steps.map((step) => functions.PVVALUE(contactOf(step)));
  const hardest = work.indexOf(Math.max(...work));
  const step = present(steps[hardest]);
  const { motion } = step;
  const isWasher = duty.part === "washer";
  if (duty.part === "flanged" || (isWasher && motion !== "turning" && motion !== "static"))
    throw new Error("The faces of this part are worked in the calculation record: insert that.");
  const found = contactOf(step);
  const stepCall = (f: Formula, kind: "pressure" | "speed"): StepCall => ({
    f,
    given: [...argsOf(f, present(refs[hardest])), unitsOf(system)],
    answer: fromWorking(kind, found[kind], system),
  });
  const pressure = stepCall(isWasher ? functions.WASHERPRESSURE : functions.PRESSURE, "pressure");
  if (motion === "static") return { pressure };
  return { pressure, speed: stepCall(isWasher ? functions.WASHERSPEED : ofSleeve[motion], "speed") };
}

const contactOf = ({ bore, face }: Step) => present(bore ?? face);

/** The same worked line by line from the duty's own cells, with their PV. */
export function workedSteps(duty: NamedDuty, placed: Placed, system: System): Piled {
  const { pressure, speed } = hardestStep(duty, placed, system);
  const step = ({ f, given }: StepCall) => spilled(functions.STEPS, [text(f.spec.id), ...given]);
  if (!speed) return step(pressure);
  const nested = ({ f, given, answer }: StepCall): Given => ({ text: call(f, given), value: answer });
  return below(
    step(pressure),
    step(speed),
    spilled(functions.STEPS, [text(functions.PVVALUE.spec.id), nested(pressure), nested(speed), unitsOf(system)]),
  );
}

/** The cells of what a function takes: its arguments are named as fields are. A washer's load may stand under axial load. */
const argsOf = ({ spec }: Formula, refs: Placed["refs"][number]): (Given | undefined)[] =>
  Object.keys(spec.args).map((name) => {
    const key = fieldKeys.find((one) => one === name);
    return (key && refs[key]) ?? (key === "load" ? refs.axialLoad : undefined);
  });
