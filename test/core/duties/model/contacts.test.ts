import type { FieldValues } from "../../../../src/core/duties";
import { onSlopeOf, slopeWorking, tilted } from "../../../../src/core/duties/model/contacts";
import { findMetal } from "../../../../src/core/fit/metals";
import { readZone } from "../../../../src/core/fit/zones/zone";
import type { Values } from "../../../../src/core/grades/model";
import { finding, full, on, resting } from "../support";

const elastic: Values = { ...full, expansion: 1e-4, expansionStep: 0, compressiveModulus: 2000, poisson: 0.4 };
const zone = (text: string) => readZone(text, "metric", "zone");
/** 600 N on a bush pressed into its housing, on a shaft over two such bushes. */
const spanned = (more: FieldValues) =>
  on(
    {
      ...{ wall: 1.5, boreZone: zone("E10"), shaftZone: zone("f7"), outsideZone: zone("+0.05/+0.10") },
      ...{ housingZone: zone("H7"), housing: "aluminium alloy", housingOutside: 40, shaft: "hardened steel" },
      ...{ span: 300, spanDiameter: 12, ...more },
    },
    resting,
  );
const corner = (more: FieldValues) => spanned(more).corners[0]!;
const tiltOf = (more: FieldValues) => tilted(elastic, corner(more))!;

/** F·l²/(16·E·π·d⁴/64) of a solid shaft with F half way, in degrees. */
const bend = (load: number) =>
  ((load * 300 ** 2) / ((16 * findMetal("shaft", "hardened steel").modulus * Math.PI * 12 ** 4) / 64)) *
  (180 / Math.PI);

test("two bushes of 600 N bend a solid shaft by what 1200 N half way do; a stated slope adds to it", () => {
  expect(tiltOf({}).slope / bend(1200)).toBeCloseTo(1, 12);
  expect(tiltOf({ slope: 0.25 }).slope - 0.25).toBeCloseTo(bend(1200), 12);
  const judged: number[] = [];
  onSlopeOf(elastic, corner({}), 600, (_, slope) => {
    judged.push(slope);
    return { word: "fits", figures: [] };
  });
  expect(judged).toEqual([tiltOf({}).slope]);
});

test("the impact factor multiplies the load of the contact, and with it the bend", () => {
  const { layers, slope } = tiltOf({ impactFactor: 1.5 });
  expect([layers.least.load, layers.greatest.load].map((load) => load / 600)).toEqual([1.5, 1.5]);
  expect(slope / bend(1800)).toBeCloseTo(1, 12);
});

test.each(["spanDiameter", "shaft"] as const)(
  "a span without %s has no slope to judge: the field is asked for",
  (field) => {
    const bare = { ...spanned({}).values, [field]: undefined };
    // the fit asks for the shaft's metal already
    for (const id of ["edgePressure", "tilt"])
      expect(finding(id, elastic, on({}, bare))).toMatchObject({ word: "no data", field });
    expect(tilted(elastic, on({}, bare).corners[0]!)).toBeUndefined();
  },
);

test("a shaft that bends beyond small slopes, or a fit that is not known, has no tilt to work with", () => {
  // four times 1.8° at a diameter of 12/√2 mm
  expect(bend(1200) * 4).toBeGreaterThan(5);
  expect(tilted(elastic, corner({ spanDiameter: 12 / Math.SQRT2 }))).toBeUndefined();
  expect(tilted({ ...elastic, poisson: undefined }, corner({}))).toBeUndefined();
});

test("a bush that keeps its volume is reckoned as one that nearly does, which alone has a stiffness", () => {
  const { layers } = tilted({ ...elastic, poisson: 0.5 }, corner({}))!;
  expect([layers.least.poisson, layers.greatest.poisson]).toEqual([0.499, 0.499]);
  expect(tiltOf({}).layers.least.poisson).toBe(0.4);
});

test("a working of a span without a stated slope begins at a slope of 0", () => {
  expect(slopeWorking(corner({}), bend(1200)).known.φ_0!.value.value).toBe(0);
  expect(slopeWorking(corner({ slope: 0.25 }), 0.25 + bend(1200)).known.φ_0!.value.value).toBe(0.25);
});
