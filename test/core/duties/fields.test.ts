import { Band } from "../../../src/core/band";
import { criteria, field, fieldHeading, fieldHeadings, fieldKeys, readDuties } from "../../../src/core/duties";
import type { FieldKey, NamedDuty } from "../../../src/core/duties";
import { groups } from "../../../src/core/duties/model/fields";
import { limitsOf } from "../../../src/core/domain";
import { BushError } from "../../../src/core/errors";
import { motions } from "../../../src/core/grades/model";
import { kinds } from "../../../src/core/kinds";
import type { Kind } from "../../../src/core/kinds";
import { normal } from "../../../src/core/names";
import { propertyHeading, properties } from "../../../src/core/grades/model";

/** Of a field of a duty a typical cell and what it reads as. */
const typical: { readonly [K in FieldKey]?: readonly [cell: unknown, value: unknown] } = {
  duty: ["Vent", "Vent"],
  part: ["Sleeve", "sleeve"],
  grade: ["Demo Medlar", "Demo Medlar"],
  load: ["1 kN", 1000],
  axialLoad: [250, 250],
  staticLoad: ["2.5 kN", 2500],
  impactFactor: [1.4, 1.4],
  designFactor: ["150 %", 1.5],
  loadTurns: [true, "yes"],
  bore: [20, 20],
  length: ["0.75 in", 19.05],
  wall: [1.5, 1.5],
  outside: [23, 23],
  flangeOutside: [30, 30],
  flangeThickness: [1.5, 1.5],
  inner: [20, 20],
  outer: [40, 40],
  motion: ["Oscillating", "swinging"],
  rpm: ["2 1/s", 120],
  swing: [70, 70],
  stroke: ["0.1 m", 100],
  cycles: [12, 12],
  friction: [0.15, 0.15],
  time: ["1 h", 60],
  runningTime: [3, 3],
  restTime: [57, 57],
  timeConstant: ["90 s", 1.5],
  temperature: ["-20 to 60", { low: -20, high: 60 }],
  peakTemperature: ["176 °F", 80],
  moisture: ["wet", "wet"],
  media: ["water, fuels", ["water", "fuels"]],
  dirt: ["some", "some"],
  vacuum: ["no", "no"],
  damping: ["yes", "yes"],
  shaft: ["Hardened steel", "hardened steel"],
  hardness: ["250 HB", 250],
  roughness: [0.4, 0.4],
  slope: ["3 mrad", (0.003 * 180) / Math.PI],
  span: [300, 300],
  spanDiameter: [25, 25],
  endLength: [40, 40],
  housing: ["aluminium alloy", "aluminium alloy"],
  housingOutside: [60, 60],
  housingPath: [0.4, 0.4],
  boreZone: ["E10", expect.objectContaining({ letter: "E", grade: 10 })],
  zoneHolds: ["free", "free"],
  outsideZone: ["+0.05/+0.10", expect.objectContaining({ lower: 0.05, upper: 0.1 })],
  housingZone: ["H7", expect.objectContaining({ letter: "H", grade: 7 })],
  shaftZone: ["f7", expect.objectContaining({ letter: "f", grade: 7 })],
  assemblyMoisture: ["humid", "humid"],
  keptGrip: ["60 %", 0.6],
  leastClearance: [0.02, 0.02],
  heldAtEnds: ["yes", "yes"],
  hours: [4000, 4000],
  allowance: [0.2, 0.2],
  geometryFactor: [2, 2],
  heatFactor: [0.5, 0.5],
  temperatureFactor: [2, 2],
  counterfaceFactor: [0.5, 0.5],
  finishFactor: [3, 3],
  piecesAYear: [50, 50],
  labour: [20, 20],
  downtime: [40, 40],
};

/** Of a number or a choice that is not among them one inside its bounds, or its last word; any other kind has to be. */
function typicalOf(key: FieldKey): readonly [cell: unknown, value: unknown] {
  const { kind, words, ...bounds } = field(key);
  const { least, most } = limitsOf({ ...bounds, kind: kind as Kind });
  const low = Math.max(least, 0);
  const inside = kind in kinds ? (low + Math.min(most, low + 2)) / 2 : undefined;
  const cell = kind === "choice" ? words?.at(-1) : inside;
  if (typical[key] === undefined && cell === undefined)
    throw new Error(`the field ${key} is neither a number nor a choice: add a cell for it to "typical"`);
  return typical[key] ?? [cell, cell];
}

/** What each part and motion needs, so that a row with one more field is read. */
const bases = [
  { part: "sleeve", load: 600, bore: 20, length: 15 },
  { part: "flanged", load: 600, bore: 20, length: 15, "flange outside": 30 },
  { part: "washer", load: 600, inner: 20, outer: 40 },
];
const drives: Readonly<Record<string, object>> = {
  turning: { rpm: 40 },
  swinging: { swing: 70, cycles: 12 },
  linear: { stroke: 100, cycles: 12 },
  static: { motion: "static" },
};

/** Reads a row that holds one field under the heading given; what hinders is tried with the next part and motion. */
function readWith(key: FieldKey, heading: string, cell: unknown): NamedDuty["values"] {
  let last: unknown;
  for (const base of bases)
    for (const motion of motions) {
      const row: Record<string, unknown> = { ...base, temperature: 23, ...drives[motion] };
      // the field itself stands under the heading that is tried
      for (const name of Object.keys(row)) if (fieldHeadings.find(name) === key) delete row[name];
      if (key === "motion") for (const name of ["rpm", "stroke", "motion"]) delete row[name];
      if (key === "axialLoad" && base.part === "washer") delete row.load;
      if (key === "runningTime") row["rest time"] = 57;
      if (key === "restTime") row["running time"] = 3;
      const cells = [
        ["duty", ...Object.keys(row), heading],
        ["D", ...Object.values(row), cell],
      ];
      const table = cells.map((line) => (key === "duty" ? line.slice(1) : line));
      const [line] = readDuties(table as never, "metric", "duties").lines;
      if (!(line!.duty instanceof BushError)) return line!.duty.values;
      last = line!.duty.message;
    }
  throw new Error(`${heading}: ${String(last)}`);
}

test.each(fieldKeys.map((key) => [key, field(key)] as const))("%s is read under each of its headings", (key, entry) => {
  const [cell, value] = typicalOf(key);
  for (const heading of [
    entry.heading,
    key,
    ...(entry.also ?? []),
    entry.heading.toUpperCase(),
    fieldHeading(key, "metric"),
  ]) {
    const read = readWith(key, heading, cell)[key];
    expect(read).toEqual(typeof value === "number" ? expect.closeTo(value, 12) : value);
  }
});

test.each(fieldKeys.map((key) => [key, field(key)] as const))(
  "%s says what it is, where it belongs and in which unit",
  (key, entry) => {
    expect(entry.text).toMatch(/^\p{Lu}.{3,}[^.]$/u);
    expect(groups).toContain(entry.group);
    const { kind } = entry;
    if (kind in kinds)
      for (const system of ["metric", "inch"] as const) {
        const unit = kinds[kind as Kind][system];
        expect(fieldHeading(key, system)).toBe(unit === "" ? entry.heading : `${entry.heading} [${unit}]`);
      }
    else expect(["text", "choice", "list", "span", "zone"]).toContain(kind);
    if (entry.default !== undefined && entry.words) expect(entry.words).toContain(entry.default);
  },
);

test("headings are unique, whatever their case, spaces and marks; a key names its own field", () => {
  const owner = new Map<string, FieldKey>();
  for (const key of fieldKeys)
    for (const heading of new Set([field(key).heading, key, ...(field(key).also ?? [])].map(normal))) {
      expect([heading, owner.get(heading)]).toEqual([heading, undefined]);
      owner.set(heading, key);
      expect(fieldHeadings.find(heading)).toBe(key);
    }
  expect(new Set(fieldKeys.map((key) => field(key).text)).size).toBe(fieldKeys.length);
});

test("symbols are unique where a working may show them together", () => {
  const symbols = fieldKeys.flatMap((key) => field(key).symbol ?? []);
  expect(symbols.filter((symbol, i) => symbols.indexOf(symbol) !== i)).toEqual([]);
});

test("every number may be a band but temperatures; no word may", () => {
  for (const key of fieldKeys) {
    const { kind, band } = field(key);
    expect([key, band === true]).toEqual([key, kind in kinds && kind !== "temperature"]);
  }
  expect(readWith("load", "load", "500 to 700").load).toEqual(new Band(500, 700));
});

test("each field is judged by a criterion, told as not judged, or a name or a cost", () => {
  const judged = new Set(criteria.flatMap(({ fields }) => fields));
  for (const key of fieldKeys)
    expect([key, judged.has(key) || ["name", "cost"].includes(field(key).group)]).toEqual([key, true]);
});

test("a table of grades is never taken for one of duties, nor the other way round, by its first columns", () => {
  const shared = properties.filter((p) => p.key !== "grade" && fieldHeadings.find(p.heading) !== undefined);
  // what stands in both lists means the surroundings here and what the grade bears there
  expect(shared.map((p) => propertyHeading(p, "metric"))).toEqual(["dirt", "damping", "media", "vacuum"]);
});
