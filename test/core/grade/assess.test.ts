import { assess, boreCloseIn, readCurve, verdictOf, verdictText } from "../../../src/core/grade";
import type { Check, Criterion, Duty, Grade, Values } from "../../../src/core/grade";

const curve = (text: string, kind: "pressure" | "pv") => readCurve("c", { kind, above: 0 }, text, undefined, "metric");
const full: Values = {
  staticPressure: 60,
  runningPressure: 20,
  speedTurning: 1,
  speedSwinging: 0.5,
  speedLinear: 2,
  pvLimit: 0.2,
  lowestTemperature: -40,
  highestTemperature: 90,
  shortTermTemperature: 120,
  wearHigh: 2e-6,
  swellingSaturated: 0.01,
  poisson: 0.4,
};
const grade = (values: Values): Grade => ({ name: "T", kind: "own", values, origins: {}, extra: [] });
const without = (...keys: (keyof Values)[]): Grade =>
  grade(Object.fromEntries(Object.entries(full).filter(([key]) => !keys.includes(key as keyof Values))));
const duty: Duty = { pressure: 2, speed: 0.05, temperature: { low: 23, high: 23 }, motion: "turning" };

const check = (checks: Check[], criterion: Criterion) => checks.find((c) => c.criterion === criterion);
const text = (g: Grade, d: Partial<Duty>) => verdictText(verdictOf(assess(g, { ...duty, ...d })), "metric");

test("value, limit, use and verdict of each criterion", () => {
  const checks = assess(grade(full), { ...duty, pressure: 10, speed: 0.01 });
  expect(check(checks, "running pressure")).toMatchObject({ value: 10, limit: 20, use: 0.5, verdict: "OK" });
  expect(check(checks, "speed")).toMatchObject({ value: 0.01, limit: 1, use: 0.01, verdict: "OK" });
  expect(check(checks, "PV")).toMatchObject({ value: 0.1, limit: 0.2, use: 0.5, verdict: "OK" });
  expect(check(checks, "lowest temperature")).toMatchObject({ value: 23, limit: -40, margin: 63, verdict: "OK" });
  expect(check(checks, "highest temperature")).toMatchObject({ value: 23, limit: 90, margin: 67, verdict: "OK" });
  expect(checks).toHaveLength(5);
});

test.each<[Partial<Duty>, string]>([
  // a use of exactly 1 fits, a little more fails, and the percentage shows on which side it is
  [{ pressure: 20, speed: 0.001 }, "fits, running pressure 100 %"],
  [{ pressure: 20.01, speed: 0.001 }, "fails, running pressure 100.1 %"],
  [{ pressure: 19.99, speed: 0.001 }, "fits, running pressure 99.9 %"],
  [{ pressure: 0.01, speed: 1 }, "fits, speed 100 %"],
  [{ pressure: 0.01, speed: 1.1 }, "fails, speed 110 %"],
  [{ pressure: 4, speed: 0.05 }, "fits, PV 100 %"],
  [{ pressure: 5.6, speed: 0.05 }, "fails, PV 140 %"],
  [{ pressure: 2.48, speed: 0.05 }, "fits, PV 62 %"],
  [{ pressure: 0, speed: 0 }, "fits, running pressure 0 %"],
  [{ temperature: { low: 23, high: 90 } }, "fits, PV 50 %"],
  [{ temperature: { low: 23, high: 110 } }, "fails, temperature 110 °C above 90 °C"],
  [{ temperature: { low: -41, high: 20 } }, "fails, temperature -41 °C below -40 °C"],
  [{ temperature: { low: -40, high: 20 } }, "fits, PV 50 %"],
  // a failed temperature governs, however large a ratio is
  [{ pressure: 500, temperature: { low: 23, high: 110 } }, "fails, temperature 110 °C above 90 °C"],
])("%o: %s", (d, verdict) => expect(text(grade(full), d)).toBe(verdict));

test.each<[Duty["motion"], number]>([
  ["turning", 1],
  ["swinging", 0.5],
  ["linear", 2],
])("the speed limit of %s motion is %d m/s", (motion, limit) =>
  expect(check(assess(grade(full), { ...duty, motion }), "speed")?.limit).toBe(limit),
);

test("at rest the static limit counts, and neither speed nor PV", () => {
  const checks = assess(grade(full), { ...duty, motion: "static", pressure: 30, speed: 100 });
  expect(checks.map((c) => c.criterion)).toEqual(["static pressure", "lowest temperature", "highest temperature"]);
  expect(checks[0]).toMatchObject({ limit: 60, use: 0.5, verdict: "OK" });
});

test.each<[keyof Values, Partial<Duty>, string]>([
  ["speedTurning", {}, "no data, speed"],
  ["speedSwinging", { motion: "swinging" }, "no data, speed"],
  ["pvLimit", {}, "no data, PV"],
  ["staticPressure", { motion: "static" }, "no data, static pressure"],
  ["highestTemperature", {}, "no data, highest temperature"],
  ["lowestTemperature", { temperature: { low: 19, high: 23 } }, "no data, lowest temperature"],
  ["wearHigh", { wear: { hours: 1, allowance: 1 } }, "no data, wear"],
  ["swellingSaturated", { wet: true }, "no data, moisture"],
  ["poisson", { wet: true, fit: { bore: 20, outside: 26, clearance: 0.1 } }, "no data, moisture"],
])("without %s: %s %s", (key, d, verdict) => expect(text(without(key), d)).toBe(verdict));

test("a datum that the duty does not ask for is not missed", () => {
  expect(text(without("speedLinear", "speedSwinging", "poisson", "wearHigh"), {})).toBe("fits, PV 50 %");
  // limits are stated at room temperature: only a colder duty needs a lowest temperature
  expect(text(without("lowestTemperature"), { temperature: { low: 20, high: 60 } })).toBe("fits, PV 50 %");
});

test("a sure failure outweighs a missing datum, and leaves the use unknown", () => {
  const verdict = verdictOf(assess(without("speedTurning"), { ...duty, pressure: 5.6 }));
  expect(verdictText(verdict, "metric")).toBe("fails, PV 140 %");
  expect(verdict.use).toBeUndefined();
});

test("an empty grade has no data for anything, and nothing is OK", () => {
  for (const motion of ["turning", "swinging", "linear", "static"] as const) {
    const d = { ...duty, motion, wet: true, wear: { hours: 1, allowance: 1 }, temperature: { low: 0, high: 1 } };
    expect(new Set(assess(grade({}), d).map((c) => c.verdict))).toEqual(new Set(["no data"]));
  }
});

test("the running limit falls back to the static one", () => {
  const running = check(assess(without("runningPressure"), duty), "running pressure");
  expect(running).toMatchObject({ limit: 60, property: "staticPressure" });
  expect(text(without("runningPressure", "staticPressure"), {})).toBe("no data, running pressure");
});

test("design factor divides pressure and PV limits, impact factor multiplies the load", () => {
  const safe = assess(grade(full), { ...duty, designFactor: 2, impactFactor: 1.5 });
  expect(check(safe, "running pressure")).toMatchObject({ value: 3, limit: 10 });
  expect(check(safe, "PV")).toMatchObject({ limit: 0.1 });
  expect(check(safe, "PV")?.value).toBeCloseTo(0.15, 12);
  expect(check(safe, "speed")).toMatchObject({ value: 0.05, limit: 1 });
});

test("a curve caps the limits over the whole span, and beyond its ends fails without a number", () => {
  const derated = grade({
    ...full,
    pressureCurve: curve("-40: 60; 23: 60; 80: 10", "pressure"),
    pvCurve: curve("0: 0.2; 50: 0.05", "pv"),
  });
  const at = (low: number, high: number) => assess(derated, { ...duty, temperature: { low, high } });
  expect(check(at(23, 23), "running pressure")?.limit).toBe(20);
  expect(check(at(20, 80), "running pressure")?.limit).toBe(10);
  expect(check(at(10, 25), "PV")?.limit).toBeCloseTo(0.125, 12);
  expect(check(at(10, 50), "PV")).toMatchObject({ limit: 0.05, verdict: "fails" });
  const beyond = check(at(10, 60), "PV")!;
  expect(beyond).toMatchObject({ verdict: "fails", property: "pvCurve", beyond: { low: 0, high: 50 } });
  expect([beyond.limit, beyond.use]).toEqual([undefined, undefined]);
  expect(verdictOf(at(10, 60)).use).toBeUndefined();
  expect(text(derated, { temperature: { low: 10, high: 60 } })).toBe(
    "fails, PV: temperature outside its curve (0 °C to 50 °C)",
  );
  expect(
    check(assess(derated, { ...duty, motion: "static", temperature: { low: 20, high: 80 } }), "static pressure"),
  ).toMatchObject({ limit: 10 });
});

test("wear: the shortest life against the hours wanted", () => {
  // Archard's law by hand: h = k·p·s, so 0.2 mm last 0.2/(2e-6·2·0.05) = 1e6 m·s⁻¹·s, over 0.05 m/s·3600 s/h → 277.78 h
  const wear = check(assess(grade(full), { ...duty, wear: { hours: 100, allowance: 0.2 } }), "wear")!;
  expect(wear.limit).toBeCloseTo(0.2 / (2e-6 * 2 * 0.05 * 3600), 9);
  expect(wear.limit).toBeCloseTo(277.78, 2);
  expect(wear.use).toBeCloseTo(0.36, 12);
  expect(text(grade(full), { wear: { hours: 300, allowance: 0.2 } })).toBe("fails, wear 108 %");
  const still = check(assess(grade(full), { ...duty, speed: 0, wear: { hours: 100, allowance: 0.2 } }), "wear")!;
  expect([still.use, still.limit, still.verdict]).toEqual([0, undefined, "OK"]);
});

test("moisture: the close-in of the bore against the running clearance, none of which may remain nothing", () => {
  const closeIn = boreCloseIn(20, 26, 0.4, 0.01);
  const wet = (clearance: number) => ({ wet: true, fit: { bore: 20, outside: 26, clearance } });
  const moisture = check(assess(grade(full), { ...duty, ...wet(0.2) }), "moisture")!;
  expect(moisture.value).toBeCloseTo(closeIn, 12);
  expect(moisture).toMatchObject({ limit: 0.2, verdict: "OK" });
  expect(check(assess(grade(full), { ...duty, ...wet(closeIn) }), "moisture")!.verdict).toBe("fails");
  expect(text(grade(full), wet(closeIn / 2))).toBe("fails, moisture 200 %");
  expect(text(grade(full), wet(0))).toBe("fails, moisture: no clearance to begin with");
  expect(check(assess(grade(full), { ...duty, ...wet(0.2), wet: false }), "moisture")).toBeUndefined();
});

test("bore close-in of a swelling ring held outside, against the plane-stress ring equation integrated here", () => {
  // radial displacement u of a free-swelling ring: u = A·r + B/r, ε grown in both directions. The outside is held
  // (u = 0 at D/2), the bore is free (σr = 0): E/(1 − ν²)·(u' + ν·u/r) − E·ε/(1 − ν) = 0. Two equations for A and B.
  const [d, D, nu, strain] = [20, 26, 0.35, 0.0055];
  const [a, b] = [d / 2, D / 2];
  const A = (strain * (1 + nu)) / (1 + nu + ((1 - nu) * b * b) / (a * a));
  const B = -A * b * b;
  const residual = A * (1 + nu) - (B / (a * a)) * (1 - nu) - strain * (1 + nu);
  expect(residual).toBeCloseTo(0, 15);
  expect(boreCloseIn(d, D, nu, strain)).toBeCloseTo(-2 * (A * a + B / a), 12);
});
