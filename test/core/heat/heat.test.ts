import fc from "fast-check";
import { functions } from "../../../src/core";
import { shaftConductance, wallConductance } from "../../../src/core/heat/paths";
import { fromWorking } from "../../../src/core/units/scale";
import { answer } from "../../../src/edge/sheet";
import { seed } from "../../laws/check";
import { host } from "../../support";

const message = (f: Parameters<typeof answer>[0], given: unknown[]) =>
  (answer(f, given, host)[0]![0] as { message: string }).message;

const bush = {
  ...{ bore: 20, length: 15, wall: 1.5, friction: 0.2 },
  ...{ bushconductivity: 0.25, shaftconductivity: 45, endlength: 60 },
};
const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("TORQUE", () => {
  test("by hand: 0.2 · 800 N at a radius of 10 mm is 1.6 N·m", () => {
    expect(functions.TORQUE({ load: 800, bore: 20, friction: 0.2 })).toBeCloseTo(1.6, 12);
  });
  test("doubles with the load, and gives the power of HEAT at the speed of the bore", () => {
    fc.assert(
      fc.property(
        positive(1, 1e5),
        positive(1, 500),
        positive(0.01, 1),
        positive(1, 3000),
        (load, bore, friction, rpm) => {
          const torque = functions.TORQUE({ load, bore, friction });
          expect(functions.TORQUE({ load: 2 * load, bore, friction }) / torque).toBeCloseTo(2, 12);
          const power = torque * ((2 * Math.PI * rpm) / 60);
          const speed = (Math.PI * bore * rpm) / 60000;
          expect(functions.HEAT({ load, speed, friction }) / power).toBeCloseTo(1, 10);
        },
      ),
      { seed },
    );
  });
  test("a range in, a range out; blanks stay blank and a fault stays in its row", () => {
    expect(answer(functions.TORQUE, [[[800], [null], [-1], ["180 lbf"]], 20, 0.2], host)).toEqual([
      [expect.closeTo(1.6, 12)],
      [""],
      [{ code: "#VALUE!", message: "load must be 0 N or more, got -1" }],
      [expect.closeTo(180 * 4.4482216152605 * 0.002, 12)],
    ]);
  });
  test("inch: lbf and in give lbf·in", () => {
    expect(answer(functions.TORQUE, [180, 0.75, 0.2, "inch"], host)[0]![0]).toBeCloseTo((0.2 * 180 * 0.75) / 2, 10);
  });
  test("friction must be a number", () => {
    expect(message(functions.TORQUE, [800, 20, "slippery"])).toMatch(/^friction must be a number/);
  });
});

describe("WASHERTORQUE", () => {
  const washer = { load: 500, inner: 21, outer: 40, friction: 0.2 };
  test("a new washer takes more torque than a worn one, and new is the default", () => {
    const worn = functions.WASHERTORQUE({ ...washer, wearstate: "worn" });
    expect(worn).toBeCloseTo((0.2 * 500 * (40 + 21)) / 4 / 1000, 12);
    expect(functions.WASHERTORQUE(washer)).toBeGreaterThan(worn);
    expect(functions.WASHERTORQUE(washer)).toBe(functions.WASHERTORQUE({ ...washer, wearstate: "new" }));
  });
  test("a narrow ring: both states approach force at the mean radius", () => {
    for (const wearstate of ["new", "worn"] as const)
      expect(functions.WASHERTORQUE({ ...washer, inner: 39.999999, wearstate })).toBeCloseTo(
        (0.2 * 500 * 20) / 1000,
        7,
      );
  });
  test("wrong inputs", () => {
    expect(message(functions.WASHERTORQUE, [500, 40, 21, 0.2])).toBe(
      "outer must be above inner: the face of a washer is a ring",
    );
    expect(message(functions.WASHERTORQUE, [500, 21, 40, 0.2, "old"])).toBe(
      'wearstate must be "new" or "worn", got "old"',
    );
  });
});

describe("RUNTEMP and HEATPV", () => {
  const paths = fc.record({
    bore: positive(2, 200),
    length: positive(2, 200),
    wall: positive(0.1, 20),
    friction: positive(0.01, 0.6),
    bushconductivity: positive(0.1, 60),
    shaftconductivity: positive(1, 400),
    endlength: positive(1, 1000),
    ends: fc.constantFrom(1, 2),
    film: positive(1, 100),
    contact: positive(0.1, 1),
    housingpath: fc.option(positive(0.01, 10), { nil: undefined }),
  });
  const numbers = (row: readonly unknown[]) => row as [number, number];
  test("are inverse to each other: at the PV of HEATPV the bush runs at ambient plus the rise", () => {
    fc.assert(
      fc.property(paths, positive(1, 150), positive(-40, 80), positive(0.01, 5), (at, rise, ambient, speed) => {
        const [least, greatest] = functions.HEATPV({ ...at, rise });
        const loadOf = (pv: number) => (pv / speed) * at.bore * at.length;
        const hot = numbers(functions.RUNTEMP({ ...at, load: loadOf(least!), speed, ambient }))[1];
        const cool = numbers(functions.RUNTEMP({ ...at, load: loadOf(greatest!), speed, ambient }))[0];
        expect(hot).toBeCloseTo(ambient + rise, 8);
        expect(cool).toBeCloseTo(ambient + rise, 8);
      }),
      { seed },
    );
  });
  test("a housing of any conductance lies between the least and the greatest of an unknown one", () => {
    fc.assert(
      fc.property(paths, positive(0.001, 1000), (at, housingpath) => {
        const duty = { ...at, load: 500, speed: 0.1, ambient: 25 };
        const [least, greatest] = numbers(functions.RUNTEMP({ ...duty, housingpath: undefined }));
        const [known, same] = numbers(functions.RUNTEMP({ ...duty, housingpath }));
        expect(same).toBe(known);
        expect(known).toBeGreaterThanOrEqual(least - 1e-9);
        expect(known).toBeLessThanOrEqual(greatest + 1e-9);
      }),
      { seed },
    );
  });
  const duty = { ...bush, load: 800, speed: 0.1, ambient: 25 };
  const at = (more: object) => numbers(functions.RUNTEMP({ ...duty, ...more }));
  test("no motion, no rise; twice the friction, twice the rise", () => {
    expect(at({ speed: 0 })).toEqual([25, 25]);
    for (const end of [0, 1] as const) expect(at({ friction: 0.4 })[end] - 25).toBeCloseTo(2 * (at({})[end] - 25), 10);
  });
  test("more ways out for the heat make it run cooler", () => {
    expect(at({ ends: 1 })).toEqual(at({}));
    const cooler = (a: object, b: object, end: 0 | 1 = 0) => expect(at(a)[end]).toBeLessThan(at(b)[end]);
    for (const end of [0, 1] as const) {
      cooler({ ends: 2 }, { ends: 1 }, end);
      cooler({ endlength: 120 }, { endlength: 60 }, end);
      cooler({ film: 25 }, { film: 10 }, end);
      cooler({ shaftconductivity: 160 }, {}, end);
    }
    cooler({ ends: 1 }, { ends: 0 });
    cooler({ wall: 1 }, { wall: 2 });
    cooler({ bushconductivity: 1 }, {});
    cooler({ contact: 1 }, {});
    cooler({ housingpath: 0.2 }, { housingpath: 0.1 }, 1);
  });
  test("without shaft ends the wall alone carries the heat, whatever the shaft; without a housing nothing does", () => {
    const rise = (0.2 * 800 * 0.1) / ((0.5 * 2 * Math.PI * 0.25 * 0.015) / Math.log(23 / 20));
    for (const none of [{ ends: 0 }, { endlength: 0 }]) {
      const [least, greatest] = functions.RUNTEMP({ ...duty, ...none });
      expect(least).toBeCloseTo(25 + rise, 9);
      expect(functions.RUNTEMP({ ...duty, ...none, shaftconductivity: 400 })[0]).toBe(least);
      expect(greatest).toMatchObject({
        code: "missing",
        message: "no shaft end and no housingpath: how warm it becomes at most is not known",
      });
      expect(functions.HEATPV({ ...bush, rise: 40, ...none })[0]).toBe(0);
    }
    expect(answer(functions.RUNTEMP, [800, 20, 15, 1.5, 0.1, 0.2, 25, 0.25, 45, 0], host)[0]![1]).toMatchObject({
      code: "#N/A",
    });
    const [known, same] = at({ ends: 0, housingpath: 0.05 });
    expect(known).toBe(same);
    expect(known).toBeCloseTo(25 + rise + (0.2 * 800 * 0.1) / 0.05, 9);
  });
  test("the contact fraction scales the wall's conductance", () => {
    expect(wallConductance({ ...bush, contact: 1 })).toBeCloseTo(2 * wallConductance({ ...bush, contact: 0.5 }), 12);
    expect(at({ contact: 0.5 })).toEqual(at({}));
  });
  test("a long end is a fin without end, a short one its surface times the film", () => {
    const end = { bore: 20, length: 0, shaftconductivity: 45, ends: 1, film: 10 };
    const endless = Math.sqrt(10 * Math.PI * 0.02 * 45 * (Math.PI / 4) * 0.02 ** 2);
    expect(shaftConductance({ ...end, endlength: 1e5 })).toBeCloseTo(endless, 12);
    const surface = 10 * Math.PI * 0.02 * 0.001;
    expect(shaftConductance({ ...end, endlength: 1 }) / surface).toBeCloseTo(1, 4);
  });
  test("half an end is no end", () => {
    const end = { bore: 20, length: 15, shaftconductivity: 45, endlength: 60, film: 10 };
    expect(() => shaftConductance({ ...end, ends: 0.5 })).toThrow("ends must be 0, 1 or 2, got 0.5");
    expect(message(functions.RUNTEMP, [800, 20, 15, 1.5, 0.1, 0.2, 25, 0.25, 45, 60, 3])).toBe(
      "ends must be from 0 to 2, got 3",
    );
  });
  test("inch inputs of the same bush give the same temperature", () => {
    const inch = (kind: Parameters<typeof fromWorking>[0], value: number) => fromWorking(kind, value, "inch");
    const metric = answer(
      functions.RUNTEMP,
      [800, 20, 15, 1.5, 0.1, 0.2, 25, 0.25, 45, 60, 2, null, 12],
      host,
    )[0] as number[];
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
      inch("length", 60),
      2,
      null,
      inch("film", 12),
      null,
      "inch",
    ];
    const found = answer(functions.RUNTEMP, given, host)[0] as number[];
    metric.forEach((temperature, i) => expect(found[i]).toBeCloseTo(temperature * 1.8 + 32, 9));
    const rise = answer(functions.HEATPV, [20, 15, 1.5, 40, 0.2, 0.25, 45, 60], host)[0]![0] as number;
    const typed = ["20 mm", "15 mm", "1.5 mm", 72, 0.2, "0.25 W/(m*K)", "45 W/(m*K)", "60 mm"];
    expect(answer(functions.HEATPV, [...typed, null, null, null, null, "inch"], host)[0]![0]).toBeCloseTo(
      fromWorking("pv", rise, "inch"),
      6,
    );
  });
  test("a column of speeds: two temperatures each, with the blank row empty and the cell error passed on", () => {
    const speeds = [[0.05], [""], ["#DIV/0!"], [0]];
    const rows = answer(functions.RUNTEMP, [800, 20, 15, 1.5, speeds, 0.2, 25, 0.25, 45, 60], host);
    expect(rows).toHaveLength(4);
    expect(rows[1]).toEqual(["", ""]);
    expect(rows[2]![0]).toEqual({ code: "#DIV/0!", message: undefined });
    expect(rows[3]).toEqual([25, 25]);
  });
  test("its text says what it is, and by how much it errs", () => {
    for (const words of ["preliminary", "steady state", "housing at ambient", "0.5 %", "5 % above"])
      expect(functions.RUNTEMP.spec.text).toContain(words);
  });
  test("wrong inputs", () => {
    expect(message(functions.HEATPV, [20, 15, 1.5, 0, 0.2, 0.25, 45, 60])).toBe("rise must be above 0 K, got 0");
    expect(message(functions.HEATPV, [20, 15, -1, 40, 0.2, 0.25, 45, 60])).toBe("wall must be above 0 mm, got -1");
    expect(message(functions.RUNTEMP, [800, 20, 15, 1.5, 0.1, 0.2, -300, 0.25, 45, 60])).toBe(
      "ambient must be -273.15 °C or more, got -300",
    );
  });
});

describe("a highest temperature that is not above the one at which the PV limit holds", () => {
  test.each(["DERATEDPV", "BORETEMP"] as const)("is refused by %s", (name) => {
    const given = (highest: number) => (name === "DERATEDPV" ? [0.12, highest, 20, 23] : [0.05, 0.12, highest, 20, 23]);
    const told = /highest must be above reference, the temperature at which the PV limit holds/;
    for (const highest of [22, 23]) expect(message(functions[name], given(highest))).toMatch(told);
    expect(answer(functions[name], given(23.5), host)[0]![0]).toEqual(expect.any(Number));
  });
});
