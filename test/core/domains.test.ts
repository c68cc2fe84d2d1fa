import { catalogue } from "../../src/core";
import { boundsText, checkDomain, isInside, limitsOf } from "../../src/core/domain";
import { isNumberArg } from "../../src/core/formula";
import type { Arg, Formula } from "../../src/core/formula";

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
  LIFE: "wearrate > 0; pressure > 0; speed > 0; allowance > 0; from = bush; clearance >= 0",
  LIFEBAND: "pressure > 0; speed > 0; allowance > 0; clearance >= 0",
  LANDED: "price > 0; quantity > 0; tooling >= 0 = 0; volume >= 0; freight >= 0 = 0; duty >= 0 = 0",
  PRICEAT: "quantity > 0",
  RUNCOST: "landed > 0; life > 0; labour >= 0 = 0; downtime >= 0 = 0",
  QUOTES: "pressure >= 0; speed >= 0; motion = turning",
};

function domainOf(f: Formula): string {
  const told = Object.entries<Arg>(f.spec.args).flatMap(([name, arg]) => {
    const { above, from, below, to, default: preset } = arg as unknown as Partial<Record<string, number>>;
    const marks = { ">": above, ">=": from, "<": below, "<=": to, "=": preset };
    const parts = Object.entries(marks).flatMap(([mark, value]) => (value === undefined ? [] : [`${mark} ${value}`]));
    const isTold = isNumberArg(arg) || parts.length > 0;
    return isTold ? [[name, ...parts].join(" ")] : [];
  });
  return told.join("; ");
}

test("every function accepts what was agreed, and nothing else", () => {
  const found = Object.fromEntries(catalogue.map((f) => [f.spec.id, domainOf(f)]).filter(([, text]) => text));
  expect(found).toEqual(domains);
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
