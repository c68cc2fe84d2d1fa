import { functions } from "../../../src/core";
import { findMetal, metals } from "../../../src/core/fit/metals";
import { answer } from "../../../src/edge/sheet";
import metalData from "../../../data/metals.json";
import sources from "../../../data/sources.json";
import { host } from "../../support";

type HostError = { code: string; message: string };
const first = (out: unknown[][]) => out[0]![0] as HostError;

describe("laws", () => {
  test("RUNCLEARANCE falls with swelling while the housing holds the bush", () => {
    let last = Infinity;
    for (const swelling of [0, 0.002, 0.006, 0.01, 0.02, 0.03]) {
      const now = functions.RUNCLEARANCE({
        clearance: 0.06,
        bore: 20,
        outside: 23,
        interference: 0.03,
        closein: 1.04,
        temperature: 20,
        bushexpansion: 8.5e-5,
        housingexpansion: 1.2e-5,
        shaftexpansion: 1.2e-5,
        swelling,
      });
      expect(now).toBeLessThan(last);
      last = now;
    }
  });
  test("RUNCLEARANCE takes swelling as a ratio or as text in %, and says what to type for a number in %", () => {
    const swollenBy = (swelling: unknown) =>
      answer(functions.RUNCLEARANCE, [0.06, 20, 23, 0.03, 1.04, 20, 8.5e-5, 1.2e-5, 1.2e-5, swelling], host)[0]![0];
    expect(swollenBy("0.5 %")).toBe(swollenBy(0.005));
    expect(swollenBy(0.005)).toBeLessThan(swollenBy(0) as number);
    expect(swollenBy(2)).toEqual({
      code: "#VALUE!",
      message: "swelling must be from -10 % to 10 %, got 2: type 2 %",
    });
  });
  test("a loose bush that warms keeps its bore's growth until it touches the housing", () => {
    const at = (temperature: number) =>
      functions.RUNCLEARANCE({
        clearance: 0.06,
        bore: 20,
        outside: 23,
        interference: -0.05,
        closein: 1.04,
        temperature,
        bushexpansion: 1e-4,
        housingexpansion: 0,
        shaftexpansion: 0,
      });
    expect(at(30)).toBeCloseTo(0.06 + 20 * 1e-3, 12);
    const touch = 20 + 0.05 / (23 * 1e-4);
    expect(at(touch + 10)).toBeCloseTo(0.06 + 20 * 1e-4 * (touch - 10) - 1.04 * 23 * 1e-3, 9);
  });
  test("a thin housing gives way: less pressure and close-in", () => {
    const given = {
      bore: 20,
      outside: 23,
      bushmodulus: 2500,
      bushpoisson: 0.4,
      housingmodulus: 69000,
      housingpoisson: 0.33,
    };
    const kappas = [24, 26, 30, 60, 1e9].map((housing) => functions.CLOSEIN({ ...given, housing }));
    expect(kappas).toEqual([...kappas].sort((a, b) => a - b));
  });
  test("PRESSFIT answers the same in inch and metric", () => {
    const press = answer(functions.PRESSFIT, [20, 23, 40, 0.05, 2500, 0.4, 69000, 0.33], host)[0] as number[];
    const inPress = answer(
      functions.PRESSFIT,
      [20 / 25.4, 23 / 25.4, 40 / 25.4, 0.05 / 25.4, "2500 MPa", 0.4, "69 GPa", 0.33, "inch"],
      host,
    )[0] as number[];
    const psi = 0.006894757293168361;
    [psi, psi, 25.4].forEach((unit, i) => expect(inPress[i]! * unit).toBeCloseTo(press[i]!, 9));
  });
});

test("CLOSEIN, PRESSFIT and RUNCLEARANCE refuse diameters out of order", () => {
  const elastic = [2500, 0.4, 69000, 0.33];
  expect(first(answer(functions.CLOSEIN, [23, 20, 40, ...elastic], host)).message).toMatch(
    /^bore must be below outside/,
  );
  expect(first(answer(functions.CLOSEIN, [20, 23, 23, ...elastic], host)).message).toMatch(
    /^housing must be above the bush's outside/,
  );
  expect(first(answer(functions.PRESSFIT, [20, 23, 22, 0.1, ...elastic], host)).message).toMatch(
    /^housing must be above/,
  );
  expect(first(answer(functions.PRESSFIT, [20, 23, 40, -0.1, ...elastic], host)).message).toMatch(
    /^interference must be 0 mm or more/,
  );
  expect(first(answer(functions.RUNCLEARANCE, [0.1, 23, 20, 0.1, 1, 80, 1e-4, 1e-5, 1e-5], host)).message).toMatch(
    /^bore must be below/,
  );
});

describe("the small ones", () => {
  test("CLEARANCE: worst case and root sum square", () => {
    const [least, greatest, low, high] = functions.CLEARANCE({
      boreleast: 20,
      boregreatest: 20.03,
      shaftleast: 19.94,
      shaftgreatest: 19.98,
    }) as [number, number, number, number];
    expect(least).toBeCloseTo(0.02, 12);
    expect(greatest).toBeCloseTo(0.09, 12);
    // 0.055 ± √(0.015² + 0.02²) = 0.055 ± 0.025
    expect(low).toBeCloseTo(0.03, 12);
    expect(high).toBeCloseTo(0.08, 12);
    expect(() => functions.CLEARANCE({ boreleast: 20.1, boregreatest: 20, shaftleast: 19, shaftgreatest: 19 })).toThrow(
      "boreleast must be at most boregreatest",
    );
    expect(() => functions.CLEARANCE({ boreleast: 20, boregreatest: 20, shaftleast: 19.1, shaftgreatest: 19 })).toThrow(
      "shaftleast must be at most shaftgreatest",
    );
  });
  test("FREETILT: 45° for a clearance as long as the bush, zero without clearance", () => {
    expect(functions.FREETILT({ clearance: 15, length: 15 })).toBeCloseTo(45, 12);
    expect(functions.FREETILT({ clearance: 0, length: 15 })).toBe(0);
    expect(() => functions.FREETILT({ clearance: -0.1, length: 15 })).toThrow(/^clearance must be 0 mm or more/);
  });
});

describe("metals", () => {
  test("every value has a source that exists and lies in a plausible range", () => {
    const ranges = { expansion: [8e-6, 3e-5], modulus: [6e4, 2.2e5], poisson: [0.2, 0.36], conductivity: [5, 250] };
    for (const { metal, values } of metalData.metals)
      for (const [key, [from, to]] of Object.entries(ranges) as [keyof typeof values, [number, number]][]) {
        const { value, source, at, label } = values[key];
        if (!(value >= from && value <= to)) throw new Error(`${metal} ${key} ${value}`);
        expect(Object.keys(sources)).toContain(source);
        expect(at).not.toBe("");
        expect(["read", "memory"]).toContain(label);
      }
  });
  test("other names find the same metal; names are unique", () => {
    expect(findMetal("shaft", " Steel ").name).toBe("carbon steel");
    expect(findMetal("housing", "Aluminum")).toBe(findMetal("housing", "aluminium alloy"));
    const names = metalData.metals.flatMap((m) => [m.metal, ...m.aliases]);
    expect(new Set(names).size).toBe(names.length);
    expect(metals).toHaveLength(metalData.metals.length);
  });
});
