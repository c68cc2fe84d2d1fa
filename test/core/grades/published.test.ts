import { gradeProperty, gradeSource, verdictLine } from "../../../src/core";
import { one } from "../host";

test("each published value says where it comes from and whether it was read", () => {
  expect(one(gradeSource, "PA66", "PV limit")).toMatch(
    /^M\. J\. Neale.*A4, thermoplastics without filler; 1000 psi·ft\/min, memory; dry, continuous/,
  );
  expect(one(gradeSource, "PTFE", "PV limit")).toMatch(/Shigley.*Table 12-7; 1000 psi·ft\/min, memory; limit of/);
  expect(one(gradeSource, "PA66", "density")).toMatch(/Plastics Engineering.*Table 1.8, p. 31; 1140 kg\/m³, read$/);
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

test("the woven liner: the greatest load that is printed is a static one, the bond bounds the temperature", () => {
  expect(one(gradeProperty, "PTFE fabric", "static pressure limit")).toBeCloseTo(60_000 * 0.006894757293168361, 9);
  expect(one(verdictLine, "PTFE fabric", 400, 0, 25, "static")).toMatch(/^fits/);
  expect(one(verdictLine, "PTFE fabric", 400, 0.002, 25)).toBe("fails, running pressure 400 %");
  expect(one(verdictLine, "PTFE fabric", 50, 0.002, 161)).toMatch(/^fails, temperature/);
  expect(one(gradeSource, "PTFE fabric", "running pressure limit")).toMatch(
    /100 MPa, common practice; slow oscillation/,
  );
  expect(one(gradeSource, "PTFE fabric", "PV limit")).toMatch(/memory; oscillation only/);
  expect(one(gradeSource, "PTFE fabric", "expansion")).toMatch(/memory, band only; greatest of 12e-6 to 30e-6/);
});

test("unfilled polyamide and acetal: the PV limit is a dry one, not that of boundary-lubricated bearings", () => {
  for (const grade of ["PA66", "POM"]) expect(one(gradeProperty, grade, "PV limit")).toBeCloseTo(0.035, 4);
});

test("wear rates that trace to makers are left out of the generic library", () => {
  expect(one(gradeProperty, "PA66", "wear rate high")).toBe('#N/A grade "PA66" has no data on wear rate high');
});
