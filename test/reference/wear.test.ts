import { wearDepth, wearLife } from "../../src/core";
import { toWorking } from "../../src/core/units";
import { answer } from "../../src/edge/sheet";

// Juvinall and Marshek, Fundamentals of Machine Component Design, surface damage: sample problem on wear coefficients (memory).
// A copper pin (80 HV, taken as 785 MPa) on a steel disk (2059 MPa), 20 N at a radius of 16 mm, 80 rev/min for 2 h: wear
// volumes 2.7 and 0.65 mm³, wear coefficients 1.10e-4 and 6.93e-5. The specific wear rate is the coefficient over the hardness.
test.each([
  ["pin", 1.1e-4, 785, 2.7, 0.05],
  ["disk", 6.93e-5, 2059, 0.65, 0.005],
])("wear volume of the %s", (_, coefficient, hardness, printed, tolerance) => {
  const wearrate = (coefficient / hardness) * 1000;
  const distance = (2 * Math.PI * 16 * 80 * 120) / 1e6;
  const area = 12;
  const volume = wearDepth({ wearrate, pressure: 20 / area, distance }) * area;
  expect(Math.abs(volume - printed)).toBeLessThanOrEqual(tolerance);
});

// ASTM D3702: the wear factor K = W/(P·V·T), W in inches, P in psi, V in ft/min, T in hours (memory).
test("wear factor in inch units: K·P·V·T is the depth", () => {
  const host = { error: (code: string, message?: string) => ({ code, message }) };
  const life = answer(wearLife, [24e-10, 100, 100, 0.024, "inch"], host)[0]![0];
  expect(life).toBeCloseTo(1000, 8);
});

// The unit of the wear factor from the exact inch, pound and standard gravity (SI Brochure, 9th ed.; NIST SP 811, 2008).
test("1e-10 in³·min/(ft·lbf·h) is 2.0144e-8 mm³/(N·m)", () => {
  const pound = 0.45359237 * 9.80665;
  const exact = (1e-10 * 25.4 ** 3) / 60 / (0.3048 * pound);
  expect(toWorking("wearRate", 1e-10, "inch") / exact).toBeCloseTo(1, 13);
  expect(exact).toBeCloseTo(2.0144e-8, 12);
});
