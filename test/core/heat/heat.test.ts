import fc from "fast-check";
import { frictionHeat, heatPv, runTemperature, sleeveTorque, washerTorque } from "../../../src/core";
import { shaftConductance, wallConductance } from "../../../src/core/heat/paths";
import { fromWorking } from "../../../src/core/units";
import { answer } from "../../../src/edge/sheet";

const host = { error: (code: string, message?: string) => ({ code, message }) };
const message = (f: Parameters<typeof answer>[0], given: unknown[]) =>
  (answer(f, given, host)[0]![0] as { message: string }).message;

const bush = { bore: 20, length: 15, wall: 1.5, friction: 0.2, bushconductivity: 0.25, shaftconductivity: 45 };
const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("TORQUE", () => {
  test("by hand: 0.2 · 800 N at a radius of 10 mm is 1.6 N·m", () => {
    expect(sleeveTorque({ load: 800, bore: 20, friction: 0.2 })).toBeCloseTo(1.6, 12);
  });
  test("doubles with the load, and gives the power of HEAT at the speed of the bore", () => {
    fc.assert(
      fc.property(
        positive(1, 1e5),
        positive(1, 500),
        positive(0.01, 1),
        positive(1, 3000),
        (load, bore, friction, rpm) => {
          const torque = sleeveTorque({ load, bore, friction });
          expect(sleeveTorque({ load: 2 * load, bore, friction }) / torque).toBeCloseTo(2, 12);
          const power = torque * ((2 * Math.PI * rpm) / 60);
          const speed = (Math.PI * bore * rpm) / 60000;
          expect(frictionHeat({ load, speed, friction }) / power).toBeCloseTo(1, 10);
        },
      ),
    );
  });
  test("a range in, a range out; blanks stay blank and a fault stays in its row", () => {
    expect(answer(sleeveTorque, [[[800], [null], [-1], ["180 lbf"]], 20, 0.2], host)).toEqual([
      [expect.closeTo(1.6, 12)],
      [""],
      [{ code: "#VALUE!", message: "load must be 0 N or more, got -1" }],
      [expect.closeTo(180 * 4.4482216152605 * 0.002, 12)],
    ]);
  });
  test("inch: lbf and in give lbf·in", () => {
    expect(answer(sleeveTorque, [180, 0.75, 0.2, "inch"], host)[0]![0]).toBeCloseTo((0.2 * 180 * 0.75) / 2, 10);
  });
  test("friction must be a number", () => {
    expect(message(sleeveTorque, [800, 20, "slippery"])).toMatch(/^friction must be a number/);
  });
});

describe("WASHERTORQUE", () => {
  const washer = { load: 500, inner: 21, outer: 40, friction: 0.2 };
  test("a new washer takes more torque than a worn one, and new is the default", () => {
    const worn = washerTorque({ ...washer, wearstate: "worn" });
    expect(worn).toBeCloseTo((0.2 * 500 * (40 + 21)) / 4 / 1000, 12);
    expect(washerTorque(washer)).toBeGreaterThan(worn);
    expect(washerTorque(washer)).toBe(washerTorque({ ...washer, wearstate: "new" }));
  });
  test("a narrow ring: both states approach force at the mean radius", () => {
    for (const wearstate of ["new", "worn"] as const)
      expect(washerTorque({ ...washer, inner: 39.999999, wearstate })).toBeCloseTo((0.2 * 500 * 20) / 1000, 7);
  });
  test("wrong inputs", () => {
    expect(message(washerTorque, [500, 40, 21, 0.2])).toBe("outer must be above inner: the face of a washer is a ring");
    expect(message(washerTorque, [500, 21, 40, 0.2, "old"])).toBe('wearstate must be "new" or "worn", got "old"');
  });
});

describe("RUNTEMP and HEATPV", () => {
  test("are inverse to each other: at the PV of HEATPV the bush runs at ambient plus the rise", () => {
    fc.assert(
      fc.property(
        fc.record({
          bore: positive(2, 200),
          length: positive(2, 200),
          wall: positive(0.1, 20),
          friction: positive(0.01, 0.6),
          bushconductivity: positive(0.1, 60),
          shaftconductivity: positive(1, 400),
          ends: fc.constantFrom(0, 1, 2),
          film: positive(1, 100),
        }),
        positive(1, 150),
        positive(-40, 80),
        positive(0.01, 5),
        (paths, rise, ambient, speed) => {
          const load = (heatPv({ ...paths, rise }) / speed) * paths.bore * paths.length;
          expect(runTemperature({ ...paths, load, speed, ambient })).toBeCloseTo(ambient + rise, 8);
        },
      ),
    );
  });
  test("no motion, no rise; twice the friction, twice the rise", () => {
    const duty = { ...bush, load: 800, speed: 0.1, ambient: 25 };
    expect(runTemperature({ ...duty, speed: 0 })).toBe(25);
    expect(runTemperature({ ...duty, friction: 0.4 }) - 25).toBeCloseTo(2 * (runTemperature(duty) - 25), 10);
  });
  test("more ways out for the heat make it run cooler", () => {
    const at = (more: object) => runTemperature({ ...bush, load: 800, speed: 0.1, ambient: 25, ...more });
    expect(at({ ends: 1 })).toBe(at({}));
    expect(at({ ends: 2 })).toBeLessThan(at({ ends: 1 }));
    expect(at({ ends: 1 })).toBeLessThan(at({ ends: 0 }));
    expect(at({ film: 25 })).toBeLessThan(at({ film: 10 }));
    expect(at({ wall: 1 })).toBeLessThan(at({ wall: 2 }));
    expect(at({ bushconductivity: 1 })).toBeLessThan(at({}));
  });
  test("without shaft ends the wall alone carries the heat, whatever the shaft", () => {
    const duty = { ...bush, load: 800, speed: 0.1, ambient: 25, ends: 0 };
    const rise = (0.2 * 800 * 0.1) / ((0.5 * 2 * Math.PI * 0.25 * 0.015) / Math.log(23 / 20));
    expect(runTemperature(duty)).toBeCloseTo(25 + rise, 9);
    expect(runTemperature({ ...duty, shaftconductivity: 400 })).toBe(runTemperature(duty));
  });
  test("the contact fraction scales the wall's conductance; half is the default", () => {
    expect(wallConductance({ ...bush, contact: 1 })).toBeCloseTo(2 * wallConductance(bush), 12);
  });
  test("half an end is no end", () => {
    expect(() => shaftConductance({ ...bush, ends: 0.5, film: 10 })).toThrow("ends must be 0, 1 or 2, got 0.5");
    expect(message(runTemperature, [800, 20, 15, 1.5, 0.1, 0.2, 25, 0.25, 45, 3])).toBe(
      "ends must be from 0 to 2, got 3",
    );
  });
  test("inch inputs of the same bush give the same temperature", () => {
    const inch = (kind: Parameters<typeof fromWorking>[0], value: number) => fromWorking(kind, value, "inch");
    const metric = answer(runTemperature, [800, 20, 15, 1.5, 0.1, 0.2, 25, 0.25, 45, 2, 12], host)[0]![0] as number;
    const given = [
      inch("force", 800),
      inch("length", 20),
      inch("length", 15),
      inch("length", 1.5),
      inch("speed", 0.1),
      0.2,
      inch("temperature", 25),
      inch("conductivity", 0.25),
      inch("conductivity", 45),
      2,
      inch("film", 12),
      "inch",
    ];
    expect(answer(runTemperature, given, host)[0]![0]).toBeCloseTo(metric * 1.8 + 32, 9);
    const rise = answer(heatPv, [20, 15, 1.5, 40, 0.2, 0.25, 45], host)[0]![0] as number;
    expect(
      answer(
        heatPv,
        ["20 mm", "15 mm", "1.5 mm", 72, 0.2, "0.25 W/(m*K)", "45 W/(m*K)", null, null, "inch"],
        host,
      )[0]![0],
    ).toBeCloseTo(fromWorking("pv", rise, "inch"), 6);
  });
  test("speeds down, ambients across: a grid, with the blank row empty and the cell error passed on", () => {
    const speeds = [[0.05], [""], ["#DIV/0!"]];
    const grid = answer(runTemperature, [800, 20, 15, 1.5, speeds, 0.2, [[0, 25]], 0.25, 45], host);
    expect(grid).toHaveLength(3);
    expect((grid[0]![1] as number) - (grid[0]![0] as number)).toBeCloseTo(25, 10);
    expect(grid[2]![0]).toEqual({ code: "#DIV/0!", message: undefined });
  });
  test("its text says what the model leaves out", () => {
    for (const words of ["preliminary", "steady state", "housing at ambient", "no air film"])
      expect(runTemperature.spec.text).toContain(words);
  });
  test("wrong inputs", () => {
    expect(message(heatPv, [20, 15, 1.5, 0, 0.2, 0.25, 45])).toBe("rise must be above 0 K, got 0");
    expect(message(heatPv, [20, 15, -1, 40, 0.2, 0.25, 45])).toBe("wall must be above 0 mm, got -1");
    expect(message(runTemperature, [800, 20, 15, 1.5, 0.1, 0.2, -300, 0.25, 45])).toBe(
      "ambient must be -273.15 °C or more, got -300",
    );
  });
});
