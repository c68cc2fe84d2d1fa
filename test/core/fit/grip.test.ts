import { functions } from "../../../src/core";
import { call, message } from "../../support";

describe("GRIPLEFT", () => {
  const joint = { interference: 0.05, outside: 23, kept: 0.6, mismatchhot: 0.0037, mismatchnow: 0 };
  test("by hand: 0.05 mm in steel, held 0.37 % hotter, 0.6 kept, is loose when cold again", () => {
    expect(functions.GRIPLEFT(joint)).toBeCloseTo(0.05 - 0.4 * (0.05 + 23 * 0.0037), 12);
    expect(functions.GRIPLEFT(joint)).toBeLessThan(0);
  });
  test("what keeps its modulus, or is loose while hot, loses nothing", () => {
    expect(functions.GRIPLEFT({ ...joint, kept: 1 })).toBe(0.05);
    expect(functions.GRIPLEFT({ ...joint, mismatchhot: -0.01 })).toBe(0.05);
  });
  test("a strain typed in per cent is refused", () => {
    expect(message(call(functions.GRIPLEFT, [0.05, 23, 0.6, 0.37, 0]))).toBe(
      "mismatchhot must be from -0.2 to 0.2, got 0.37",
    );
    expect(message(call(functions.GRIPLEFT, [0.05, 23, 60, 0.0037, 0]))).toBe("kept must be from 0 to 1, got 60");
    expect(call(functions.GRIPLEFT, [0.05, 23, "60 %", "0.37 %", 0])[0]![0]).toBeCloseTo(functions.GRIPLEFT(joint), 12);
  });
});

describe("PUSHOUT, SPINTORQUE and PRESSIN", () => {
  const grip = { pressure: 1.8, outside: 23, length: 15, friction: 0.2 };
  test("spinning is the push-out force at the radius; a load adds its own friction", () => {
    expect(functions.SPINTORQUE(grip)).toBeCloseTo((functions.PUSHOUT(grip) * 11.5) / 1000, 12);
    expect(functions.SPINTORQUE({ ...grip, load: 1000 }) - functions.SPINTORQUE(grip)).toBeCloseTo(
      (0.2 * 1000 * 11.5) / 1000,
      12,
    );
  });
  test("pressing in takes the push-out force of the fresh joint and a per cent or two for the chamfer", () => {
    const force = functions.PRESSIN({ ...grip, interference: 0.1 });
    expect(force / functions.PUSHOUT(grip) - 1).toBeGreaterThan(0.01);
    expect(force / functions.PUSHOUT(grip) - 1).toBeLessThan(0.02);
    expect(functions.PRESSIN({ ...grip, interference: 0.1, chamfer: 30 })).toBe(force);
  });
  test("a chamfer of a right angle is none", () => {
    expect(message(call(functions.PRESSIN, [1.8, 23, 15, 0.1, 0.2, 90]))).toMatch(
      /^chamfer must be above 0° and below 90°/,
    );
  });
});

describe("PRESSFIT refuses an interference at which nothing is elastic", () => {
  const of = (interference: number) => call(functions.PRESSFIT, [20, 23, 40, interference, 2500, 0.4, 69000, 0.33]);
  test("a tenth of the outside is the limit", () => {
    expect(of(2.3)[0]).toHaveLength(3);
    expect(message(of(5))).toBe(
      "interference over outside must be at most 0.1, got 0.217: no bush stays elastic so far",
    );
    expect(message(of(2.31))).toMatch(/^interference over outside must be at most 0.1/);
  });
});

test("PRESSIN and GRIPLEFT refuse it too", () => {
  const refusal = "interference over outside must be at most 0.1, got 0.217: no bush stays elastic so far";
  expect(message(call(functions.PRESSIN, [5, 23, 15, 5, 0.2]))).toBe(refusal);
  expect(message(call(functions.GRIPLEFT, [5, 23, 0.6, 0.0037, 0]))).toBe(refusal);
  expect(call(functions.PRESSIN, [5, 23, 15, 2.3, 0.2])[0]![0]).toBeGreaterThan(0);
  expect(call(functions.GRIPLEFT, [2.3, 23, 0.6, 0.0037, 0])[0]![0]).toBeGreaterThan(0);
});

test("the examples of CLOSEIN, PRESSFIT and RUNCLEARANCE are of one bush", () => {
  const [bore, outside, housing, ...elastic] = functions.CLOSEIN.spec.example as number[];
  const [, , , interference, ...same] = functions.PRESSFIT.spec.example as number[];
  const running = functions.RUNCLEARANCE.spec.example as number[];
  expect(functions.PRESSFIT.spec.example.slice(0, 3)).toEqual([bore, outside, housing]);
  expect(same).toEqual(elastic);
  expect(running.slice(1, 4)).toEqual([bore, outside, interference]);
  const ratio = call(functions.CLOSEIN, functions.CLOSEIN.spec.example)[0]![0] as number;
  expect(running[4]).toBeCloseTo(ratio, 3);
  const [, , change] = call(functions.PRESSFIT, functions.PRESSFIT.spec.example)[0] as number[];
  expect(-change! / interference!).toBeCloseTo(ratio, 12);
});
