import { makeStyles, mergeClasses, tokens } from "@fluentui/react-components";
import type { Word } from "../../core/duties";

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
  care: {
    backgroundImage: `repeating-linear-gradient(90deg, transparent 0 4px, ${tokens.colorNeutralBackground1} 4px 6px)`,
  },
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

/** A use against its limit, which is the mark across the bar: whole where it fits, broken in care, hatched where it fails. The text beside it says the same. */
export function UseBar({ use, word }: { use: number | undefined; word: Word }) {
  const s = useStyles();
  if (use === undefined) return null;
  return (
    <div className={s.track} aria-hidden>
      <div
        className={mergeClasses(s.fill, word === "care" && s.care, word === "fails" && s.over)}
        style={{ width: `${(Math.min(use, end) / end) * 100}%` }}
      />
      <div className={s.limit} />
    </div>
  );
}
