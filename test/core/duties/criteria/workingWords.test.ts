import type { Duty, FieldValues, NamedDuty } from "../../../../src/core/duties";
import type { Values } from "../../../../src/core/grades/model";
import type { Working } from "../../../../src/core/duties/judging/criterion";
import { between, curve, described, finding, full, on, resting } from "../support";

/** What a working calls its figures and from which step, face or point they are: its sum stays the same where that is wrong. */
function workingOf(id: string, duty: Duty | NamedDuty, values: Values = full): Working {
  const check = finding(id, values, duty);
  return check.criterion.working!(values, check.duty)!;
}
const texts = ({ known }: Working, ...symbols: readonly string[]) => symbols.map((symbol) => known[symbol]?.text);

const flange: FieldValues = {
  ...{ part: "flanged", load: 300, bore: 20, length: 20, flangeOutside: 30, rpm: 10, ...between(23) },
};
const life = { hours: 100, allowance: 0.2 };
const washer: FieldValues = { part: "washer", load: 300, inner: 20, outer: 40, rpm: 20, ...between(23) };
/** 600 N on 20 × 15 mm, and what follows it. */
const steps = (...later: readonly FieldValues[]) => described({ ...on({}).values, ...life, time: 10 }, ...later);

describe("PV", () => {
  test("of one step takes no numbers, of an intermittent one neither", () => {
    for (const duty of [on({}), on({ runningTime: 2, restTime: 10 })]) {
      const working = workingOf("pv", duty);
      expect(working.lines[0]).toBe("V = p * v");
      expect(texts(working, "p", "v")).toEqual(["Mean pressure", "Sliding speed"]);
    }
  });
  test("of an intermittent one with a time constant is that while running", () => {
    const working = workingOf("pv", on({ runningTime: 2, restTime: 10, timeConstant: 8 }));
    expect(working.lines.slice(0, 2)).toEqual(["PV1 = p * v", "t_c = t1 + t2"]);
    expect(texts(working, "t1", "t2", "PV2")).toEqual(["Running time", "Rest time", "Pressure times speed at rest"]);
    expect(working.between!.PV1!.text).toBe("Pressure times speed while running");
  });
  test("of two steps numbers both", () => {
    const working = workingOf("pv", steps({ load: 300, time: 5 }));
    expect(working.lines.slice(0, 3)).toEqual(["PV1 = p1 * v1", "PV2 = p2 * v2", "V = max(PV1, PV2)"]);
    expect(texts(working, "p1", "v2")).toEqual(["Mean pressure of step 1", "Sliding speed of step 2"]);
  });
});

describe("a mean pressure", () => {
  test("is that of the static load, or of the step whose it is", () => {
    expect(texts(workingOf("staticPressure", on({ staticLoad: 900 })), "p")).toEqual([
      "Mean pressure under the static load",
    ]);
    expect(texts(workingOf("staticPressure", on({}, resting)), "p")).toEqual(["Mean pressure"]);
    const cycle = steps({ load: 900, time: 5 }, { motion: "static", load: 900, time: 5 });
    expect(texts(workingOf("runningPressure", cycle), "p")).toEqual(["Mean pressure of step 2"]);
    expect(texts(workingOf("staticPressure", cycle), "p")).toEqual(["Mean pressure of step 3"]);
  });
  test("in motion is never the static load's, as great as it may be", () =>
    expect(texts(workingOf("runningPressure", on({ staticLoad: 600 })), "p")).toEqual(["Mean pressure"]));
  test("on a face is that of the step that loads the face the most", () => {
    const loaded = described(
      { ...flange, time: 5 },
      { axialLoad: 100, time: 5 },
      { axialLoad: 200, time: 5 },
      { motion: "static", axialLoad: 200, time: 5 },
    );
    expect(texts(workingOf("facePressure", loaded), "p")).toEqual(["Mean pressure of step 3"]);
    expect(finding("facePressure", full, loaded).value).toBeCloseTo(200 / (125 * Math.PI), 12);
  });
  test("at rest may be below 1 MPa", () => {
    // 150 N on 300 mm²; in the second step 90 N
    const light = described({ ...on({ load: 150 }, resting).values, time: 5 }, { load: 90, time: 5 });
    expect(finding("staticPressure", full, light).value).toBe(0.5);
  });
});

describe("a limit", () => {
  const lowered = { ...full, pressureCurve: curve("23: 60; 80: 10", "pressure") };
  const at = (temperature: number) => on(between(temperature), resting);
  test("without a curve is called by its name alone", () =>
    expect(texts(workingOf("staticPressure", at(23)), "p_a")).toEqual(["Limit of static pressure"]));
  test("that its curve does not lower says so", () =>
    expect(texts(workingOf("staticPressure", at(40), { ...lowered, staticPressure: 8 }), "p_a")).toEqual([
      "Limit of static pressure, its curve not below it",
    ]));
  test("of PV that its own curve does not lower says so; another one has no say", () => {
    expect(texts(workingOf("pv", on({}), { ...full, pvCurve: curve("23: 0.3; 85: 0.2", "pv") }), "PV_a")).toEqual([
      "Limit of PV, its curve not below it",
    ]);
    expect(texts(workingOf("pv", on({}), { ...lowered }), "PV_a")).toEqual(["Limit of PV"]);
  });
  test("at a point of its curve is that point, between two it is worked from both", () => {
    const point = workingOf("staticPressure", at(80), lowered);
    expect(point.lines).toEqual(["V = p * K", "Z = p_a / S", "u = V / Z"]);
    expect(texts(point, "p_a")).toEqual(['Limit of static pressure, a point of "pressure at temperature"']);
    const line = workingOf("staticPressure", at(40), lowered);
    expect(line.lines[1]).toBe("p_a = y_1 + (y_2 - y_1) * (T_c - T_1) / (T_2 - T_1)");
    const pv = workingOf("pv", on(between(40)), { ...full, pvCurve: curve("23: 0.2; 85: 0.1", "pv") });
    expect(pv.known.T_c!.text).toBe('Temperature at which "PV at temperature" is read');
  });
  test("is read at the temperature of the bore in motion, of the surroundings at rest", () => {
    expect(workingOf("staticPressure", at(40), lowered).known.T_c!.origin).toBe("surroundings");
    expect(workingOf("runningPressure", on({}), { ...lowered, runningPressure: 60 }).known.T_c!.origin).toBe(
      "bore temperature",
    );
  });
});

describe("the mean of pressure times speed that wears", () => {
  test("names the face of a flanged bush that wears the most, of other parts none", () => {
    const pressureText = (duty: NamedDuty) => texts(workingOf("wearLife", duty), "p");
    expect(pressureText(described({ ...flange, ...life, axialLoad: 1 }))).toEqual(["Mean pressure in the bore"]);
    expect(pressureText(described({ ...flange, ...life, axialLoad: 700 }))).toEqual(["Mean pressure on the flange"]);
    expect(pressureText(on(life))).toEqual(["Mean pressure"]);
    expect(pressureText(described({ ...washer, ...life }))).toEqual(["Mean pressure"]);
  });
  test("is over the steps that move, each by its time", () => {
    const two = workingOf("wearLife", steps({ load: 300, time: 5 }));
    expect(two.lines.slice(1, 3)).toEqual(["t_c = t1 + t2", "PV_m = (p1 * v1 * t1 + p2 * v2 * t2) / t_c"]);
    expect(texts(two, "p2", "t2")).toEqual(["Mean pressure of step 2", "Time of step 2"]);
    const rests = workingOf("wearLife", steps({ motion: "static", load: 900, time: 5 }));
    expect(rests.lines.slice(1, 3)).toEqual(["t_c = t1 + t2", "PV_m = (p1 * v1 * t1) / t_c"]);
    expect(workingOf("wearLife", on(life)).lines[1]).toBe("PV_m = p * v");
  });
  test("on a flange leaves out the steps that do not load it", () => {
    const loaded = described({ ...flange, ...life, time: 5 }, { axialLoad: 700, time: 5 });
    expect(workingOf("wearLife", loaded).lines[2]).toBe("PV_m = (p2 * v2 * t2) / t_c");
  });
});
