import {
  sleevePressure,
  strokeSpeed,
  swingSpeed,
  turningSpeed,
  washerPressure,
  washerSpeed,
  dutyPv,
} from "../../src/core";
import { pressureSpeed } from "../../src/core";
import { call } from "../support";

/**
 * Budynas and Nisbett, Shigley's Mechanical Engineering Design, chapter on lubrication and journal bearings, section
 * on boundary-lubricated bearings (memory): P = F/(D L) in psi with inches and pounds, V = π D N/12 in ft/min with
 * inches and rev/min. The numbers below are worked with the printed formulas, not with ours.
 */
describe("a boundary-lubricated sleeve in inch units", () => {
  const [force, diameter, length, rpm] = [700, 1.5, 1.5, 80];
  test("pressure in psi", () => {
    expect(call(sleevePressure, [force, diameter, length], "inch")[0]![0]).toBeCloseTo(force / (diameter * length), 9);
  });
  test("sliding speed in ft/min", () => {
    expect(call(turningSpeed, [diameter, rpm], "inch")[0]![0]).toBeCloseTo((Math.PI * diameter * rpm) / 12, 9);
  });
  test("PV in psi·ft/min equals F·N·π/(12·L), the diameter drops out", () => {
    const p = call(sleevePressure, [force, diameter, length], "inch")[0]![0];
    const v = call(turningSpeed, [diameter, rpm], "inch")[0]![0];
    expect(call(pressureSpeed, [p, v], "inch")[0]![0]).toBeCloseTo((Math.PI * force * rpm) / (12 * length), 7);
  });
});

/** The same quantities by another road: the shaft's surface point followed in small steps of time. */
describe("mean sliding speed from the motion itself", () => {
  const meanSpeed = (position: (t: number) => number, period: number): number => {
    const steps = 200_000;
    let travel = 0;
    for (let i = 0; i < steps; i++)
      travel += Math.abs(position(((i + 1) / steps) * period) - position((i / steps) * period));
    return travel / period / 1000;
  };
  test("a sinusoidal swing of φ from end to end", () => {
    const [bore, swing, cycles] = [20, 90, 30];
    const radius = bore / 2;
    const amplitude = (swing / 2) * (Math.PI / 180);
    const period = 60 / cycles;
    const mean = meanSpeed((t) => radius * amplitude * Math.sin((2 * Math.PI * t) / period), period);
    expect(swingSpeed({ bore, swing, cycles })).toBeCloseTo(mean, 6);
  });
  test("a linear stroke", () => {
    const [stroke, cycles] = [400, 6];
    const period = 60 / cycles;
    const mean = meanSpeed((t) => (stroke / 2) * Math.cos((2 * Math.PI * t) / period), period);
    expect(strokeSpeed({ stroke, cycles })).toBeCloseTo(mean, 6);
  });
  test("a turning shaft", () => {
    expect(turningSpeed({ bore: 20, rpm: 120 })).toBeCloseTo(
      meanSpeed((t) => 10 * 4 * Math.PI * t, 0.5),
      9,
    );
  });
});

describe("thrust washers", () => {
  test("pressure: the ring's area summed from thin rings", () => {
    const [inner, outer, load] = [21, 40, 500];
    const rings = 100_000;
    const width = (outer - inner) / 2 / rings;
    let area = 0;
    for (let i = 0; i < rings; i++) area += 2 * Math.PI * (inner / 2 + (i + 0.5) * width) * width;
    expect(washerPressure({ load, inner, outer })).toBeCloseTo(load / area, 9);
  });
  test("speed: the mean over the radius of the speed of each ring", () => {
    const [inner, outer, rpm] = [21, 40, 120];
    const rings = 1000;
    let sum = 0;
    for (let i = 0; i < rings; i++) {
      const radius = inner / 2 + ((i + 0.5) / rings) * ((outer - inner) / 2);
      sum += (2 * Math.PI * radius * rpm) / 60_000;
    }
    expect(washerSpeed({ inner, outer, rpm })).toBeCloseTo(sum / rings, 9);
  });
});

test("the mean PV of a spectrum is the work of friction over the whole cycle, at a friction of 1", () => {
  const steps = [
    { p: 2, v: 0.1, t: 10 },
    { p: 4, v: 0.05, t: 5 },
    { p: 1, v: 0, t: 15 },
  ];
  const dt = 0.001;
  let work = 0;
  let time = 0;
  for (const { p, v, t } of steps)
    for (let clock = dt / 2; clock < t; clock += dt) {
      work += p * v * dt;
      time += dt;
    }
  const spectrum = {
    pressures: steps.map((s) => s.p),
    speeds: steps.map((s) => s.v),
    times: steps.map((s) => s.t),
  };
  expect(dutyPv(spectrum)).toBeCloseTo(work / time, 6);
});
