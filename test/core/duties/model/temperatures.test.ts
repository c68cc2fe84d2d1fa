import misses from "../../../../data/misses.json";
import type { FieldValues } from "../../../../src/core/duties";
import { boreRise, boreSpan, riseUntold } from "../../../../src/core/duties/model/temperatures";
import type { Values } from "../../../../src/core/grades/model";
import { wallConductance } from "../../../../src/core/heat/paths";
import { full, on, resting, sleeve } from "../support";

const duty = (more: FieldValues = {}) => on(more).corners[0]!;
/** 2 MPa at 0.05 m/s, PV 0.1; at the PV limit the bore is at the highest temperature, so that the rise is the share of (T_max − 23). */
const half = (highestTemperature: number): Values => ({ ...full, pvLimit: 0.2, highestTemperature });

describe("the rise of the bore", () => {
  const given: FieldValues = { wall: 1.5, housingPath: 0.1, friction: 0.2 };
  const values: Values = { ...half(90), conductivity: 0.25 };
  /** 0.2·600 N·0.05 m/s over wall and housing. */
  const byPaths = (housing: number) =>
    0.2 *
    600 *
    0.05 *
    (1 / wallConductance({ bore: 20, length: 15, wall: 1.5, bushconductivity: 0.25, contact: 0.5 }) + 1 / housing);

  test("is what the PV limit implies, half of the 67 K from 23 to 90 °C", () => {
    expect(boreRise(half(90), duty())).toBeCloseTo(33.5, 12);
    expect(boreSpan(half(90), duty())).toEqual({ low: 23, high: expect.closeTo(56.5, 12) as number });
  });
  test("is that by the ways out where they give more, and never less than implied", () => {
    expect(byPaths(0.1)).toBeGreaterThan(67);
    expect(boreRise(values, duty(given))).toBeCloseTo(byPaths(0.1), 9);
    const light = { ...given, friction: 0.01 };
    expect(byPaths(0.1) / 20).toBeLessThan(33.5);
    expect(boreRise(values, duty(light))).toBeCloseTo(33.5, 12);
  });
  test("with the housing unknown is the upper end, as far as the grade bears it", () => {
    // hardly a way out along the shaft: 67 K are left up to 90 °C
    const shaft: FieldValues = { wall: 1.5, endLength: 5, shaft: "hardened steel", friction: 0.03 };
    expect(boreRise(values, duty(shaft))).toBeCloseTo(67, 9);
  });
  test("without the limits that imply it names the one that is missing, whatever ways out there are", () => {
    for (const more of [{}, given]) {
      expect(boreRise({ ...values, pvLimit: undefined }, duty(more))).toBe("pvLimit");
      expect(boreRise({ ...values, highestTemperature: undefined }, duty(more))).toBe("highestTemperature");
    }
  });
  test("is not implied by a grade for no more than the 23 °C at which its PV limit is stated", () =>
    expect(boreRise(half(23), duty())).toBe("highestTemperature"));
  test("of a bush at rest is nothing: its bore has the temperatures of the surroundings", () =>
    expect(boreSpan({}, on({}, resting).corners[0]!)).toEqual({ low: 23, high: 23 }));
});

describe("how much warmer than its PV implies a bore may be", () => {
  const { at90, at150, at250 } = misses.boreLowBy;
  test.each([
    ["half way from 23 °C, where nothing is missed, to the 90 °C that were measured", 56.5, at90 / 2],
    ["at 90 °C as measured", 90, at90],
    ["half way to 150 °C between the two", 120, (at90 + at150) / 2],
    ["half way from 150 to 250 °C between the two", 200, (at150 + at250) / 2],
    ["at 250 °C as measured", 250, at250],
    ["hotter than was measured as between the last two points", 300, at250 + (at250 - at150) / 2],
  ])("%s", (_, highest, expected) => expect(riseUntold(half(highest), duty())).toBeCloseTo(expected, 9));

  test("no more than as much again, and not beyond the highest temperature", () => {
    // PV 0.002: 1 % of the way from 23 to 90 °C; PV 0.198: 99 %
    const rise = (stroke: number) =>
      riseUntold(half(90), on({ stroke: (sleeve.stroke! as number) * stroke }).corners[0]!);
    expect(rise(0.02)).toBeCloseTo(0.67, 9);
    expect(rise(1.98)).toBeCloseTo(0.67, 9);
  });
  test("nothing at rest, nor where no rise is implied", () => {
    expect(riseUntold({}, on({}, resting).corners[0]!)).toBe(0);
    expect(riseUntold({}, duty())).toBe(0);
    expect(riseUntold({ highestTemperature: 90 }, duty())).toBe(0);
  });
});
