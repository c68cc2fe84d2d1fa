import { clearance, closeIn, fitTable, freeTilt, pressFit, runClearance } from "../../../src/core";
import { fitState } from "../../../src/core/fit/fitState";
import type { Assembly } from "../../../src/core/fit/fitState";
import { findMetal, metals } from "../../../src/core/fit/metals";
import { answer } from "../../../src/edge/sheet";
import metalData from "../../../data/metals.json";
import sources from "../../../data/sources.json";

const host = { error: (code: string, message?: string) => ({ code, message }) };
type HostError = { code: string; message: string };
const first = (out: unknown[][]) => out[0]![0] as HostError;

/** The greenhouse's vent pivot: a polyamide bush 20/23 in an aluminium arm, on a steel shaft. */
const pivot = [20, "E10", 23, "+0.05/+0.10", "H7", "f7", "Demo Sorrel", "aluminium alloy", "carbon steel", -20, 80];
const column = { state: 0, temperature: 1, least: 2, greatest: 3, bandLeast: 4, bandGreatest: 5, left: 6, verdict: 7 };
const run = (args: unknown[]) => {
  const rows = answer(fitTable, args, host);
  if (rows.length === 1) throw new Error(first(rows).message);
  return Object.fromEntries(rows.slice(1).map((row) => [row[0] as string, row]));
};
const number = (row: unknown[] | undefined, name: keyof typeof column) => row![column[name]] as number;
const withZones = (changes: Record<number, unknown>, more: unknown[] = []) => [
  ...pivot.map((value, i) => (i in changes ? changes[i] : value)),
  ...more,
];

describe("the vent pivot", () => {
  const rows = run(pivot);
  test("has four states, and fits at assembly as its zones say", () => {
    expect(Object.keys(rows)).toEqual(["cold", "assembly", "hot", "hot and wet"]);
    // E10 0.040/0.124 and f7 −0.020/−0.041; outside 0.05/0.10 in H7 0/0.021
    expect(number(rows.assembly, "least")).toBeCloseTo(0.06, 12);
    expect(number(rows.assembly, "greatest")).toBeCloseTo(0.165, 12);
    expect(number(rows.assembly, "left")).toBeCloseTo(0.029, 12);
  });

  test("hot and wet by hand", () => {
    // κ = (2·D·d/(E(D²−d²)))/(ch + cb), unbounded aluminium: ch = (1 + 0.33)/69000, cb = (929/129 − 0.4)/2500
    const kappa = 920 / (2500 * 129) / ((1 + 0.33) / 69000 + (929 / 129 - 0.4) / 2500);
    const strain = 8.5e-5 * 60 + 0.02;
    const growth = 23 * (strain - 23.6e-6 * 60);
    const shaftGrowth = 11.7e-6 * 60;
    const wet = (bore: number, shaft: number) => bore - shaft + bore * strain - kappa * growth - shaft * shaftGrowth;
    expect(number(rows["hot and wet"], "least")).toBeCloseTo(wet(20.04, 19.98), 12);
    expect(number(rows["hot and wet"], "greatest")).toBeCloseTo(wet(20.124, 19.959), 12);
    expect(number(rows["hot and wet"], "left")).toBeCloseTo(0.029 + growth, 12);
    expect(rows["hot and wet"]![column.verdict]).toBe("binds");
  });

  test("loses its grip in the cold: polyamide shrinks more than the arm", () => {
    expect(number(rows.cold, "left")).toBeCloseTo(0.029 - 23 * 40 * (8.5e-5 - 23.6e-6), 12);
    expect(rows.cold![column.verdict]).toBe("retention lost");
  });

  test("the band lies inside the worst case in every state", () => {
    for (const row of Object.values(rows)) {
      expect(number(row, "bandLeast")).toBeGreaterThan(number(row, "least"));
      expect(number(row, "bandGreatest")).toBeLessThan(number(row, "greatest"));
    }
  });

  test("a bore stated free is closed in by the fit, and the worst case carries housing and outside too", () => {
    const free = run([...pivot, null, "free"]);
    const kappa = closeIn({
      bore: 20,
      outside: 23,
      housing: 1e9,
      bushmodulus: 2500,
      bushpoisson: 0.4,
      housingmodulus: 69000,
      housingpoisson: 0.33,
    });
    expect(number(free.assembly, "least")).toBeCloseTo(0.06 - kappa * 0.1, 9);
    expect(number(free.assembly, "greatest")).toBeCloseTo(0.165 - kappa * 0.029, 9);
    // C = Cm ± √((Tb/2)² + (Ts/2)² + κ²·((To/2)² + (Th/2)²)), every tolerance in contact
    const middle = (0.04 + 0.124) / 2 + (0.02 + 0.041) / 2 - (kappa * (0.1 + 0.029)) / 2;
    const width = Math.hypot(0.042, 0.0105, kappa * 0.025, kappa * 0.0105);
    expect(number(free.assembly, "bandLeast")).toBeCloseTo(middle - width, 9);
    expect(number(free.assembly, "bandGreatest")).toBeCloseTo(middle + width, 9);
  });

  test("agrees with RUNCLEARANCE from CLEARANCE and CLOSEIN, cell by cell", () => {
    const [least] = clearance({ boreleast: 20.04, boregreatest: 20.124, shaftleast: 19.959, shaftgreatest: 19.98 });
    const alone = runClearance({
      clearance: least!,
      bore: 20.04,
      outside: 23,
      interference: 0.029,
      closein: closeIn({
        bore: 20,
        outside: 23,
        housing: 1e9,
        bushmodulus: 2500,
        bushpoisson: 0.4,
        housingmodulus: 69000,
        housingpoisson: 0.33,
      }),
      temperature: 80,
      bushexpansion: 8.5e-5,
      housingexpansion: 23.6e-6,
      shaftexpansion: 11.7e-6,
    });
    expect(number(rows.hot, "least")).toBeCloseTo(alone, 9);
  });
});

describe("laws", () => {
  test("clearance shrinks and grip grows as moisture grows, hot and wet stays", () => {
    const [dry, room, soaked] = ["dry", "room", "soaked"].map((moisture) => run([...pivot, moisture]));
    for (const state of ["hot"]) {
      expect(number(room![state], "least")).toBeLessThan(number(dry![state], "least"));
      expect(number(soaked![state], "least")).toBeLessThan(number(room![state], "least"));
      expect(number(soaked![state], "left")).toBeGreaterThan(number(room![state], "left"));
    }
    expect(dry!["hot and wet"]).toEqual(soaked!["hot and wet"]);
    expect(soaked!.hot!.slice(1)).toEqual(soaked!["hot and wet"]!.slice(1));
    expect(dry!.assembly).toEqual(soaked!.assembly);
  });
  test("RUNCLEARANCE falls with swelling while the housing holds the bush", () => {
    let last = Infinity;
    for (const swelling of [0, 0.002, 0.006, 0.01, 0.02, 0.03]) {
      const now = runClearance({
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
      answer(runClearance, [0.06, 20, 23, 0.03, 1.04, 20, 8.5e-5, 1.2e-5, 1.2e-5, swelling], host)[0]![0];
    expect(swollenBy("0.5 %")).toBe(swollenBy(0.005));
    expect(swollenBy(0.005)).toBeLessThan(swollenBy(0) as number);
    expect(swollenBy(2)).toEqual({
      code: "#VALUE!",
      message: "swelling must be from -10 % to 10 %, got 2: type 2 %",
    });
  });
  test("a loose bush that warms keeps its bore's growth until it touches the housing", () => {
    const at = (temperature: number) =>
      runClearance({
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
    const kappas = [24, 26, 30, 60, 1e9].map((housing) => closeIn({ ...given, housing }));
    expect(kappas).toEqual([...kappas].sort((a, b) => a - b));
    const [thin, thick] = [24, 60].map((housing) => run([...pivot, null, null, housing]));
    expect(number(thin!["hot and wet"], "least")).toBeGreaterThan(number(thick!["hot and wet"], "least"));
  });
  test("inch and metric answer the same", () => {
    const inch = withZones({ 0: 20 / 25.4, 2: 23 / 25.4, 3: "+0.05/+0.10 mm", 9: -4, 10: 176 }, [
      "room",
      null,
      null,
      null,
      "inch",
    ]);
    const [a, b] = [answer(fitTable, [...pivot, "room"], host), answer(fitTable, inch, host)];
    for (let row = 1; row < 5; row++) {
      for (const i of [2, 3, 4, 5, 6]) expect((b[row]![i] as number) * 25.4).toBeCloseTo(a[row]![i] as number, 9);
      expect(((b[row]![1] as number) - 32) / 1.8).toBeCloseTo(a[row]![1] as number, 9);
      expect(b[row]![7]).toBe(a[row]![7]);
    }
    const press = answer(pressFit, [20, 23, 40, 0.05, 2500, 0.4, 69000, 0.33], host)[0] as number[];
    const inPress = answer(
      pressFit,
      [20 / 25.4, 23 / 25.4, 40 / 25.4, 0.05 / 25.4, "2500 MPa", 0.4, "69 GPa", 0.33, "inch"],
      host,
    )[0] as number[];
    const psi = 0.006894757293168361;
    [psi, psi, 25.4].forEach((unit, i) => expect(inPress[i]! * unit).toBeCloseTo(press[i]!, 9));
  });
  test("the band never leaves the worst case, for any assembly", () => {
    let seed = 7;
    const random = () => (seed = (seed * 16807) % 2147483647) / 2147483647;
    const limits = (size: number) => {
      const least = size + (random() - 0.5) * 0.2;
      return { least, greatest: least + random() * 0.1 };
    };
    for (let i = 0; i < 2000; i++) {
      const a: Assembly = {
        boreState: random() < 0.5 ? "pressed" : "free",
        bore: limits(20),
        shaft: limits(20),
        outside: limits(23),
        housing: limits(23),
        nominalOutside: 23,
        closeIn: 0.3 + random(),
      };
      const growth = {
        bush: (random() - 0.5) * 0.02,
        housing: (random() - 0.5) * 0.004,
        shaft: (random() - 0.5) * 0.004,
      };
      const { clearance: worst, band, interference } = fitState(a, growth);
      expect(worst.least).toBeLessThanOrEqual(worst.greatest);
      expect(interference.least).toBeLessThanOrEqual(interference.greatest);
      expect(band.least).toBeGreaterThanOrEqual(worst.least - 1e-12);
      expect(band.greatest).toBeLessThanOrEqual(worst.greatest + 1e-12);
    }
  });
  test("the worst case is the worst of a fine grid of sizes", () => {
    const a: Assembly = {
      boreState: "free",
      bore: { least: 20.02, greatest: 20.06 },
      shaft: { least: 19.95, greatest: 19.98 },
      outside: { least: 22.98, greatest: 23.04 },
      housing: { least: 23, greatest: 23.02 },
      nominalOutside: 23,
      closeIn: 1.04,
    };
    const growth = { bush: 0.003, housing: 0.001, shaft: 0.0005 };
    const { clearance: worst } = fitState(a, growth);
    const at = (l: { least: number; greatest: number }, i: number) => l.least + ((l.greatest - l.least) * i) / 4;
    const all: number[] = [];
    for (let b = 0; b < 5; b++)
      for (let s = 0; s < 5; s++)
        for (let o = 0; o < 5; o++)
          for (let h = 0; h < 5; h++) {
            const tight = at(a.outside, o) - at(a.housing, h) + 23 * (growth.bush - growth.housing);
            const bore = at(a.bore, b) * (1 + growth.bush) - a.closeIn * Math.max(0, tight);
            all.push(bore - at(a.shaft, s) * (1 + growth.shaft));
          }
    expect(worst.least).toBeCloseTo(Math.min(...all), 12);
    expect(worst.greatest).toBeCloseTo(Math.max(...all), 12);
  });
});

describe("answers that are no errors, and errors that are", () => {
  test("loose from the start, and binding", () => {
    expect(run(withZones({ 3: "h9" })).assembly![column.verdict]).toBe("loose in the housing");
    expect(run(withZones({ 1: "H7", 5: "k6" })).assembly![column.verdict]).toBe("binds");
    expect(run(withZones({ 1: "H7", 3: "h9", 5: "k6" })).assembly![column.verdict]).toBe("binds, loose in the housing");
  });
  test("a bush squeezed beyond its strength", () => {
    // 2·p·D²/(D² − d²) above 85 MPa needs δ above about 0.6 mm
    expect(run(withZones({ 3: "+0.9/+1.0" })).assembly![column.verdict]).toBe("overstressed");
  });
  test("swelling that the grade lacks is no data, the rest stands", () => {
    const grades = [
      ["grade", "compressive modulus", "Poisson's ratio", "expansion", "compressive strength"],
      ["Shed stock", 2500, 0.4, 8.5e-5, 85],
    ];
    const rows = run([...withZones({ 6: "Shed stock" }), null, null, null, grades]);
    expect(rows["hot and wet"]).toEqual(["hot and wet", 80, "", "", "", "", "", "no data, swelling saturated"]);
    expect(rows.hot![column.verdict]).toBe("fits");
    const room = run([...withZones({ 6: "Shed stock" }), "room", null, null, grades]);
    expect(room.hot![column.verdict]).toBe("no data, swelling at 50 % RH");
    expect(room.assembly![column.verdict]).toBe("fits");
  });
  test("a strength that the grade lacks is said, not passed over", () => {
    const grades = [
      ["grade", "compressive modulus", "Poisson's ratio", "expansion"],
      ["Shed stock", 2500, 0.4, 8.5e-5],
    ];
    expect(run([...withZones({ 6: "Shed stock" }), null, null, null, grades]).assembly![column.verdict]).toBe(
      "fits, strength not known",
    );
  });
  test.each<[string, Record<number, unknown>, unknown[], string, RegExp]>([
    ["bore not below outside", { 0: 23 }, [], "#VALUE!", /^bore must be below outside, got 23 mm and 23 mm$/],
    [
      "outside not below the housing's",
      {},
      [null, null, 23],
      "#VALUE!",
      /^housingoutside must be above the bush's outside/,
    ],
    ["zone unknown", { 1: "Q7" }, [], "#N/A", /^borezone Q7 at 20 mm is not held here/],
    ["zone unreadable", { 3: "press" }, [], "#VALUE!", /^outsidezone must be ISO 286 class/],
    ["shaft's zone for a hole", { 4: "h7" }, [], "#VALUE!", /^housingzone must be a hole class/],
    ["hole's zone for a shaft", { 5: "H7" }, [], "#VALUE!", /^shaftzone must be a shaft class/],
    [
      "size above 500",
      { 0: 510, 2: 530 },
      [],
      "#VALUE!",
      /^bore must be above 0 mm and at most 500 mm .* got "510 mm"/,
    ],
    ["cold above hot", { 9: 90 }, [], "#VALUE!", /^cold must be at most hot/],
    ["metal unknown", { 7: "unobtainium" }, [], "#N/A", /^housing "unobtainium" is no metal known here; try/],
    ["grade unknown", { 6: "Demo Sorel" }, [], "#N/A", /^grade "Demo Sorel" is unknown; nearest: Demo Sorrel/],
    ["modulus missing", { 6: "PA66" }, [], "#N/A", /^grade "PA66" has no data on compressive modulus/],
    ["moisture no word", {}, ["damp"], "#VALUE!", /^moisture must be "dry", "room" or "soaked"/],
  ])("%s", (_, changes, more, code, text) => {
    const error = first(answer(fitTable, withZones(changes, more), host));
    expect(error.code).toBe(code);
    expect(error.message).toMatch(text);
    expect(error.message.length).toBeLessThanOrEqual(120);
  });
  test("deviations as text serve any size", () => {
    const big = run(withZones({ 0: 600, 1: "0.2/0.3", 2: 620, 4: "0/0.1", 5: "-0.1/-0.2" }));
    expect(number(big.assembly, "least")).toBeCloseTo(0.3, 9);
  });
  test("CLOSEIN, PRESSFIT and RUNCLEARANCE refuse diameters out of order", () => {
    const elastic = [2500, 0.4, 69000, 0.33];
    expect(first(answer(closeIn, [23, 20, 40, ...elastic], host)).message).toMatch(/^bore must be below outside/);
    expect(first(answer(closeIn, [20, 23, 23, ...elastic], host)).message).toMatch(
      /^housing must be above the bush's outside/,
    );
    expect(first(answer(pressFit, [20, 23, 22, 0.1, ...elastic], host)).message).toMatch(/^housing must be above/);
    expect(first(answer(pressFit, [20, 23, 40, -0.1, ...elastic], host)).message).toMatch(
      /^interference must be 0 mm or more/,
    );
    expect(first(answer(runClearance, [0.1, 23, 20, 0.1, 1, 80, 1e-4, 1e-5, 1e-5], host)).message).toMatch(
      /^bore must be below/,
    );
  });
});

describe("the small ones", () => {
  test("CLEARANCE: worst case and root sum square", () => {
    const [least, greatest, low, high] = clearance({
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
    expect(() => clearance({ boreleast: 20.1, boregreatest: 20, shaftleast: 19, shaftgreatest: 19 })).toThrow(
      "boreleast must be at most boregreatest",
    );
    expect(() => clearance({ boreleast: 20, boregreatest: 20, shaftleast: 19.1, shaftgreatest: 19 })).toThrow(
      "shaftleast must be at most shaftgreatest",
    );
  });
  test("FREETILT: 45° for a clearance as long as the bush, zero without clearance", () => {
    expect(freeTilt({ clearance: 15, length: 15 })).toBeCloseTo(45, 12);
    expect(freeTilt({ clearance: 0, length: 15 })).toBe(0);
    expect(() => freeTilt({ clearance: -0.1, length: 15 })).toThrow(/^clearance must be 0 mm or more/);
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
