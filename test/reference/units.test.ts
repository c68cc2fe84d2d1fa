import { all, create } from "mathjs";
import Qty from "js-quantities";
import { convert } from "../../src/core/units";

/** Two open libraries as a cross-check of the unit algebra; mathjs in full, since ours runs on its unit class alone. */
const math = create(all!);

const pairs: [string, string, string?, string?][] = [
  ["lbf", "N"],
  ["ft/min", "m/s"],
  ["in", "mm"],
  ["mi", "km"],
  ["lbf*in", "N*m"],
  ["bar", "psi"],
  ["lb/in^3", "g/cm^3", "lb/in^3", "g/cm^3"],
  ["kN", "lbf"],
  ["h", "min"],
  ["deg", "rad"],
  ["BTU/h", "W", "btu/h", "W"],
];

test.each(pairs)("%s in %s agrees with js-quantities", (from, to, theirFrom = from, theirTo = to) => {
  const expected = Qty(`12.5 ${theirFrom}`).to(theirTo).scalar;
  // js-quantities holds psi and the Btu to six digits
  expect(Math.abs(convert(12.5, from, to) / expected - 1)).toBeLessThan(1e-6);
});

test.each(pairs.filter(([from, to]) => !/psi/.test(from + to)))(
  "%s in %s agrees with the whole of mathjs",
  (from, to) => {
    const expected = math.unit(12.5, from).toNumber(to);
    expect(Math.abs(convert(12.5, from, to) / expected - 1)).toBeLessThan(1e-14);
  },
);
