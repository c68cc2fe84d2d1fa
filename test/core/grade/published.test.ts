import { gradeProperty, gradeSource } from "../../../src/core";
import { one } from "./host";

/** The generic library against the figures as printed, the source beside each; half of the last printed digit is the tolerance. */

const shigley = "Shigley's Mechanical Engineering Design, 8th to 10th ed., Table 12-7 (memory)";
const a4 = "Neale, The Tribology Handbook, 2nd ed. 1995, section A4";
const a5 = "Neale, The Tribology Handbook, 2nd ed. 1995, section A5, p. A5.1";
const crawford = "Crawford, Plastics Engineering, Table 1.8, p. 31";
const callister = "Callister, Fundamentals of Materials Science and Engineering, 3rd ed.";

test.each<[string, string, number, "metric" | "inch", string]>([
  ["PA66", "running pressure limit", 1000, "inch", shigley],
  ["PA66", "PV limit", 3000, "inch", shigley],
  ["PA66", "speed limit turning", 1000, "inch", shigley],
  ["PA66", "static pressure limit", 10, "metric", a5],
  ["PA66", "highest temperature", 90, "metric", crawford],
  ["PA66", "expansion", 90e-6, "metric", crawford],
  ["PA66", "conductivity", 0.24, "metric", crawford],
  ["PA66", "density", 1.14, "metric", crawford],
  ["POM", "running pressure limit", 1000, "inch", shigley],
  ["POM", "PV limit", 3000, "inch", shigley],
  ["POM", "highest temperature", 180, "inch", shigley],
  ["POM", "expansion", 95e-6, "metric", crawford],
  ["POM", "water uptake saturated", 0.7, "metric", "Margolis, Engineering Plastics Handbook, 2006, Table 5.5, p. 91"],
  ["POM", "friction low", 0.15, "metric", "CRC Materials Science and Engineering Handbook, 2001, Table 399"],
  ["PTFE", "running pressure limit", 500, "inch", shigley],
  ["PTFE", "PV limit", 1000, "inch", shigley],
  ["PTFE", "speed limit turning", 100, "inch", shigley],
  ["PTFE", "highest temperature", 250, "metric", crawford],
  ["PTFE filled", "static pressure limit", 2, "metric", a5],
  ["PTFE filled", "PV limit", 10000, "inch", a4],
  ["PTFE filled", "friction high", 0.35, "metric", a4],
  ["PTFE fabric", "running pressure limit", 60000, "inch", a4],
  ["PTFE fabric", "PV limit", 25000, "inch", shigley],
  ["PTFE fabric", "speed limit turning", 50, "inch", shigley],
  ["phenolic", "static pressure limit", 30, "metric", a5],
  ["phenolic", "PV limit", 10000, "inch", a4],
  ["phenolic", "speed limit turning", 2500, "inch", shigley],
  ["phenolic", "highest temperature", 200, "inch", shigley],
  ["UHMWPE", "static pressure limit", 10, "metric", a5],
  ["UHMWPE", "density", 0.94, "metric", `${callister}, Table B.1`],
  ["PEEK", "highest temperature", 204, "metric", crawford],
  ["PEEK", "static pressure limit", 30, "metric", a5],
  ["PET", "highest temperature", 110, "metric", crawford],
  ["PI", "highest temperature", 250, "metric", a5],
  ["thermoplastic filled", "static pressure limit", 15, "metric", a5],
  ["thermoplastic filled", "PV limit", 1000, "inch", a4],
])("%s, %s: %d (%s), %s", (grade, property, printed, units) => {
  expect((one(gradeProperty, grade, property, null, units) as number) / printed).toBeCloseTo(1, 12);
});

test.each<[string, string, number, number, string]>([
  // both unit systems as the source prints them side by side
  ["PTFE filled", "PV limit", 0.35, 0.005, a4],
  ["PTFE fabric", "running pressure limit", 420, 10, a4],
  ["thermoplastic filled", "PV limit", 0.035, 0.0005, a4],
])("%s, %s: %d in the source's own metric column", (grade, property, printed, half) => {
  expect(Math.abs((one(gradeProperty, grade, property) as number) - printed)).toBeLessThanOrEqual(half);
});

test("each published value says where it comes from and whether it was read", () => {
  expect(one(gradeSource, "PA66", "PV limit")).toMatch(
    /Shigley.*Table 12-7; 3000 psi·ft\/min, from memory of the source/,
  );
  expect(one(gradeSource, "PA66", "density")).toMatch(
    /Plastics Engineering.*Table 1.8, p. 31; 1140 kg\/m³, read in the source$/,
  );
  expect(one(gradeSource, "PTFE filled", "static pressure limit")).toMatch(/least of 2 to 7 MPa$/);
  expect(one(gradeSource, "Demo Tansy", "PV limit")).toBe("invented for the demo");
  const own = [
    ["grade", "PV limit", "density", "source"],
    ["A", 1, null, "supplier list 7"],
    ["B", 1, null, null],
  ];
  expect(one(gradeSource, "A", "PV limit", own)).toBe("supplier list 7");
  expect(one(gradeSource, "B", "PV limit", own)).toBe("own row, no source given");
  expect(one(gradeSource, "A", "density", own)).toBe('#N/A grade "A" has no data on density');
});

test("no wear rate is published in the generic library: those at hand trace to makers", () => {
  expect(one(gradeProperty, "PA66", "wear rate high")).toBe('#N/A grade "PA66" has no data on wear rate high');
});
