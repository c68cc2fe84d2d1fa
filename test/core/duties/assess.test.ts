import type { Stated } from "../../../src/core/duties";
import type { Values } from "../../../src/core/grades/model";
import { between, checksOf, curve, finding, full, line, on, resting, stated, verdict, without } from "./support";

/** The verdict as a whole: what is asked, what governs, what is said. */
test("value, limit, use and word of each criterion of a stated duty", () => {
  const checks = checksOf(full, stated({ pressure: 10, speed: 0.01 }));
  expect(checks.map(({ criterion, word, value, limit, use }) => [criterion.id, word, value, limit, use])).toEqual([
    ["runningPressure", "fits", 10, 20, 0.5],
    ["highestTemperature", "fits", 23, 90, undefined],
    ["speed", "fits", 0.01, 1, 0.01],
    ["pv", "fits", 0.1, 0.2, 0.5],
    // 23 + (90 − 23)·0.1/0.2, and use (56.5 − 23)/(90 − 23): models of the steady heat balance
    ["boreTemperature", "fits", expect.closeTo(56.5, 12), 90, expect.closeTo(0.5, 12)],
  ]);
});

test.each<[Partial<Stated>, string]>([
  // a use of exactly 1 fits, a little more fails, and the percentage shows on which side it is
  [{ pressure: 20, speed: 0.001 }, "fits, running pressure 100 %; pressure limit not lowered for temperature"],
  [{ pressure: 20.01, speed: 0.001 }, "fails, running pressure 100.1 %"],
  [{ pressure: 19.99, speed: 0.001 }, "fits, running pressure 99.9 %; pressure limit not lowered for temperature"],
  [{ pressure: 0.01, speed: 1 }, "fits, speed 100 %"],
  [{ pressure: 0.01, speed: 1.1 }, "fails, speed 110 %"],
  // PV and bore temperature are used up together: PV stands first and is named
  [{ pressure: 4, speed: 0.05 }, "fits, PV 100 %"],
  [{ pressure: 5.6, speed: 0.05 }, "fails, PV 140 %"],
  [{ pressure: 2.48, speed: 0.05 }, "fits, PV 62 %"],
  [{ pressure: 0, speed: 0 }, "fits, running pressure 0 %"],
  // at 56.5 °C half of the room for friction heat is left, (90 − 56.5)/(90 − 23), and half of the PV limit
  [between(23, 56.5), "fits, PV 100 %"],
  [between(23, 60), "fails, PV 112 %"],
  [between(23, 90), "fails, temperature 90 °C leaves no room for friction heat"],
  [between(23, 110), "fails, temperature 110 °C above 90 °C"],
  [between(-41, 20), "fails, temperature -41 °C below -40 °C"],
  [between(-40, 20), "fits, PV 50 %"],
  // surroundings outside the grade's temperatures govern, however large a ratio is
  [{ pressure: 500, ...between(23, 110) }, "fails, temperature 110 °C above 90 °C"],
])("%o: %s", (more, expected) => expect(line(full, stated(more))).toBe(expected));

test.each([
  ["turning", 1],
  ["swinging", 0.5],
  ["linear", 2],
] as const)("the speed limit of %s motion is %d m/s", (motion, limit) =>
  expect(finding("speed", full, stated({ motion })).limit).toBe(limit),
);

test("at rest the static limit counts, and neither speed, PV nor the bore's heat; there is no room to be left", () => {
  const checks = checksOf(full, stated({ motion: "static", pressure: 30, speed: 100, ...between(90) }));
  expect(checks.map(({ criterion, word }) => [criterion.id, word])).toEqual([
    ["staticPressure", "fits"],
    ["highestTemperature", "fits"],
  ]);
  expect(checks[0]).toMatchObject({ value: 30, limit: 60, use: 0.5 });
});

test.each<[keyof Values, Parameters<typeof stated>[0], string]>([
  ["speedTurning", {}, "no data, speed"],
  ["speedSwinging", { motion: "swinging" }, "no data, speed"],
  ["speedLinear", { motion: "linear" }, "no data, speed"],
  ["pvLimit", {}, "no data, PV"],
  ["runningPressure", {}, "no data, running pressure"],
  ["staticPressure", { motion: "static" }, "no data, static pressure"],
  ["highestTemperature", {}, "no data, highest temperature"],
  ["highestTemperature", { motion: "static" }, "no data, highest temperature"],
  ["lowestTemperature", between(19, 23), "no data, lowest temperature"],
])("without %s: %o %s", (key, more, expected) => expect(line(without(key), stated(more))).toBe(expected));

test.each([
  ["wearHigh", { hours: 1, allowance: 1 }, "no data, wear life: wear rate high"],
  ["wearFrom", { hours: 1, allowance: 1 }, "no data, wear life: wear rate from"],
  ["swellingSaturated", { moisture: "wet" }, "no data, moisture: swelling saturated"],
  ["swelling50", { moisture: "humid" }, "no data, moisture: swelling at 50 % RH"],
  ["shortTermTemperature", { peakTemperature: 60 }, "no data, short peak: short-term highest temperature"],
  ["shafts", { shaft: "hardened steel" }, "no data, shaft: shafts suited"],
  ["shaftHardness", { hardness: 300 }, "no data, shaft: least shaft hardness"],
  ["softShaft", { hardness: 199 }, "no data, shaft: soft shaft"],
  ["roughShaft", { roughness: 0.9 }, "no data, shaft: rough shaft"],
  ["media", { media: ["water"] }, "no data, media: water"],
  ["dirt", { dirt: "some" }, "no data, dirt"],
  ["shock", { impactFactor: 1.1 }, "no data, shock"],
  ["damping", { damping: "yes" }, "no data, damping"],
  ["vacuum", { vacuum: "yes" }, "no data, vacuum"],
  ["edgeLoad", { slope: 0.1 }, "no data, edge pressure: edge load"],
  ["staticPressure", { staticLoad: 700 }, "no data, static pressure"],
] as const)("without %s: %o %s", (key, more, expected) => expect(line(without(key), on(more))).toBe(expected));

test("a datum that the duty does not ask for is not missed", () => {
  const lacking = without(
    ...(["staticPressure", "speedLinear", "speedSwinging", "shortTermTemperature", "wearHigh", "wearFrom"] as const),
    ...(["swelling50", "swellingSaturated", "media", "shafts", "shaftHardness", "softShaft", "roughShaft"] as const),
    ...(["dirt", "shock", "damping", "vacuum", "edgeLoad", "compressiveStrength", "wearLow"] as const),
  );
  expect(line(lacking, stated())).toBe("fits, PV 50 %");
  // limits are stated at room temperature: only a colder duty needs a lowest temperature
  expect(line(without("lowestTemperature"), stated(between(20, 23)))).toBe("fits, PV 50 %");
});

test("a sure failure outweighs a missing datum, and leaves the use unknown", () => {
  const judged = verdict(without("speedTurning"), stated({ pressure: 5.6 }));
  expect([judged.word, judged.governing.criterion.id, judged.use]).toEqual(["fails", "pv", undefined]);
  expect(line(without("speedTurning"), stated({ pressure: 5.6 }))).toBe("fails, PV 140 %");
});

test("a missing datum outweighs care, and care outweighs what fits", () => {
  const care = on({ hardness: 199 });
  expect(line(full, care)).toBe("care, shaft 199 HB, at least 200 HB wanted; PV 50 %");
  expect(line(without("speedLinear"), care)).toBe("no data, speed");
  expect(verdict(full, care).use).toBe(0.5);
});

test("an empty grade has no data for anything, and nothing fits", () => {
  for (const motion of ["turning", "swinging", "linear", "static"] as const)
    expect(new Set(checksOf({}, stated({ motion, ...between(0, 1) })).map(({ word }) => word))).toEqual(
      new Set(["no data"]),
    );
  const asking = on({
    ...{ staticLoad: 700, peakTemperature: 60, slope: 0.1, hours: 1, allowance: 1, moisture: "wet", dirt: "heavy" },
    ...{ impactFactor: 2, damping: "yes", vacuum: "yes", media: ["water"], shaft: "chromed", hardness: 150 },
  });
  const words = checksOf({}, asking).map(({ criterion, word }) => [criterion.id, word]);
  // length over bore asks nothing of the grade
  expect(words.filter(([, word]) => word !== "no data")).toEqual([["lengthOverBore", "fits"]]);
  expect(words).toHaveLength(18);
});

test("design factor divides pressure and PV limits, impact factor multiplies the load but not the PV", () => {
  const safe = on({ designFactor: 2, impactFactor: 1.5 });
  expect(finding("runningPressure", full, safe)).toMatchObject({ value: 3, limit: 10, use: 0.3 });
  expect(finding("pv", full, safe)).toMatchObject({ value: 0.1, limit: 0.1, use: 1 });
  expect(finding("speed", full, safe)).toMatchObject({ value: 0.05, limit: 2 });
  // the PV limit of the heat balance is not divided: it is what the test drove the bore with
  expect(finding("boreTemperature", full, safe).value).toBeCloseTo(56.5, 12);
  expect(finding("staticPressure", full, on({ designFactor: 2, impactFactor: 1.5 }, resting))).toMatchObject({
    value: 3,
    limit: 30,
  });
});

test("the greatest use of the worst word governs, equal ones in the list's order", () => {
  // pressure 20/20 and PV 0.2/0.2: both are used up, pressure stands first
  expect(line(full, stated({ pressure: 20, speed: 0.01 }))).toBe(
    "fits, running pressure 100 %; pressure limit not lowered for temperature",
  );
  expect(line(full, stated({ pressure: 19.9, speed: 0.2 / 19.9 }))).toBe("fits, PV 100 %");
  expect(line(full, stated({ pressure: 30, speed: 0.03 }))).toBe("fails, PV 450 %");
  expect(line(full, stated({ pressure: 60, speed: 0.001 }))).toBe("fails, running pressure 300 %");
});

test("where words govern, the greatest ratio follows, of what fits as of what fails", () => {
  const soft = { ...full, softShaft: "poor" } as const;
  expect(line(soft, on({ hardness: 199 }))).toBe("fails, soft shaft: poor; PV 50 %");
  // a ratio that fails governs before a word that fails
  expect(line(soft, on({ hardness: 199, load: 1500 }))).toBe("fails, PV 125 %");
  expect(line(full, on({ vacuum: "yes" }))).toBe("care, vacuum good: PV limits rely on air; PV 50 %");
});

test("swelling is told in any case", () => {
  expect(line(full, on({ moisture: "wet" }))).toBe("fits, PV 50 %; swells 1 %");
  expect(line(full, on({ moisture: "humid" }))).toBe("fits, PV 50 %; swells 0.3 %");
  expect(line(full, on({ moisture: "wet", load: 1500 }))).toBe("fails, PV 125 %; swells 1 %");
  expect(line({ ...full, swellingSaturated: 0 }, on({ moisture: "wet" }))).toBe("fits, PV 50 %");
});

test("beyond a curve there is no use, though other ratios are small", () => {
  const ending = { ...full, pvCurve: curve("0: 0.2; 50: 0.15", "pv") };
  const judged = verdict(ending, stated(between(10, 51)));
  expect([judged.word, judged.use, judged.governing.criterion.id]).toEqual(["fails", undefined, "pv"]);
  expect(line(ending, stated(between(10, 51)))).toBe(
    "fails, PV: surroundings beyond its curve, which ends at 50 °C; bore temperature 86 %",
  );
});
