import { flangedNodes, flangeRise, sleeveRise } from "../../../src/core/heat/flangedPaths";
import { flangedAssemblies, flangedError } from "../../reference/cases/flanged";
import { flangedRises } from "../../reference/solve/flangedAssembly";

test.each(flangedAssemblies)("%s: 2 to 9 %% above volumes in space, never below", (_, ...assembly) => {
  const error = flangedError(...assembly);
  expect(error).toBeGreaterThan(0.02);
  expect(error).toBeLessThan(0.09);
});

/** 20/23 × 20 bush, flange 30 × 1.5; W/(m·K), W/(m²·K). */
const paths = {
  ...{ bore: 20, length: 20, wall: 1.5, flangeoutside: 30, flangethickness: 1.5, bushconductivity: 0.25 },
  ...{ shaftconductivity: 45, contact: 0.5, film: 10, farend: 60, shoulderend: 60 },
};

test("by hand, no shaft ends: half of the bore and the flange into a housing at ambient", () => {
  const { sleeve, flange, between, sum } = flangedNodes({ ...paths, farend: 0, shoulderend: 0 }, Infinity);
  // 0.5·2π·0.25·0.020/ln(23/20) = 0.015708/0.139762
  expect(sleeve).toBeCloseTo(0.112391, 6);
  // 0.25·π/4·(0.030² − 0.023²)/0.0015 = 0.25·2.91383e-4/0.0015
  expect(flange).toBeCloseTo(0.0485638, 7);
  // 45·π/4·0.020²/(0.010 + 0.0015) = 0.0141372/0.0115
  expect(between).toBeCloseTo(1.22932, 5);
  // 0.112391 + 0.048564 + 0.112391·0.048564/1.22932
  expect(sum).toBeCloseTo(0.165395, 6);
});

test("what the two nodes lose is what friction makes", () => {
  for (const housing of [0, 0.05, 1, Infinity]) {
    const nodes = flangedNodes(paths, housing);
    for (const [onSleeve, onFlange] of [
      [5, 2],
      [0, 3],
      [4, 0],
    ] as const)
      expect(
        nodes.sleeve * sleeveRise(nodes, onSleeve, onFlange) + nodes.flange * flangeRise(nodes, onSleeve, onFlange),
      ).toBeCloseTo(onSleeve + onFlange, 12);
  }
});

test("without a way out through the housing it is the safer for the collar's own cooling, which is left out", () => {
  const metres = {
    bore: 0.02,
    length: 0.02,
    wall: 0.0015,
    inner: 0.021,
    outer: 0.03,
    thickness: 0.0015,
    collar: 0.004,
  };
  const rest = {
    farend: 0.06,
    shoulderend: 0.06,
    shaftconductivity: 45,
    bushconductivity: 0.25,
    contact: 0.5,
    film: 10,
  };
  const volumes = flangedRises({ ...metres, ...rest, housing: 0 }, 5, 2);
  const nodes = flangedNodes(paths, 0);
  const error = Math.max(sleeveRise(nodes, 5, 2), flangeRise(nodes, 5, 2)) / Math.max(volumes.sleeve, volumes.flange);
  expect(error).toBeGreaterThan(1.02);
  expect(error).toBeLessThan(1.15);
});
