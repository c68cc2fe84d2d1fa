/** What can be put into the sheet, as the pane lists it. */
export const pieces = {
  row: "The duty as rows, judged beside them",
  card: "The duty as a card",
  checks: "Every criterion (DUTYCHECKS)",
  rank: "Shortlist (DUTYRANK)",
  room: "How far each number may move (DUTYROOM)",
  fit: "Fit, state by state (FITTABLE)",
  record: "Calculation record to sign (DUTYSHEET)",
  worked: "Pressure, speed and PV worked (STEPS)",
  native: "The same in the sheet's own formulas",
} as const;
export type Piece = keyof typeof pieces;

/** What each says in a sentence. */
export const pieceTexts: Readonly<Record<Piece, string>> = {
  row: "Headings, a row for each step, and what DUTIES says of it.",
  card: "Headings down one column, values beside them.",
  checks: "Value, limit, use, verdict and source of each criterion, and what was not asked.",
  rank: "Own grades in use, or without any the generic families, each with its reason.",
  room: "For each number of the duty, all else equal, where the verdict turns and what turns it.",
  fit: "Clearance, grip and stress through cold, assembly, hot, wet and after the hottest hold.",
  record: "Inputs, figures with their sources, every criterion worked with its numbers, cautions.",
  worked: "Line by line: what is put in, formula, result.",
  native: "A row for each symbol, which calculates without the add-in and refuses what the functions refuse.",
};
