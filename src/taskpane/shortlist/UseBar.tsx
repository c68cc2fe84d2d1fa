import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import type { Check } from "../../core/grade";

/** The bar ends here; longer uses are told by the text alone. */
const end = 1.5;

const useStyles = makeStyles({
  track: {
    position: "relative",
    height: "10px",
    margin: "4px 0",
    backgroundColor: tokens.colorNeutralBackground4,
    border: `1px solid ${tokens.colorNeutralStroke1}`,
    boxSizing: "border-box",
    forcedColorAdjust: "none",
  },
  fill: { position: "absolute", top: 0, bottom: 0, left: 0, backgroundColor: tokens.colorBrandForeground1 },
  over: {
    backgroundColor: "transparent",
    backgroundImage: `repeating-linear-gradient(135deg, ${tokens.colorNeutralForeground1} 0 2px, transparent 2px 5px)`,
  },
  limit: {
    position: "absolute",
    top: "-3px",
    bottom: "-3px",
    width: "2px",
    left: `${100 / end}%`,
    backgroundColor: tokens.colorNeutralForeground1,
  },
});

/** A use against its limit, which is the mark across the bar; the text beside it says the same. */
export function UseBar({ check }: { check: Check }) {
  const s = useStyles();
  if (check.use === undefined) return null;
  return (
    <div className={s.track} aria-hidden>
      <div
        className={mergeClasses(s.fill, check.verdict === "fails" && s.over)}
        style={{ width: `${(Math.min(check.use, end) / end) * 100}%` }}
      />
      <div className={s.limit} />
    </div>
  );
}
