import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import { percentText } from "../../core/grade";
import type { Check } from "../../core/grade";

/** The bar ends here; longer uses are told by the text alone. */
const end = 1.5;

const useStyles = makeStyles({
  line: { display: "grid", gridTemplateColumns: "minmax(0, 1fr) auto", gap: "8px", alignItems: "center" },
  track: {
    position: "relative",
    height: "10px",
    backgroundColor: tokens.colorNeutralBackground4,
    border: `1px solid ${tokens.colorNeutralStroke1}`,
    boxSizing: "border-box",
    forcedColorAdjust: "none",
  },
  fill: { position: "absolute", top: 0, bottom: 0, left: 0, backgroundColor: tokens.colorBrandBackground },
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
  label: { fontSize: tokens.fontSizeBase200, fontVariantNumeric: "tabular-nums" },
});

/** The use of the governing criterion against its limit, which is the mark across the bar. */
export function UseBar({ check }: { check: Check }) {
  const s = useStyles();
  if (check.use === undefined) return null;
  const width = `${(Math.min(check.use, end) / end) * 100}%`;
  return (
    <div className={s.line}>
      <div className={s.track} aria-hidden>
        <div className={mergeClasses(s.fill, check.use > 1 && check.verdict === "fails" && s.over)} style={{ width }} />
        <div className={s.limit} />
      </div>
      <span className={s.label}>
        {check.criterion} {percentText(check.use)}
      </span>
    </div>
  );
}
