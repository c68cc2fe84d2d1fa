/** The parts of the pane in their order, as they are called. */
export const tabs = {
  duty: "Duty",
  shortlist: "Shortlist",
  charts: "Charts",
  insert: "Insert",
  own: "Grades",
  offers: "Offers",
} as const;
export type TabName = keyof typeof tabs;
export const tabNames = Object.keys(tabs) as TabName[];
