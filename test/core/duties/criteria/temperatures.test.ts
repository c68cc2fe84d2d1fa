import { between, curve, finding, full, line, on, resting, said, stated, without } from "../support";

const moving = (high: number, low = 20) => stated(between(low, high));
const still = (high: number, low = 20) => stated({ motion: "static", ...between(low, high) });

describe("highest temperature", () => {
  test("at rest at it holds, above it fails, to a rounding", () => {
    for (const [t, word] of [
      [89.999, "fits"],
      [90, "fits"],
      [90 + 1e-10, "fits"],
      [90.001, "fails"],
    ] as const)
      expect([t, finding("highestTemperature", full, still(t)).word]).toEqual([t, word]);
    expect(said("highestTemperature", full, still(90.5))).toBe("fails, temperature 90.5 °C above 90 °C");
  });
  test("in motion at it fails too: no room is left for friction heat", () => {
    for (const [t, word] of [
      [89.999, "fits"],
      [90 - 1e-10, "fails"],
      [90, "fails"],
    ] as const)
      expect([t, finding("highestTemperature", full, moving(t)).word]).toEqual([t, word]);
    expect(said("highestTemperature", full, moving(90))).toBe(
      "fails, temperature 90 °C leaves no room for friction heat",
    );
    expect(said("highestTemperature", full, moving(90.001))).toBe("fails, temperature 90.001 °C above 90 °C");
  });
  test("it has a value and a limit and no use", () => {
    expect(finding("highestTemperature", full, moving(60))).toMatchObject({ value: 60, limit: 90, use: undefined });
    expect(finding("highestTemperature", without("highestTemperature"), still(60))).toMatchObject({
      word: "no data",
      value: 60,
      property: "highestTemperature",
    });
  });
});

describe("lowest temperature", () => {
  test("both ends count: at it holds, below it fails, to a rounding", () => {
    for (const [t, word] of [
      [-39.999, "fits"],
      [-40, "fits"],
      [-40 - 1e-10, "fits"],
      [-40.001, "fails"],
    ] as const)
      expect([t, finding("lowestTemperature", full, moving(60, t)).word]).toEqual([t, word]);
    expect(line(full, moving(60, -40.5))).toBe("fails, temperature -40.5 °C below -40 °C");
  });
  test("surroundings of 20 °C and warmer hold without being asked", () => {
    expect(line(without("lowestTemperature"), moving(23, 20))).toBe("fits, PV 50 %");
    expect(line(without("lowestTemperature"), moving(23, 19.9))).toBe("no data, lowest temperature");
  });
  test("a grade that bears no cold at all fails where it is asked", () => {
    expect(finding("lowestTemperature", { ...full, lowestTemperature: 25 }, moving(30, 19))).toMatchObject({
      word: "fails",
      value: 19,
      limit: 25,
    });
  });
});

describe("bore temperature: T + (T_max − T_ref)·PV/PV_ref (steady heat balance, own)", () => {
  test("value, limit and use", () => {
    // 40 + 67·0.1/0.2 = 73.5 °C; 33.5 of the 50 K that are left
    expect(finding("boreTemperature", full, moving(40))).toMatchObject({
      word: "fits",
      value: expect.closeTo(73.5, 12) as number,
      limit: 90,
      use: expect.closeTo(0.67, 12) as number,
      property: "highestTemperature",
    });
  });
  test("at, just inside and just outside its limit", () => {
    // rise 33.5 K: 90 °C at 56.5 °C of the surroundings
    for (const [t, word] of [
      [56.4, "fits"],
      [56.5, "fits"],
      [56.5 + 1e-9, "fits"],
      [56.6, "fails"],
    ] as const)
      expect([t, finding("boreTemperature", full, moving(t)).word]).toEqual([t, word]);
  });
  test("surroundings warm it whole, also below 23 °C, where the PV limit does not rise", () => {
    expect(finding("boreTemperature", full, moving(-20, -40)).value).toBeCloseTo(13.5, 12);
    expect(finding("pv", full, moving(-20, -40)).limit).toBe(0.2);
  });
  test("a PV curve that allows more does not spare the bore", () => {
    const hot = { ...full, pvCurve: curve("23: 0.2; 85: 0.2", "pv") };
    expect(finding("pv", hot, moving(80)).word).toBe("fits");
    // 80 + 33.5
    expect(finding("boreTemperature", hot, moving(80))).toMatchObject({ word: "fails", value: 113.5 });
    expect(line(hot, moving(80))).toBe("fails, bore temperature 335 %");
  });
  test("at the highest temperature there is no use to be told", () => {
    const none = finding("boreTemperature", full, moving(90));
    expect([none.word, none.use, none.value]).toEqual(["fails", undefined, 123.5]);
  });
  test("missing figures are named", () => {
    expect(finding("boreTemperature", without("pvLimit"), moving(40))).toMatchObject({
      word: "no data",
      property: "pvLimit",
    });
    expect(finding("boreTemperature", without("highestTemperature"), moving(40))).toMatchObject({
      word: "no data",
      property: "highestTemperature",
    });
  });
  test("where both frictions are known the upper end is told, and judged by nothing", () => {
    const told = (low: number, high: number, at: number) => {
      const check = finding("boreTemperature", { ...full, frictionLow: low, frictionHigh: high }, moving(at));
      return [check.word, check.upper, check.notes?.("metric", check)];
    };
    // PV·high/(low·PV_ref) = 0.5·0.15/0.1 = 0.75: 23 + 67·0.75 = 73.25 °C
    expect(told(0.1, 0.15, 23)).toEqual([
      "fits",
      expect.closeTo(73.25, 12),
      ["up to 73.25 °C where friction is at its high figure"],
    ]);
    // never more than the PV limit itself would give, 23 + 67
    expect(told(0.1, 0.4, 23)[1]).toBeCloseTo(90, 12);
    // and never above the highest temperature while the PV is allowed: not 50 + 50.25
    expect(told(0.1, 0.15, 50)).toEqual(["fits", 90, ["up to 90 °C where friction is at its high figure"]]);
    // a PV that is not allowed may: 60 + 67·0.75
    expect(told(0.1, 0.15, 60)).toEqual(["fails", expect.closeTo(110.25, 12), expect.any(Array)]);
    expect(finding("boreTemperature", { ...full, frictionHigh: 0.4 }, moving(23)).upper).toBeUndefined();
  });
  test("above 150 °C a quarter more rise must have room, or it is care", () => {
    const hot = { ...full, highestTemperature: 250, pvLimit: 0.5 };
    // rise 227·0.4/0.5 = 181.6: 23 + 1.25·181.6 = 250.0 °C
    expect(finding("boreTemperature", hot, stated({ pressure: 8, speed: 0.05 })).word).toBe("fits");
    expect(said("boreTemperature", hot, stated({ pressure: 8.01, speed: 0.05 }))).toBe(
      "care, bore 204.8 °C: friction that falls with heat may take it above 250 °C",
    );
    expect(line(hot, stated({ pressure: 8.01, speed: 0.05 }))).toBe(
      "care, bore 204.8 °C: friction that falls with heat may take it above 250 °C; PV 80 %",
    );
    // up to 150 °C the line is kept to
    const mild = { ...hot, highestTemperature: 150 };
    expect(finding("boreTemperature", mild, stated({ pressure: 9.9, speed: 0.05 })).word).toBe("fits");
  });
});

describe("short peak", () => {
  const peak = (peakTemperature: number) => on({ peakTemperature });
  test("the peak of the surroundings and the bore's rise against the short-term temperature", () => {
    // 80 + 33.5 of 120 °C
    expect(finding("shortPeak", full, peak(80))).toMatchObject({
      word: "fits",
      value: 113.5,
      limit: 120,
    });
    expect(finding("shortPeak", full, peak(80)).use).toBeUndefined();
    for (const [t, word] of [
      [86.4, "fits"],
      [86.5, "fits"],
      [86.5 + 1e-10, "fits"],
      [86.6, "fails"],
    ] as const)
      expect([t, finding("shortPeak", full, peak(t)).word]).toEqual([t, word]);
    expect(said("shortPeak", full, peak(86.6))).toBe("fails, short peak 120.1 °C above 120 °C");
    expect(line(full, peak(100))).toBe("fails, short peak 133.5 °C above 120 °C; PV 50 %");
  });
  test("at rest there is no rise", () => {
    const still = on({ peakTemperature: 120 }, resting);
    expect(finding("shortPeak", full, still)).toMatchObject({ word: "fits", value: 120 });
    expect(finding("shortPeak", without("pvLimit"), still).word).toBe("fits");
  });
  test("missing figures are named, those of the rise too", () => {
    for (const key of ["shortTermTemperature", "pvLimit", "highestTemperature"] as const)
      expect(finding("shortPeak", without(key), peak(80))).toMatchObject({ word: "no data", property: key });
  });
});
