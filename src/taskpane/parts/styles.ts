import { makeStyles, tokens } from "@fluentui/react-components";

/** What the panels share. */
export const useShared = makeStyles({
  panel: {
    flexGrow: 1,
    minHeight: 0,
    overflowY: "auto",
    padding: "12px",
    display: "flex",
    flexDirection: "column",
    gap: "12px",
    "& > *": { flexShrink: 0 },
  },
  row: { display: "flex", flexWrap: "wrap", gap: "8px", alignItems: "center" },
  pair: { display: "grid", gridTemplateColumns: "minmax(0, 1fr) minmax(0, 1fr)", gap: "8px", alignItems: "start" },
  /** Fields of a pair stand on one line whatever the length of their labels. */
  foot: { alignItems: "end" },
  uneven: { gridTemplateColumns: "minmax(0, 1.8fr) minmax(0, 1fr)" },
  /** A part of a form that folds. */
  group: {
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
    paddingTop: "8px",
    "& > summary": { cursor: "pointer", color: tokens.colorBrandForegroundLink },
    "& > :not(summary)": { marginTop: "8px" },
  },
  step: {
    margin: "8px 0 0",
    padding: "6px 8px 8px",
    border: `1px solid ${tokens.colorNeutralStroke1}`,
    minWidth: 0,
    display: "grid",
    gap: "8px",
    justifyItems: "start",
    "& > div, & > details": { width: "100%" },
  },
  ticks: { display: "grid", gap: "4px", marginTop: "4px" },
  words: {
    margin: "4px 0 0",
    fontSize: tokens.fontSizeBase200,
    "& dt": { fontWeight: tokens.fontWeightSemibold },
    "& dd": { margin: "0 0 4px" },
  },
  figure: { display: "grid", gridTemplateColumns: "minmax(0, 1fr)", gap: "8px" },
  heading: {
    margin: 0,
    fontSize: tokens.fontSizeBase400,
    lineHeight: tokens.lineHeightBase400,
    fontWeight: tokens.fontWeightSemibold,
  },
  minor: {
    margin: 0,
    fontSize: tokens.fontSizeBase300,
    lineHeight: tokens.lineHeightBase300,
    fontWeight: tokens.fontWeightSemibold,
  },
  quiet: {
    margin: 0,
    color: tokens.colorNeutralForeground2,
    fontSize: tokens.fontSizeBase200,
    lineHeight: tokens.lineHeightBase200,
  },
  text: { margin: 0 },
  list: { margin: 0, paddingLeft: "18px" },
  table: {
    width: "100%",
    borderCollapse: "collapse",
    fontSize: tokens.fontSizeBase200,
    "& th, & td": {
      textAlign: "left",
      verticalAlign: "top",
      padding: "3px 8px 3px 0",
      borderBottom: `1px solid ${tokens.colorNeutralStroke2}`,
      overflowWrap: "anywhere",
      fontWeight: tokens.fontWeightRegular,
    },
    "& thead th": { fontWeight: tokens.fontWeightSemibold },
  },
  wide: { overflowX: "auto", "& th, & td": { overflowWrap: "normal", paddingRight: "5px" } },
  mono: { fontFamily: tokens.fontFamilyMonospace, fontSize: tokens.fontSizeBase200, overflowWrap: "anywhere" },
  summary: { cursor: "pointer", color: tokens.colorBrandForegroundLink, fontSize: tokens.fontSizeBase200 },
});
