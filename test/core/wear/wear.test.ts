import fc from "fast-check";
import { functions } from "../../../src/core";
import { fromWorking } from "../../../src/core/units/scale";
import { answer } from "../../../src/edge/sheet";
import { host, call } from "../../support";
import { seed } from "../../laws/check";

const message = (f: Parameters<typeof answer>[0], given: unknown[]) =>
  (answer(f, given, host)[0]![0] as { message: string }).message;
const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const duty = fc.record({
  wearrate: positive(1e-9, 1e-3),
  pressure: positive(0.01, 100),
  speed: positive(1e-4, 10),
  allowance: positive(0.001, 5),
});

describe("WEAR and LIFE", () => {
  test("by hand: 2e-6 mm³/(N·m) at 2.5 MPa over 400 km is 2 mm", () => {
    expect(functions.WEAR({ wearrate: 2e-6, pressure: 2.5, distance: 400 })).toBeCloseTo(2, 12);
  });
  test("the wear over a whole LIFE is the allowance", () => {
    fc.assert(
      fc.property(duty, (d) => {
        const distance = (functions.LIFE(d) * 3600 * d.speed) / 1000;
        expect(functions.WEAR({ ...d, distance }) / d.allowance).toBeCloseTo(1, 10);
      }),
      { seed },
    );
  });
  test("life halves where pressure, speed or wear rate doubles, and doubles with the allowance", () => {
    fc.assert(
      fc.property(duty, (d) => {
        const life = functions.LIFE(d);
        for (const name of ["pressure", "speed", "wearrate"] as const)
          expect(functions.LIFE({ ...d, [name]: 2 * d[name] }) / life).toBeCloseTo(0.5, 12);
        expect(functions.LIFE({ ...d, allowance: 2 * d.allowance }) / life).toBeCloseTo(2, 12);
      }),
      { seed },
    );
  });
  test("nothing slides or nothing presses: no wear, and no finite life", () => {
    expect(functions.WEAR({ wearrate: 2e-6, pressure: 0, distance: 400 })).toBe(0);
    expect(message(functions.LIFE, [2e-6, 0, 0.1, 0.5])).toBe("pressure must be above 0 MPa, got 0");
    expect(message(functions.LIFE, [2e-6, 2, 0, 0.5])).toBe("speed must be above 0 m/s, got 0");
    expect(message(functions.LIFE, [0, 2, 0.1, 0.5])).toMatch(/^wearrate must be above 0 mm³/);
    expect(message(functions.LIFE, [2e-6, 2, 0.1, null])).toBe("allowance is missing");
  });
  test("inch inputs of the same duty give the same wear and life", () => {
    const inch = (kind: Parameters<typeof fromWorking>[0], value: number) => fromWorking(kind, value, "inch");
    const wear = answer(
      functions.WEAR,
      [inch("wearRate", 2e-6), inch("pressure", 2.5), inch("distance", 400), null, null, "inch"],
      host,
    );
    expect(wear[0]![0]).toBeCloseTo(2 / 25.4, 12);
    const given = [
      inch("wearRate", 2e-6),
      inch("pressure", 2.5),
      inch("speed", 0.1),
      inch("length", 0.5),
      null,
      null,
      "inch",
    ];
    expect(answer(functions.LIFE, given, host)[0]![0]).toBeCloseTo(
      functions.LIFE({ wearrate: 2e-6, pressure: 2.5, speed: 0.1, allowance: 0.5 }),
      8,
    );
  });
  test("text with units, a blank row and a fault in a column", () => {
    const pressures = [["2.5 MPa"], [""], ["about two"], ["2,500,000 Pa"]];
    expect(answer(functions.WEAR, [2e-6, pressures, "400 km"], host)).toEqual([
      [expect.closeTo(2, 12)],
      [""],
      [{ code: "#VALUE!", message: expect.stringMatching(/^pressure must be a number/) as string }],
      [expect.closeTo(2, 12)],
    ]);
  });
  test("a rate from flat tests: the bore wears deeper and lives shorter, and needs the clearance", () => {
    const worn = { wearrate: 2e-6, pressure: 2.5, distance: 20 };
    expect(functions.WEAR({ ...worn, clearance: 0.08 })).toBeCloseTo(0.1, 12);
    expect(functions.WEAR({ ...worn, from: "flat", clearance: 0 })).toBeCloseTo((4 / Math.PI) * 0.1, 12);
    expect(functions.WEAR({ ...worn, from: "flat", clearance: 0.08 })).toBeCloseTo(0.137821, 6);
    expect(functions.WEAR({ ...worn, pressure: 0, from: "flat", clearance: 0.08 })).toBe(0);
    expect(message(functions.WEAR, [2e-6, 2.5, 20, "flat"])).toBe(
      "clearance is missing: a wear rate from flat tests needs it",
    );
    expect(message(functions.LIFE, [2e-6, 2.5, 0.1, 0.2, "flat"])).toMatch(/^clearance is missing/);
    expect(message(functions.LIFE, [2e-6, 2.5, 0.1, 0.2, "pin"])).toBe('from must be "bush" or "flat", got "pin"');
  });
  test("the working of a shaft that fits its bore, and of one that wears nothing, ends in the answer", () => {
    const last = (...given: unknown[]) => {
      const lines = call(functions.STEPS, given).filter(
        (line) => typeof line[3] === "number" && line[0] !== "Fixed factor",
      );
      return lines.at(-1)![3];
    };
    expect(last("WEAR", 2e-6, 2.5, 20, "flat", 0)).toBeCloseTo((4 / Math.PI) * 0.1, 12);
    expect(last("WEAR", 2e-6, 0, 20, "flat", 0.08)).toBe(0);
    expect(last("LIFE", 2e-6, 2.5, 0.1, 0.2, "flat", 0)).toBeCloseTo(((Math.PI / 4) * 0.2) / (5e-7 * 3600), 9);
  });
});

describe("WEARRATE", () => {
  test("is the rate times its factors, each 1 unless given", () => {
    expect(functions.WEARRATE({ base: 3e-6 })).toBe(3e-6);
    expect(
      functions.WEARRATE({ base: 3e-6, geometry: 2, heat: 0.5, temperature: 3, counterface: 0.5, finish: 4 }),
    ).toBeCloseTo(18e-6, 18);
    expect(message(functions.WEARRATE, [3e-6, 0])).toBe("geometry must be above 0, got 0");
  });
});
