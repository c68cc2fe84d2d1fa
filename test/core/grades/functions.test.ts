import fc from "fast-check";
import { functions } from "../../../src/core";
import { standardLibrary } from "../../../src/core/grades/model";
import { standingCautions } from "../../../src/core/grades/cautionsOf";
import { call, one } from "../host";
import { seed } from "../../laws/check";

const demo = standardLibrary()
  .grades.filter((g) => g.kind === "demo")
  .map((g) => g.name);

/** An own row that holds little. */
const bare = [
  ["grade", "running pressure limit", "highest temperature"],
  ["Bare", 20, 90],
];

test("GRADE answers numbers, words, lists and curves in the sheet's units", () => {
  expect(one(functions.GRADE, "demo sorrel", "PV limit")).toBe(0.13);
  expect(one(functions.GRADE, "Demo Sorrel", "highest temperature", null, "inch")).toBeCloseTo(194, 10);
  expect(one(functions.GRADE, "Demo Sorrel", "shock")).toBe("good");
  expect(one(functions.GRADE, "Demo Sorrel", "shafts suited")).toBe("hardened steel, stainless steel, soft steel");
  expect(one(functions.GRADE, "Demo Sorrel", "pressure at temperature")).toBe("-35: 70; 23: 70; 90: 28");
  expect(one(functions.GRADE, "Demo Sorrel", "kind")).toBe("invented for the demo");
  expect(one(functions.GRADE, "PA66", "kind")).toBe("generic family");
  expect(one(functions.GRADE, "Bare", "PV limit", bare)).toBe('#N/A grade "Bare" has no data on PV limit');
  expect(one(functions.GRADE, "PA67", "PV limit")).toBe('#N/A grade "PA67" is unknown; nearest: PA66 or PA6');
  expect(one(functions.GRADE, "PA66", "PV limits")).toBe('#N/A property "PV limits" is unknown; nearest: PV limit');
});

test("GRADE takes ranges, its errors stay in their row", () => {
  const unknown = '#N/A grade "nobody" is unknown; GRADES() lists the library';
  expect(call(functions.GRADE, [["PA66"], ["nobody"], [null]], "PV limit", null, "inch")).toEqual([
    [expect.closeTo(1000, 8)],
    [unknown],
    [""],
  ]);
  expect(call(functions.GRADE, [["PA66"], ["PTFE"]], [["PV limit", "highest temperature"]], null, "inch")).toEqual([
    [expect.closeTo(1000, 8), expect.closeTo(194, 8)],
    [expect.closeTo(1000, 8), expect.closeTo(482, 8)],
  ]);
});

test("GRADES has the headings asked for, and one row a grade with its kind", () => {
  const table = call(functions.GRADES, [["PV limit", null, "shock"]], null, "inch");
  expect(table[0]).toEqual(["grade", "kind", "PV limit [psi·ft/min]", "shock"]);
  expect(table.slice(1).map((row) => row[0])).toEqual(standardLibrary().grades.map((g) => g.name));
  expect(new Set(table.slice(1).map((row) => row[1]))).toEqual(new Set(["generic family", "invented for the demo"]));
  expect(one(functions.GRADES, [["colour"]])).toBe('#N/A properties "colour" is unknown; GRADES() shows the headings');
});

test("ALLOWABLE is the limit at temperature, and no number beyond the data", () => {
  expect(one(functions.ALLOWABLE, "Demo Sorrel", "PV limit", 23)).toBe(0.13);
  // its curve: 0.13 at 23 °C, 0.052 at 60 °C, 0 at 90 °C
  expect(one(functions.ALLOWABLE, "Demo Sorrel", "PV limit", "-35 to 41.5")).toBeCloseTo(0.091, 12);
  expect(one(functions.ALLOWABLE, "Demo Sorrel", "PV limit", 90)).toBe(0);
  expect(one(functions.ALLOWABLE, "Demo Sorrel", "static pressure limit", 90)).toBe(28);
  expect(one(functions.ALLOWABLE, "Demo Sorrel", "speed limit linear", 90)).toBe(2.2);
  expect(one(functions.ALLOWABLE, "Demo Sorrel", "PV limit", 91)).toBe("#N/A temperature 91 °C above 90 °C");
  expect(one(functions.ALLOWABLE, "Demo Sorrel", "PV limit", -50, null, "inch")).toBe(
    "#N/A temperature -50 °F below -31 °F",
  );
  const own = [
    ["grade", "PV limit", "PV at temperature", "highest temperature"],
    ["A", 0.2, "23: 0.2; 60: 0.1", 90],
  ];
  expect(one(functions.ALLOWABLE, "A", "PV limit", 60, own)).toBe(0.1);
  expect(one(functions.ALLOWABLE, "A", "PV limit", 61, own)).toBe(
    '#N/A temperature is beyond the curve "PV at temperature", which ends at 60 °C',
  );
  expect(one(functions.ALLOWABLE, "Bare", "running pressure limit", 10, bare)).toBe(
    '#N/A grade "Bare" has no data on lowest temperature',
  );
  expect(one(functions.ALLOWABLE, "PA66", "density", 23)).toMatch(
    /^#N\/A property must be one of the limits: static pressure/,
  );
});

test("USE is the largest ratio, and an error where there is none", () => {
  expect(one(functions.USE, "Demo Medlar", 2, 0.0425, 23)).toBeCloseTo(0.5, 12);
  expect(one(functions.USE, "Demo Medlar", 26, 9, 23, "static")).toBeCloseTo(0.5, 12);
  expect(one(functions.USE, "Demo Medlar", 2, 0.04, 90)).toBe("#N/A temperature 90 °C above 82 °C");
  expect(one(functions.USE, "Bare", 2, 0.04, 23, null, bare)).toBe(
    '#N/A grade "Bare" has no data on speed limit turning',
  );
  expect(one(functions.USE, "Demo Medlar", -2, 0.04, 23)).toBe("#VALUE! pressure must be 0 MPa or more, got -2");
  expect(one(functions.USE, "Demo Medlar", 2, 0.04, 23, "spinning")).toMatch(/^#VALUE! motion must be "turning"/);
  expect(one(functions.USE, "Demo Medlar", 2, 0.04, null)).toBe("#VALUE! temperature is missing");
});

test("VERDICT speaks the sheet's units", () => {
  expect(one(functions.VERDICT, "Demo Medlar", 2, 0.04, 23)).toBe("fits, PV 47 %");
  expect(one(functions.VERDICT, "Demo Medlar", 2, 0.04, 100)).toBe("fails, temperature 100 °C above 82 °C");
  expect(one(functions.VERDICT, "Demo Medlar", 300, 8, 212, null, null, "inch")).toBe(
    "fails, temperature 212 °F above 179.6 °F",
  );
  expect(one(functions.VERDICT, "Bare", 2, 0.04, 23, null, bare)).toBe("no data, speed");
});

test("VERDICT over a range, blanks and errors in their rows", () => {
  expect(
    call(
      functions.VERDICT,
      [["Demo Medlar"], ["Demo Sorrel"], [null], ["x"]],
      [[2], ["290 psi"], [null], [1]],
      0.04,
      23,
    ),
  ).toEqual([["fits, PV 47 %"], ["fits, PV 62 %"], [""], ['#N/A grade "x" is unknown; GRADES() lists the library']]);
});

test("CHECKS spills a heading and a row a criterion", () => {
  expect(call(functions.CHECKS, "Demo Sorrel", 2, 0.0325, "-10 to 23")).toEqual([
    ["criterion", "value", "limit", "unit", "use", "verdict"],
    ["running pressure", 2, 40, "MPa", 0.05, "fits"],
    ["highest temperature", 23, 90, "°C", "", "fits"],
    ["speed", 0.0325, 1.15, "m/s", expect.closeTo(0.0325 / 1.15, 12), "fits"],
    ["PV", 0.065, 0.13, "MPa·m/s", 0.5, "fits"],
    // 23 + (90 − 23)·0.065/0.13
    ["bore temperature", expect.closeTo(56.5, 12), 90, "°C", expect.closeTo(0.5, 12), "fits"],
    ["lowest temperature", -10, -35, "°C", "", "fits"],
  ]);
  const missing = call(functions.CHECKS, "Bare", 2, 0.03, 23, null, bare);
  expect(missing[3]).toEqual(["speed", 0.03, "", "m/s", "", "no data"]);
});

test("SHORTLIST ranks what fits by use, then what lacks data, then failures with the reason; own grades among them, invented ones last", () => {
  const own = [
    ["grade", "running pressure limit", "speed limit turning", "PV limit", "highest temperature"],
    ["Mine", 100, 10, 10, 200],
  ];
  const table = call(functions.SHORTLIST, 2, 0.06, "20 to 45", "turning", "dry", own, null);
  expect(table[0]).toEqual(["grade", "kind", "verdict", "use", "reason"]);
  const rows = table.slice(1);
  expect(rows).toHaveLength(standardLibrary().grades.length + 1);
  expect(rows[0]).toEqual([
    "Mine",
    "own",
    "fits",
    0.02,
    "running pressure 2 %; pressure limit not lowered for temperature",
  ]);
  const invented = rows.filter((row) => row[1] === "invented for the demo");
  const others = rows.slice(0, -invented.length);
  expect(rows.slice(-invented.length)).toEqual(invented);
  for (const part of [others, invented]) {
    const words = part.map((row) => row[2]);
    expect(words).toEqual([...words].sort((a, b) => rankOf(a) - rankOf(b)));
    const uses = part.filter((row) => row[2] === "fits").map((row) => row[3] as number);
    expect(uses).toEqual([...uses].sort((a, b) => a - b));
    expect(Math.max(...uses)).toBeLessThanOrEqual(1);
  }
  for (const row of rows) expect(row[4]).not.toBe("");
});
const rankOf = (word: unknown) => ["fits", "care", "no data", "fails"].indexOf(word as string);

test("SHORTLIST, wet: a family of unknown swelling has no data", () => {
  const verdicts = (wet: string) =>
    Object.fromEntries(
      call(functions.SHORTLIST, 0.5, 0.05, "20 to 30", "turning", wet).map((row) => [
        row[0] as string,
        `${row[2] as string}, ${row[4] as string}`,
      ]),
    );
  expect(verdicts("dry")["epoxy + PTFE"]).toMatch(/^fits/);
  expect(verdicts("wet")["epoxy + PTFE"]).toBe("no data, moisture: swelling saturated");
  expect(verdicts("wet").PA66).toBe(`${verdicts("dry").PA66!}; swells 3 %`);
  expect(verdicts("wet")["Demo Sorrel"]).toBe(`${verdicts("dry")["Demo Sorrel"]!}; swells 2 %`);
});

test("sizing by hand, and the inverse: what is just allowed has a use of exactly 1", () => {
  // F/(d·p) = 8000/(20·40) = 10 mm at rest; F·v/(d·PV) = 8000·0.0325/(20·0.13) = 100 mm: limits of Demo Sorrel at 23 °C
  expect(one(functions.MINLENGTH, "Demo Sorrel", 8000, 20, 0, 23)).toBeCloseTo(10, 12);
  // in between the warm bore lowers the pressure limit: p = 70 − 42·(p·v·67/0.13)/67 at v = 0.003, so p = 70/(1 + 0.003·42/0.13)
  const pressure = 70 / (1 + (0.003 * 42) / 0.13);
  expect(one(functions.MINLENGTH, "Demo Sorrel", 8000, 20, 0.003, 23)).toBeCloseTo(8000 / (20 * pressure), 9);
  expect(one(functions.MINLENGTH, "Demo Sorrel", 8000, 20, 0.0325, 23)).toBeCloseTo(100, 12);
  expect(one(functions.MAXLOAD, "Demo Sorrel", 20, 10, 0.0325, 23)).toBeCloseTo(800, 12);
  expect(one(functions.MAXLOAD, "Demo Sorrel", 20, 10, 0, 23)).toBeCloseTo(8000, 12);
  // v = PV·d·L/F = 0.13·20·15/780 = 0.05 m/s; n = 60000·0.05/(π·20)
  expect(one(functions.MAXRPM, "Demo Sorrel", 780, 20, 15, 23)).toBeCloseTo(3000 / (Math.PI * 20), 10);
  expect(one(functions.MAXRPM, "Demo Sorrel", 0, 20, 15, 23)).toBeCloseTo((60000 * 1.15) / (Math.PI * 20), 10);
  expect(one(functions.MAXRPM, "Demo Sorrel", 30000, 20, 15, 23)).toBe(
    "#N/A load: no shaft speed is allowed, running pressure 100 MPa is above its limit 40 MPa",
  );
  expect(one(functions.MINLENGTH, "Bare", 800, 20, 0.05, 23, bare)).toBe(
    '#N/A grade "Bare" has no data on speed limit turning',
  );
  expect(one(functions.MINLENGTH, "PA66", 800, 20, 0.05)).toBe("#VALUE! temperature is missing");
  // 2.5 times the speed limit: no length holds
  expect(one(functions.MINLENGTH, "Demo Sorrel", 800, 20, 3, 40)).toBe(
    "#N/A speed 3 m/s is above its limit 1.15 m/s: no size holds",
  );
});

const sample = fc.record({
  grade: fc.constantFrom(...demo),
  bore: fc.double({ min: 3, max: 200, noNaN: true }),
  length: fc.double({ min: 3, max: 200, noNaN: true }),
  speed: fc.double({ min: 0.001, max: 0.2, noNaN: true }),
  at: fc.double({ min: 20, max: 65, noNaN: true }),
});

/** The greatest of all criteria: where the verdict is care, the governing one may be used less. */
const greatestUse = (...given: unknown[]): number =>
  Math.max(...call(functions.CHECKS, ...given).flatMap((row) => (typeof row[4] === "number" ? [row[4]] : [])));

test("MAXLOAD and MINLENGTH put the use at 1", () => {
  fc.assert(
    fc.property(sample, ({ grade, bore, length, speed, at }) => {
      const load = one(functions.MAXLOAD, grade, bore, length, speed, at) as number;
      const pressure = one(functions.PRESSURE, load, bore, length);
      expect(greatestUse(grade, pressure, speed, at)).toBeCloseTo(1, 9);
      expect(one(functions.VERDICT, grade, pressure, speed, at)).toMatch(
        /^(fits|care), .*100 %(; pressure limit not lowered for temperature)?$/,
      );
      expect(one(functions.MINLENGTH, grade, load, bore, speed, at)).toBeCloseTo(length, 6);
    }),
    { seed },
  );
});

test("a bore that its PV drives just to the end of the pressure curve is not beyond it by a rounding", () => {
  const load = one(functions.MAXLOAD, "Demo Lovage", 3, 3, 0.00924880080777135, 57.73786028209702) as number;
  expect(one(functions.VERDICT, "Demo Lovage", load / 9, 0.00924880080777135, 57.73786028209702)).toBe(
    "fits, PV 100 %",
  );
});

test("MAXRPM puts the use at 1", () => {
  fc.assert(
    fc.property(sample, ({ grade, bore, length, at }) => {
      const load = bore * length * 0.4;
      const rpm = one(functions.MAXRPM, grade, load, bore, length, at);
      const speed = one(functions.SPEED, bore, rpm);
      expect(one(functions.PVVALUE, 0.4, speed)).toBeGreaterThan(0);
      expect(greatestUse(grade, 0.4, speed, at)).toBeCloseTo(1, 9);
    }),
    { seed },
  );
});

test("metric and inch judge alike", () => {
  const psi = 0.006894757293168361;
  fc.assert(
    fc.property(sample, fc.constantFrom("turning", "swinging", "linear", "static"), (s, motion) => {
      const pressure = (s.bore / s.length) * 10;
      const inch = [s.grade, pressure / psi, s.speed / 0.00508, s.at * 1.8 + 32, motion, null, "inch"];
      const use = one(functions.USE, s.grade, pressure, s.speed, s.at, motion) as number;
      expect((one(functions.USE, ...inch) as number) / use).toBeCloseTo(1, 9);
      const load = one(functions.MAXLOAD, s.grade, s.bore, s.length, s.speed, s.at) as number;
      const lbf = one(
        functions.MAXLOAD,
        s.grade,
        s.bore / 25.4,
        s.length / 25.4,
        s.speed / 0.00508,
        s.at * 1.8 + 32,
        null,
        "inch",
      );
      expect(((lbf as number) * 4.4482216152605) / load).toBeCloseTo(1, 9);
    }),
    { seed },
  );
});

test("use grows with load", () => {
  fc.assert(
    fc.property(sample, fc.double({ min: 1.01, max: 3, noNaN: true }), ({ grade, speed, at }, factor) => {
      const use = (pressure: number) => one(functions.USE, grade, pressure, speed, at) as number;
      expect(use(3 * factor)).toBeGreaterThanOrEqual(use(3));
    }),
    { seed },
  );
});

const cautions = (...given: unknown[]) => {
  const [heading, ...lines] = call(functions.CAUTIONS, ...given).map((row) => row[0] as string);
  expect(heading).toBe("caution");
  expect(lines.slice(-standingCautions.length)).toEqual(standingCautions);
  return lines.slice(0, -standingCautions.length);
};

test("CAUTIONS: what is invented, remembered, missing or derated is said", () => {
  expect(cautions("Demo Sorrel", 2, 0.03, 23)).toEqual([
    "Demo Sorrel is invented for the demo: not a material on sale, not for design.",
    // 23 + 67·(0.06/0.13)·(0.42/0.20) K
    "Bore temperature: up to 87.94 °C where friction is at its high figure.",
  ]);
  const generic = cautions("PA66", 2, 0.03, "10 to 60").join("\n");
  expect(generic).toContain("generic family");
  expect(generic).toMatch(/Recalled from M\. J\. Neale.*, not re-read: PV limit\./);
  expect(generic).toContain("The running pressure limit: limit of boundary-lubricated bearings.");
  expect(generic).toContain("PV: limit derated for the surroundings by DERATEDPV: no PV curve is known.");
  expect(cautions("PA66", 2, 0.03, "20 to 23").join("\n")).not.toContain("derated");
  const own = (...given: unknown[]) => cautions("Bare", ...given, ...Array<null>(7 - given.length).fill(null), bare);
  expect(own(2, 0.03, "10 to 23")).toEqual(
    expect.arrayContaining([
      "No data on PV limit: PV was not checked.",
      "No data on lowest temperature: lowest temperature was not checked.",
    ]),
  );
  expect(cautions("PEEK", 2, 0, 23, "static").join("\n")).not.toContain("PV");
});

test("CAUTIONS: moisture, shock, shaft, temperature, unknown columns", () => {
  const wet = cautions("Demo Sorrel", 2, 0.03, 23, "turning", "wet", "shock", "chromed");
  expect(wet).toContain("Swells 2 %: check the wet clearance.");
  expect(wet).toContain("Shaft of chromed not among those suited.");
  expect(wet.join()).toContain("impact factor");
  expect(cautions("Demo Medlar", 2, 0.03, 23, "turning", "dry", "shock")).toContain("Shock fair.");
  expect(cautions("Bare", 2, 0.03, 23, null, "wet", "shock", "soft steel", bare)).toEqual(
    expect.arrayContaining([
      "No data on swelling saturated: moisture was not checked.",
      "No data on shock: shock was not checked.",
      "No data on shafts suited: shaft was not checked.",
    ]),
  );
  expect(cautions("Demo Sorrel", 2, 0.03, 212, null, null, null, null, null, "inch").join()).toContain(
    "Short excursions to 266 °F may be borne",
  );
  expect(
    cautions("A", 2, 0.03, 23, null, null, null, null, [
      ["grade", "colour"],
      ["A", 1],
    ]),
  ).toContain('Column "colour" is no known property and was not used.');
});
