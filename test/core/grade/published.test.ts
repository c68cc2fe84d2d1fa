import { gradeProperty, gradeSource } from "../../../src/core";
import { one } from "./host";

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
