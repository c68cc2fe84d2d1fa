import { catalogue } from "../../src/core";
import { boundsText, checkDomain, isInside, limitsOf } from "../../src/core/domain";
import { isNumberArg } from "../../src/core/formula";
import type { Arg, Formula } from "../../src/core/formula";
import { field, fieldKeys } from "../../src/core/duties";
import type { FieldKey } from "../../src/core/duties";
import { properties } from "../../src/core/grades/model";
import type { Property } from "../../src/core/grades/model";

/**
 * What each function accepts and what it takes where an argument is left out, in working units, read by a person against the
 * physics: lengths that divide are above zero, loads and speeds may be zero, a life needs wear. A change here changes sheets.
 */
const domains: Readonly<Record<string, string>> = {
  PRESSURE: "load >= 0; bore > 0; length > 0",
  WASHERPRESSURE: "load >= 0; inner >= 0; outer > 0",
  SPEED: "bore > 0; rpm >= 0",
  SWINGSPEED: "bore > 0; swing >= 0; cycles >= 0",
  STROKESPEED: "stroke >= 0; cycles >= 0",
  WASHERSPEED: "inner >= 0; outer > 0; rpm >= 0",
  PVVALUE: "pressure >= 0; speed >= 0",
  DUTYPV: "pressures >= 0; speeds >= 0; times >= 0; timeconstant > 0",
  FLANGEDBUSH: "radial >= 0; axial >= 0; bore > 0; length > 0; inner > 0; outer > 0; rpm >= 0; friction >= 0 <= 2",
  SHAFTSLOPE: "load >= 0; span > 0; diameter > 0; modulus > 0; position > 0; inner >= 0 = 0",
  PEAKPRESSURE: "load >= 0; bore > 0; length > 0; wall > 0; clearance >= 0; modulus > 0; poisson >= 0 < 0.5",
  EDGEPRESSURE:
    "load >= 0; bore > 0; length > 0; wall > 0; clearance >= 0; modulus > 0; poisson >= 0 < 0.5; tilt >= 0 <= 45",
  MAXTILT: "load > 0; bore > 0; length > 0; wall > 0; clearance >= 0; modulus > 0; poisson >= 0 < 0.5; pressure > 0",
  USE: "pressure >= 0; speed >= 0; motion = turning",
  VERDICT: "pressure >= 0; speed >= 0; motion = turning",
  CHECKS: "pressure >= 0; speed >= 0; motion = turning",
  SHORTLIST: "pressure >= 0; speed >= 0; motion = turning; wet = dry",
  MINLENGTH: "load >= 0; bore > 0; speed >= 0",
  MAXLOAD: "bore > 0; length > 0; speed >= 0",
  MAXRPM: "load >= 0; bore > 0; length > 0",
  CAUTIONS: "pressure >= 0; speed >= 0; motion = turning; wet = dry; shock = steady",
  TORQUE: "load >= 0; bore > 0; friction >= 0 <= 2",
  WASHERTORQUE: "load >= 0; inner >= 0; outer > 0; friction >= 0 <= 2; wearstate = new",
  HEAT: "load >= 0; speed >= 0; friction >= 0 <= 2",
  RUNTEMP:
    "load >= 0; bore > 0; length > 0; wall > 0; speed >= 0; friction >= 0 <= 2; ambient; bushconductivity > 0; shaftconductivity > 0; endlength >= 0; ends >= 0 <= 2 = 1; housingpath > 0; film > 0 = 10; contact > 0 <= 1 = 0.5",
  HEATPV:
    "bore > 0; length > 0; wall > 0; rise > 0; friction > 0 <= 2; bushconductivity > 0; shaftconductivity > 0; endlength >= 0; ends >= 0 <= 2 = 1; housingpath > 0; film > 0 = 10; contact > 0 <= 1 = 0.5",
  HOUSINGPATH: "outside > 0; thickness > 0; conductivity > 0; film > 0 = 10",
  CONTACTSHARE: "clearance >= 0; wall > 0; conductivity > 0",
  DERATEDPV: "pvlimit > 0; highest; ambient; reference = 23; exponent >= 1 <= 2 = 1",
  BORETEMP: "pv >= 0; pvlimit > 0; highest; ambient; reference = 23; exponent >= 1 <= 2 = 1",
  PEAKRISE: "rises >= 0; times >= 0; timeconstant > 0",
  DEVIATION: "size > 0",
  LIMITS: "size > 0",
  CLOSEIN:
    "bore > 0; outside > 0; housing > 0; bushmodulus > 0; bushpoisson >= 0 <= 0.5; housingmodulus > 0; housingpoisson >= 0 <= 0.5",
  PRESSFIT:
    "bore > 0; outside > 0; housing > 0; interference >= 0; bushmodulus > 0; bushpoisson >= 0 <= 0.5; housingmodulus > 0; housingpoisson >= 0 <= 0.5",
  CLEARANCE: "boreleast > 0; boregreatest > 0; shaftleast > 0; shaftgreatest > 0",
  RUNCLEARANCE:
    "clearance; bore > 0; outside > 0; interference; closein >= 0; temperature; bushexpansion <= 0.001; housingexpansion <= 0.001; shaftexpansion <= 0.001; swelling >= -0.1 <= 0.1 = 0; reference = 20",
  GRIPLEFT: "interference >= 0; outside > 0; kept >= 0 <= 1; mismatchhot >= -0.2 <= 0.2; mismatchnow >= -0.2 <= 0.2",
  PUSHOUT: "pressure >= 0; outside > 0; length > 0; friction >= 0 <= 2",
  SPINTORQUE: "pressure >= 0; outside > 0; length > 0; friction >= 0 <= 2; load >= 0 = 0",
  PRESSIN: "pressure >= 0; outside > 0; length > 0; interference >= 0; friction >= 0 <= 2; chamfer > 0 < 90 = 30",
  FITOF: "size > 0 <= 500",
  FREETILT: "clearance >= 0; length > 0",
  WEARRATE: "base >= 0; geometry > 0 = 1; heat > 0 = 1; temperature > 0 = 1; counterface > 0 = 1; finish > 0 = 1",
  WEAR: "wearrate >= 0; pressure >= 0; distance >= 0; from = bush; clearance >= 0",
  RUNNINGIN: "wearrate >= 0; pressure >= 0; distance >= 0; depth >= 0; over > 0",
  WORNPEAK: "pressure >= 0; sinking > 0; clearance > 0",
  BEDDING: "wearrate > 0; pressure > 0; length > 0; tilt > 0 <= 45; distance > 0",
  LIFE: "wearrate > 0; pressure > 0; speed > 0; allowance > 0; from = bush; clearance >= 0",
  LIFEBAND: "pressure > 0; speed > 0; allowance > 0; clearance >= 0",
  LANDED: "price > 0; quantity > 0; tooling >= 0 = 0; volume >= 0; freight >= 0 = 0; duty >= 0 = 0",
  PRICEAT: "quantity > 0",
  RUNCOST: "landed > 0; life > 0; labour >= 0 = 0; downtime >= 0 = 0",
};

/** The same of a grade's figures: refused outside of the first bounds, and not to be found in the library outside of the second. */
const ofProperties: Readonly<Record<string, string>> = {
  staticPressure: "> 0 <= 1000 plausibly 1 to 500",
  runningPressure: "> 0 <= 1000 plausibly 1 to 500",
  speedTurning: "> 0 <= 50 plausibly 0.05 to 20",
  speedSwinging: "> 0 <= 50 plausibly 0.05 to 20",
  speedLinear: "> 0 <= 50 plausibly 0.05 to 20",
  pvLimit: "> 0 <= 50 plausibly 0.01 to 3",
  lowestTemperature: ">= -273.15 <= 100 plausibly -200 to 0",
  meltingPoint: ">= -50 <= 600 plausibly 100 to 400",
  highestTemperature: ">= -50 <= 500 plausibly 50 to 320",
  shortTermTemperature: ">= -50 <= 600 plausibly 60 to 400",
  pressureCurve: "> 0 <= 1000",
  pvCurve: ">= 0 <= 50",
  frictionLow: "> 0 <= 2 plausibly 0.02 to 0.5",
  frictionHigh: "> 0 <= 2 plausibly 0.05 to 0.8",
  wearLow: "> 0 <= 0.01 plausibly 1e-8 to 0.001",
  wearHigh: "> 0 <= 0.01 plausibly 1e-8 to 0.001",
  compressiveStrength: "> 0 <= 1000 plausibly 3 to 450",
  compressiveModulus: "> 0 <= 200000 plausibly 200 to 30000",
  poisson: ">= 0 <= 0.5 plausibly 0.25 to 0.49",
  expansion: "> 0 <= 0.0005 plausibly 0.00001 to 0.0004",
  expansionStep: ">= 0 <= 0.02 plausibly 0 to 0.01",
  conductivity: "> 0 <= 500 plausibly 0.1 to 2",
  glassTransition: ">= -200 <= 500 plausibly -150 to 300",
  water50: ">= 0 <= 0.5 plausibly 0 to 0.05",
  waterSaturated: ">= 0 <= 0.5 plausibly 0 to 0.12",
  swelling50: ">= 0 <= 0.1 plausibly 0 to 0.015",
  swellingSaturated: ">= 0 <= 0.1 plausibly 0 to 0.04",
  density: "> 0.1 <= 25 plausibly 0.85 to 4",
  shaftHardness: "> 0 <= 800 plausibly 50 to 700",
};
/** And of a duty's fields. */
const ofFields: Readonly<Record<string, string>> = {
  part: "= sleeve",
  load: ">= 0",
  axialLoad: ">= 0 0 is blank",
  staticLoad: ">= 0 0 is blank",
  impactFactor: ">= 1 <= 100 = 1",
  designFactor: ">= 1 <= 100 = 1",
  loadTurns: "= no",
  bore: "> 0",
  length: "> 0",
  wall: "> 0",
  outside: "> 0",
  flangeOutside: "> 0",
  flangeThickness: "> 0",
  inner: ">= 0",
  outer: "> 0",
  rpm: ">= 0",
  swing: ">= 0",
  stroke: ">= 0",
  cycles: ">= 0",
  friction: "> 0 <= 2",
  time: "> 0",
  runningTime: "> 0",
  restTime: "> 0",
  timeConstant: "> 0",
  moisture: "= dry",
  dirt: "= none",
  vacuum: "= no",
  damping: "= no",
  hardness: "> 0 <= 1000",
  roughness: "> 0 <= 100",
  slope: ">= 0 < 10 0 is blank",
  span: "> 0",
  spanDiameter: "> 0",
  endLength: ">= 0 0 is blank",
  housingOutside: "> 0",
  housingPath: "> 0",
  zoneHolds: "= pressed",
  keptGrip: "> 0 <= 1",
  leastClearance: ">= 0 0 is blank",
  heldAtEnds: "= no",
  hours: "> 0",
  allowance: "> 0",
  geometryFactor: "> 0 <= 100 = 1",
  heatFactor: "> 0 <= 100 = 1",
  temperatureFactor: "> 0 <= 100 = 1",
  counterfaceFactor: "> 0 <= 100 = 1",
  finishFactor: "> 0 <= 100 = 1",
  piecesAYear: "> 0",
  labour: ">= 0",
  downtime: ">= 0",
};

function partsOf(entry: object): string[] {
  const { above, from, below, to, default: preset } = entry as Partial<Record<string, number>>;
  const marks = { ">": above, ">=": from, "<": below, "<=": to, "=": preset };
  return Object.entries(marks).flatMap(([mark, value]) => (value === undefined ? [] : [`${mark} ${value}`]));
}

function domainOf(f: Formula): string {
  const told = Object.entries<Arg>(f.spec.args).flatMap(([name, arg]) => {
    const parts = partsOf(arg);
    const isTold = isNumberArg(arg) || parts.length > 0;
    return isTold ? [[name, ...parts].join(" ")] : [];
  });
  return told.join("; ");
}

test("every function accepts what was agreed, and nothing else", () => {
  const found = Object.fromEntries(catalogue.map((f) => [f.spec.id, domainOf(f)]).filter(([, text]) => text));
  expect(found).toEqual(domains);
});

test("every figure of a grade and every field of a duty accepts what was agreed, and nothing else", () => {
  const listed = <T>(list: readonly T[], keyOf: (one: T) => string, told: (one: T) => string) =>
    Object.fromEntries(list.map((one) => [keyOf(one), told(one)]).filter(([, text]) => text));
  const plausible = (p: Property) =>
    "plausible" in p && p.plausible ? [`plausibly ${p.plausible[0]} to ${p.plausible[1]}`] : [];
  expect(
    listed(
      properties,
      ({ key }) => key,
      (p) => [...partsOf(p), ...plausible(p)].join(" "),
    ),
  ).toEqual(ofProperties);
  const isBlank = (key: FieldKey) => ("blankZero" in field(key) ? ["0 is blank"] : []);
  expect(
    listed(
      fieldKeys,
      (key) => key,
      (key) => [...partsOf(field(key)), ...isBlank(key)].join(" "),
    ),
  ).toEqual(ofFields);
});

describe("bounds", () => {
  const hair = 1e-12;
  test("above and below leave the bound out, from and to take it in", () => {
    expect([0, hair].map((x) => isInside({ kind: "length", above: 0 }, x))).toEqual([false, true]);
    expect([-hair, 0].map((x) => isInside({ kind: "length", from: 0 }, x))).toEqual([false, true]);
    expect([1, 1 - hair].map((x) => isInside({ kind: "ratio", below: 1 }, x))).toEqual([false, true]);
    expect([1 + hair, 1].map((x) => isInside({ kind: "ratio", to: 1 }, x))).toEqual([false, true]);
  });
  test("a temperature may not be below 0 K, every other number may be any finite one", () => {
    expect([-273.15, -273.16].map((x) => isInside({ kind: "temperature" }, x))).toEqual([true, false]);
    for (const x of [-Number.MAX_VALUE, Number.MAX_VALUE]) expect(isInside({ kind: "rise" }, x)).toBe(true);
    for (const x of [NaN, Infinity, -Infinity]) expect(isInside({ kind: "rise" }, x)).toBe(false);
    expect(limitsOf({ kind: "rise", above: 1, below: 2 })).toEqual({
      least: 1,
      most: 2,
      withLeast: false,
      withMost: false,
    });
  });
  test("a percentage is a ratio of at most 1, unless told otherwise", () => {
    expect([1, 1 + hair].map((x) => isInside({ kind: "percent" }, x))).toEqual([true, false]);
    expect([0.1, 0.1 + hair].map((x) => isInside({ kind: "percent", to: 0.1 }, x))).toEqual([true, false]);
    expect([1, 1 - hair].map((x) => isInside({ kind: "percent", below: 1 }, x))).toEqual([false, true]);
  });
  test("a percentage typed in per cent is refused, and what to type is said where that would do", () => {
    const refused = (value: number, found: unknown) => {
      try {
        checkDomain("swelling", { kind: "percent", from: 0, to: 0.1 }, value, "metric", found);
        return undefined;
      } catch (error) {
        return (error as Error).message;
      }
    };
    expect(refused(0.1, 0.1)).toBeUndefined();
    expect(refused(4, 4)).toBe("swelling must be from 0 % to 10 %, got 4: type 4 %");
    expect(refused(4, "4")).toBe('swelling must be from 0 % to 10 %, got "4": type 4 %');
    for (const [value, found] of [
      [4, "400 %"],
      [0.4, "40 %"],
      [40, 40],
      [-4, -4],
    ])
      expect(refused(value as number, found)).toMatch(/^swelling must be from 0 % to 10 %, got [^:]*$/);
  });
  test("are told in the sheet's units", () => {
    expect(boundsText({ kind: "length", above: 25.4 }, "inch")).toBe("above 1 in");
    expect(boundsText({ kind: "ratio", from: 0, to: 0.5 }, "metric")).toBe("from 0 to 0.5");
    expect(boundsText({ kind: "angle", from: 0 }, "metric")).toBe("0° or more");
    expect(boundsText({ kind: "percent", above: 0, below: 1 }, "metric")).toBe("above 0 % and below 100 %");
    expect(boundsText({ kind: "percent", from: 0 }, "inch")).toBe("from 0 % to 100 %");
    expect(boundsText({ kind: "percent", above: 0 }, "metric")).toBe("above 0 % and at most 100 %");
    expect(boundsText({ kind: "percent" }, "metric")).toBe("at most 100 %");
    expect(boundsText({ kind: "percent", from: -0.1, to: 0.07 }, "metric")).toBe("from -10 % to 7 %");
    expect(boundsText({ kind: "length", above: 0, to: 500 }, "metric")).toBe("above 0 mm and at most 500 mm");
    expect(boundsText({ kind: "temperature" }, "metric")).toBe("-273.15 °C or more");
    expect(boundsText({ kind: "temperature", above: 0 }, "metric")).toBe("above 0 °C");
    expect(boundsText({ kind: "temperature", to: 90 }, "metric")).toBe("from -273.15 °C to 90 °C");
    expect(boundsText({ kind: "ratio" }, "metric")).toBe("");
  });
});
