import { makeStyles, tokens } from "@fluentui/react-components";
import type { Duty } from "../../core/grade";
import type { System } from "../../core/kinds";
import { pressureSpeed } from "../../core/pv/pv";
import { quantityText } from "../duty/fields";

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

/** The duty in one line above every other part. */
export function DutyLine({ duty, system }: { duty: Duty | undefined; system: System }) {
  const s = useStyles();
  if (!duty) return null;
  const { motion, temperature } = duty;
  const pressure = duty.pressure * (duty.impactFactor ?? 1);
  const parts = [
    motion,
    quantityText("pressure", pressure, system),
    ...(motion === "static"
      ? []
      : [
          quantityText("speed", duty.speed, system),
          quantityText("pv", pressureSpeed({ pressure, speed: duty.speed }), system),
        ]),
    `${quantityText("temperature", temperature.low, system)} to ${quantityText("temperature", temperature.high, system)}`,
    ...(duty.wet ? ["wet"] : []),
  ];
  return <p className={s.line}>{parts.map((part) => part.replaceAll(" ", "\u00a0")).join(" · ")}</p>;
}
