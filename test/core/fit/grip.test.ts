import { closeIn, gripLeft, pressFit, pressIn, pushOut, runClearance, spinTorque } from "../../../src/core";
import { call, message } from "../../support";

describe("GRIPLEFT", () => {
  const joint = { interference: 0.05, outside: 23, kept: 0.6, mismatchhot: 0.0037, mismatchnow: 0 };
  test("by hand: 0.05 mm in steel, held 0.37 % hotter, 0.6 kept, is loose when cold again", () => {
    expect(gripLeft(joint)).toBeCloseTo(0.05 - 0.4 * (0.05 + 23 * 0.0037), 12);
    expect(gripLeft(joint)).toBeLessThan(0);
  });
  test("what keeps its modulus, or is loose while hot, loses nothing", () => {
    expect(gripLeft({ ...joint, kept: 1 })).toBe(0.05);
    expect(gripLeft({ ...joint, mismatchhot: -0.01 })).toBe(0.05);
  });
  test("a strain typed in per cent is refused", () => {
    expect(message(call(gripLeft, [0.05, 23, 0.6, 0.37, 0]))).toBe("mismatchhot must be from -0.2 to 0.2, got 0.37");
    expect(message(call(gripLeft, [0.05, 23, 60, 0.0037, 0]))).toBe("kept must be from 0 to 1, got 60");
    expect(call(gripLeft, [0.05, 23, "60 %", "0.37 %", 0])[0]![0]).toBeCloseTo(gripLeft(joint), 12);
  });
});

describe("PUSHOUT, SPINTORQUE and PRESSIN", () => {
  const grip = { pressure: 1.8, outside: 23, length: 15, friction: 0.2 };
  test("spinning is the push-out force at the radius; a load adds its own friction", () => {
    expect(spinTorque(grip)).toBeCloseTo((pushOut(grip) * 11.5) / 1000, 12);
    expect(spinTorque({ ...grip, load: 1000 }) - spinTorque(grip)).toBeCloseTo((0.2 * 1000 * 11.5) / 1000, 12);
  });
  test("pressing in takes the push-out force of the fresh joint and a per cent or two for the chamfer", () => {
    const force = pressIn({ ...grip, interference: 0.1 });
    expect(force / pushOut(grip) - 1).toBeGreaterThan(0.01);
    expect(force / pushOut(grip) - 1).toBeLessThan(0.02);
    expect(pressIn({ ...grip, interference: 0.1, chamfer: 30 })).toBe(force);
  });
  test("a chamfer of a right angle is none", () => {
    expect(message(call(pressIn, [1.8, 23, 15, 0.1, 0.2, 90]))).toMatch(/^chamfer must be above 0° and below 90°/);
  });
});

describe("PRESSFIT refuses an interference at which nothing is elastic", () => {
  const of = (interference: number) => call(pressFit, [20, 23, 40, interference, 2500, 0.4, 69000, 0.33]);
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
  expect(message(call(pressIn, [5, 23, 15, 5, 0.2]))).toBe(refusal);
  expect(message(call(gripLeft, [5, 23, 0.6, 0.0037, 0]))).toBe(refusal);
  expect(call(pressIn, [5, 23, 15, 2.3, 0.2])[0]![0]).toBeGreaterThan(0);
  expect(call(gripLeft, [2.3, 23, 0.6, 0.0037, 0])[0]![0]).toBeGreaterThan(0);
});

test("the examples of CLOSEIN, PRESSFIT and RUNCLEARANCE are of one bush", () => {
  const [bore, outside, housing, ...elastic] = closeIn.spec.example as number[];
  const [, , , interference, ...same] = pressFit.spec.example as number[];
  const running = runClearance.spec.example as number[];
  expect(pressFit.spec.example.slice(0, 3)).toEqual([bore, outside, housing]);
  expect(same).toEqual(elastic);
  expect(running.slice(1, 4)).toEqual([bore, outside, interference]);
  const ratio = call(closeIn, closeIn.spec.example)[0]![0] as number;
  expect(running[4]).toBeCloseTo(ratio, 3);
  const [, , change] = call(pressFit, pressFit.spec.example)[0] as number[];
  expect(-change! / interference!).toBeCloseTo(ratio, 12);
});
