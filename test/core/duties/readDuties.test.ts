import { Band } from "../../../src/core/band";
import { functions } from "../../../src/core";
import type { Cell } from "../../../src/core/formula";
import { BushError } from "../../../src/core/errors";
import { judge, readDuties } from "../../../src/core/duties";
import type { NamedDuty } from "../../../src/core/duties";
import type { System } from "../../../src/core/kinds";
import { call } from "../host";
import { full, grade } from "./support";

/** Tables and cards of duties as users type them. */
type Cells = readonly (readonly unknown[])[];
const read = (cells: Cells, system: System = "metric") =>
  readDuties(cells.map((row) => row.map((cell) => (cell === "" ? null : cell))) as Cell[][], system, "duties");
/** The duty of each line, or what is wrong with it. */
const lines = (cells: Cells, system?: System) =>
  read(cells, system).lines.map(({ duty }) => (duty instanceof BushError ? duty.message : duty));
const one = (cells: Cells, system?: System): NamedDuty => {
  const [duty] = lines(cells, system);
  if (typeof duty === "string" || duty === undefined) throw new Error(duty);
  return duty;
};
const wrong = (cells: Cells): string => {
  const [first] = lines(cells);
  if (typeof first !== "string") throw new Error("nothing is wrong");
  return first;
};

const heading = ["duty", "load", "bore", "length", "rpm", "temperature"];
const row = ["Spindle", 180, 15, 20, 120, "5 to 45"];
/** The row above with further columns. */
const more = (extra: Readonly<Record<string, unknown>>, of: readonly unknown[] = row): Cells => [
  [...heading, ...Object.keys(extra)],
  [...of, ...Object.values(extra)],
];
const without = (...names: string[]): Cells => {
  const kept = heading.map((name, i) => [name, row[i]] as const).filter(([name]) => !names.includes(name));
  return [kept.map(([name]) => name), kept.map(([, cell]) => cell)];
};

describe("a table", () => {
  test("one row is one duty, in working units", () => {
    const duty = one([heading, row]);
    expect(duty.name).toBe("Spindle");
    expect(duty.values).toEqual({
      ...{ duty: "Spindle", load: 180, bore: 15, length: 20, rpm: 120 },
      ...{ temperature: { low: 5, high: 45 } },
    });
    expect([duty.part, duty.grade, duty.bands, duty.corners.length]).toEqual(["sleeve", undefined, [], 1]);
    // p = F/(d·L), v = π·d·n/60000
    const [{ steps, pv, temperature }] = duty.corners as [NamedDuty["corners"][number]];
    expect(steps).toHaveLength(1);
    expect(steps[0].bore).toEqual({ pressure: 0.6, speed: (Math.PI * 15 * 120) / 60_000, area: 300 });
    expect(pv).toBeCloseTo(0.6 * 0.03 * Math.PI, 15);
    expect(temperature).toEqual({ low: 5, high: 45 });
  });
  test("units stand in headings and in cells, the cell's own first; the sheet's system counts where none stands", () => {
    const inches = one([
      ["duty", "load [lbf]", "bore [in]", "length", "rpm", "temperature [°F]"],
      ["Spindle", 40.5, "15 mm", "20 mm", 120, "41 to 113"],
    ]);
    expect(inches.values).toMatchObject({ bore: 15, length: 20 });
    expect(inches.values.load).toBeCloseTo(40.5 * 4.4482216152605, 10);
    expect(inches.values.temperature!.low).toBeCloseTo(5, 10);
    expect(inches.values.temperature!.high).toBeCloseTo(45, 10);
    const sheet = one([heading, ["Spindle", 40, 0.6, "20 mm", 120, "41 to 113"]], "inch");
    expect(sheet.values.load).toBeCloseTo(40 * 4.4482216152605, 10);
    expect(sheet.values.bore).toBeCloseTo(0.6 * 25.4, 12);
    expect(sheet.values.length).toBeCloseTo(20, 12);
    expect(sheet.values.temperature!.low).toBeCloseTo(5, 10);
  });
  test("other headings, any order, case, spaces and marks", () => {
    const told = one([
      ["Ambient temperature", "RADIAL-LOAD", "inner diameter", "Bush length", "Shaft speed", "Name"],
      ["5 to 45", 180, 15, 20, 120, "Spindle"],
    ]);
    expect(told.values).toEqual(one([heading, row]).values);
  });
  test("unknown columns are told and not read; spare rows and rows of zeros are left out", () => {
    const {
      lines: found,
      unknownColumns,
      height,
      first,
    } = read([
      [...heading, "colour", ""],
      ["A", ...row.slice(1), "red", ""],
      Array(8).fill(null),
      ["B", ...row.slice(1), "", "lost"],
      Array(8).fill(0),
    ]);
    expect(unknownColumns).toEqual(["colour", "column 8"]);
    expect(found.map(({ number, name }) => [number, name])).toEqual([
      [2, "A"],
      [4, "B"],
    ]);
    expect([height, first]).toEqual([4, 2]);
  });
  test("the heading row is the first that is not blank", () => {
    const { first, lines: found } = read(
      [
        ["", ""],
        ["load", "bore", "length", "rpm", "temperature"],
        [1, 20, 20, 5, 20],
      ].map((r) => [...r, ...Array(5 - r.length).fill("")]),
    );
    expect([first, found.length, found[0]!.number]).toEqual([3, 1, 3]);
  });
  test("without a known heading, or without a row below it, it says what it wants", () => {
    expect(() =>
      read([
        ["a", "b"],
        [1, 2],
      ]),
    ).toThrow("duties must have a heading row: duty, load, bore");
    expect(() => read([heading])).toThrow("duties holds no row below its headings");
    expect(() =>
      read([
        ["load", "bore", "Load [lbf]"],
        [1, 2, 3],
      ]),
    ).toThrow('duties has two columns for "load"');
    expect(() =>
      read([
        [...heading, new BushError("passed", "#REF!", "#REF!")],
        [...row, 1],
      ]),
    ).toThrow("#REF!");
  });
});

describe("a card", () => {
  const card = heading.map((name, i) => [name, row[i]]);
  test.each([
    ["units", ["", "N", "mm", "mm", "1/min", "°C"]],
    ["another duty", row],
  ])("with %s in a third column is none, and no table either", (_, third) =>
    expect(() => read(card.map((line, i) => [...line, third[i]]))).toThrow(
      "duties has headings down its first column: a card has two columns, a table its headings in its first row",
    ),
  );
  test("is a duty down two columns", () => {
    expect(one(card).values).toEqual(one([heading, row]).values);
    expect(one([["load [lbf]", 40.5], ...card.slice(2)]).values.load).toBeCloseTo(40.5 * 4.4482216152605, 10);
  });
  test("blank lines count for nothing, unknown ones are told, a value without a heading too", () => {
    const { lines: found, unknownColumns } = read([
      card[0]!,
      ["", ""],
      [0, 0],
      ...card.slice(1),
      ["colour", "red"],
      ["", 7],
    ]);
    expect(found).toHaveLength(1);
    expect(found[0]!.duty).not.toBeInstanceOf(BushError);
    expect(unknownColumns).toEqual(["colour", "column 8"]);
  });
  test("what is wrong names the heading and no row", () => {
    expect(wrong(card.filter(([name]) => name !== "bore"))).toBe("duties: bore is missing");
    expect(wrong([...card.slice(0, 2), ["bore", -2], ...card.slice(3)])).toBe(
      "duties: bore must be above 0 mm, got -2",
    );
  });
  test("two columns with two headings are a table of one row", () => {
    const { lines: found } = read([
      ["duty", "load"],
      ["A", 3],
    ]);
    expect(found[0]!.duty).toMatchObject({ message: expect.stringMatching(/^duties row 2: /) as string });
  });
});

describe("what is required", () => {
  test.each(["load", "bore", "length", "temperature"])("%s", (name) => {
    expect(wrong(without(name))).toBe(`duties row 2: ${name} is missing`);
    expect(wrong([heading, row.map((cell, i) => (heading[i] === name ? "" : cell))])).toBe(
      `duties row 2: ${name} is missing`,
    );
    // how people write that there is no value is no value
    expect(wrong([heading, row.map((cell, i) => (heading[i] === name ? "tbd" : cell))])).toBe(
      `duties row 2: ${name} is missing`,
    );
  });
  test("the figures of the motion", () => {
    expect(wrong(without("rpm"))).toBe('duties row 2: motion is missing: fill rpm, swing or stroke, or type "static"');
    const turning = (extra: Record<string, unknown>) => [
      [...without("rpm")[0]!, ...Object.keys(extra)],
      [...without("rpm")[1]!, ...Object.values(extra)],
    ];
    expect(wrong(turning({ motion: "turning" }))).toBe("duties row 2: rpm is missing");
    expect(wrong(turning({ swing: 90 }))).toBe("duties row 2: cycles is missing");
    expect(wrong(turning({ stroke: 90 }))).toBe("duties row 2: cycles is missing");
    expect(wrong(turning({ cycles: 9 }))).toContain("motion is missing");
    expect(one(turning({ swing: 90, cycles: 9 })).steps[0]!.motion).toBe("swinging");
    expect(one(turning({ stroke: 90, cycles: 9 })).steps[0]!.motion).toBe("linear");
    expect(one(turning({ motion: "Oscillating", swing: 90, cycles: 9 })).steps[0]!.motion).toBe("swinging");
    for (const word of ["static", "at rest", "Rest"])
      expect(one(turning({ motion: word })).steps[0]!.motion).toBe("static");
    expect(wrong(turning({ motion: "flying" }))).toMatch(/^duties row 2: motion must be "turning", "swinging"/);
  });
  test("two motions at once, and figures of another one", () => {
    expect(wrong(more({ swing: 90, cycles: 9 }))).toBe(
      "duties row 2: motion is missing: rpm and swing are both filled",
    );
    expect(wrong(more({ motion: "swinging", swing: 90, cycles: 9 }))).toBe(
      "duties row 2: rpm has no place where the motion is swinging",
    );
    expect(wrong(more({ motion: "static" }))).toBe("duties row 2: rpm has no place at rest");
    expect(wrong(more({ cycles: 9 }))).toBe("duties row 2: cycles has no place where the motion is turning");
  });
  test("what the part asks for", () => {
    expect(wrong(more({ part: "flanged" }))).toBe("duties row 2: flange outside is missing");
    expect(
      wrong([
        ["load", "inner", "rpm", "temperature", "part"],
        [600, 20, 40, 23, "washer"],
      ]),
    ).toBe("duties row 2: outer is missing");
    expect(one(more({ part: "bush" })).part).toBe("sleeve");
    expect(one(more({ part: "Flanged bush", "flange outside": 30 })).part).toBe("flanged");
    expect(wrong(more({ part: "ball" }))).toBe(
      'duties row 2: part must be "sleeve", "flanged" or "washer", got "ball"',
    );
  });
  test("nothing is asked of wall, outside and flange thickness", () =>
    expect(typeof lines(more({ wall: "", outside: "" }))[0]).toBe("object"));
});

describe("a bare 0, which may be a blank that the host handed over", () => {
  test.each([
    ["temperature", '"0 °C"'],
    ["rpm", '"static" under motion'],
    ["load", '"0 N"'],
  ])("%s: refused with what to type", (name, typed) => {
    expect(wrong([heading, row.map((cell, i) => (heading[i] === name ? 0 : cell))])).toBe(
      `duties row 2: ${name} must be typed as ${typed} where it is 0, got 0`,
    );
  });
  test.each(["swing", "cycles", "stroke"])("%s: refused with what to type", (name) => {
    expect(wrong(more({ [name]: 0 }))).toBe(
      `duties row 2: ${name} must be typed as "static" under motion where it is 0, got 0`,
    );
  });
  test("typed with its unit it is a number", () => {
    const zero = one([heading, ["Z", "0 N", 15, 20, "0 1/min", "0 °C"]]);
    expect(zero.values).toMatchObject({ load: 0, rpm: 0, temperature: { low: 0, high: 0 } });
    expect(zero.corners[0]!.isMoving).toBe(false);
  });
  test("in an optional field where 0 says nothing it is a blank", () => {
    const optional = {
      ...{ hours: 0, "wear allowance": 0, wall: 0, hardness: 0, roughness: 0, time: 0, "impact factor": 0 },
      ...{ "static load": 0, slope: 0, "exposed length": 0, "least clearance wanted": 0, span: 0, grade: 0 },
      ...{ media: 0, dirt: 0, moisture: 0, shaft: 0, housing: 0, vacuum: 0, friction: 0, "wear factor heat": 0 },
      ...{ "bore zone": 0, "shaft zone": 0, "moisture at assembly": 0, "held at its ends": 0, "zone holds": 0 },
    };
    expect(one(more(optional)).values).toEqual(one([heading, row]).values);
    // a sleeve may so stand in a table with washers
    const table = [
      ["duty", "part", "load", "axial load", "bore", "length", "inner", "outer", "rpm", "temperature"],
      ["A", "sleeve", 180, 0, 15, 20, 0, 0, 120, "5 to 45"],
    ];
    expect(wrong(table)).toBe("duties row 2: inner has no place on a plain sleeve: type its part");
    expect(typeof lines(table.map((cells) => cells.filter((_, i) => i !== 6)))[0]).toBe("object");
  });
});

describe("steps", () => {
  const names = ["duty", "load", "bore", "length", "rpm", "motion", "temperature", "time", "hardness"];
  const first = ["Drum", 180, 15, 20, 120, "", "5 to 45", 10, 250];
  const table = (...below: readonly unknown[][]) => [names, first, ...below];
  test("rows below with no name, or the same one, in any case", () => {
    for (const name of ["", "Drum", "drum"]) {
      const found = lines(table([name, 240, "", "", 60, "", "", 5, ""]));
      expect(found).toHaveLength(1);
      const { corners, steps } = found[0] as NamedDuty;
      expect(steps.map(({ motion, values }) => [motion, values.load, values.rpm, values.time])).toEqual([
        ["turning", 180, 120, 10],
        ["turning", 240, 60, 5],
      ]);
      expect(corners[0]!.steps.map(({ time, bore }) => [time, bore!.pressure])).toEqual([
        [10, 0.6],
        [5, 0.8],
      ]);
    }
  });
  test("what does not change may be blank, or stand there again", () => {
    const [blank] = lines(table(["", "", "", "", 60, "", "", 5, ""])) as [NamedDuty];
    const [again] = lines(table(["Drum", 180, 15, "20 mm", 60, "", "5 to 45", 5, 250])) as [NamedDuty];
    expect(again.steps).toEqual(
      blank.steps.map((step, i) => ({ ...step, values: { ...step.values, ...(i === 1 ? { duty: "Drum" } : {}) } })),
    );
    expect(again.corners[0]!.steps).toEqual(blank.corners[0]!.steps);
    // a default may be typed later as it may be left out
    const parts = [...table(["", "", "", "", 60, "", "", 5, ""])].map((cells, i) => [
      ...cells,
      ["part", "", "sleeve"][i],
    ]);
    expect(typeof lines(parts)[0]).toBe("object");
  });
  test("what may not change is refused, naming the row", () => {
    expect(wrong(table(["", "", 16, "", 60, "", "", 5, ""]))).toBe(
      "duties row 3: bore cannot change between the steps of one duty",
    );
    expect(wrong(table(["", "", "", "", 60, "", "", 5, 200]))).toBe(
      "duties row 3: hardness cannot change between the steps of one duty",
    );
    const late = table(["", "", "", "", 60, "", "", 5, ""]).map((cells, i) => [...cells, ["dirt", "", "heavy"][i]]);
    expect(wrong(late)).toBe("duties row 3: dirt cannot change between the steps of one duty");
    const bands = (second: string) =>
      table(["", "", second, "", 60, "", "", 5, ""]).map((cells, i) =>
        i === 1 ? cells.map((c, j) => (j === 2 ? "15 to 16" : c)) : cells,
      );
    expect(wrong(bands("15 to 17"))).toBe("duties row 3: bore cannot change between the steps of one duty");
    // the same band again is the same band, and both steps stand at one of its values
    const [banded] = lines(bands("15 to 16")) as [NamedDuty];
    expect(banded.bands).toEqual([new Band(15, 16)]);
    for (const { steps } of banded.corners) expect(steps[0].bore!.area).toBe(steps[1]!.bore!.area);
  });
  test("each needs its time, the first too, and the row is named", () => {
    expect(wrong(table(["", "", "", "", 60, "", "", "", ""]))).toBe(
      "duties row 3: time is missing: each step of a duty needs its time",
    );
    const noFirst = table(["", "", "", "", 60, "", "", 5, ""]).map((cells, i) =>
      i === 1 ? cells.map((c, j) => (j === 7 ? "" : c)) : cells,
    );
    expect(wrong(noFirst)).toBe("duties row 2: time is missing: each step of a duty needs its time");
    // a duty without steps needs none
    expect(typeof lines([names, first.map((c, j) => (j === 7 ? "" : c))])[0]).toBe("object");
  });
  test("a step at rest, and motion after it", () => {
    const [duty] = lines(
      table(
        ["", 900, "", "", "", "static", "", 60, ""],
        ["", 180, "", "", 30, "", "", 5, ""],
        ["", "", "", "", "", "", "", 1, ""],
      ),
    ) as [NamedDuty];
    expect(duty.steps.map(({ motion }) => motion)).toEqual(["turning", "static", "turning", "turning"]);
    expect(duty.corners[0]!.steps.map(({ bore, motion }) => [motion, bore!.pressure, bore!.speed > 0])).toEqual([
      ["turning", 0.6, true],
      ["static", 3, false],
      ["turning", 0.6, true],
      ["turning", 0.6, true],
    ]);
    // a step without figures goes on resting
    const [resting] = lines(
      table(["", 900, "", "", "", "static", "", 60, ""], ["", 800, "", "", "", "", "", 1, ""]),
    ) as [NamedDuty];
    expect(resting.steps.map(({ motion }) => motion)).toEqual(["turning", "static", "static"]);
    expect(wrong(table(["", 900, "", "", "", "static", "", 60, ""], ["", 180, "", "", "", "turning", "", 5, ""]))).toBe(
      "duties row 4: rpm is missing",
    );
  });
  test("what belongs to the whole duty outlasts a rest", () => {
    const cells = table(["", 900, "", "", "", "static", "", 60, ""], ["", 180, "", "", 30, "", "", 5, ""]);
    const constant = (...typed: unknown[]) => cells.map((c, i) => [...c, ["time constant", ...typed][i]]);
    for (const typed of [
      [12, "", ""],
      [12, 12, 12],
      [12, "", 12],
    ])
      expect((lines(constant(...typed))[0] as NamedDuty).corners[0]!.given.timeConstant).toBe(12);
    expect(wrong(constant(12, "", 13))).toBe("duties row 4: time constant cannot change between the steps of one duty");
  });
  test("a name repeated apart is an error that names the row, and a row without a name at the top too", () => {
    const apart = lines(table(["Fan", 60, 15, 20, 60, "", 20, "", ""], ["drum", 60, 15, 20, 60, "", 20, "", ""]));
    expect(apart.map((found) => typeof found)).toEqual(["object", "object", "string"]);
    expect(apart[2]).toBe('duties row 4: duty "drum" stands above already: steps of one duty stand below each other');
    const afterBlank = lines(table(Array(9).fill(""), ["", 60, 15, 20, 60, "", 20, "", ""]));
    expect(afterBlank[1]).toBe("duties row 4: duty is missing");
    expect(wrong([names, ["", ...first.slice(1)]])).toBe("duties row 2: duty is missing");
  });
  test("without a column of names each row is a duty of its own", () => {
    const unnamed = [heading.slice(1), row.slice(1), row.slice(1)];
    expect(lines(unnamed).map((found) => typeof found)).toEqual(["object", "object"]);
  });
  test("an intermittent duty has no steps beside it", () => {
    const cells = table(["", "", "", "", 60, "", "", 5, ""]).map((c, i) => [
      ...c,
      ["running time", 2, ""][i],
      ["rest time", 5, ""][i],
    ]);
    expect(wrong(cells)).toBe("duties row 2: running time has no place beside steps: a step at rest has its own time");
    expect(wrong(more({ "running time": 2 }))).toBe("duties row 2: rest time is missing");
    expect(wrong(more({ "rest time": 2 }))).toBe("duties row 2: running time is missing");
  });
  test("the temperatures of all steps together, and the short peak above all of them", () => {
    const spans = (peak: unknown) =>
      table(["", "", "", "", 60, "", "-10 to 70", 5, ""]).map((c, i) => [
        ...c,
        ["short peak temperature", peak, ""][i],
      ]);
    expect((lines(spans(80))[0] as NamedDuty).corners[0]!.temperature).toEqual({ low: -10, high: 70 });
    expect(wrong(spans(60))).toContain("short peak temperature must not be below the surroundings' warmer end");
  });
  test("a washer's load may change its column from step to step", () => {
    const washer = ["duty", "part", "load", "axial load", "inner", "outer", "rpm", "temperature", "time"];
    const [duty] = lines([
      washer,
      ["W", "washer", 600, "", 20, 40, 30, 23, 5],
      ["", "", "", 300, "", "", "", "", 5],
      ["", "", 150, "", "", "", "", "", 5],
      ["", "", "", "", "", "", 60, "", 5],
    ]) as [NamedDuty];
    const area = 300 * Math.PI;
    expect(duty.corners[0]!.steps.map(({ face }) => face!.pressure * area)).toEqual(
      [600, 300, 150, 150].map((load) => expect.closeTo(load, 9) as number),
    );
  });
});

describe("bands", () => {
  test("two ends are uniform, a likely value with what it is off by triangular; units for both", () => {
    const load = (cell: unknown, head = "load") =>
      one([
        [head, ...heading.slice(2)],
        [cell, ...row.slice(2)],
      ]).values.load;
    expect(load("640 to 960")).toEqual(new Band(640, 960));
    expect(load("640…960 N")).toEqual(new Band(640, 960));
    expect(load("0.64 – 0.96 kN")).toEqual(new Band(640, 960));
    expect(load("0.64 kN to 0.96")).toEqual(new Band(640, 960));
    expect(load("6.4e2 to 9.6e2 N", "load [kN]")).toEqual(new Band(640, 960));
    expect(load("0.64 kN to 960 N")).toEqual(new Band(640, 960));
    expect(load("800 ± 20 %")).toEqual(new Band(640, 960, 800));
    expect(load("800 +/- 160 N")).toEqual(new Band(640, 960, 800));
    const inch = load("180 ± 10 %", "load [lbf]") as Band;
    expect([inch.low, inch.high, inch.likely].map((x) => x! / 4.4482216152605)).toEqual(
      [162, 198, 180].map((x) => expect.closeTo(x, 9) as number),
    );
  });
  test("a band is in order and inside its domain", () => {
    expect(wrong(more({}, ["A", "960 to 640", ...row.slice(2)]))).toBe(
      'duties row 2: load must be a band, lower end first, as "640 to 960", got "960 to 640"',
    );
    expect(wrong(more({}, ["A", "-5 to 640", ...row.slice(2)]))).toContain("load must be 0 N or more");
    expect(wrong(more({}, ["A", "800 ± 120 %", ...row.slice(2)]))).toContain("load must be 0 N or more");
    expect(wrong(more({}, ["A", 180, "15 ± 15", ...row.slice(3)]))).toContain("bore must be above 0 mm");
  });
  test("temperatures are two ends that both occur, never a band", () => {
    const duty = one([heading, row]);
    expect([duty.values.temperature, duty.bands]).toEqual([{ low: 5, high: 45 }, []]);
    for (const peak of ["60 to 70", "60 ± 5", "60 ± 5 %", "140 °F to 150 °F"])
      expect(wrong(more({ "short peak temperature": peak }))).toBe(
        `duties row 2: short peak temperature must be one value, no band, got "${peak}"`,
      );
    expect(wrong(more({ "short peak temperature": "60 to the limit" }))).toContain("must be in a unit like °C or °F");
  });
  test("every corner is judged, each criterion at its worst", () => {
    const banded = one([heading, ["B", "300 to 600", "15 to 20", 15, "40 to 60", 23]]);
    expect(banded.corners).toHaveLength(8);
    const checks = judge(grade(full), banded);
    const found = (id: string) => checks.find(({ criterion }) => criterion.id === id)!;
    // pressure and PV at the small bore, speed at the large one; length over bore at either end of 0.75 and 1
    expect(found("runningPressure").value).toBeCloseTo(600 / 225, 12);
    expect(found("speed").value).toBeCloseTo(0.02 * Math.PI, 12);
    expect(found("pv").value).toBeCloseTo((600 / 15 / 1000) * Math.PI, 9);
    expect(found("boreTemperature").value).toBeCloseTo(23 + (67 * found("pv").value!) / 0.2, 9);
  });
  test("what only some corners ask stands in its place, and a criterion of words takes its worst", () => {
    const impact = judge(
      grade({ ...full, shock: "poor" }),
      one(more({ "impact factor": "1 to 2", hardness: "150 to 250" })),
    );
    const ids = impact.map(({ criterion }) => criterion.id);
    expect(ids.indexOf("shock")).toBeLessThan(ids.indexOf("shaft"));
    expect(impact.find(({ criterion }) => criterion.id === "shock")!.word).toBe("fails");
    expect(impact.find(({ criterion }) => criterion.id === "shaft")).toMatchObject({ word: "care", value: 150 });
    // nothing of one corner is told with the word of another
    const half = judge(
      grade({ ...full, staticPressure: undefined }),
      one([heading.map((h) => (h === "rpm" ? "rpm" : h)), ["B", 600, 20, 15, "0 to 40", 23]]),
    );
    const [rest] = half;
    expect([rest!.criterion.id, rest!.word, rest!.limit]).toEqual(["staticPressure", "no data", undefined]);
    // without a use the one with the least room is told
    const hot = judge(
      grade(full),
      one([heading, ["B", "300 to 600", 20, 15, 40, 23]].map((c, i) => [...c, ["peak temperature", 60][i]])),
    );
    expect(hot.find(({ criterion }) => criterion.id === "shortPeak")!.value).toBeCloseTo(
      60 + (67 * 0.0837758) / 0.2,
      4,
    );
  });
  test("at most six", () => {
    const six = { "impact factor": "1 to 2", "design factor": "1 to 2", hardness: "200 to 250" };
    const bands = (extra: object) => more({ ...six, ...extra }, ["B", "300 to 600", "15 to 20", "15 to 20", 40, 23]);
    expect(one(bands({})).corners).toHaveLength(64);
    expect(wrong(bands({ roughness: "0.2 to 0.4" }))).toBe(
      "duties row 2: a duty may hold at most 6 bands, this one holds 7",
    );
  });
});

describe("loads, sizes and fields that do not go together", () => {
  test("an axial load on a plain sleeve", () => {
    expect(wrong(more({ "axial load": 50 }))).toBe(
      "duties row 2: axial load has no place on a plain sleeve: type its part",
    );
  });
  test("a washer's load stands under load or axial load, not both, and not neither", () => {
    const washer = (load: unknown, axial: unknown) => [
      ["part", "load", "axial load", "inner", "outer", "rpm", "temperature"],
      ["washer", load, axial, 20, 40, 30, 23],
    ];
    expect(typeof lines(washer(600, ""))[0]).toBe("object");
    expect(typeof lines(washer("", 600))[0]).toBe("object");
    for (const [load, axial] of [
      [600, 600],
      ["", ""],
    ])
      expect(wrong(washer(load, axial))).toBe(
        "duties row 2: a washer's load stands under load or axial load, one of them",
      );
  });
  test("sizes of another part", () => {
    expect(wrong(more({ part: "washer", inner: 20, outer: 40 }))).toBe("duties row 2: bore has no place on a washer");
    expect(wrong(more({ inner: 20 }))).toBe("duties row 2: inner has no place on a plain sleeve: type its part");
    expect(wrong(more({ part: "flanged", "flange outside": 30, outer: 40 }))).toBe(
      "duties row 2: outer has no place on a flanged bush",
    );
  });
  test.each([
    [{ wall: 0.0625, "wear allowance": 0.08 }, "wear allowance must be below the wall of 0.0625 in, got 0.08 in"],
    [
      { part: "flanged", wall: 0.0625, "flange outside": 0.8 },
      "flange outside must be above the bush's outside of 0.875 in, got 0.8 in",
    ],
    [{ outside: 0.7 }, "outside must be above the bore of 0.75 in, got 0.7 in"],
    [
      { wall: 0.0625, outside: 0.9 },
      "wall and outside contradict each other: bore 0.75 in + 2 × 0.0625 in is not 0.9 in",
    ],
    [
      { wall: 0.0625, "housing outside": 0.8 },
      "housing outside must be above the bush's outside of 0.875 in, got 0.8 in",
    ],
  ])("sizes that contradict each other are told in the sheet's unit: %j", (sizes, why) => {
    const card = { load: 40, bore: 0.75, length: 0.75, rpm: 100, temperature: 70, ...sizes };
    expect(lines(Object.entries(card), "inch")).toEqual([`duties: ${why}`]);
  });
  test("sizes that contradict each other", () => {
    expect(wrong(more({ wall: 1.5, outside: 20 }))).toBe(
      "duties row 2: wall and outside contradict each other: bore 15 mm + 2 × 1.5 mm is not 20 mm",
    );
    expect(typeof lines(more({ wall: 1.5, outside: 18 }))[0]).toBe("object");
    expect(wrong(more({ outside: 15 }))).toBe("duties row 2: outside must be above the bore of 15 mm, got 15 mm");
    expect(wrong(more({ wall: 1.5, "housing outside": 18 }))).toBe(
      "duties row 2: housing outside must be above the bush's outside of 18 mm, got 18 mm",
    );
    expect(wrong(more({ wall: 1.5, "shaft zone": "-25/-24" }))).toMatch(
      /^duties row 2: bore 15 mm is too small for .*: its least limit would be -10 mm$/,
    );
    expect(wrong(more({ part: "flanged", "flange outside": 15 }))).toBe(
      "duties row 2: flange outside must be above the bore of 15 mm, got 15 mm",
    );
    expect(wrong(more({ wall: 1.5, "wear allowance": 1.5 }))).toBe(
      "duties row 2: wear allowance must be below the wall of 1.5 mm, got 1.5 mm",
    );
    expect(wrong(more({ outside: 18, "wear allowance": 2 }))).toBe(
      "duties row 2: wear allowance must be below the wall of 1.5 mm, got 2 mm",
    );
    expect(
      wrong([
        ["part", "load", "inner", "outer", "rpm", "temperature"],
        ["washer", 600, 40, 40, 30, 23],
      ]),
    ).toMatch(/^duties row 2: outer must be/);
  });
  test("Rockwell hardness is refused, naming HB", () => {
    expect(wrong(more({ hardness: "45 HRC" }))).toBe('duties row 2: hardness must be in HB, got "HRC"');
    expect(wrong(more({ "hardness [HRC]": 45 }))).toBe('duties row 2: hardness must be in HB, got "HRC"');
    expect(one(more({ hardness: "250 HBW" })).values.hardness).toBe(250);
  });
  test("words out of no list: what was found, the nearest, or as many as there is room for", () => {
    expect(wrong(more({ "shaft material": "brass" }))).toMatch(
      /^duties row 2: shaft must be "hardened steel", .*…, got "brass"$/,
    );
    expect(wrong(more({ media: "water, watr" }))).toBe('duties row 2: media "watr" is unknown; nearest: water');
    expect(wrong(more({ media: "beer" }))).toMatch(
      /^duties row 2: media "beer" is unknown; known: water, .*, fuels, …$/,
    );
  });
  test("words out of a list", () => {
    expect(one(more({ media: "Water; fuels" })).values.media).toEqual(["water", "fuels"]);
    expect(one(more({ wet: true })).values.moisture).toBe("wet");
    expect(one(more({ "load turns with the shaft": "yes" })).values.loadTurns).toBe("yes");
    expect(wrong(more({ load2: 1, vacuum: "perhaps" }))).toBe(
      'duties row 2: vacuum must be "no" or "yes", got "perhaps"',
    );
  });
});

describe("what is wrong stays in its row", () => {
  const grades = [
    [
      "grade",
      ...["running pressure limit", "speed limit turning", "PV limit", "lowest temperature", "highest temperature"],
    ],
    ["Own", 20, 1, 0.2, -40, 90],
  ];
  test("an error cell in its row, later steps and spare rows empty", () => {
    const table = call(
      functions.DUTIES,
      [
        [...heading, "time"],
        ["A", ...row.slice(1), ""],
        ["B", "#REF!", ...row.slice(2), ""],
        Array(7).fill(null),
        ["C", ...row.slice(1), 5],
        ["", 90, "", "", "", "", 5],
        ["D", "much", ...row.slice(2), ""],
      ],
      grades,
    );
    const verdicts = table.map((cells) => cells[table[0]!.indexOf("verdict")]);
    expect(verdicts).toEqual([
      "verdict",
      "fits, PV 42 %",
      "#REF!",
      "",
      "fits, PV 42 %",
      "",
      expect.stringMatching(/^#VALUE! duties row 7: load must be a number/),
    ]);
    expect(table.map(([name]) => name)).toEqual(["duty", "A", "B", "", "C", "", "D"]);
  });
  test("an error of one duty does not keep another from being asked for", () => {
    const duties = [heading, ["A", ...row.slice(1)], ["B", "much", ...row.slice(2)]];
    expect(call(functions.DUTYCHECKS, duties, "A", "Own", grades).length).toBeGreaterThan(5);
    expect(call(functions.DUTYCHECKS, duties, "b", "Own", grades)[0]![0]).toMatch(
      /^#VALUE! duties row 3: load must be a number/,
    );
  });
});

test("DUTYCHECKS finds a duty by name or by number, steps counted once", () => {
  const duties = [
    [...heading, "time"],
    ["A", ...row.slice(1), 5],
    ["", 90, "", "", "", "", 5],
    ["B", 1800, ...row.slice(2), ""],
    ["7", 900, ...row.slice(2), ""],
  ];
  const pressure = (duty: unknown) => {
    const checks = call(functions.DUTYCHECKS, duties, duty, "Demo Medlar");
    return checks.find(([name]) => name === "running pressure")?.[1] ?? checks[0]![0];
  };
  expect([pressure("a"), pressure("B"), pressure(1), pressure(2), pressure(3), pressure(7), pressure("7")]).toEqual([
    0.6, 6, 0.6, 6, 3, 3, 3,
  ]);
  expect(pressure(4)).toBe('#N/A duty "4" is unknown; the table has "A", "B" or "7"');
  expect(pressure("C")).toBe('#N/A duty "C" is unknown; the table has "A", "B" or "7"');
  expect(pressure(1.5)).toMatch(/^#N\/A duty "1.5" is unknown/);
  expect(pressure(null)).toBe("#VALUE! duty is missing: the table holds 3, name one or give its number");
  // one duty needs none
  expect(call(functions.DUTYCHECKS, [heading, row], null, "Demo Medlar")[1]![0]).toBe("running pressure");
});

describe("a zone under a heading with a unit", () => {
  const bush = { load: 300, bore: 20, length: 20, rpm: 1, temperature: 20 };
  const zoneOf = (column: string, zone: string, system: System = "metric") => {
    const cells = Object.entries({ ...bush, [column]: zone });
    const table = [cells.map(([name]) => name), cells.map(([, value]) => value)];
    const { duty } = readDuties(table, system, "duties").lines[0]!;
    if (duty instanceof BushError) throw duty;
    return String(duty.values.shaftZone);
  };
  test.each([
    ["shaft zone [in]", "+0.0005/+0.001", "+0.0254/+0.0127 mm"],
    ["shaft zone [µm]", "-41/-20", "-0.02/-0.041 mm"],
    ["shaft zone [in]", "+0.05/+0.10 mm", "+0.1/+0.05 mm"],
    ["shaft zone [mm]", "f7", "f7"],
    ["shaft zone [mm]", "20 f7", "f7"],
  ])("%s %s is %s", (column, zone, read) => expect(zoneOf(column, zone)).toBe(read));
  test("counts in an inch sheet too", () =>
    expect(zoneOf("shaft zone [mm]", "+0.05/+0.10", "inch")).toBe("+0.1/+0.05 mm"));
  test("that is no length is refused", () => {
    for (const zone of ["+0.05/+0.10", "f7"])
      expect(() => zoneOf("shaft zone [kg]", zone)).toThrow("shaft zone must be in a unit like mm or in");
  });
});
