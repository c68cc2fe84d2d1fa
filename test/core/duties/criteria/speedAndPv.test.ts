import type { FieldValues } from "../../../../src/core/duties";
import { between, curve, described, finding, full, line, on, said, stated, without } from "../support";

describe("speed", () => {
  test("at, just inside and just outside its limit, and to a rounding", () => {
    for (const [speed, word] of [
      [1, "fits"],
      [1 + 1e-10, "fits"],
      [1 + 1e-8, "fails"],
      [0.999, "fits"],
    ] as const)
      expect(finding("speed", full, stated({ pressure: 0.01, speed })).word).toBe(word);
    expect(said("speed", full, stated({ pressure: 0.01, speed: 1.001 }))).toBe("fails, speed 100.1 %");
  });
  test("of each motion: π·d·n/60000, 2·arc·cycles, 2·stroke·cycles", () => {
    const size: FieldValues = { load: 60, bore: 20, length: 15, temperature: { low: 23, high: 23 } };
    // π·20·60/60000 = 0.0628319 m/s
    expect(finding("speed", full, described({ ...size, rpm: 60 }))).toMatchObject({
      value: expect.closeTo(0.06283185307179587, 15) as number,
      limit: 1,
      property: "speedTurning",
    });
    // 2·(90/360)·π·20·10/60000 = 0.00523599 m/s
    expect(finding("speed", full, described({ ...size, swing: 90, cycles: 10 }))).toMatchObject({
      value: expect.closeTo(0.005235987755982988, 15) as number,
      limit: 0.5,
      property: "speedSwinging",
    });
    expect(finding("speed", full, described({ ...size, stroke: 100, cycles: 15 }))).toMatchObject({
      value: 0.05,
      limit: 2,
      property: "speedLinear",
    });
  });
  test("of steps each against the limit of its own motion, the nearest told", () => {
    // 0.4 of 0.5 m/s swinging is nearer than 0.6 of 1 m/s turning
    const cycle = described(
      { load: 1, bore: 60, length: 60, temperature: { low: 23, high: 23 }, rpm: 600 / (Math.PI / 1), time: 1 },
      { swing: 360, cycles: 200 / Math.PI, time: 1 },
    );
    expect(finding("speed", full, cycle)).toMatchObject({ property: "speedSwinging", limit: 0.5 });
    expect(finding("speed", full, cycle).value).toBeCloseTo(0.4, 12);
    expect(finding("speed", { ...full, speedSwinging: 5 }, cycle)).toMatchObject({ property: "speedTurning" });
    expect(finding("speed", without("speedTurning"), cycle)).toMatchObject({
      word: "no data",
      property: "speedTurning",
    });
    expect(finding("speed", without("speedTurning", "speedSwinging"), cycle).property).toBe("speedTurning");
  });
  test("a washer at its mean diameter, a flange where its friction acts", () => {
    const washer: FieldValues = {
      part: "washer",
      load: 60,
      inner: 20,
      outer: 40,
      rpm: 60,
      temperature: { low: 23, high: 23 },
    };
    // π·30·60/60000
    expect(finding("speed", full, described(washer)).value).toBeCloseTo(0.03 * Math.PI, 12);
    // (2/3)·(20² + 20·30 + 30²)/(20 + 30) = 25.3333 mm (disk with even pressure)
    const flanged = { ...on({}).values, part: "flanged", flangeOutside: 30, axialLoad: 60, rpm: 60 } as const;
    const { stroke: _s, cycles: _c, ...turning } = flanged;
    expect(finding("speed", full, described(turning)).value).toBeCloseTo((Math.PI * (76 / 3) * 60) / 60_000, 12);
    expect(finding("speed", full, described({ ...turning, axialLoad: undefined })).value).toBeCloseTo(
      0.02 * Math.PI,
      12,
    );
  });
});

describe("PV", () => {
  test("a curve that is down to 0 leaves no PV, as the highest temperature does: no ratio, and no error", () => {
    const falling = { ...full, pvCurve: curve("23: 0.2; 60: 0", "pv") };
    // halfway between 23 and 60 °C half of it is left
    expect(finding("pv", falling, stated({ speed: 0.01, ...between(41.5) })).limit).toBeCloseTo(0.1, 12);
    const none = finding("pv", falling, stated({ speed: 0.01, ...between(60) }));
    expect([none.word, none.limit, none.use]).toEqual(["fails", undefined, undefined]);
    expect(said("pv", falling, stated({ ...between(60) }))).toBe(
      "fails, PV: no heat can be shed in these surroundings",
    );
  });
  test("at, just inside and just outside its limit, and to a rounding", () => {
    for (const [pressure, word] of [
      [4, "fits"],
      [4 * (1 + 1e-10), "fits"],
      [4 * (1 + 1e-8), "fails"],
      [3.999, "fits"],
    ] as const)
      expect(finding("pv", full, stated({ pressure, speed: 0.05 })).word).toBe(word);
  });
  test("derated for the surroundings: PV_ref·(T_max − T)/(T_max − T_ref) above 23 °C, whole up to it", () => {
    const limit = (high: number) => finding("pv", full, stated(between(-40, high))).limit;
    expect([-40, 0, 23].map(limit)).toEqual([0.2, 0.2, 0.2]);
    // (90 − 40)/67, (90 − 56.5)/67, (90 − 89)/67
    expect([40, 56.5, 89].map(limit)).toEqual([10 / 67, 0.1, 0.2 / 67].map((x) => expect.closeTo(x, 12) as number));
  });
  test("that it was derated is told beside the line and makes no care", () => {
    const notes = (high: number) => {
      const check = finding("pv", full, stated(between(23, high)));
      expect(check.word).toBe("fits");
      return check.notes?.("metric", check) ?? [];
    };
    expect(notes(23)).toEqual([]);
    expect(notes(23.5)).toEqual(["limit derated for the surroundings by DERATEDPV: no PV curve is known"]);
  });
  test("by its curve where there is one, at the surroundings: the least over their span", () => {
    const values = { ...full, pvCurve: curve("0: 0.2; 50: 0.05", "pv") };
    // 0.2 − 0.15·25/50
    expect(finding("pv", values, stated(between(10, 25)))).toMatchObject({
      limit: expect.closeTo(0.125, 12) as number,
      property: "pvCurve",
    });
    expect(finding("pv", values, stated(between(10, 50)))).toMatchObject({ limit: 0.05, word: "fails" });
    // colder than its first point the first value holds, and the figure itself where it is lower
    expect(finding("pv", values, stated(between(-40, -10))).limit).toBe(0.2);
    expect(finding("pv", { ...values, pvLimit: 0.15 }, stated(between(-40, -10)))).toMatchObject({
      limit: 0.15,
      property: "pvLimit",
    });
    const rising = { ...full, pvCurve: curve("23: 0.1; 50: 0.2", "pv") };
    expect(finding("pv", rising, stated(between(-20, 50))).limit).toBe(0.1);
  });
  test("beyond the curve's last point it fails without a number", () => {
    const values = { ...full, pvCurve: curve("0: 0.2; 50: 0.15", "pv") };
    const beyond = finding("pv", values, stated(between(10, 50.1)));
    expect(beyond).toMatchObject({ word: "fails", property: "pvCurve", value: 0.1 });
    expect([beyond.limit, beyond.use]).toEqual([undefined, undefined]);
  });
  test("at the grade's highest temperature there is none, with a curve or without", () => {
    for (const values of [full, { ...full, pvCurve: curve("0: 0.2; 120: 0.1", "pv") }])
      for (const at of [90, 90 - 1e-10, 95]) {
        const hot = finding("pv", values, stated(between(20, at)));
        expect(hot).toMatchObject({ word: "fails", property: "highestTemperature" });
        expect([hot.limit, hot.use]).toEqual([undefined, undefined]);
      }
    expect(said("pv", full, stated(between(90)))).toBe("fails, PV: no heat can be shed in these surroundings");
  });
  test("without a curve the highest temperature is needed to derate, even in the cold", () => {
    const values = without("highestTemperature");
    expect(finding("pv", values, stated())).toMatchObject({ word: "no data", property: "highestTemperature" });
    expect(finding("pv", { ...values, pvCurve: curve("0: 0.2; 50: 0.05", "pv") }, stated()).word).toBe("fits");
    // a material that bears no more than the 23 °C of the test cannot have been tested so
    expect(finding("pv", { ...full, highestTemperature: 23 }, stated(between(10)))).toMatchObject({
      word: "no data",
      property: "highestTemperature",
    });
  });
  test("a spectrum is judged by its greatest step, not by its mean", () => {
    // 2 MPa · 0.05 m/s and 1.8 MPa · 0.2 m/s: means of 0.1 and 0.36 by time are below 0.2
    const cycle = described({ ...on({}).values, time: 90 }, { load: 540, stroke: 400, time: 10 });
    expect(finding("pv", full, cycle)).toMatchObject({ value: expect.closeTo(0.36, 12) as number, word: "fails" });
    expect(line(full, cycle)).toBe("fails, PV 180 %");
  });
  test("an intermittent duty runs at its full PV, rests notwithstanding", () => {
    expect(finding("pv", full, on({ runningTime: 1, restTime: 1000 })).value).toBeCloseTo(0.1, 12);
  });
  test("with a time constant the first-order peak: of on and off, and of steps", () => {
    // ΔT_on·(1 − e^(−t_on/τ))/(1 − e^(−(t_on + t_off)/τ)), rises being proportional to PV
    const peak = (0.1 * -Math.expm1(-1 / 5)) / -Math.expm1(-4 / 5);
    expect(finding("pv", full, on({ runningTime: 1, restTime: 3, timeConstant: 5 })).value).toBeCloseTo(peak, 12);
    // the same as two steps, the second at rest
    const steps = described({ ...on({ timeConstant: 5 }).values, time: 1 }, { motion: "static", time: 3 });
    expect(finding("pv", full, steps).value).toBeCloseTo(peak, 12);
    // the periodic state marched cycle by cycle from cold: it comes to the same
    let rise = 0;
    for (let cycle = 0; cycle < 60; cycle++) rise = (0.1 + (rise - 0.1) * Math.exp(-1 / 5)) * Math.exp(-3 / 5);
    expect(0.1 + (rise - 0.1) * Math.exp(-1 / 5)).toBeCloseTo(peak, 12);
    // without repeating there is no cycle to peak in
    expect(finding("pv", full, on({ timeConstant: 5 })).value).toBeCloseTo(0.1, 12);
    // the bore follows the same peak
    const duty = on({ runningTime: 1, restTime: 3, timeConstant: 5 });
    expect(finding("boreTemperature", full, duty).value).toBeCloseTo(23 + (67 * peak) / 0.2, 10);
  });
  test("of a flanged bush all heat on the bore's area, (PV_r·A_r + PV_a·A_a)/A_r", () => {
    // F_r 200, F_a 900, d 16, L 15, outside 28, 40 rpm, with the flange's inner diameter 16:
    const [d, D, rpm] = [16, 28, 40];
    const flanged = described({
      ...{ part: "flanged", load: 200, axialLoad: 900, bore: d, length: 15, flangeOutside: D, rpm },
      ...{ temperature: { low: 23, high: 23 } },
    });
    const omega = (2 * Math.PI * rpm) / 60;
    // heat over friction: F_r·ω·d/2 + F_a·ω·r_f with r_f = (Do² + Do·Di + Di²)/(3·(Do + Di)), on d·L
    const radius = (D * D + D * d + d * d) / (3 * (D + d));
    const heat = ((200 * omega * d) / 2 + 900 * omega * radius) / 1000;
    expect(finding("pv", full, flanged).value).toBeCloseTo(heat / (d * 15), 12);
  });
  test("a small flange with the greater PV of its own is judged by that", () => {
    // 100 N on a rim of 20/21 mm: p_a = 100/(π/4·41) = 3.1056 MPa at 20.504 mm, though its heat is small
    const flanged = described({
      ...{ part: "flanged", load: 1, axialLoad: 100, bore: 20, length: 40, flangeOutside: 21, rpm: 100 },
      ...{ temperature: { low: 23, high: 23 } },
    });
    const pressure = 100 / ((Math.PI / 4) * 41);
    const speed = (Math.PI * ((2 / 3) * ((441 + 420 + 400) / 41)) * 100) / 60_000;
    expect(finding("pv", full, flanged).value).toBeCloseTo(pressure * speed, 12);
  });
  test("blows count for pressure, not for PV", () => {
    expect(finding("pv", full, on({ impactFactor: 5 })).value).toBeCloseTo(0.1, 12);
    expect(finding("runningPressure", full, on({ impactFactor: 5 })).value).toBeCloseTo(10, 12);
    expect(line(full, on({ impactFactor: 5 }))).toBe(
      "fits, running pressure 50 %; pressure limit not lowered for temperature",
    );
  });
});
