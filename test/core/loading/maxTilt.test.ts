import { functions } from "../../../src/core";

const { MAXTILT } = functions;
const layer = { bore: 20, length: 15, wall: 1.5, clearance: 0.08, modulus: 2500, poisson: 0.4 };
const lookups = (more: { load: number; pressure: number; clearance?: number }) =>
  MAXTILT.spec.lookups?.({ ...layer, ...more }) ?? {};
const tilt = (more: { load: number; pressure: number }) => MAXTILT.calc({ ...layer, ...more });

test("of a shaft in contact over the whole length the working looks up its fall over half of the clearance", () => {
  const given = { load: 4000, pressure: 40 };
  const fall = ((tilt(given) * Math.PI) / 180) * layer.length;
  expect(fall).toBeGreaterThan(0);
  expect(lookups(given).D!.value.value).toBeCloseTo(fall / 0.04, 12);
});

test("of one that has lifted, lies too deep already or fits without play it looks nothing up", () => {
  expect(lookups({ load: 800, pressure: 40 })).toEqual({});
  expect(lookups({ load: 1e5, pressure: 40 })).toEqual({});
  expect(tilt({ load: 1e5, pressure: 40 })).toBe(0);
  expect(lookups({ load: 4000, pressure: 40, clearance: 0 })).toEqual({});
});
