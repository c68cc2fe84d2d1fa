import type { FieldKey, NamedDuty } from "../../core/duties";
import type { System } from "../../core/kinds";
import { functions } from "../../core";
import { fromWorking } from "../../core/units/scale";
import type { Placed } from "./blocks";
import { below, call, formulaOf, spilled, text } from "./spill";
import type { Given, Piled } from "./spill";

const ofSleeve = { turning: "SPEED", swinging: "SWINGSPEED", linear: "STROKESPEED" } as const;

/** Pressure, speed and PV of the step with the greatest PV, worked line by line from the duty's own cells. */
export function workedSteps(duty: NamedDuty, { refs }: Placed, system: System): Piled {
  if (duty.bands.length > 0) throw new Error("A band has no one value to work with: insert the calculation record.");
  const { steps } = duty.corners[0]!;
  const work = steps.map(({ bore, face }) => functions.PVVALUE((bore ?? face)!));
  const hardest = work.indexOf(Math.max(...work));
  const { motion, bore, face } = steps[hardest]!;
  const isWasher = duty.part === "washer";
  if (duty.part === "flanged" || (isWasher && motion !== "turning" && motion !== "static"))
    throw new Error("The faces of this part are worked in the calculation record: insert that.");
  const units = system === "metric" ? undefined : text(system);
  const step = (id: string) => spilled("STEPS", [text(id), ...argsOf(id, refs[hardest]!), units]);
  const pressureId = isWasher ? "WASHERPRESSURE" : "PRESSURE";
  const pressure = step(pressureId);
  if (motion === "static") return pressure;
  const speedId = isWasher ? "WASHERSPEED" : ofSleeve[motion];
  const { pressure: p, speed: v } = (bore ?? face)!;
  const nested = (id: string, value: number): Given => ({
    text: call(id, [...argsOf(id, refs[hardest]!), units]),
    value,
  });
  return below(
    pressure,
    step(speedId),
    spilled("STEPS", [
      text("PVVALUE"),
      nested(pressureId, fromWorking("pressure", p, system)),
      nested(speedId, fromWorking("speed", v, system)),
      units,
    ]),
  );
}

/** The cells of what a function takes; a washer's load may stand under axial load. */
const argsOf = (id: string, refs: Placed["refs"][number]): (Given | undefined)[] =>
  Object.keys(formulaOf(id).spec.args).map(
    (name) => refs[name as FieldKey] ?? (name === "load" ? refs.axialLoad : undefined),
  );
