import { sleevePressure } from "../load/pressure";
import { turningSpeed } from "../motion/speed";
import { strokeSpeed } from "../motion/strokeSpeed";
import { swingSpeed } from "../motion/swingSpeed";
import type { Duty } from "./assess";

/** The movement of a shaft in its sleeve, in the arguments of the motion's own formula. */
export type Movement =
  | { readonly motion: "turning"; readonly rpm: number }
  | { readonly motion: "swinging"; readonly swing: number; readonly cycles: number }
  | { readonly motion: "linear"; readonly stroke: number; readonly cycles: number }
  | { readonly motion: "static" };

export interface SleeveCase extends Omit<Duty, "pressure" | "speed" | "motion" | "lengthRatio" | "wear" | "fit"> {
  readonly load: number;
  readonly bore: number;
  readonly length: number;
  readonly movement: Movement;
}

/** What a sleeve bush of this size has to bear: pressure, speed and length ratio from PRESSURE and the motion's speed. */
export function sleeveDuty({ load, bore, length, movement, ...rest }: SleeveCase): Duty {
  return {
    ...rest,
    motion: movement.motion,
    pressure: sleevePressure({ load, bore, length }),
    speed: speedOf(bore, movement),
    lengthRatio: length / bore,
  };
}

function speedOf(bore: number, movement: Movement): number {
  switch (movement.motion) {
    case "turning":
      return turningSpeed({ bore, rpm: movement.rpm });
    case "swinging":
      return swingSpeed({ bore, swing: movement.swing, cycles: movement.cycles });
    case "linear":
      return strokeSpeed({ stroke: movement.stroke, cycles: movement.cycles });
    case "static":
      return 0;
  }
}
