import { wearCourse } from "../../../../src/core/duties";
import type { FieldValues } from "../../../../src/core/duties";
import { findMetal } from "../../../../src/core/fit/metals";
import { conductances } from "../../../../src/core/heat/paths";
import type { Values } from "../../../../src/core/grades/model";
import { readZone } from "../../../../src/core/fit/zones/zone";
import { between, curve, described, finding, full, on, resting, said, without } from "../support";

describe("the figures of the grade that counted are those that were looked at", () => {
  const { wearLow: _, ...oneRate } = full;
  const { wearFrom: __, ...unknownTests } = full;
  const life = { hours: 1, allowance: 0.2 };
  const washer: FieldValues = {
    ...{ part: "washer", load: 300, inner: 20, outer: 40, rpm: 20, ...between(23), ...life },
  };
  const pvCurve = curve("23: 0.2; 85: 0.1", "pv");
  test.each<[string, Values, FieldValues, readonly string[]]>([
    ["pv", full, {}, ["pvLimit", "highestTemperature"]],
    ["pv", { ...full, pvCurve }, {}, ["pvLimit", "pvCurve"]],
    ["shortPeak", full, { peakTemperature: 40 }, ["shortTermTemperature", "pvLimit", "highestTemperature"]],
    ["wearLife", full, life, ["wearHigh", "wearFrom", "wearLow"]],
    ["wearLife", oneRate, life, ["wearHigh", "wearFrom"]],
  ])("of %s", (id, values, fields, figures) => expect(finding(id, values, on(fields)).figures).toEqual(figures));
  test("of a short peak at rest the short-term temperature alone", () =>
    expect(finding("shortPeak", full, on({ peakTemperature: 40 }, resting)).figures).toEqual(["shortTermTemperature"]));
  test("of a wear life by a rate of unknown tests the rates alone", () =>
    expect(finding("wearLife", unknownTests, described(washer)).figures).toEqual(["wearHigh", "wearLow"]));
});

describe("how a bush wears over the hours", () => {
  const flat = { ...full, wearFrom: "flat" } as const;
  const zone = (text: string) => readZone(text, "metric", "zone");
  const course = (values: Values, fields: FieldValues) => wearCourse(values, described(fields).corners[0]!);
  const sleeve = on({}).values;
  // 600 N on 20 × 15 mm at 0.05 m/s: 0.1 MPa·m/s
  test("a rate of bush tests needs no clearance", () =>
    expect(course(full, { ...sleeve, heatFactor: 0.5 })).toEqual({ factors: 0.5, work: 0.1, from: "bush" }));
  test("on a washer a rate of any test needs none either: its face is flat", () =>
    expect(course(flat, { part: "washer", load: 300, inner: 20, outer: 40, rpm: 20, ...between(23) })).toMatchObject({
      from: "bush",
    }));
  test("of flat tests, in a bore, it takes the greatest clearance of the fit, or names what is missing", () => {
    expect(course(flat, sleeve)).toEqual({ field: "boreZone" });
    const fit: FieldValues = {
      ...{ boreZone: zone("+0.07/+0.10"), shaftZone: zone("-0.02/0"), outsideZone: zone("-0.02/-0.01") },
      ...{ housingZone: zone("0/+0.02"), wall: 1.5, housing: "carbon steel", shaft: "hardened steel" },
      ...{ assemblyMoisture: "dry", keptGrip: 1, ...between(20) },
    };
    // expansion of nothing but the shaft, which only narrows it: 0.10 + 0.02 mm at assembly
    const elastic = { ...flat, expansion: 0, expansionStep: 0, compressiveModulus: 2500, poisson: 0.4 };
    expect(course(elastic, { ...sleeve, ...fit })).toEqual({
      ...{ factors: 1, work: 0.1, from: "flat" },
      clearance: expect.closeTo(0.12, 12) as number,
    });
  });
});

describe("the bore by its ways out for the heat", () => {
  const grade: Values = { ...full, pvLimit: 5, frictionHigh: 0.2, conductivity: 0.25 };
  const assembly = {
    ...{ bore: 20, length: 15, wall: 1.5, bushconductivity: 0.25, shaftconductivity: 1, film: 10, contact: 0.5 },
    ...{ endlength: 0, ends: 0, housingpath: 0.2 },
  };
  const { least: conductance } = conductances(assembly);
  /** By a load in N at 0.05 m/s, K. */
  const rise = (load: number) => (0.2 * load * 0.05) / conductance;
  const ways = (load: number, high: number, values: Values = grade) =>
    finding("boreTemperature", values, on({ load, wall: 1.5, housingPath: 0.2, ...between(20, high) }));
  test("fails in surroundings as hot as the grade bears, whatever the PV limit would say", () => {
    const { pvLimit: _, ...unlimited } = grade;
    expect(ways(60, 95, unlimited)).toMatchObject({
      word: "fails",
      value: expect.closeTo(95 + rise(60), 9) as number,
    });
    expect([ways(60, 90, unlimited).word, ways(60, 90, unlimited).use]).toEqual(["fails", undefined]);
  });
  test("may use the last half kelvin", () => {
    const load = (0.3 * conductance) / (0.2 * 0.05);
    // 0.3 of 0.5 K
    expect(ways(load, 89.5)).toMatchObject({ word: "fits", use: expect.closeTo(0.6, 9) as number });
  });
  test("says nothing of them where a figure of theirs is missing", () => {
    const { conductivity: _, ...unknown } = grade;
    const found = ways(600, 23, { ...unknown, pvLimit: 0.05 });
    expect(found.word).toBe("fails");
    expect(found.notes!("metric", found)).toEqual([]);
  });
  test("is no data without the temperature that the grade bears", () => {
    const { highestTemperature: _, ...unknown } = grade;
    expect(ways(60, 23, unknown)).toMatchObject({ word: "no data", property: "highestTemperature" });
  });
  test("tells both ends where the housing's conductance would decide, with four digits", () => {
    const shaft = "soft steel";
    const shaftconductivity = findMetal("shaft", shaft).conductivity;
    const { housingpath: _, ...unknown } = { ...assembly, shaftconductivity, endlength: 60, ends: 2 };
    const { least, greatest } = conductances(unknown);
    const [low, high] = [greatest, least].map((way) => Number((20 + (0.2 * 300 * 0.05) / way).toPrecision(4)));
    expect([low! < 60, high! > 60]).toEqual([true, true]);
    const duty = on({ load: 300, wall: 1.5, endLength: 60, shaft, ...between(20) });
    expect(said("boreTemperature", { ...grade, highestTemperature: 60 }, duty)).toBe(
      `care, bore ${low} °C to ${high} °C: find out the housing's conductance`,
    );
  });
  test("high friction never warms it more than the PV limit itself would, where the PV is not allowed either", () => {
    const both = { ...full, frictionLow: 0.1, frictionHigh: 0.4 };
    // PV 0.1 of 0.2, four times the friction: all of the 67 K, from 60 °C, not twice as much
    expect(finding("boreTemperature", both, on(between(20, 60))).upper).toBeCloseTo(127, 12);
  });
});

test("without its limit the greatest speed of a motion is told, of whichever step", () => {
  const fast = { stroke: 200, time: 5 };
  const slow = { stroke: 100, time: 5 };
  for (const [first, second] of [
    [fast, slow],
    [slow, fast],
  ] as const)
    // 2·200·15/60000 m/s
    expect(finding("speed", without("speedLinear"), described({ ...on(first).values }, second))).toMatchObject({
      word: "no data",
      value: 0.1,
    });
});

test("within the usual lengths the longer bound is told, at the shorter one too", () =>
  expect(finding("lengthOverBore", full, on({ length: 10 }))).toMatchObject({ word: "fits", limit: 2 }));
