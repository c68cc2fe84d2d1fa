import { greatest } from "../../core/duties";
import type { NamedDuty } from "../../core/duties";
import type { System } from "../../core/kinds";
import { quantityText, readBack } from "./quantity";

export const isMoving = ({ corners }: NamedDuty): boolean => corners.some((corner) => corner.isMoving);

/** The greatest pressure, speed and PV of a duty's steps and bands, as DUTIES answers them; the impact factor stands beside the pressure. */
export function figuresOf(duty: NamedDuty, system: System): { pressure: string; speed: string; pv: string } {
  const { impactFactor } = duty.values;
  const blows = impactFactor === undefined ? "" : ` × ${readBack("impactFactor", impactFactor, system)}`;
  return {
    pressure: `${quantityText("pressure", greatest(duty, "pressure"), system)}${blows}`,
    speed: quantityText("speed", greatest(duty, "speed"), system),
    pv: quantityText("pv", Math.max(...duty.corners.map(({ pv }) => pv)), system),
  };
}
