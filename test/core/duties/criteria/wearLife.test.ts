import { functions } from "../../../../src/core";
import type { FieldValues } from "../../../../src/core/duties";
import { readZone } from "../../../../src/core/fit/zones/zone";
import { between, curve, described, finding, full, line, on, said, without } from "../support";

/** Archard's linear law by hand: 0.2 mm last 0.2/(2e-6·2·0.05·3600) = 277.78 h. */
const life = 0.2 / (2e-6 * 2 * 0.05 * 3600);
const wanted = (hours: number, more: FieldValues = {}) => on({ hours, allowance: 0.2, ...more });

test("the hours wanted against the shortest life, by the high rate", () => {
  expect(finding("wearLife", full, wanted(100))).toMatchObject({
    word: "fits",
    value: 100,
    limit: expect.closeTo(277.7777777777778, 9) as number,
    use: expect.closeTo(0.36, 12) as number,
    property: "wearHigh",
  });
  for (const [hours, word] of [
    [life * 0.999, "fits"],
    [life, "fits"],
    [life * (1 + 1e-10), "fits"],
    [life * 1.001, "fails"],
  ] as const)
    expect(finding("wearLife", full, wanted(hours)).word).toBe(word);
  expect(line(full, wanted(300))).toBe("fails, wear life 108 %");
  // the low rate never stands in
  expect(said("wearLife", without("wearHigh"), wanted(1))).toBe("no data, wear life: wear rate high");
});

/**
 * Materials Science-Poland 2025, doi 10.2478/msp-2025-0039, table of friction and wear: PLA wore 22 µm/km at 0.05 MPa where the other five points
 * of the series lead to 8.78, 2.51 times as much: 2.6, rounded up.
 */
test("a single rate, or a band narrower than was measured within one test, is care where so much more wear has no room", () => {
  const single = without("wearLow");
  expect(finding("wearLife", single, wanted(life / 2.61)).word).toBe("fits");
  expect(finding("wearLife", single, wanted(life / 2.59)).word).toBe("care");
  expect(finding("wearLife", single, wanted(life * 1.001)).word).toBe("fails");
  expect(said("wearLife", single, wanted(life / 2))).toBe(
    "care, wear life: one wear rate alone, exceeded up to 2.6 times elsewhere in one test",
  );
  // a band of 1e-6 to 2e-6 covers a factor of 2 of the 2.6
  const narrow = { ...full, wearLow: 1e-6 };
  expect(finding("wearLife", narrow, wanted(life / 1.31)).word).toBe("fits");
  expect(finding("wearLife", narrow, wanted(life / 1.29)).word).toBe("care");
  expect(said("wearLife", narrow, wanted(life))).toBe(
    "care, wear life: a narrow band of wear rates, exceeded up to 1.3 times elsewhere in one test",
  );
  expect(finding("wearLife", { ...full, wearLow: 2e-6 / 2.6 }, wanted(life)).word).toBe("fits");
});

test.each([
  ["geometryFactor", 2],
  ["heatFactor", 0.5],
  ["temperatureFactor", 5],
  ["counterfaceFactor", 1.5],
  ["finishFactor", 3],
] as const)("%s of %d multiplies the rate", (key, factor) => {
  expect(finding("wearLife", full, wanted(1, { [key]: factor })).limit).toBeCloseTo(life / factor, 9);
});

test("all factors together", () => {
  const five = { geometryFactor: 2, heatFactor: 0.5, temperatureFactor: 5, counterfaceFactor: 1.5, finishFactor: 3 };
  expect(finding("wearLife", full, wanted(1, five)).limit).toBeCloseTo(life / 22.5, 9);
});

test("rests count in the hours: of an intermittent duty by its share, of steps by their times", () => {
  expect(finding("wearLife", full, wanted(1, { runningTime: 1, restTime: 3 })).limit).toBeCloseTo(4 * life, 9);
  // (2·0.05·30 + 3·0.025·10 + 0)/100 = 0.0375 MPa·m/s instead of 0.1
  const steps = described(
    { ...wanted(1).values, time: 30 },
    { load: 900, stroke: 50, time: 10 },
    { motion: "static", load: 5000, time: 60 },
  );
  expect(finding("wearLife", full, steps).limit).toBeCloseTo(life / 0.375, 9);
});

test("blows wear no faster", () => {
  expect(finding("wearLife", full, wanted(1, { impactFactor: 3 })).limit).toBeCloseTo(life, 9);
});

test("the face that wears most is told: a washer's, a flange's or the bore's", () => {
  const rpm = 10;
  const { stroke: _s, cycles: _c, ...turning } = wanted(1).values;
  const flanged = (axialLoad: number) =>
    finding("wearLife", full, described({ ...turning, rpm, part: "flanged", flangeOutside: 30, axialLoad })).limit;
  const bore = 2 * ((Math.PI * 20 * rpm) / 60_000);
  const face = (load: number) => (load / (125 * Math.PI)) * ((Math.PI * (76 / 3) * rpm) / 60_000);
  expect(face(1)).toBeLessThan(bore);
  expect(face(700)).toBeGreaterThan(bore);
  expect(flanged(1)).toBeCloseTo(0.2 / (2e-6 * bore * 3600), 9);
  expect(flanged(700)).toBeCloseTo(0.2 / (2e-6 * face(700) * 3600), 9);
});

test("a washer's face is flat: a rate of flat tests, or of unknown ones, holds there without any clearance", () => {
  const face = described({
    ...{ part: "washer", load: 300, inner: 20, outer: 40, rpm: 20, hours: 100, allowance: 0.2 },
    ...between(23),
  });
  // 300/(π/4·(40² − 20²)) MPa at π·30·20/60000 m/s
  const pv = (300 / (300 * Math.PI)) * ((Math.PI * 30 * 20) / 60_000);
  for (const wearFrom of ["flat", "bush", undefined] as const)
    expect(finding("wearLife", { ...full, wearFrom }, face)).toMatchObject({
      word: "fits",
      limit: expect.closeTo(0.2 / (2e-6 * pv * 3600), 9) as number,
    });
  // on a sleeve the same rate asks for the clearance
  expect(finding("wearLife", { ...full, wearFrom: "flat" }, wanted(1)).word).toBe("no data");
});

test("the hours without the allowance, or the other way round, name the one that is missing", () => {
  const noAllowance = finding("wearLife", full, on({ hours: 100 }));
  expect(noAllowance).toMatchObject({ word: "no data", value: 100, field: "allowance" });
  expect(line(full, on({ hours: 100 }))).toBe("no data, wear life: wear allowance");
  const noHours = finding("wearLife", full, on({ allowance: 0.2 }));
  expect(noHours).toMatchObject({ word: "no data", field: "hours", limit: expect.closeTo(life, 9) as number });
  expect(line(full, on({ allowance: 0.2 }))).toBe("no data, wear life: hours");
});

test("beyond pressure, speed or PV no life is told, long as it may be", () => {
  for (const duty of [
    wanted(0.001, { load: 6300, stroke: 10 }),
    wanted(0.001, { load: 1, stroke: 5000 }),
    wanted(0.001, { load: 1800 }),
  ]) {
    const none = finding("wearLife", full, duty);
    expect(none).toMatchObject({ word: "fails", value: 0.001 });
    expect([none.limit, none.use]).toEqual([undefined, undefined]);
    expect(said("wearLife", full, duty)).toBe("fails, life not valid beyond its limits");
  }
  // what fails in other ways says nothing against the law of wear
  expect(finding("wearLife", { ...full, softShaft: "poor" }, wanted(100, { hardness: 150 })).use).toBeCloseTo(0.36, 12);
});

test("nothing that rubs without load or speed wears: endless, and a use of 0", () => {
  const still = finding("wearLife", full, wanted(100, { load: 0 }));
  expect([still.word, still.use, still.limit]).toEqual(["fits", 0, undefined]);
});

describe("a rate of flat tests, or of unknown ones, needs the clearance", () => {
  const zone = (text: string) => readZone(text, "metric", "zone");
  const fit: FieldValues = {
    ...{ boreZone: zone("+0.07/+0.10"), shaftZone: zone("-0.02/0"), outsideZone: zone("+0.05/+0.10") },
    ...{ housingZone: zone("0/+0.02"), wall: 1.5, housing: "carbon steel", shaft: "hardened steel" },
    ...{ assemblyMoisture: "dry", keptGrip: 1 },
  };
  const elastic = { ...full, expansion: 1.23e-5, expansionStep: 0, compressiveModulus: 2500, poisson: 0.4 };
  test("without it there is no data", () => {
    expect(said("wearLife", { ...full, wearFrom: "flat" }, wanted(1))).toBe(
      "no data, wear life: a rate of flat tests needs the clearance, bore zone",
    );
    expect(said("wearLife", without("wearFrom"), wanted(1))).toBe("no data, wear life: wear rate from");
  });
  test("with it the bottom of the bore wears first: by the greatest clearance of all states", () => {
    // at 20 °C the clearance is 0.10 + 0.02 at most; nothing here grows wider
    const found = finding(
      "wearLife",
      { ...elastic, wearFrom: "flat" },
      wanted(1, { ...fit, temperature: { low: 20, high: 20 } }),
    );
    const flat = { wearrate: 2e-6, pressure: 2, speed: 0.05, allowance: 0.2, from: "flat" as const };
    const known = functions.LIFE({ ...flat, clearance: 0.12 });
    expect(known).toBeLessThan(life);
    expect(found.limit!).toBeLessThanOrEqual(known * (1 + 1e-9));
    expect(found.limit! / known).toBeCloseTo(1, 1);
    // unknown tests count as flat ones
    const { wearFrom: _, ...unknown } = elastic;
    const same = finding("wearLife", unknown, wanted(1, { ...fit, temperature: { low: 20, high: 20 } }));
    expect(same.limit).toBeCloseTo(found.limit!, 9);
    expect(found.limit!).toBeLessThan(finding("wearLife", elastic, wanted(1, fit)).limit!);
  });
  test("a figure that the clearance needs is named", () => {
    expect(said("wearLife", { ...full, wearFrom: "flat" }, wanted(1, fit))).toBe(
      "no data, wear life: a rate of flat tests needs the clearance, expansion",
    );
  });
});

test("beyond a pressure curve no life is told either", () => {
  const values = { ...full, pressureCurve: curve("0: 60; 50: 60", "pressure") };
  expect(line(values, wanted(1))).toMatch(
    /^fails, pressure: the bore is beyond the curve, which ends at 50 °C; PV 50 %/,
  );
});
