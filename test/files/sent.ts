import type { Meant } from "./styles";

/** A list as someone might send it: what kind it is, its headings, each with the field and the factor to its working unit, its rows. */
export interface Sent {
  readonly name: string;
  readonly kind: "offers" | "duties";
  readonly titles?: readonly string[];
  readonly columns: readonly (readonly [heading: string, field: string, factor: number])[];
  readonly rows: readonly (readonly Meant[])[];
}

/** Invented. Each has a number with decimals that are not three, by which its way of writing can be told. */
export const sent: readonly Sent[] = [
  {
    name: "a bush list with least orders in thousands",
    kind: "offers",
    titles: ["Price list, roof vents"],
    columns: [
      ["part no.", "part", 1],
      ["material", "grade", 1],
      ["bore [mm]", "bore", 1],
      ["length [mm]", "length", 1],
      ["unit price [EUR]", "price", 1],
      ["MOQ", "leastOrder", 1],
    ],
    rows: [
      ["1E5", "Demo Lovage", 15, 20, 1.125, 1000],
      ["007", "Demo Sorrel", 15.5, 20.25, 0.95, 12500],
    ],
  },
  {
    name: "sizes in inches, prices per hundred",
    kind: "offers",
    columns: [
      ["item", "part", 1],
      ["compound", "grade", 1],
      ["ID [in]", "bore", 25.4],
      ["length [in]", "length", 25.4],
      ["price [USD]", "price", 1],
      ["price per", "pricePer", 1],
    ],
    rows: [
      ["A,1", "Demo Medlar", 0.591, 0.787, 1234.5, 100],
      ["B;2", "Demo Tansy", 0.5, 1.125, 98.25, 1000],
    ],
  },
  {
    name: "dear parts with a tooling charge",
    kind: "offers",
    columns: [
      ["article", "part", 1],
      ["grade", "grade", 1],
      ["price [CHF]", "price", 1],
      ["tooling charge [CHF]", "tooling", 1],
      ["planned volume", "plannedVolume", 1],
    ],
    rows: [
      ["T-2", "Demo Quince", 1240.5, null, null],
      ["T-1", "Demo Quince", 1180, 12500, 8000],
    ],
  },
  {
    name: "customs duty in per cent and freight",
    kind: "offers",
    titles: ["Offer 12", "valid this year"],
    columns: [
      ["part", "part", 1],
      ["material", "grade", 1],
      ["price [GBP]", "price", 1],
      ["import duty [%]", "customsDuty", 0.01],
      ["freight [GBP]", "freight", 1],
      ["wear allowance [mm]", "allowance", 1],
    ],
    rows: [
      ["2.50", "Demo Fennel", 2.4, 4.5, 1250, 0.05],
      ["1,234", "Demo Fennel", 0.6, 12.25, 60.5, 0.125],
    ],
  },
  {
    name: "loads in thousands of newtons",
    kind: "duties",
    columns: [
      ["duty", "duty", 1],
      ["load [N]", "load", 1],
      ["bore [mm]", "bore", 1],
      ["length [mm]", "length", 1],
      ["rpm", "rpm", 1],
      ["temperature [°C]", "temperature", 1],
    ],
    rows: [
      ["Pivot", 1180, 15.5, 20, 120, [5, 45]],
      ["Drum", 12500, 20, 20.125, 0.5, [-20, 60.5]],
    ],
  },
  {
    name: "loads in kN, speeds of a swing",
    kind: "duties",
    columns: [
      ["duty", "duty", 1],
      ["load [kN]", "load", 1000],
      ["bore [mm]", "bore", 1],
      ["length [mm]", "length", 1],
      ["swing", "swing", 1],
      ["cycles", "cycles", 1],
      ["temperature [°C]", "temperature", 1],
    ],
    rows: [
      ["Vent", 1.18, 20, 20, 70.5, 0.125, 20],
      ["Arm", 0.05, 16.25, 16, 40, 0.5, [-12.5, 40]],
    ],
  },
  {
    name: "hours and pieces of a year",
    kind: "duties",
    columns: [
      ["duty", "duty", 1],
      ["load [N]", "load", 1],
      ["bore [mm]", "bore", 1],
      ["length [mm]", "length", 1],
      ["rpm", "rpm", 1],
      ["temperature [°C]", "temperature", 1],
      ["hours", "hours", 1],
      ["pieces a year", "piecesAYear", 1],
    ],
    rows: [
      ["Mixer", 64.25, 12, 10, 1450, 30, 20000, 1000],
      ["Spindle", 1000, 12.5, 10, 2900, 30, 8760, 12],
    ],
  },
  {
    name: "a curtain's strokes",
    kind: "duties",
    titles: ["Rooftop greenhouse"],
    columns: [
      ["duty", "duty", 1],
      ["load [N]", "load", 1],
      ["bore [mm]", "bore", 1],
      ["length [mm]", "length", 1],
      ["stroke [mm]", "stroke", 1],
      ["cycles", "cycles", 1],
      ["temperature [°C]", "temperature", 1],
    ],
    rows: [
      ["Slide", 40.75, 12, 20, 2400, 4, [0, 55]],
      ["Rail", 1040, 12, 20, 1000.5, 0.25, [-5, 55]],
    ],
  },
];
