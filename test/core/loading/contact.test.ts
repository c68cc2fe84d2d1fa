import { functions } from "../../../src/core";
import { depthOf, loadOf, meanLoadOf, summedLoadOf, tiltedDepthOf } from "../../../src/core/loading/conforming";
import { confinedStiffness, edgeStiffness } from "../../../src/core/loading/layer";
import { layerByElements } from "../../reference/solve/tiltedLayer";
import { call, CellError, message } from "../../support";

const bush = { load: 800, bore: 20, length: 15, wall: 1.5, clearance: 0.08, modulus: 2500, poisson: 0.4 };
const typed = (load: number, clearance: number) => [load, 20, 15, 1.5, clearance, 2500, 0.4];

describe("the conforming contact's functions", () => {
  test("turn round over all sizes of load", () => {
    for (let power = -14; power <= 14; power += 0.25)
      expect(loadOf(depthOf(10 ** power)) / 10 ** power).toBeCloseTo(1, 12);
    expect(depthOf(0)).toBe(0);
  });
  test("have no step where the series ends", () => {
    const step = (f: (x: number) => number, x: number, power: number) => f(x * (1 - 1e-9)) / f(x) - (1 - 1e-9) ** power;
    // the local powers are those of the curves themselves, a little below 1.5 and 2.5
    expect(Math.abs(step(loadOf, 0.001, 1.4994))).toBeLessThan(2e-11);
    expect(Math.abs(step(summedLoadOf, 0.01, 2.4954))).toBeLessThan(2e-11);
  });
  test("J is the integral of Λ", () => {
    for (const x of [1e-4, 0.005, 0.02, 1, 30]) {
      const n = 4000;
      let sum = 0;
      for (let i = 0; i < n; i++) sum += (loadOf(((i + 0.5) / n) * x) * x) / n;
      expect(summedLoadOf(x) / sum).toBeCloseTo(1, 6);
    }
  });
  test("a mean over any fall turns round, and falls smoothly into the load itself", () => {
    for (const load of [1e-6, 0.01, 1, 100])
      for (const span of [1e-12, 1e-7, 1e-3, 0.1, 10, 1000])
        expect(meanLoadOf(tiltedDepthOf(load, span), span) / load).toBeCloseTo(1, 11);
    for (const x of [1e-4, 0.1, 10])
      expect(meanLoadOf(x, 0.0500001 * x) / meanLoadOf(x, 0.0499999 * x)).toBeCloseTo(1, 6);
  });
});

describe("SHAFTSLOPE", () => {
  test("beyond the small slopes of the theory there is no answer", () => {
    // F·s²/(16·E·I) = F·(240²/16)/(206000·π·16⁴/64) rad = F·3.11249e-4°: 5° at 16064 N
    expect(call(functions.SHAFTSLOPE, ["central", 16060, 240, 16, 206000])[0]![0]).toBeCloseTo(4.9987, 3);
    expect(message(call(functions.SHAFTSLOPE, ["central", 20000, 240, 16, 206000]))).toBe(
      "load bends the shaft by 6.22°, at most 5° is small enough for the theory of beams",
    );
  });
  const shaft = { load: 900, span: 240, diameter: 16, modulus: 206000 };
  test("a load half way is a load offset by half of the span", () => {
    const [near, far] = functions.SHAFTSLOPE({ ...shaft, loadcase: "offset", position: 120 });
    const [central] = functions.SHAFTSLOPE({ ...shaft, loadcase: "central" });
    expect(near).toBeCloseTo(central, 12);
    expect(far).toBeCloseTo(central, 12);
  });
  test("what it needs and what it refuses", () => {
    expect(message(call(functions.SHAFTSLOPE, ["offset", 900, 240, 16, 206000]))).toBe(
      'position is missing: "offset" and "overhung" need it',
    );
    expect(message(call(functions.SHAFTSLOPE, ["offset", 900, 240, 16, 206000, 121]))).toBe(
      "position must be at most half of span: it counts from the nearer bush",
    );
    expect(message(call(functions.SHAFTSLOPE, ["central", 900, 240, 16, 206000, null, 16]))).toBe(
      "inner must be below diameter: a hollow shaft has a wall",
    );
    for (const loadcase of ["central", "uniform"])
      expect(message(call(functions.SHAFTSLOPE, [loadcase, 900, 240, 16, 206000, 60]))).toBe(
        `position must be blank with "${loadcase}", which says where the load stands`,
      );
    expect(message(call(functions.SHAFTSLOPE, ["askew", 900, 240, 16, 206000]))).toMatch(/^loadcase must be "central"/);
    expect(call(functions.SHAFTSLOPE, ["overhung", 900, 240, 16, 206000, 300])[0]![0]).toBeGreaterThan(0);
  });
});

describe("PEAKPRESSURE", () => {
  test("of a shaft that fits its bore is 4/π of the mean over all of its half", () => {
    const [peak, angle] = functions.PEAKPRESSURE({ ...bush, clearance: 0 });
    expect(peak).toBeCloseTo(((4 / Math.PI) * 800) / 300, 12);
    expect(angle).toBe(90);
    expect(functions.PEAKPRESSURE({ ...bush, clearance: 1e-9 })[0]).toBeCloseTo(peak!, 6);
  });
  test("of no load is none; of a light one in a wide bore that of a line contact", () => {
    expect(functions.PEAKPRESSURE({ ...bush, load: 0 })).toEqual([0, 0]);
    const hertz = Math.sqrt(((1 / 15) * 2500 * 0.5) / (Math.PI * 0.84)) / 10;
    expect(functions.PEAKPRESSURE({ ...bush, load: 1, clearance: 1 })[0]).toBeCloseTo(hertz, 12);
  });
});

describe("EDGEPRESSURE and MAXTILT", () => {
  const contactAt = (tilt: number, load = 800) => functions.EDGEPRESSURE({ ...bush, load, tilt })[3];
  test("say how the shaft lies", () => {
    expect(contactAt(0)).toBe("full length");
    expect(contactAt(0.01, 8000)).toBe("full length");
    expect(contactAt(0.2)).toBe("partly lifted");
    expect(contactAt(0.4)).toBe("both ends touch");
  });
  test("where both ends touch there is no number, and the free tilt lies a little below", () => {
    const row = call(functions.EDGEPRESSURE, [...typed(800, 0.08), 0.4])[0]!;
    for (const cell of row.slice(0, 3)) {
      expect((cell as CellError).code).toBe("#N/A");
      expect((cell as CellError).message).toMatch(/^tilt: the shaft touches both ends/);
    }
    const free = (Math.atan(0.08 / 15) * 180) / Math.PI;
    expect(contactAt(free)).toBe("partly lifted");
    expect(functions.EDGEPRESSURE({ ...bush, clearance: 0, load: 100, tilt: 0.3 })[3]).toBe("both ends touch");
  });
  test("no load presses nowhere; without a tilt the lower figure is the softer foundation", () => {
    expect(functions.EDGEPRESSURE({ ...bush, load: 0, tilt: 0.1 })).toEqual([0, 0, 0, "partly lifted"]);
    expect(functions.EDGEPRESSURE({ ...bush, load: 0, tilt: 0 })).toEqual([0, 0, 15, "full length"]);
    const [lower, upper] = functions.EDGEPRESSURE({ ...bush, tilt: 0 });
    expect(lower).toBeLessThan(upper as number);
  });
  test("the largest tilt is 0 where a true shaft already presses harder, and none where both ends touch first", () => {
    expect(functions.MAXTILT({ ...bush, load: 20000, pressure: 40 })).toBe(0);
    expect(functions.MAXTILT({ ...bush, load: 20000, clearance: 0, pressure: 40 })).toBe(0);
    const cells = call(functions.MAXTILT, [...typed(1, 0.08), 40]);
    expect((cells[0]![0] as CellError).code).toBe("#N/A");
    expect(message(cells)).toBe("pressure is not reached before the shaft touches both ends of the bush");
  });
  test("without clearance they turn each other round", () => {
    const at = { ...bush, clearance: 0, load: 6000 };
    const tilt = functions.MAXTILT({ ...at, pressure: 30 });
    const [, upper, length, contact] = functions.EDGEPRESSURE({ ...at, tilt });
    expect(upper).toBeCloseTo(30, 9);
    expect([length, contact]).toEqual([15, "full length"]);
  });
  test("an incompressible bush has no upper figure", () => {
    expect(message(call(functions.EDGEPRESSURE, [800, 20, 15, 1.5, 0.08, 2500, 0.5, 0.1]))).toBe(
      "poisson must be 0 or more and below 0.5, got 0.5",
    );
  });
});

describe("the workings of the rarer cases end in the answer", () => {
  const results = (id: string, ...given: unknown[]) =>
    call(functions.STEPS, [id, ...given])
      .filter(([text, , , result]) => typeof result === "number" && text !== "Fixed factor")
      .map((line) => line[3] as number);
  test("MAXTILT of a shaft that lies on the whole length, where EDGEPRESSURE leads", () => {
    const [, upper, , contact] = functions.EDGEPRESSURE({ ...bush, load: 6000, tilt: 0.02 });
    expect(contact).toBe("full length");
    expect(results("MAXTILT", ...typed(6000, 0.08), upper).at(-1)).toBeCloseTo(0.02, 9);
  });
  test.each([
    ["PEAKPRESSURE", functions.PEAKPRESSURE, typed(800, 0), 2],
    ["PEAKPRESSURE", functions.PEAKPRESSURE, typed(0, 0.08), 2],
    ["EDGEPRESSURE", functions.EDGEPRESSURE, [...typed(6000, 0), 0.02], 3],
    ["EDGEPRESSURE", functions.EDGEPRESSURE, [...typed(0, 0.08), 0.02], 3],
    ["EDGEPRESSURE", functions.EDGEPRESSURE, [...typed(6000, 0.08), 0], 3],
    ["EDGEPRESSURE", functions.EDGEPRESSURE, [...typed(6000, 0.08), 0.02], 3],
    ["MAXTILT", functions.MAXTILT, [...typed(6000, 0), 30], 1],
    ["MAXTILT", functions.MAXTILT, [...typed(20000, 0.08), 40], 1],
    ["MAXTILT", functions.MAXTILT, [...typed(1500, 0.05), 25], 1],
    ["MAXTILT", functions.MAXTILT, [...typed(800, 0.08), 20], 1],
  ] as const)("%s", (id, f, given, columns) => {
    const answer = call(f, given)[0]!.slice(0, columns) as number[];
    const shown = results(id, ...given).slice(-columns);
    answer.forEach((value, i) => expect(shown[i]).toBeCloseTo(value, 9));
  });
});

test("a clearance as wide as the bore leaves no shaft", () => {
  const inBore = (clearance: number) => [800, 20, 15, 1.5, clearance, 2500, 0.4];
  for (const [f, more] of [
    [functions.PEAKPRESSURE, []],
    [functions.EDGEPRESSURE, [0.1]],
    [functions.MAXTILT, [40]],
  ] as const) {
    expect(message(call(f, [...inBore(20), ...more]))).toBe(
      "clearance must be below bore, got 20 mm: no shaft is left",
    );
    expect(call(f, [...inBore(0.5), ...more])[0]![0]).not.toBeInstanceOf(CellError);
  }
});

/** Length over thickness, share of it in contact by the confined layer. */
const lies = [
  [6, 0.5],
  [6, 0.8],
  [15, 0.5],
] as const;
test.each([
  [0.3, [0.07, 0.27], [-0.05, 0.17]],
  [0.4, [0.26, 0.57], [-0.05, 0.17]],
  [0.45, [0.41, 1.1], [-0.14, 0.21]],
] as const)("EDGEPRESSURE's two layers at ν %d against elements of a layer with free ends", (poisson, upper, lower) => {
  for (const [length, share] of lies) {
    const flat = { load: 1, bore: 1, length, wall: 1, clearance: 0, modulus: 2500, poisson };
    const [confined, edge] = [confinedStiffness(flat), edgeStiffness(flat)];
    const slope = 0.002;
    // a flat face on a foundation: F = K·θ·ℓ²/2 and p = K·θ·ℓ
    const load = (confined * slope * (share * length) ** 2) / 2;
    const byElements = layerByElements({ length, modulus: 2500, poisson, load, slope });
    for (const [stiffness, [least, most]] of [
      [confined, upper],
      [edge, lower],
    ] as const) {
      const error = Math.sqrt(2 * stiffness * slope * load) / byElements - 1;
      expect(error).toBeGreaterThan(least);
      expect(error).toBeLessThan(most);
    }
  }
});
