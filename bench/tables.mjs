/** The tables that the benches compute. */

export const column = (rows, cell) => Array.from({ length: rows }, (_, i) => [cell(i)]);

/** A table of own grades as a supplier's list would be pasted. */
export function ownGrades(count) {
  const heading = [
    "grade",
    "static pressure limit",
    "running pressure limit",
    "speed limit turning",
    "PV limit",
    "lowest temperature",
    "highest temperature",
    "wear rate low",
    "wear rate high",
  ];
  const rows = Array.from({ length: count }, (_, i) => [
    `Own ${i + 1}`,
    60,
    30 + (i % 20),
    1,
    0.1 + (i % 9) / 50,
    -40,
    90,
    1e-7,
    4e-7,
  ]);
  return [heading, ...rows];
}

export function quoteTable(count) {
  const heading = [
    "part",
    "supplier",
    "grade",
    "bore [in]",
    "length [mm]",
    "price",
    "order quantity",
    "life allowance [mm]",
  ];
  const rows = Array.from({ length: count }, (_, i) => [
    `P-${i}`,
    `Supplier ${i % 7}`,
    `Own ${1 + (i % 500)}`,
    0.79,
    i % 3 ? 15 : "0.6 in",
    1 + (i % 40) / 10,
    100,
    0.3,
  ]);
  return [heading, ...rows];
}

export const dutyHeading = ["duty", "grade", "load", "bore", "length", "rpm", "temperature"];
export const dutyRow = (i, grade) => [`Duty ${i}`, grade, 30 + (i % 30) * 10, 20, 15, 10 + (i % 100), 40];

const fullHeading = [...dutyHeading, "design factor", "hours", "wear allowance", "hardness"];
const fullRow = (i) => [
  `Duty ${i}`,
  "Demo Medlar",
  40 + (i % 30),
  20,
  15,
  20 + (i % 40),
  "5 to 40",
  1.2,
  500,
  0.2,
  300,
];
export const fullDuties = (rows) => [fullHeading, ...Array.from({ length: rows }, (_, i) => fullRow(i))];
/** The same with six bands; it fits at every corner, so that each is judged to the end. */
export const bandedDuty = [
  fullHeading,
  ...[
    [
      "Banded",
      "Demo Medlar",
      "40 to 70",
      "20 ± 1 %",
      "14 to 16",
      "20 to 60",
      "5 to 40",
      "1 to 1.2",
      "400 to 500",
      0.2,
      300,
    ],
  ],
];

/** One duty with all of its fit, plain or with six bands. */
const fitHeading = [
  "wall",
  "bore zone",
  "shaft zone",
  "outside zone",
  "housing zone",
  "housing",
  "shaft",
  "share of grip kept",
];
const fit = [2, "D10", "h9", "+0.08/+0.13", "H7", "carbon steel", "hardened steel", "100 %"];
export const fitted = (/** @type {any[][]} */ [heading, row]) => [
  [...heading, ...fitHeading],
  [...row, ...fit],
];
