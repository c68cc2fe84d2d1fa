import { functions } from "../../../../src/core";
import { conductances } from "../../../../src/core/heat/paths";
import { flangedNodes, flangeRise, sleeveRise } from "../../../../src/core/heat/flangedPaths";
import { findMetal } from "../../../../src/core/fit/metals";
import type { FieldValues } from "../../../../src/core/duties";
import { call } from "../../../support";
import { described, finding, full, isAsked, line, on, said } from "../support";

/** A grade whose PV limit is far off, so that the ways out for the heat decide. */
const cool = { ...full, pvLimit: 5, frictionHigh: 0.2, conductivity: 0.25 };
/** 600 N on 20/23 × 20 mm at 20 1/min: v = π·20·20/60000 = 0.0209440 m/s; face 20 to 30 mm, r = 12.6667 mm, 0.0265290 m/s. */
const flanged: FieldValues = {
  ...{ part: "flanged", load: 600, axialLoad: 300, bore: 20, length: 20, wall: 1.5, flangeOutside: 30 },
  ...{ flangeThickness: 1.5, rpm: 20, shaft: "hardened steel", temperature: { low: 23, high: 23 } },
};
const ways: FieldValues = { housingPath: 0.1, endLength: 60 };
/** 0.2·600·0.0209440 and 0.2·300·0.0265290 W. */
const [onSleeve, onFlange] = [2.51327, 1.59174];

const assembly = {
  ...{ bore: 20, length: 20, wall: 1.5, bushconductivity: 0.25, film: 10, contact: 0.5 },
  shaftconductivity: findMetal("shaft", "hardened steel").conductivity,
};
const nodes = (housing: number) =>
  flangedNodes({ ...assembly, flangeoutside: 30, flangethickness: 1.5, farend: 60, shoulderend: 60 }, housing);
const hotter = (housing: number, sleeve = onSleeve, flange = onFlange) =>
  Math.max(sleeveRise(nodes(housing), sleeve, flange), flangeRise(nodes(housing), sleeve, flange));

describe("a flanged bush with a way out for the heat", () => {
  const bore = (more: FieldValues, values = cool) =>
    finding("boreTemperature", values, on({ ...ways, ...more }, flanged));

  test("the hotter of sleeve and flange counts, and both are told", () => {
    const found = bore({});
    expect(found.value).toBeCloseTo(23 + hotter(0.1), 3);
    const [sleeve, flange] = [sleeveRise, flangeRise].map((of) => (23 + of(nodes(0.1), onSleeve, onFlange)).toFixed(2));
    expect(found.notes!("metric", found)).toEqual([
      expect.stringMatching(/ as the PV limit implies$/),
      `sleeve ${sleeve} °C, flange ${flange} °C by the ways out for the heat`,
    ]);
  });

  test("the housing's conductance unknown: at ambient it fails or is care, with none it passes", () => {
    const known = (more: number) => bore({ housingPath: undefined }, { ...cool, highestTemperature: 23 + more });
    const [low, high] = [hotter(Infinity), hotter(0)];
    expect(known(high + 0.1)).toMatchObject({ word: "fits", value: expect.closeTo(23 + high, 3) as number });
    expect(known(low + 0.1)).toMatchObject({ word: "care", value: expect.closeTo(23 + low, 3) as number });
    expect(known(low - 0.1).word).toBe("fails");
  });

  test("of what is missing each is named, the flange's thickness too", () => {
    for (const field of ["wall", "flangeThickness", "shaft"] as const)
      expect([field, bore({ [field]: undefined })]).toMatchObject([field, { word: "no data", field }]);
    expect(said("boreTemperature", cool, on({ ...ways, flangeThickness: undefined }, flanged))).toBe(
      "no data, bore temperature: flange thickness",
    );
  });

  test("a flange that bears nothing is no way out and makes no heat: the sleeve alone, without its thickness", () => {
    const { least } = conductances({ ...assembly, endlength: 60, ends: 2, housingpath: 0.1 });
    for (const axialLoad of [undefined, 0])
      expect(bore({ axialLoad, flangeThickness: undefined }).value).toBeCloseTo(23 + onSleeve / least, 3);
  });

  test("more axial load never makes it cooler", () => {
    const values = [0, 1, 10, 100, 300, 1000].map((axialLoad) => bore({ axialLoad }).value!);
    expect(values).toEqual([...values].sort((a, b) => a - b));
  });

  test("steps with a time constant: the first-order peak of the hotter surface", () => {
    const still = { motion: "static", time: 20 } as const;
    const found = finding(
      "boreTemperature",
      cool,
      described({ ...flanged, ...ways, time: 10, timeConstant: 8 }, still),
    );
    // θ = S·(1 − e^(−10/8))/(1 − e^(−30/8))
    const peak = (1 - Math.exp(-10 / 8)) / (1 - Math.exp(-30 / 8));
    expect(found.value).toBeCloseTo(23 + hotter(0.1) * peak, 3);
  });

  test("its thickness alone asks nothing and leaves no care", () => {
    const { shaft: _, ...bare } = flanged;
    expect(line(cool, on({ load: 60, axialLoad: 30 }, bare))).toMatch(/^fits, /);
  });

  test("a flange within the sleeve's outside is refused", () => {
    expect(() => on({ flangeOutside: 23 }, flanged)).toThrow(
      "flange outside must be above the bush's outside of 23 mm",
    );
  });
});

describe("what stands for the heat's ways out without one", () => {
  test("friction is told as not judged", () => {
    expect(line(full, on({ friction: 0.5 }))).toBe("care, not judged: friction; PV 50 %");
    const [housed, wall] = [{ housingPath: 0.5 }, 1.5];
    expect(isAsked("notJudged", on({ friction: 0.5, wall, ...housed }))).toBe(false);
  });
  test("so are a washer's conductance and exposed length, which no model uses", () => {
    const washer: FieldValues = {
      ...{ part: "washer", load: 600, inner: 20, outer: 40, rpm: 30 },
      ...{ temperature: { low: 23, high: 23 }, ...ways },
    };
    expect(said("notJudged", full, on({}, washer))).toMatch(
      /^care, not judged: (housing conductance, exposed length|exposed length, housing conductance)$/,
    );
  });
});

describe("a shaft of which nothing stands out into the air", () => {
  const row = (fields: Readonly<Record<string, unknown>>): unknown[] => {
    const spindle = { load: 140, bore: 15, length: 15, wall: 1.5, rpm: 90, temperature: "10 to 35", ...fields };
    const all = { grade: "Demo Medlar", shaft: "hardened steel", ...spindle };
    return call(functions.DUTIES, [[Object.keys(all), Object.values(all)]])[1]!;
  };
  const [upper, verdict] = [5, 9];
  test("has no known way out: care, and no figure at the upper end", () => {
    const none = row({ "exposed length": "0 mm" });
    expect(none[verdict]).toBe("care, bore 73.29 °C or more: find out the housing's conductance");
    expect(none[upper]).toBe("");
    // with the housing at the surroundings all heat passes the wall: 0.3·140 N·v over half of 2π·λ·L/ln(18/15)
    const least = (0.3 * 140 * ((Math.PI * 15 * 90) / 60_000)) / ((Math.PI * 0.3 * 0.015) / Math.log(18 / 15));
    expect(35 + least).toBeCloseTo(73.29, 2);
  });
  test("fails where the bore is too hot even with a cold housing, as with a short end", () => {
    for (const exposed of ["5 mm", "0 mm"])
      expect(row({ load: 220, "exposed length": exposed })[verdict]).toMatch(/^fails, bore temperature 12\d %/);
  });
  test("is left open by a blank, and told by the housing's conductance alone", () => {
    expect(row({})[verdict]).toMatch(/^fits/);
    expect(row({ "exposed length": "0 mm", "housing conductance": 0.1 }).slice(upper)).toEqual(
      row({ "housing conductance": 0.1 }).slice(upper),
    );
  });
  test("DUTIES tells the upper end where the conductance is not known, and friction's where no way out is", () => {
    expect(row({ "exposed length": "20 mm" })[upper]).toBeCloseTo(194.3, 1);
    // limit 82 °C, PV limit 0.17, friction 0.3 over its low figure
    expect(row({})[upper]).toBeCloseTo(65.53, 2);
  });
});
