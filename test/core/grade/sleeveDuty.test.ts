import { assess, cautionsOf, readGrades, sleeveDuty } from "../../../src/core/grade";

const size = { load: 600, bore: 20, length: 15, temperature: { low: 5, high: 45 } };

test("pressure on the projected area, speed by the motion, length over bore", () => {
  const turning = sleeveDuty({ ...size, movement: { motion: "turning", rpm: 100 } });
  expect(turning).toMatchObject({ motion: "turning", pressure: 2, lengthRatio: 0.75 });
  expect(turning.speed).toBeCloseTo((Math.PI * 20 * 100) / 60000, 12);
  // there and back once a cycle: twice the arc, twice the stroke
  const swinging = sleeveDuty({ ...size, movement: { motion: "swinging", swing: 360, cycles: 100 } });
  expect(swinging.speed).toBeCloseTo(2 * turning.speed, 12);
  expect(sleeveDuty({ ...size, movement: { motion: "linear", stroke: 300, cycles: 10 } }).speed).toBeCloseTo(0.1, 12);
  expect(sleeveDuty({ ...size, movement: { motion: "static" } }).speed).toBe(0);
});

test("what else is known of the duty goes on to its checks", () => {
  const { grades } = readGrades(
    [
      ["grade", "static pressure limit"],
      ["Own", 12],
    ],
    "metric",
    "grades",
  );
  const duty = sleeveDuty({ ...size, designFactor: 2, impactFactor: 1.5, movement: { motion: "static" } });
  expect(assess(grades[0]!, duty)[0]).toMatchObject({ value: 3, limit: 6, use: 0.5 });
});

test("a shaft's hardness is cautioned where it is too low or not known, not where it suffices", () => {
  const { grades } = readGrades(
    [
      ["grade", "least shaft hardness", "shafts suited"],
      ["Own", 200, "soft steel"],
    ],
    "metric",
    "grades",
  );
  const about = (given: object) =>
    cautionsOf(grades[0]!, { ...sleeveDuty({ ...size, movement: { motion: "static" } }), ...given }).filter((c) =>
      /HB/.test(c),
    );
  expect(about({})).toEqual([]);
  expect(about({ shaft: "soft steel" })).toEqual(["The shaft should have at least 200 HB."]);
  expect(about({ hardness: 150 })).toEqual(["The shaft should have at least 200 HB, it has 150 HB."]);
  expect(about({ hardness: 200, shaft: "soft steel" })).toEqual([]);
});
