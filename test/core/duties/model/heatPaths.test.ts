import type { FieldValues } from "../../../../src/core/duties";
import { pathRises, pathWorking } from "../../../../src/core/duties/model/heatPaths";
import type { Rises } from "../../../../src/core/duties/model/heatPaths";
import { findMetal } from "../../../../src/core/fit/metals";
import { flangedNodes, flangeRise, sleeveRise } from "../../../../src/core/heat/flangedPaths";
import { shaftConductance, wallConductance } from "../../../../src/core/heat/paths";
import { described, full, on } from "../support";

const values = { ...full, frictionHigh: 0.2, conductivity: 0.25 };
/** 600 N on 20/23 × 20 mm at 20 1/min: v = π·20·20/60000 m/s. */
const turning: FieldValues = {
  ...{ load: 600, bore: 20, length: 20, wall: 1.5, rpm: 20, temperature: { low: 23, high: 23 } },
};
const heat = (0.2 * 600 * Math.PI * 20 * 20) / 60_000;
const steel = findMetal("shaft", "hardened steel").conductivity;
const bush = { bore: 20, length: 20, wall: 1.5, bushconductivity: 0.25, film: 10, contact: 0.5 };
const throughWall = wallConductance(bush);
/** Through wall and housing of 0.1 W/K, one behind the other. */
const housed = 1 / (1 / throughWall + 1 / 0.1);
const alongShaft = shaftConductance({ ...bush, shaftconductivity: steel, endlength: 60, ends: 2 });

const risesOf = (more: FieldValues, of = values) => pathRises(of, on(more, turning).corners[0]!);

describe("a plain sleeve", () => {
  test("by its housing alone: the shaft need not be named, since none of it stands out", () => {
    for (const endLength of [undefined, 0])
      expect(risesOf({ housingPath: 0.1, endLength })).toMatchObject({
        least: expect.closeTo(heat / housed, 9) as number,
        greatest: expect.closeTo(heat / housed, 9) as number,
      });
  });
  test("by the shaft's ends: without the housing's conductance from an ambient housing to no way through it", () =>
    expect(risesOf({ endLength: 60, shaft: "hardened steel" })).toMatchObject({
      least: expect.closeTo(heat / (alongShaft + throughWall), 9) as number,
      greatest: expect.closeTo(heat / alongShaft, 9) as number,
    }));
  test("an exposed length, however short, asks for the shaft", () => {
    expect(risesOf({ endLength: 60 })).toEqual({ field: "shaft" });
    expect(risesOf({ endLength: 0.5, housingPath: 0.1 })).toEqual({ field: "shaft" });
  });
  test("without load there is no heat, and no rise", () =>
    expect(risesOf({ load: 0, endLength: 60, shaft: "hardened steel" })).toMatchObject({ least: 0, greatest: 0 }));
  test("friction is the duty's, or the grade's higher one, which is then a figure of it; without both it is asked for", () => {
    const ways = { housingPath: 0.1 };
    expect(risesOf(ways)).toMatchObject({ figures: ["frictionHigh", "conductivity"] });
    expect(risesOf({ ...ways, friction: 0.1 })).toMatchObject({
      least: expect.closeTo(heat / 2 / housed, 9) as number,
      figures: ["conductivity"],
    });
    const bare = { ...values, frictionHigh: undefined } as unknown as typeof values;
    expect(risesOf(ways, bare)).toEqual({ property: "frictionHigh" });
    expect(risesOf({ ...ways, friction: 0.1 }, bare)).toMatchObject({ figures: ["conductivity"] });
  });
  test("the working says which of its figures are the grade's", () => {
    const known = (more: FieldValues) =>
      pathWorking(values, on({ housingPath: 0.1, ...more }, turning).corners[0]!, "least").known;
    const properties = ({ μ, λb, d, Gh }: ReturnType<typeof known>) => [μ, λb, d, Gh].map((one) => one!.property);
    expect(properties(known({}))).toEqual(["frictionHigh", "conductivity", undefined, undefined]);
    expect(properties(known({ friction: 0.1 }))).toEqual([undefined, "conductivity", undefined, undefined]);
  });
});

describe("a flanged bush", () => {
  const flanged: FieldValues = {
    ...{ ...turning, part: "flanged", axialLoad: 300, flangeOutside: 30, flangeThickness: 1.5 },
    ...{ shaft: "hardened steel", housingPath: 0.1, endLength: 60 },
  };
  const nodes = flangedNodes(
    { ...bush, shaftconductivity: steel, flangeoutside: 30, flangethickness: 1.5, farend: 60, shoulderend: 60 },
    0.1,
  );
  const still: FieldValues = { axialLoad: 0, load: 60, time: 10 };

  test("whose flange bears in one step of several has the flange's way out in all of them", () => {
    const { surfaces } = pathRises(values, described({ ...flanged, time: 10 }, still).corners[0]!) as Rises;
    expect(surfaces).toEqual((pathRises(values, on({}, flanged).corners[0]!) as Rises).surfaces);
  });
  test("makes no heat on its flange in a step without axial load", () => {
    const { axialLoad: _, ...radial } = flanged;
    const duty = described({ ...radial, load: 6000, time: 10 }, { axialLoad: 1, load: 60, time: 10 });
    const { sleeve, flange } = (pathRises(values, duty.corners[0]!) as Rises).surfaces!;
    // the sleeve never cooler than by the ways that it has alone
    expect(sleeve.least).toBeCloseTo(Math.max((10 * heat) / (housed + alongShaft), sleeveRise(nodes, 10 * heat, 0)), 9);
    expect(flange.least).toBeCloseTo(flangeRise(nodes, 10 * heat, 0), 9);
  });
  test("without an exposed length still asks for the shaft, which joins sleeve and flange", () =>
    expect(pathRises(values, on({ endLength: undefined, shaft: undefined }, flanged).corners[0]!)).toEqual({
      field: "shaft",
    }));
  test("of one step is worked from its loads; over a cycle each surface's peak is one figure", () => {
    const known = (duty: ReturnType<typeof described>) => pathWorking(values, duty.corners[0]!, "least").known;
    expect(known(on({}, flanged))).toHaveProperty("W_r");
    for (const cycle of [
      described({ ...flanged, time: 10 }, still),
      on({ timeConstant: 8, runningTime: 2, restTime: 10 }, flanged),
    ]) {
      expect(known(cycle)).not.toHaveProperty("W_r");
      expect(known(cycle)).toHaveProperty("ΔT_s");
    }
  });
});
