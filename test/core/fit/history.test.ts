import { boreIn, relax, keptPressure, stateAt } from "../../../src/core/fit/history";
import { heldAtEnds, heldStrain } from "../../../src/core/fit/lame";
import type { Ring } from "../../../src/core/fit/lame";

const ring: Ring = {
  bore: 20,
  outside: 23,
  housing: 40,
  bushModulus: 2500,
  bushPoisson: 0.4,
  housingModulus: 70_000,
  housingPoisson: 0.33,
};

test("a hot hold that leaves 0.6 of the modulus: pressure and bore by radial viscoelastic finite elements with unilateral contact", () => {
  // states: assembly, hot with a mismatch of 0.003984, back; elements and time steps answered 2.01454 MPa hot and 19.8746 mm after
  const hot = relax(ring, stateAt(ring, 0.12, 0.003984, 0), 0.6);
  expect(hot.pressure).toBeCloseTo(2.01454, 5);
  const back = stateAt(ring, 0.12, 0, hot.set);
  expect(boreIn(ring, 20, 0, back)).toBeCloseTo(19.8746, 4);
});

test("a bush held at its ends, hot in a cold housing: pressure by plane-strain finite elements", () => {
  const [bush, housing] = [9e-5 * 60, 0];
  const held = heldAtEnds(ring);
  const { pressure } = stateAt(held, 0.08, heldStrain(bush, housing, ring.bushPoisson) - housing, 0);
  expect(pressure).toBeCloseTo(4.95248, 5);
});

test("shoulders push and never pull", () => {
  expect(heldStrain(0.002, 0.001, 0.4)).toBeCloseTo(0.0024, 12);
  expect(heldStrain(0.001, 0.002, 0.4)).toBe(0.001);
});

test("a stiff housing after one hot hold: δ₀ + D·e_now − (1 − R)·(δ₀ + D·e_hot), loose by 0.013 mm", () => {
  const stiff: Ring = { ...ring, housing: Infinity, housingModulus: 1e12 };
  expect(keptPressure(stiff, 0.6)).toBeCloseTo(0.6, 8);
  // 0.05 mm of interference on 23 mm, 60 K hotter in steel: 8.5e-5 − 1.17e-5 per K
  const hot = relax(stiff, stateAt(stiff, 0.05, 60 * (8.5e-5 - 1.17e-5), 0), 0.6);
  const back = stateAt(stiff, 0.05, 0, hot.set);
  expect(back.interference).toBeCloseTo(0.05 - 0.4 * (0.05 + 23 * 60 * 7.33e-5), 9);
  expect(back.interference).toBeLessThan(0);
  expect(back.pressure).toBe(0);
});

test("a set outlasts the grip: the bore stays small", () => {
  const hot = relax(ring, stateAt(ring, 0.1, 0.004, 0), 0.5);
  const loose = stateAt(ring, 0.1, -0.01, hot.set);
  expect(loose.interference).toBeLessThan(0);
  expect(boreIn(ring, 20, -0.01, loose)).toBeLessThan(20 * (1 - 0.01));
});
