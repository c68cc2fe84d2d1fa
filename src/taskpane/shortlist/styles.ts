import { makeStyles, tokens } from "@fluentui/react-components";

/** What the parts of the shortlist share. */
export const useStyles = makeStyles({
  filters: { display: "grid", gap: "8px" },
  bound: { display: "grid", gridTemplateColumns: "minmax(0, 1fr) minmax(0, 1fr)", gap: "8px" },
  list: { listStyle: "none", margin: 0, padding: 0, display: "flex", flexDirection: "column", flexShrink: 0 },
  item: {
    // rows outside the view cost neither layout nor paint, so that 500 of them scroll smoothly
    contentVisibility: "auto",
    containIntrinsicSize: "auto 96px",
    padding: "10px 0",
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
    display: "grid",
    gap: "4px",
  },
  top: { display: "flex", alignItems: "baseline", gap: "8px" },
  name: {
    flexGrow: 1,
    minWidth: 0,
    textAlign: "left",
    font: "inherit",
    fontWeight: tokens.fontWeightSemibold,
    color: tokens.colorBrandForegroundLink,
    background: "none",
    border: 0,
    padding: 0,
    cursor: "pointer",
    overflowWrap: "anywhere",
    textDecorationLine: "underline",
    textUnderlineOffset: "2px",
  },
  choose: { display: "flex", alignItems: "center", gap: "4px", fontSize: tokens.fontSizeBase200, whiteSpace: "nowrap" },
  box: { accentColor: tokens.colorBrandForeground1, margin: 0, width: "16px", height: "16px" },
  // sticks at the very top, above the panel's padding, so that nothing scrolls past over it
  chosen: {
    position: "sticky",
    top: "-12px",
    zIndex: 1,
    backgroundColor: tokens.colorNeutralBackground1,
    marginTop: "-12px",
    padding: "12px 0 4px",
  },
});
