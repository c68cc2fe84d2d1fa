import { makeStyles, tokens } from "@fluentui/react-components";
import type { NamedDuty } from "../../core/duties";
import type { System } from "../../core/kinds";
import { present } from "../../core/present";
import { figuresOf, isMoving } from "../state/figures";
import { readBack } from "../state/quantity";
import { counted } from "../parts/words";

const useStyles = makeStyles({
  line: {
    margin: 0,
    flexShrink: 0,
    padding: "6px 12px",
    backgroundColor: tokens.colorNeutralBackground3,
    fontSize: tokens.fontSizeBase200,
    fontVariantNumeric: "tabular-nums",
  },
});

/** The duty in one line above every other part, with the figures that DUTIES answers. */
export function DutyLine({ duty, system }: { duty: NamedDuty | undefined; system: System }) {
  const s = useStyles();
  if (!duty) return null;
  return (
    <p className={s.line}>
      {dutyWords(duty, system)
        .map((part) => part.replace(/ /g, "\u00a0"))
        .join(" · ")}
    </p>
  );
}

/** Motion, pressure, speed and PV, the surroundings, and by what the limits are divided. */
export function dutyWords(duty: NamedDuty, system: System): string[] {
  const { steps, values } = duty;
  const { motion } = steps.find((step) => step.motion !== "static") ?? present(steps[0]);
  const { temperature, moisture = "dry", designFactor } = values;
  const { pressure, speed, pv } = figuresOf(duty, system);
  return [
    motion,
    ...(steps.length > 1 ? [counted(steps.length, "step")] : []),
    pressure,
    ...(isMoving(duty) ? [speed, `PV ${pv}`] : []),
    `surroundings ${readBack("temperature", present(temperature), system)}`,
    ...(moisture === "dry" ? [] : [moisture]),
    ...(designFactor === undefined ? [] : [`design factor ${readBack("designFactor", designFactor, system)}`]),
  ];
}
