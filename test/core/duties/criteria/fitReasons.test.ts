import { functions } from "../../../../src/core";
import { Band } from "../../../../src/core/band";
import { readZone } from "../../../../src/core/fit/zones/zone";
import type { FieldValues } from "../../../../src/core/duties";
import type { Values } from "../../../../src/core/grades/model";
import { call, pressedBush } from "../../../support";
import { between, finding, full, line, on, resting, said } from "../support";

/** What clearance, grip, tilt and the pressures of a fit say, and beside what they find. */
const values: Values = { ...full, expansion: 8.5e-5, expansionStep: 0, compressiveModulus: 2500, poisson: 0.4 };
/** The compliances of bush and aluminium (Lamé) and the close-in of the bore per interference, as in fitTable.test.ts. */
const compliance = { housing: (1 + 0.33) / 69000, bush: (929 / 129 - 0.4) / 2500 };
const squeeze = 920 / (2500 * 129);
const kappa = squeeze / (compliance.housing + compliance.bush);

const zone = (text: string) => readZone(text, "metric", "zone");
/** A bore of 20 and an outside of 23 mm without tolerances; by how much shaft and outside differ from it, mm. */
const fit = (shaft: number, outside: number, more: FieldValues = {}): FieldValues => ({
  ...{ wall: 1.5, housing: "aluminium alloy", shaft: "soft steel", length: 20 },
  ...{ boreZone: zone("0/0"), shaftZone: zone(`${shaft}/${shaft}`) },
  ...{ outsideZone: zone(`${outside}/${outside}`), housingZone: zone("0/0") },
  ...{ assemblyMoisture: "dry", keptGrip: 1, ...between(20), ...more },
});
const still = (...given: Parameters<typeof fit>) => on(fit(...given), resting);
const notesOf = (id: string, duty: ReturnType<typeof still>) => {
  const check = finding(id, values, duty);
  return check.notes!("metric", check);
};

describe("clearance", () => {
  test.each([
    [-0.02346, 0.03, "fails, clearance 0.0235 mm when assembly, 0.03 mm wanted"],
    [0.01234, 0, "fails, clearance -0.0123 mm when assembly: the shaft binds"],
    [0, 0, "fails, clearance 0 mm when assembly: the shaft binds"],
    [-1.5, 2, "fails, clearance 1.5 mm when assembly, 2 mm wanted"],
  ])("of a shaft %d mm off the bore where %d mm is wanted: %s", (shaft, leastClearance, text) =>
    expect(said("clearance", values, still(shaft, -0.0625, { leastClearance }))).toBe(text),
  );

  test("what nothing kept of an untold press fit may leave of it is told where that misses what is wanted", () => {
    const at = (leastClearance: number) =>
      still(-0.5, 0.1, { keptGrip: undefined, assemblyMoisture: undefined, leastClearance });
    // pressed in humid, the bore was wider by κ·0.1 before and dries by 0.3 %; the set is all of the 0.1 mm, so that k/cb·0.1 stays
    const loose = (20 + kappa * 0.1) * 0.997 - (squeeze / compliance.bush) * 0.1 - 19.5;
    expect(loose).toBeLessThan(0.45);
    // pressed in dry 0.5 + κ·0.1 − k/cb·0.1 = 0.4993 mm are left: enough
    expect(notesOf("clearance", at(0.45))).toEqual([
      "least when assembly",
      `${Number(loose.toPrecision(3))} mm with nothing of the press fit kept`,
    ]);
    expect(notesOf("clearance", at(0.3))).toEqual(["least when assembly"]);
  });

  test("a wall that grows more through its thickness is told with three digits", () => {
    // hot at 80 °C: bush 60·8.5e-5, steel shaft 60·11.7e-6, 23·60·(8.5e-5 − 23.6e-6) more interference
    const hot = (20 + kappa * 0.1) * 1.0051 - kappa * (0.1 + 23 * 60 * (8.5e-5 - 23.6e-6)) - 19.5 * (1 + 60 * 11.7e-6);
    // two walls of 1.5 mm, 2.8 times 60·8.5e-5 more
    const thick = hot - 3 * 2.8 * 0.0051;
    const notes = notesOf("clearance", still(-0.5, 0.1, { ...between(20, 80), leastClearance: 0.48 }));
    expect(notes[1]).toMatch(`${Number(thick.toPrecision(3))} mm when hot where its wall grows 3.8 times as much`);
  });
});

describe("grip", () => {
  test.each([
    [{}, "fails, grip: loose in the housing by 0.0123 mm", -0.01234],
    // dried by 0.3 % of 23 mm: 0.05666 − 0.069
    [{ assemblyMoisture: "humid" }, "fails, grip lost when cold, dried, by 0.0123 mm", 0.05666],
    [{ assemblyMoisture: undefined }, "care, grip: moisture at assembly not told", 0.2],
    // dried 0.131 of 0.2 mm are left: q = 0.345, cb/((ch + cb)/q − ch) = 0.343
    [
      { keptGrip: undefined, assemblyMoisture: undefined },
      "care, grip: lost where less than 34 % of the press fit is kept",
      0.2,
    ],
  ])("%j: %s", (more, text, outside) =>
    expect(said("grip", values, still(-0.5, outside, more as FieldValues))).toBe(text),
  );

  test("without the compressive strength nothing says whether the bush is crushed", () => {
    const { compressiveStrength: _, ...unknown } = values;
    expect(finding("grip", unknown, still(-0.5, 0.1))).toMatchObject({
      word: "no data",
      property: "compressiveStrength",
      value: expect.closeTo(0.1, 12) as number,
    });
  });

  test("a share kept that would lose the grip were it 1.9 times too high is told with the share that is needed", () => {
    const notes = (keptGrip: number | undefined) => notesOf("grip", still(-0.5, 0.1, { ...between(20, 80), keptGrip }));
    // hot: 0.1 + 23·60·6.14e-5 = 0.184732 mm; back at 20 °C its own growth takes 0.084732 mm: q = 1 − 0.1/0.184732
    const hot = 0.1 + 23 * 60 * 6.14e-5;
    const q = 1 - 0.1 / hot;
    const needed = compliance.bush / ((compliance.housing + compliance.bush) / q - compliance.housing);
    expect(needed).toBeCloseTo(0.457, 3);
    // 2·p·D²/(D² − d²), p = δ/(D·(ch + cb)), over 80 MPa
    const stress = (2 * (hot / 23 / (compliance.housing + compliance.bush)) * 529) / 129;
    const told = [
      "least when cold again",
      `at most hoop stress ${Math.round((100 * stress) / 80)} % of the compressive strength, when hot`,
    ];
    const lost =
      "lost where less than 46 % of the press fit is kept; shares extrapolated from short holds were up to 1.9 times too high";
    // 0.8/1.9 = 0.42, 0.9/1.9 = 0.47
    expect(notes(0.8)).toEqual([...told, lost]);
    expect(notes(0.9)).toEqual([...told]);
    expect(notes(undefined).join()).not.toContain("extrapolated");
  });

  test("a bush that grows less than its housing is looser the warmer it runs, however much of its fit it keeps", () => {
    // 20 °C and PV 0.1 of 0.2 MPa·m/s: 33.5 K, 4.5 K more as was measured for 90 °C; 1e-5 beside 23.6e-6/K over 23 mm
    const slow = { ...values, expansion: 1e-5 };
    const left = (rise: number) => 0.011 - 23 * rise * (23.6e-6 - 1e-5);
    expect(left(33.5)).toBeGreaterThan(0);
    expect(left(38)).toBeLessThan(0);
    const turning = on({ ...fit(-0.5, 0.011), load: 800 });
    expect(finding("grip", slow, turning).value).toBeCloseTo(left(33.5), 12);
    expect(said("grip", slow, turning)).toBe(
      "care, grip lost when running, with the bore 4.5 K warmer than its PV implies, as was measured",
    );
    // 0.013 − 0.0119
    expect(finding("grip", slow, on({ ...fit(-0.5, 0.013), load: 800 })).word).toBe("fits");
  });
});

describe("a shaft on a slope", () => {
  // without load nothing is pressed in: atan(0.3/20) = 0.8594°
  const sloping = (slope: number) => still(-0.3, -0.0625, { slope, load: 0 });
  test("jams where both ends touch it, to the angle of clearance over length", () => {
    expect(finding("tilt", values, sloping(0.859))).toMatchObject({
      word: "fits",
      value: 0.859,
      limit: expect.closeTo((Math.atan(0.3 / 20) * 180) / Math.PI, 12) as number,
    });
    expect(said("tilt", values, sloping(0.86))).toBe(
      "fails, tilt 0.86 °: both ends of the bush touch the shaft at 0.86 °",
    );
    expect(said("tilt", values, sloping(1.234))).toBe(
      "fails, tilt 1.2 °: both ends of the bush touch the shaft at 0.86 °",
    );
  });
  describe("jams at the least load, whatever greater one makes its edges give way", () => {
    const bush = (more: Readonly<Record<string, unknown>> = {}) =>
      pressedBush({ temperature: 20, motion: "", rpm: 1, load: 200, "bore zone": "F8", slope: 0.16, ...more });
    const tiltOf = (duty: unknown) =>
      call(functions.DUTYCHECKS, [duty, null, "Demo Lovage"])
        .find(([name]) => name === "tilt")!
        .slice(1, 6);
    const alone = tiltOf(bush());
    test("alone", () => {
      expect(alone[4]).toBe("fails");
      // F8 and f7 leave 0.040 mm, atan(0.040/20) = 0.1146°; edges that give way let it tilt a little further
      expect(alone[1]).toBeGreaterThan(0.1146);
      expect(alone[1]).toBeLessThan(0.15);
    });
    test.each([
      ["a static load", { "static load": 3000 }],
      ["an impact factor", { "impact factor": 20 }],
    ])("beside %s", (_, more) => expect(tiltOf(bush(more))).toEqual(alone));
    test("beside a later step", () => {
      const cells = Object.entries({ duty: "Joint", ...Object.fromEntries(bush()), time: 5 });
      const later = cells.map(([name]) => ({ load: 3000, time: 5 })[name] ?? "");
      const found = tiltOf([cells.map(([name]) => name), cells.map(([, value]) => value), later]);
      expect([found[0], found[4]]).toEqual([alone[0], "fails"]);
      // whose friction leaves the warm bush less clearance
      expect(found[1]).toBeLessThanOrEqual(alone[1] as number);
    });
    test("but at the greatest where that bends the shaft too far", () => {
      const span = { slope: "", span: 300, "shaft diameter between bushes": 30 };
      const [light, heavy] = [{}, { "static load": 3000 }].map((more) => tiltOf(bush({ ...span, ...more })));
      expect([light![4], heavy![4]]).toEqual(["fits", "fails"]);
      expect((heavy![0] as number) / (light![0] as number)).toBeCloseTo(15, 9);
    });
  });
  test("that jams fails by its edge pressure too, without a number", () => {
    expect(said("edgePressure", values, sloping(0.86))).toBe("fails, edge pressure: both ends touch the shaft");
    expect(finding("edgePressure", values, sloping(0.86)).value).toBeUndefined();
  });
  describe("whose rating for edge load has the word keeps the figures of its pressure", () => {
    const at = (load: FieldValues["load"]) => still(-0.5, 0.1, { slope: 0.1, load });
    const rated = (edgeLoad: Values["edgeLoad"], load: FieldValues["load"]) =>
      finding("edgePressure", { ...values, edgeLoad }, at(load));
    const { value, limit, use } = rated("good", 300);
    test("in full where it is care, also in the verdict", () => {
      expect(use).toBeGreaterThan(0.1);
      expect(use).toBeLessThan(1);
      const text = `care, edge load fair; edge pressure ${Math.round(100 * use!)} %`;
      expect(rated("fair", 300)).toMatchObject({ word: "care", value, limit, use, property: "compressiveStrength" });
      expect(said("edgePressure", { ...values, edgeLoad: "fair" }, at(300))).toBe(text);
      expect(line({ ...values, edgeLoad: "fair" }, at(300)).startsWith(text)).toBe(true);
    });
    test("without a use where it fails", () =>
      expect(rated("poor", 300)).toMatchObject({ word: "fails", value, limit, use: undefined }));
    test.each(["fair", "poor"] as const)("over a band at its hardest corner: %s", (rating) =>
      expect(rated(rating, new Band(100, 300) as never)).toMatchObject({ value, limit }),
    );
    test("beside the words of a pressure that is care", () => {
      const text = /edge load poor; edge pressure \d+ % to \d+ % of the compressive strength/;
      const weak = { ...values, edgeLoad: "poor", compressiveStrength: value! * 0.95 } as const;
      expect(said("edgePressure", weak, at(300))).toMatch(text);
    });
    test.each(["fair", "poor"] as const)("and is worked to what was found: %s", (rating) => {
      const sloping = at(300).corners[0]!;
      const { lines } = finding("edgePressure", values, sloping).criterion.working!(
        { ...values, edgeLoad: rating },
        sloping,
      )!;
      expect(lines.slice(-3).filter((one) => /^[VZu] = /.test(one))).toHaveLength(rating === "fair" ? 3 : 2);
    });
  });
  test.each(["edgePressure", "peakPressure"])("without a compressive strength %s is no data", (id) => {
    const { compressiveStrength: _, ...unknown } = values;
    const duty = still(-0.3, -0.0625, { slope: 0.1, load: 10 });
    expect(finding(id, unknown, duty)).toMatchObject({ word: "no data", property: "compressiveStrength" });
  });
});

test("a peak pressure within the compressive strength fits, beyond it is care", () => {
  expect(finding("peakPressure", values, still(-0.3, -0.0625, { load: 1 })).word).toBe("fits");
  expect(said("peakPressure", { ...values, compressiveStrength: 0.1 }, still(-0.3, -0.0625))).toMatch(
    /^care, peak pressure \d+ % of the compressive strength until it has worn in$/,
  );
});
