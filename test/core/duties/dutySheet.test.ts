import { functions } from "../../../src/core";
import { NamedDuty, readDuties } from "../../../src/core/duties";
import { kinds } from "../../../src/core/kinds";
import type { System } from "../../../src/core/kinds";
import { standingCautions } from "../../../src/core/grades/cautionsOf";
import { dutyCells, dutyHeadings } from "../../../src/book/greenhouse/dutyRows";
import { asInch, call, CellError, message, pressedBush } from "../../support";
import { card, near, plainGrades, sleeve, speed } from "./plain";
import type { Fields } from "./plain";

/** The greenhouse's duties, invented for the demo, with all units stated, so that answers in either system may be asked for. */
const table = [dutyHeadings, ...dutyCells].map((row) =>
  row.map((cell) => (/^[+-][\d.]+\/[+-][\d.]+$/.test(String(cell)) ? `${cell} mm` : cell)),
);
const greenhouse = readDuties(table, "metric", "duties").lines.map(({ name, duty }) => ({
  name,
  duty: duty as NamedDuty,
}));

type Row = readonly [
  section: string,
  what: string,
  formula: string,
  numbers: string,
  result: unknown,
  unit: string,
  from: string,
];
const known = new Map<string, readonly Row[]>();
function sheetOf(name: string, units: System = "metric"): readonly Row[] {
  const rows =
    known.get(name + units) ?? (call(functions.DUTYSHEET, [table, name], units).slice(1) as unknown as Row[]);
  known.set(name + units, rows);
  return rows;
}
const sectionOf = (rows: readonly Row[], name: string): readonly Row[] => rows.filter(([section]) => section === name);
const cardSheet = (fields: Fields, grades: unknown = plainGrades): readonly Row[] =>
  call(functions.DUTYSHEET, [card(fields), null, "Plain", grades]).slice(1) as unknown as Row[];

/** The last line of a symbol, which is in the sheet's units; of a criterion that is not worked the line of that name. */
const ended = (rows: readonly Row[], symbol: string, named: string): Row | undefined =>
  rows.findLast(([, , formula]) => formula === symbol || formula.startsWith(`${symbol} = `)) ??
  rows.find(([, what, formula]) => what === named && formula === "");

const systems: readonly System[] = ["metric", "inch"];

describe.each(systems)("the greenhouse's duties in %s units", (units) => {
  const judged = call(functions.DUTIES, [table], units).slice(1);

  test.each(greenhouse.map(({ name }) => name))(
    "%s: its record says what DUTYCHECKS says, criterion by criterion",
    (name) => {
      const rows = sheetOf(name, units);
      expect(rows.flat().filter((cell) => cell instanceof CellError)).toEqual([]);
      const checks = call(functions.DUTYCHECKS, [table, name], units).slice(1);
      for (const [heading, value, limit, unit, use, word] of checks) {
        if (word === "not asked" || word === "not read") continue;
        const lines = sectionOf(rows, heading as string);
        const found = ended(lines, "V", "Value");
        const bound = ended(lines, "Z", "Limit");
        expect([heading, found?.[4] ?? "", bound?.[4] ?? ""]).toEqual([heading, value, limit]);
        if (found) expect(found[5]).toBe(unit);
        expect([heading, ended(lines, "u", "")?.[4] ?? ""]).toEqual([heading, use]);
        expect(lines.at(-1)!.slice(1, 5)).toEqual(["verdict", "", "", word]);
        // a rule and its source stand in front
        expect(lines[0]![1]).toBe("rule");
        expect(lines[0]![3].length).toBeGreaterThan(10);
        expect(lines[0]![6].length).toBeGreaterThan(10);
        // and something to follow: figures worked, or the words that were read; what is not judged is told in the verdict
        if (heading !== "not judged") expect(lines.length).toBeGreaterThan(2);
      }
    },
  );

  test("and what DUTIES says of each", () => {
    let row = 0;
    for (const { name } of greenhouse) {
      while (judged[row]![0] !== name) row++;
      const [, grade, pressure, fastest, , bore, governing, use, life, verdict, data, notAsked] = judged[row]!;
      const rows = sheetOf(name, units);
      const said = (section: string, what: string) => sectionOf(rows, section).find((line) => line[1] === what)?.[4];
      expect([name, said("record", "grade")]).toEqual([name, grade]);
      const loads = rows.filter(([section]) => /^(load and motion|step \d)/.test(section));
      const greatest = (symbol: string) =>
        Math.max(
          0,
          ...loads.filter(([, , formula]) => formula.startsWith(`${symbol} = `)).map((line) => line[4] as number),
        );
      expect([name, greatest("p"), greatest("v")]).toEqual([name, pressure, fastest]);
      // DUTIES tells the upper figure, which the record tells beside the one that is judged
      const value = ended(sectionOf(rows, "bore temperature"), "V", "Value")?.[4];
      if (value === undefined) expect(bore).toBe("");
      else expect(bore).toBeGreaterThanOrEqual(value as number);
      expect(ended(sectionOf(rows, "wear life"), "Z", "Limit")?.[4] ?? "").toBe(life);
      expect([said("verdict", "verdict"), said("verdict", "governed by")]).toEqual([verdict, governing]);
      expect([said("verdict", "use") ?? "", said("verdict", "data")]).toEqual([use, data]);
      expect(
        sectionOf(rows, "not asked")
          .map((line) => line[1])
          .join(", "),
      ).toBe(notAsked);
    }
  });
});

test.each(greenhouse)("$name: every field that was given is told as it was read", ({ name, duty }) => {
  const inputs = sectionOf(sheetOf(name), "input");
  duty.steps.forEach(({ values }, i) => {
    const at = (heading: string) =>
      inputs.find(([, what]) => {
        const [first, ...steps] = what.split(/, (?=step)|, (?=\d)/);
        return first === heading && (steps.length === 0 || steps.some((step) => step.endsWith(String(i + 1))));
      });
    for (const [heading, value] of [
      ["load", values.load],
      ["rpm", values.rpm],
      ["time", values.time],
      ["hours", values.hours],
      ["wear allowance", values.allowance],
      ["moisture", values.moisture],
    ] as const)
      if (typeof value === "number") near(at(heading)?.[4], value, 1e-15);
      else if (typeof value === "string") expect(at(heading)?.[4]).toBe(value);
  });
});

test.each(greenhouse)("$name: inch and metric records go the same way to the same verdict", ({ name }) => {
  const [metric, inch] = systems.map((units) => sheetOf(name, units)) as [readonly Row[], readonly Row[]];
  const headings = (rows: readonly Row[]) => [...new Set(rows.map(([section]) => section.replace(/, .*/, "")))];
  expect(headings(inch)).toEqual(headings(metric));
  for (const section of headings(metric))
    for (const [symbol, named] of [
      ["V", "Value"],
      ["Z", "Limit"],
      ["u", ""],
    ] as const) {
      const [m, i] = [metric, inch].map((rows) => ended(sectionOf(rows, section), symbol, named));
      expect([section, symbol, i === undefined]).toEqual([section, symbol, m === undefined]);
      if (!m || !i) continue;
      const expected = asInch(m[4], m[5]);
      if (typeof expected === "number") near(i[4], expected, 1e-9);
      else expect(i[4]).toEqual(expected);
    }
});

describe("a duty that can be worked by hand", () => {
  const rows = cardSheet({ duty: "Roller", ...sleeve, temperature: "10 to 73", "impact factor": 2, dirt: "none" });
  const lineOf = (section: string, what: string) => sectionOf(rows, section).find((line) => line[1] === what)!;

  test("pressure 300/(20·20) = 0.75 MPa, twice that with the impact factor, against 20 MPa", () => {
    expect(lineOf("load and motion", "Mean pressure").slice(2, 6)).toEqual([
      "p = F / (d·L)",
      "p = 300 N / (20 mm × 20 mm) = 0.75 MPa",
      0.75,
      "MPa",
    ]);
    expect(lineOf("running pressure", "Running pressure").slice(2, 6)).toEqual([
      "V = p·K",
      "V = 0.75 MPa × 2 = 1.5 MPa",
      1.5,
      "MPa",
    ]);
    expect(lineOf("running pressure", "Use").slice(2, 5)).toEqual(["u = V / Z", "u = 1.5 MPa / 20 MPa = 0.075", 0.075]);
  });
  test("at 73 °C half of the room from 23 to 123 °C is left: PV limit 0.05 MPa·m/s, without the impact factor", () => {
    const [, , formula, numbers, result] = lineOf("PV", "Limit of PV, derated for the surroundings");
    expect(formula).toBe("PV_a = PV_ref·(T_max − T) / (T_max − T_ref)");
    expect(numbers).toContain("(123 °C − 73 °C) / (123 °C − 23 °C) = 0.05 MPa·m/s");
    near(result, 0.05);
    near(lineOf("PV", "Use")[4], (0.75 * speed) / 0.05);
  });
  test("what was not typed is told with what it was taken as, where a criterion looks at it", () => {
    expect(lineOf("input", "design factor").slice(4)).toEqual([1, "", "not given: the default"]);
    expect(lineOf("input", "part").slice(4)).toEqual(["sleeve", "", "not given: the default"]);
    expect(lineOf("input", "motion").slice(4)).toEqual(["turning", "", "follows from its figures"]);
    expect(lineOf("input", "dirt").slice(4)).toEqual(["none", "", "as read"]);
    expect(
      sectionOf(rows, "input")
        .map(([, what]) => what)
        .join(),
    ).not.toMatch(/zone holds|wear factor/);
  });
  test("a word of the grade with its rule and where it comes from", () => {
    const [rule, ...lines] = sectionOf(rows, "shock");
    expect(rule!.slice(1)).toEqual([
      "rule",
      "",
      "How the grade bears blows",
      "",
      "",
      "Common practice of the trade: rating of the grade",
    ]);
    expect(lines.map((line) => [line[1], line[4], line[6]])).toEqual([
      ["impact factor", 2, "input"],
      ["shock", "fair", "own row, no source given"],
      ["verdict", "care", "shock fair; own row, no source given"],
    ]);
  });
});

test("how the grade came to be judged is told", () => {
  const chosen = (grade: string | null, fields: Fields = {}) =>
    call(functions.DUTYSHEET, [card({ ...sleeve, ...fields }), null, grade, plainGrades])
      .find(([, what]) => what === "grade")!
      .slice(3);
  expect(chosen("Plain")).toEqual(["own", "Plain", "", "named for this sheet"]);
  expect(chosen(null, { grade: "Plain" })).toEqual(["own", "Plain", "", "named by the duty"]);
  expect(chosen(null)).toEqual(["own", "Plain", "", "best of the 2 grades looked at"]);
});

test("with bands each criterion is worked at its worst corner, and says which where it depends on it", () => {
  const rows = cardSheet({ ...sleeve, load: "100 to 300", length: "15 to 20" });
  const cornerOf = (section: string) => sectionOf(rows, section).find(([, what]) => what === "worst corner")?.[4];
  // the greatest pressure is 300/(20·15) = 1 MPa
  expect(cornerOf("running pressure")).toBe("load 300 N, length 15 mm");
  expect(ended(sectionOf(rows, "running pressure"), "V", "")![4]).toBe(1);
  expect(cornerOf("speed")).toBeUndefined();
  expect(rows.filter(([section]) => section.startsWith("load and motion")).map(([section]) => section)).toContain(
    "load and motion, load 300 N, length 15 mm",
  );
});

test("steps each have their pressure and speed; the record shows how their greatest counts", () => {
  const rows = sheetOf("Grow-tower foot bearing");
  expect(ended(sectionOf(rows, "step 3"), "p", "")![3]).toBe("p = 6000 N / (25 mm × 30 mm) = 8 MPa");
  expect(ended(sectionOf(rows, "PV"), "V", "")![2]).toBe("V = max(PV1, PV2)");
  expect(ended(sectionOf(rows, "wear life"), "t_c", "")![4]).toBe(67);
});

test("a figure that is missing is told as such, and nothing is worked from it", () => {
  const rows = call(functions.DUTYSHEET, [
    card({ ...sleeve, hours: 100, "wear allowance": 0.2 }),
    null,
    "Bare",
    plainGrades,
  ]);
  const missing = (rows as unknown as Row[]).find(
    ([section, what]) => section === "grade" && what === "wear rate high",
  )!;
  expect(missing[4]).toBe("no data");
  expect(
    sectionOf(rows as unknown as Row[], "wear life")
      .map((line) => line[2])
      .join(""),
  ).toBe("");
  expect(
    sectionOf(rows as unknown as Row[], "wear life")
      .at(-1)!
      .slice(4),
  ).toEqual(["no data", "", "wear life: wear rate high"]);
});

test("columns that were not read are told, and every record ends in the standing cautions", () => {
  const rows = cardSheet({ ...sleeve, colour: "blue" });
  expect(sectionOf(rows, "not read").map((line) => line[1])).toEqual(["colour"]);
  expect(rows.slice(-standingCautions.length).map(([section, what]) => [section, what])).toEqual(
    standingCautions.map((caution) => ["caution", caution]),
  );
});

test("an unknown duty, or none of several, is an error that says what there is", () => {
  expect(message(call(functions.DUTYSHEET, [table, "Moon gate"]))).toMatch(
    /^duty "Moon gate" is unknown; the table has "Roof-vent pivot"/,
  );
  expect(message(call(functions.DUTYSHEET, [table]))).toMatch(/^duty is missing: the table holds \d+/);
  expect(message(call(functions.DUTYSHEET, [card(sleeve), null, "Unobtainium"]))).toMatch(
    /^grade "Unobtainium" is unknown/,
  );
});

test("units are those of the sheet throughout", () => {
  const metricOnly = new Set<string>(
    Object.values(kinds).flatMap(({ metric, inch }) => (metric === inch ? [] : [metric])),
  );
  for (const { name } of greenhouse)
    for (const [section, what, formula, , , unit] of sheetOf(name, "inch"))
      // where a line has no plain form in inches it is worked in metric units and converted at its end
      if (formula === "") expect([name, section, what, metricOnly.has(unit)]).toEqual([name, section, what, false]);
});

test("of a bush held at its ends the record is whole, whichever state is the loosest", () => {
  const held = { "held at its ends": "yes", "outside zone": "+0.05/+0.10", temperature: "10 to 40" };
  for (const more of [{}, { moisture: "wet" }, { "share of grip kept": "" }, { motion: "", rpm: 5 }]) {
    const bush = pressedBush({ ...held, ...more });
    const rows = call(functions.DUTYSHEET, [bush, null, "Demo Sorrel"]);
    expect(rows.filter(([section, what]) => section === "grip" && what === "verdict")).toHaveLength(1);
  }
});
