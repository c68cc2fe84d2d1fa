import type { FieldValues } from "../../../../src/core/duties";
import { between, curve, described, finding, full, grade, line, on, resting, said, stated, without } from "../support";
import { dataLabel, judge } from "../../../../src/core/duties";

/** Static, running and face pressure: p·K against p_a/S at the temperature of the bore (mean pressure F/(d·L): ISO 4378-1). */
const lowering = { ...full, pressureCurve: curve("23: 60; 80: 10", "pressure") };
const washer: FieldValues = {
  ...{ part: "washer", load: 600, inner: 20, outer: 40, rpm: 30 },
  ...{ temperature: { low: 23, high: 23 } },
};
/** F/(π/4·(40² − 20²)) = 600/942.478 MPa. */
const onWasher = 600 / (300 * Math.PI);

describe("static pressure", () => {
  test("at, just inside and just outside its limit, and to a rounding", () => {
    for (const [pressure, word] of [
      [60, "fits"],
      [60 * (1 + 1e-10), "fits"],
      [60 * (1 + 1e-8), "fails"],
      [59.99, "fits"],
    ] as const)
      expect(finding("staticPressure", full, stated({ motion: "static", pressure })).word).toBe(word);
    // 18 kN on 20 × 15 mm = 60 MPa
    expect(finding("staticPressure", full, on({ load: 18_000 }, resting))).toMatchObject({
      word: "fits",
      value: 60,
      limit: 60,
      use: 1,
      property: "staticPressure",
    });
    expect(said("staticPressure", full, on({ load: 18_001 }, resting))).toBe("fails, static pressure 100.01 %");
  });
  test("a running limit never stands in for a missing static one", () => {
    const lacking = finding("staticPressure", without("staticPressure"), on({}, resting));
    expect(lacking).toMatchObject({ word: "no data", value: 2, property: "staticPressure" });
    expect([lacking.limit, lacking.use]).toEqual([undefined, undefined]);
  });
  test("the greatest load at rest of a duty that moves; the load of its motion has no say", () => {
    // 12 kN/(20·15) = 40 MPa
    expect(finding("staticPressure", full, on({ staticLoad: 12_000 }))).toMatchObject({ value: 40, limit: 60 });
    expect(finding("staticPressure", full, on({ load: 900, staticLoad: 600 }))).toMatchObject({ value: 2 });
    // at rest throughout both loads are loads at rest
    expect(finding("staticPressure", full, on({ load: 900, staticLoad: 600 }, resting))).toMatchObject({ value: 3 });
  });
  test("a curve lowers it: at rest by the surroundings, in a cycle by the bore's highest temperature", () => {
    expect(finding("staticPressure", lowering, on({}, resting)).limit).toBe(60);
    // 60 − 50·(51.5 − 23)/(80 − 23) = 35
    expect(finding("staticPressure", lowering, on(between(23, 51.5), resting))).toMatchObject({
      limit: expect.closeTo(35, 12) as number,
      property: "pressureCurve",
    });
    // the step in motion brings the bore to 23 + 67·0.1/0.2 = 56.5 °C: 60 − 50·33.5/57
    const cycle = described({ ...on({}).values, time: 5 }, { motion: "static", load: 6000, time: 60 });
    expect(finding("staticPressure", lowering, cycle)).toMatchObject({
      value: 20,
      limit: expect.closeTo(60 - (50 * 33.5) / 57, 12) as number,
    });
  });
  test("colder than the curve's first point its first value holds", () => {
    expect(finding("staticPressure", lowering, on(between(-40, 0), resting)).limit).toBe(60);
    const low = { ...full, pressureCurve: curve("23: 45; 80: 10", "pressure") };
    expect(finding("staticPressure", low, on(between(-40, 0), resting)).limit).toBe(45);
  });
  test("beyond its last point it fails without a number", () => {
    expect(finding("staticPressure", lowering, on(between(23, 80), resting)).limit).toBe(10);
    const beyond = finding("staticPressure", lowering, on(between(23, 80.1), resting));
    expect(beyond).toMatchObject({ word: "fails", property: "pressureCurve" });
    expect([beyond.limit, beyond.use]).toEqual([undefined, undefined]);
    expect(said("staticPressure", lowering, on(between(23, 80.1), resting))).toBe(
      "fails, pressure: the bore is beyond the curve, which ends at 80 °C",
    );
  });
  test("a figure that is lower than its curve stays what it is", () => {
    expect(finding("staticPressure", { ...lowering, staticPressure: 8 }, on(between(80), resting))).toMatchObject({
      limit: 8,
      property: "staticPressure",
    });
  });
  test("without a curve it is told that nothing was lowered; with one it is not", () => {
    const notes = (values: typeof full) => {
      const check = finding("staticPressure", values, on({}, resting));
      return check.notes?.("metric", check) ?? [];
    };
    expect(notes(full)).toEqual(["pressure limit not lowered for temperature: no curve is known"]);
    expect(notes(lowering)).toEqual([]);
  });
});

describe("running pressure", () => {
  test("at, just inside and just outside its limit, and to a rounding", () => {
    for (const [pressure, word] of [
      [20, "fits"],
      [20 * (1 + 1e-10), "fits"],
      [20 * (1 + 1e-8), "fails"],
      [19.99, "fits"],
    ] as const)
      expect(finding("runningPressure", full, stated({ pressure, speed: 0.001 })).word).toBe(word);
  });
  test("a static limit never stands in for a missing running one", () => {
    expect(finding("runningPressure", without("runningPressure"), stated())).toMatchObject({
      word: "no data",
      value: 2,
      property: "runningPressure",
    });
    expect(line(without("runningPressure"), stated({ pressure: 0.1 }))).toBe("no data, running pressure");
  });
  test("its curve is read at the temperature of the bore, which the PV warms", () => {
    // p·v = 0.16: 23 + 67·0.16/0.2 = 76.6 °C; 60 − 50·(76.6 − 23)/57 = 12.98 MPa
    const warm = finding("runningPressure", lowering, stated({ pressure: 3.2, speed: 0.05 }));
    expect(warm).toMatchObject({ property: "pressureCurve", word: "fits" });
    expect(warm.limit).toBeCloseTo(60 - (50 * 53.6) / 57, 12);
    expect(warm.use).toBeCloseTo(3.2 / (60 - (50 * 53.6) / 57), 12);
    // the same pressure at rest, or at next to no speed, is held by the figure itself
    expect(finding("runningPressure", lowering, stated({ pressure: 3.2, speed: 1e-6 })).limit).toBe(20);
    // p·v = 0.19: 86.65 °C, beyond the curve's end
    expect(said("runningPressure", lowering, stated({ pressure: 3.8, speed: 0.05 }))).toBe(
      "fails, pressure: the bore is beyond the curve, which ends at 80 °C",
    );
  });
  test("with a curve the figures that give the bore's temperature are needed too, and named", () => {
    for (const key of ["pvLimit", "highestTemperature"] as const) {
      const { [key]: _, ...values } = lowering;
      expect(finding("runningPressure", values, stated())).toMatchObject({ word: "no data", property: key });
      // at rest the bore is as warm as its surroundings
      expect(finding("staticPressure", values, on({}, resting)).word).toBe("fits");
    }
    expect(line((({ pvLimit: _, ...values }) => values)(lowering), stated())).toBe(
      "no data, running pressure: PV limit",
    );
  });
  test("the greatest of the steps in motion, at the warmest of them", () => {
    const two = described(
      { ...on({}).values, load: 900, time: 5 },
      { load: 600, stroke: 200, time: 5, temperature: { low: 23, high: 30 } },
      { motion: "static", load: 90_000, time: 5 },
    );
    // 900/300 = 3 MPa; PV of the second step 2·0.1 = 0.2 is the greatest: 30 + 67 °C is beyond the curve
    expect(finding("runningPressure", full, two)).toMatchObject({ value: 3, limit: 20 });
    expect(
      finding("runningPressure", { ...full, pressureCurve: curve("23: 60; 97: 10", "pressure") }, two),
    ).toMatchObject({ value: 3, limit: expect.closeTo(10, 9) as number });
  });
});

describe("face pressure", () => {
  test("a washer's: its load over its ring, with the factors, at rest against the static limit", () => {
    const found = finding("facePressure", full, on({ impactFactor: 2, designFactor: 2 }, washer));
    expect(found).toMatchObject({ word: "fits", limit: 10, property: "runningPressure" });
    expect(found.value).toBeCloseTo(2 * onWasher, 12);
    expect(found.use).toBeCloseTo(onWasher / 5, 12);
    const still = finding("facePressure", full, on({ motion: "static", rpm: undefined }, washer));
    expect(still).toMatchObject({ limit: 60, property: "staticPressure" });
    expect(still.value).toBeCloseTo(onWasher, 12);
  });
  test("the load stands under load or axial load alike", () => {
    const axial = on({ load: undefined, axialLoad: 600 }, washer);
    expect(finding("facePressure", full, axial).value).toBeCloseTo(onWasher, 12);
  });
  test("at, just inside and just outside its limit", () => {
    const area = 300 * Math.PI;
    for (const [load, word] of [
      [20 * area, "fits"],
      [20 * area * (1 + 1e-10), "fits"],
      [19.99 * area, "fits"],
      [20.01 * area, "fails"],
    ] as const)
      expect(finding("facePressure", full, on({ load, rpm: 0.01 }, washer)).word).toBe(word);
    expect(said("facePressure", full, on({ load: 20.01 * area, rpm: 0.01 }, washer))).toBe(
      "fails, face pressure 100.1 %",
    );
  });
  test("a flange's: the axial load on its ring, beside the bore's own pressure", () => {
    // 250/(π/4·(30² − 20²)) = 0.636620 MPa
    const flanged = on({ part: "flanged", flangeOutside: 30, axialLoad: 250 });
    expect(finding("facePressure", full, flanged).value).toBeCloseTo(2 / Math.PI, 12);
    expect(finding("runningPressure", full, flanged).value).toBe(2);
  });
  test("of rest and motion the worse is told", () => {
    // at rest 54 kN: 57.3 of 60 MPa; in motion 600 N: 0.64 of 20 MPa
    const two = on({ staticLoad: 54_000 }, washer);
    expect(finding("facePressure", full, two)).toMatchObject({ property: "staticPressure", limit: 60 });
    expect(finding("facePressure", full, two).use).toBeCloseTo(54_000 / (300 * Math.PI) / 60, 12);
    expect(finding("facePressure", without("staticPressure"), two)).toMatchObject({
      word: "no data",
      property: "staticPressure",
    });
  });
  test("no limit of motion is no data, though one at rest is known", () => {
    expect(line(without("runningPressure"), on({}, washer))).toBe("no data, face pressure: running pressure limit");
  });
});

test("the figures that counted are told: with a curve all that went into it", () => {
  const origin = (label: "read" | "memory") => ({ source: "neale", at: "", label, printed: "" }) as const;
  const published = {
    ...grade(lowering, {
      staticPressure: origin("read"),
      pressureCurve: origin("memory"),
      highestTemperature: origin("read"),
    }),
    kind: "generic",
  } as const;
  expect(dataLabel(published, judge(published, on({ length: 20 }, resting)))).toBe("memory");
  // a PV limit counts where the bore is warmed, and its label with it
  expect(dataLabel(published, judge(published, on({ length: 20 })))).toBe("common practice");
  const plain = { ...published, values: full };
  expect(dataLabel(plain, judge(plain, on({ length: 20 }, resting)))).toBe("read");
});

describe("without a pressure curve the line that rests on a pressure says that its limit was not lowered", () => {
  const caveat = "; pressure limit not lowered for temperature";
  const curved = { ...full, pressureCurve: curve("23: 60; 80: 60", "pressure") };
  /** At rest the bore is as warm as its surroundings; limits are stated at 23 °C. */
  const at = (high: number) => on({ temperature: { low: 20, high }, load: 6000 }, resting);
  test("where the bore may be warmer than it is stated at", () => {
    expect(line(full, at(23))).toBe("fits, static pressure 33 %");
    expect(line(full, at(23.1))).toBe(`fits, static pressure 33 %${caveat}`);
    expect(line(curved, at(60))).toBe("fits, static pressure 33 %");
  });
  test("beside a criterion that is told in words too, where the pressure follows it", () => {
    expect(line(full, on({ temperature: { low: 20, high: 60 }, load: 6000, length: 5 }, resting))).toContain(caveat);
  });
  test("not where another criterion's use is told, nor where the pressure fails anyway", () => {
    expect(line(full, on({ temperature: { low: 20, high: 40 } }))).not.toContain(caveat);
    expect(line(full, on({ temperature: { low: 20, high: 60 }, load: 60000 }, resting))).not.toContain(caveat);
  });
});

describe("a short peak", () => {
  const at = (peakTemperature: number | undefined, base?: FieldValues) =>
    finding("staticPressure", lowering, on({ load: 6000, peakTemperature }, base ?? resting));
  test("lowers the limit as far as the curve goes, and no further than the highest temperature", () => {
    // 60 − 50·(t − 23)/(80 − 23)
    expect(at(undefined).limit).toBe(60);
    expect(at(50).limit).toBeCloseTo(60 - (50 * 27) / 57, 12);
    expect(
      finding("staticPressure", { ...lowering, highestTemperature: 60 }, on({ peakTemperature: 75 }, resting)).limit,
    ).toBeCloseTo(60 - (50 * 37) / 57, 12);
  });
  test("fails what the surroundings alone let pass", () => {
    // 6 kN on 20 × 15 mm = 20 MPa; 10 MPa at 80 °C
    expect([at(undefined).word, at(80).word]).toEqual(["fits", "fails"]);
  });
});
