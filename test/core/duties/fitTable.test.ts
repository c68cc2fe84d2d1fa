import fc from "fast-check";
import { functions } from "../../../src/core";
import { words } from "../../../src/core/duties";
import { dutyCells, dutyHeadings } from "../../../src/book/greenhouse/dutyRows";
import { between, check } from "../../laws/check";
import { call, CellError, message, pressedBush } from "../../support";

type Fields = Readonly<Record<string, unknown>>;
interface Row {
  readonly state: string;
  readonly verdict: string;
  readonly [heading: string]: number | string;
}

/** FITTABLE's rows by their headings without units; the second of two states of one name is "cold again 2". */
function statesOf(duty: unknown, ...more: unknown[]): Record<string, Row> {
  const [headings, ...lines] = call(functions.FITTABLE, [duty, ...more]) as [string[], ...unknown[][]];
  if (lines.length === 0) throw new Error(message([headings]));
  const names = headings.map((heading) => heading.replace(/ \[.*/, ""));
  const states: Record<string, Row> = {};
  for (const line of lines) {
    const row = Object.fromEntries(names.map((name, i) => [name, line[i]])) as unknown as Row;
    let name = row.state;
    for (let i = 2; name in states; i++) name = `${row.state} ${i}`;
    states[name] = row;
  }
  return states;
}
const sorrel = (fields: Fields = {}) => statesOf(pressedBush(fields), "", "Demo Sorrel");
const least = (row: Row | undefined) => row!["least clearance"] as number;
const greatest = (row: Row | undefined) => row!["greatest clearance"] as number;
const grip = (row: Row | undefined) => row!["least interference"] as number;

/** Demo Sorrel 2500 MPa, ν 0.4, 8.5e-5/K, swelling 0.6 % at 50 % RH, 2 % saturated; data/grades/demo.json. Aluminium 23.6e-6/K, steel 11.7e-6/K. */
const compliance = { housing: (1 + 0.33) / 69000, bush: (929 / 129 - 0.4) / 2500 };
/** κ = (2·D·d/(E·(D² − d²)))/(ch + cb) in an unbounded housing: 2·23·20 = 920, D² ± d² = 929 and 129. */
const kappa = 920 / (2500 * 129) / (compliance.housing + compliance.bush);

describe("the vent pivot", () => {
  const rows = sorrel({ moisture: "wet" });
  test("has its states in the order in which they come, and at assembly what its zones say", () => {
    expect(Object.keys(rows)).toEqual(["assembly", "cold", "hot", "cold, wet", "hot, wet", "cold again"]);
    // E10 0.040/0.124 and f7 −0.020/−0.041; outside 0.05/0.10 in H7 0/0.021
    expect(least(rows.assembly)).toBeCloseTo(0.06, 12);
    expect(greatest(rows.assembly)).toBeCloseTo(0.165, 12);
    expect(grip(rows.assembly)).toBeCloseTo(0.029, 12);
    expect(rows.assembly!["root-sum-square least"]).toBeCloseTo(0.1125 - Math.hypot(0.042, 0.0105), 12);
  });

  test("hot and wet by hand", () => {
    const strain = 8.5e-5 * 60 + 0.02;
    const growth = 23 * (strain - 23.6e-6 * 60);
    // a bore that holds pressed was wider by κ·δ before, which grows too
    const wet = (bore: number, shaft: number, tight: number) =>
      (bore + kappa * tight) * (1 + strain) - kappa * (tight + growth) - shaft * (1 + 11.7e-6 * 60);
    const row = rows["hot, wet"];
    expect(least(row)).toBeCloseTo(Math.min(wet(20.04, 19.98, 0.029), wet(20.04, 19.98, 0.1)), 12);
    expect(greatest(row)).toBeCloseTo(Math.max(wet(20.124, 19.959, 0.029), wet(20.124, 19.959, 0.1)), 12);
    expect(grip(row)).toBeCloseTo(0.029 + growth, 12);
    // p = δ/(D·(ch + cb)) and 2·p·D²/(D² − d²), at the greatest interference 0.1
    const pressure = (0.1 + growth) / 23 / (compliance.housing + compliance.bush);
    expect(row!["hoop stress"]).toBeCloseTo((2 * pressure * 529) / 129, 9);
    expect(row!["swelling since assembly"]).toBe(0.02);
    expect(row!.verdict).toBe("fails, binds");
  });

  test("the band lies inside the worst case in every state; of a bush that grows it is its tolerances grown", () => {
    for (const row of Object.values(rows)) {
      expect(row["root-sum-square least"]).toBeGreaterThan(least(row));
      expect(row["root-sum-square greatest"]).toBeLessThan(greatest(row));
    }
    // slack all along, so that only bore and shaft count; 60 K on 8.5e-5 and 11.7e-6
    const { hot } = sorrel({ "outside zone": "-0.5/-0.4" });
    const width = (hot!["root-sum-square greatest"] as number) - (hot!["root-sum-square least"] as number);
    expect(width / 2).toBeCloseTo(Math.hypot(0.042 * (1 + 60 * 8.5e-5), 0.0105 * (1 + 60 * 11.7e-6)), 12);
  });

  test("a bore stated free is closed in by the fit, and the worst case carries housing and outside too", () => {
    const { assembly } = sorrel({ "zone holds": "free" });
    expect(least(assembly)).toBeCloseTo(0.06 - kappa * 0.1, 9);
    expect(greatest(assembly)).toBeCloseTo(0.165 - kappa * 0.029, 9);
    // C = Cm ± √((Tb/2)² + (Ts/2)² + κ²·((To/2)² + (Th/2)²)), every tolerance in contact
    const middle = (0.04 + 0.124) / 2 + (0.02 + 0.041) / 2 - (kappa * (0.1 + 0.029)) / 2;
    const width = Math.hypot(0.042, 0.0105, kappa * 0.025, kappa * 0.0105);
    expect(assembly!["root-sum-square least"]).toBeCloseTo(middle - width, 9);
    expect(assembly!["root-sum-square greatest"]).toBeCloseTo(middle + width, 9);
  });

  test("agrees with RUNCLEARANCE from CLEARANCE and CLOSEIN, but for the growth of the close-in itself", () => {
    const [free] = functions.CLEARANCE({
      boreleast: 20.04,
      boregreatest: 20.124,
      shaftleast: 19.959,
      shaftgreatest: 19.98,
    });
    const closein = functions.CLOSEIN({
      ...{ bore: 20, outside: 23, housing: 1e9, bushmodulus: 2500, bushpoisson: 0.4 },
      ...{ housingmodulus: 69000, housingpoisson: 0.33 },
    });
    const alone = functions.RUNCLEARANCE({
      ...{ clearance: free!, bore: 20.04, outside: 23, interference: 0.029, closein, temperature: 80 },
      ...{ bushexpansion: 8.5e-5, housingexpansion: 23.6e-6, shaftexpansion: 11.7e-6 },
    });
    expect(least(rows.hot)).toBeCloseTo(alone + closein * 0.029 * 60 * 8.5e-5, 9);
  });
});

/** What version 0.1.0 answered, and what is told now. */
describe("what FITTABLE once told as fits", () => {
  test("a bush that shrinks out of its grip in the cold, moist at assembly or not", () => {
    const cold = 0.029 - 23 * 40 * (8.5e-5 - 23.6e-6);
    for (const fields of [{}, { moisture: "humid", "moisture at assembly": "humid" }]) {
      const row = sorrel(fields).cold;
      // −0.0275; gauged and pressed in humid it grows no further in humid air (+0.1105 fits was told)
      expect(grip(row)).toBeCloseTo(cold, 12);
      expect(row!["swelling since assembly"]).toBe(0);
      expect(row!.verdict).toBe("fails, grip lost");
    }
  });
  test("a bush pressed in moist and run hot and dry", () => {
    const row = sorrel({ "moisture at assembly": "humid" })["hot, dried"];
    // 0.029 + 23·(0.0051 − 0.001416 − 0.006) = −0.0243 (+0.114 fits was told)
    expect(grip(row)).toBeCloseTo(0.029 + 23 * (0.0051 - 0.001416 - 0.006), 12);
    expect(row!.verdict).toBe("fails, grip lost");
  });
  test("a swelling below 0 is what drying does", () => {
    const rows = sorrel({ "moisture at assembly": "wet", moisture: "humid" });
    expect(rows["hot, dried"]!["swelling since assembly"]).toBeCloseTo(0.006 - 0.02, 12);
    expect(rows["cold again"]!["swelling since assembly"]).toBeCloseTo(0.006 - 0.02, 12);
  });
  test("200 °C in a grade that bears 90", () => {
    const rows = sorrel({ temperature: "20 to 200", "outside zone": "+0.15/+0.20" });
    expect(rows.hot!.verdict).toBe("fails, hotter than the grade bears");
    expect(rows.assembly!.verdict).toBe("fits");
    expect(sorrel({ temperature: "-41 to 20", "outside zone": "+0.2/+0.3" }).cold!.verdict).toBe(
      "fails, colder than the grade bears",
    );
  });
});

describe("after the hottest hold", () => {
  test("by hand: what is left of 0.15 mm with 60 % kept", () => {
    // steel 207000 MPa, ν 0.3, unbounded: ch = 1.3/207000 = 6.280e-6; cb = 6.8016/2500 = 2.7206e-3 per MPa
    const [ch, cb] = [1.3 / 207000, compliance.bush];
    // R_e = (ch + cb)/(ch + cb/0.6) = 0.60055; hot δ = 0.15 + 23·60·(8.5e-5 − 1.17e-5) = 0.251154
    const left = (ch + cb) / (ch + cb / 0.6);
    expect(left).toBeCloseTo(0.60055, 5);
    const hot = 0.15 + 23 * 60 * (8.5e-5 - 1.17e-5);
    // S = 0.39945·0.251154 = 0.100324, so that 0.049676 is left at 20 °C
    const steel = {
      housing: "carbon steel",
      "outside zone": "0.15/0.15",
      "housing zone": "0/0",
      temperature: "20 to 80",
    };
    const { "cold again": back } = sorrel({ ...steel, "share of grip kept": "60 %" });
    expect(grip(back)).toBeCloseTo(0.15 - (1 - left) * hot, 12);
    expect(grip(back)).toBeCloseTo(0.049676, 5);
    expect([back!["share of grip kept"], back!.verdict]).toEqual([0.6, "fits"]);
    // 0.05 mm: 0.05 − 0.39945·0.151154, loose by 0.01 mm
    const loose = sorrel({ ...steel, "outside zone": "0.05/0.05", "share of grip kept": "60 %" })["cold again"];
    expect(grip(loose)).toBeCloseTo(-0.010378, 5);
    expect(loose!.verdict).toBe("fails, grip lost");
  });

  test("a housing that gives way springs back as the fit relaxes: the wet bore is closer than before the hold", () => {
    // aluminium 69000 MPa, ν 0.33, 25 mm outside on 23 mm: ch = ((25² + 23²)/(25² − 23²) + 0.33)/69000
    const [ch, cb] = [(1154 / 96 + 0.33) / 69000, compliance.bush];
    const soft = { "housing outside": 25, "outside zone": "0.20/0.20", "housing zone": "0/0", moisture: "wet" };
    const duty = pressedBush({ ...soft, temperature: "20 to 80", "share of grip kept": "60 %" });
    const grades = [
      ["grade", "compressive modulus", "Poisson's ratio", "expansion", "expansion step", "swelling saturated"],
      ["Shed stock", 2500, 0.4, 8.5e-5, 0, "0.6 %"],
    ];
    const rows = statesOf(duty, "", "Shed stock", grades);
    // α 8.5e-5 in aluminium 23.6e-6: the hold is the hot, wet one
    const hot = 0.2 + 23 * (0.006 + 60 * (8.5e-5 - 23.6e-6));
    const wet = 0.2 + 23 * 0.006;
    const set = (1 - (ch + cb) / (ch + cb / 0.6)) * hot;
    const k = 920 / (2500 * 129);
    const free = 20.04 + (k * 0.2) / (ch + cb);
    const bore = (S: number) => free * 1.006 - (k / cb) * S - (k * (wet - S)) / (ch + cb);
    expect(least(rows["cold, wet"])).toBeCloseTo(bore(0) - 19.98, 12);
    expect(least(rows["cold, wet again"])).toBeCloseTo(bore(set) - 19.98, 12);
    expect(bore(0) - bore(set)).toBeGreaterThan(0.01);
    const clearance = call(functions.DUTYCHECKS, [duty, "", "Shed stock", grades]).find(
      ([name]) => name === "clearance",
    )!;
    expect(clearance[1]).toBe(least(rows["cold, wet again"]));
  });

  test("a short peak is as hot a hold as surroundings that warm: the same clearance in it, and the same grip after it", () => {
    const fields = { "outside zone": "+0.20/+0.25", "share of grip kept": "60 %" };
    const peaked = sorrel({ ...fields, temperature: "-20 to 40", "short peak temperature": 80 });
    const warm = sorrel({ ...fields, temperature: "-20 to 80" });
    const figures = ({ state: _, verdict: __, ...row }: Row) => row;
    expect(figures(peaked["short peak"]!)).toEqual(figures(warm.hot!));
    for (const state of ["cold", "cold again"]) expect(figures(peaked[state]!)).toEqual(figures(warm[state]!));
    expect(grip(peaked["cold again"])).toBeLessThan(
      grip(sorrel({ ...fields, temperature: "-20 to 40" })["cold again"]),
    );
  });

  test("in a short peak the grade's short-term highest temperature counts", () => {
    const at = (peak: number) =>
      sorrel({ "outside zone": "+0.15/+0.20", temperature: "-20 to 40", "short peak temperature": peak })["short peak"]!
        .verdict;
    expect([at(95), at(200)]).toEqual(["fits", "fails, hotter than the grade bears"]);
  });

  test("a share that is not told is shown at both ends, and is care", () => {
    const fields = { "outside zone": "+0.15/+0.20", "share of grip kept": "" };
    const { "cold again": back, "cold again 2": none } = sorrel(fields);
    expect([back!["share of grip kept"], back!.verdict]).toEqual([1, "care, share of grip kept not told"]);
    expect(none!["share of grip kept"]).toBe(0);
    expect(none!.verdict).toBe("care, binds, grip lost, share of grip kept not told");
    // nothing kept: S is the whole interference when hot, 0.129 + 23·60·6.14e-5
    expect(grip(none)).toBeCloseTo(0.129 - 23 * 40 * 6.14e-5 - (0.129 + 23 * 60 * 6.14e-5), 12);
    expect(sorrel({ ...fields, "share of grip kept": "100 %" })["cold again"]!.verdict).toBe("fits");
    const note = call(functions.DUTYCHECKS, [pressedBush(fields), "", "Demo Sorrel"]).find(
      ([name]) => name === "clearance",
    )!;
    expect(note.at(-1)).toMatch(/; -0.0\d+ mm with nothing of the press fit kept$/);
  });

  test("a moisture at assembly that is not told is looked at dry and humid, and is care", () => {
    const fields = { "moisture at assembly": "", "outside zone": "+0.25/+0.30", temperature: "0 to 40" };
    const untold = sorrel(fields);
    expect(untold.assembly!.verdict).toBe("fits");
    expect(untold.cold).toMatchObject({
      "moisture at assembly": "dry, assumed",
      verdict: "care, moisture at assembly not told",
    });
    for (const [state, moist] of Object.entries(sorrel({ ...fields, "moisture at assembly": "humid" }))) {
      if (state === "assembly") continue;
      const same = untold[`${state} 2`] ?? untold[state];
      const dependent = { "moisture at assembly": "humid, assumed", verdict: "care, moisture at assembly not told" };
      expect(same).toEqual({ ...moist, ...dependent });
    }
  });

  test("a bush that may have been pressed in dry and is soaked loses more of its grip than a humid one: both are judged", () => {
    const fields = {
      moisture: "wet",
      temperature: "20 to 40",
      "share of grip kept": "50 %",
      "outside zone": "+0.2/+0.25",
    };
    const left = (moisture: string) => {
      const checks = call(functions.DUTYCHECKS, [
        pressedBush({ ...fields, "moisture at assembly": moisture }),
        "",
        "Demo Sorrel",
      ]);
      return checks.find(([name]) => name === "grip")![1] as number;
    };
    expect(left("dry")).toBeLessThan(left("humid"));
    expect(left("")).toBe(left("dry"));
  });
});

describe("laws", () => {
  test("clearance shrinks and grip grows as moisture in service grows; assembly stays", () => {
    const [dry, humid, wet] = ["dry", "humid", "wet"].map((moisture): Record<string, Row> => sorrel({ moisture }));
    expect(least(humid!["hot, humid"])).toBeLessThan(least(dry!.hot));
    expect(least(wet!["hot, wet"])).toBeLessThan(least(humid!["hot, humid"]));
    expect(grip(wet!["hot, wet"])).toBeGreaterThan(grip(humid!["hot, humid"]));
    expect(wet!.hot).toEqual(dry!.hot);
    expect(wet!.assembly).toEqual(dry!.assembly);
  });
  test("a thin housing gives way: less close-in; held at its ends the bush closes in more", () => {
    const hot = (more: Fields) => least(sorrel({ ...more, moisture: "wet" })["hot, wet"]);
    expect(hot({ "housing outside": 24 })).toBeGreaterThan(hot({ "housing outside": 60 }));
    expect(hot({ "housing outside": 60 })).toBeGreaterThan(hot({}));
    expect(hot({ "held at its ends": "yes" })).toBeLessThan(hot({}));
  });
  test("friction warms the bore above its surroundings, the housing may stay cool, and tighter is the clearance", () => {
    const rows = sorrel({ motion: "", rpm: 60, temperature: "20 to 40", "outside zone": "+0.15/+0.20" });
    // 500/(20·20) MPa · π·20·60/60000 m/s over 0.13 of the 67 K between 23 and 90 °C
    const rise = ((1.25 * Math.PI * 0.02) / 0.13) * 67;
    expect(rows.running!["bush temperature"]).toBeCloseTo(40 + rise, 9);
    expect(rows["running, housing cool"]).toMatchObject({ "housing temperature": 40 });
    expect(least(rows["running, housing cool"])).toBeLessThan(least(rows.running));
  });
  test("inch and metric answer the same", () => {
    const inch = { load: "500 N", bore: 20 / 25.4, length: 20 / 25.4, outside: 23 / 25.4, temperature: "-4 to 176" };
    const zones = { "outside zone": "+0.05/+0.10 mm", moisture: "humid" };
    const [, ...metric] = call(functions.FITTABLE, [pressedBush(zones), "", "Demo Sorrel"]);
    const [, ...found] = call(functions.FITTABLE, [pressedBush({ ...inch, ...zones }), "", "Demo Sorrel"], "inch");
    expect(found).toHaveLength(metric.length);
    found.forEach((row, r) => {
      const back = row.map((x, i) => {
        if (typeof x !== "number") return x;
        return i < 3 ? (x - 32) / 1.8 : i < 6 ? x : i < 11 ? x * 25.4 : x * 0.006894757293168361;
      });
      back.forEach((x, i) => {
        if (typeof x === "number") expect(x).toBeCloseTo(metric[r]![i] as number, 8);
        else expect(x).toBe(metric[r]![i]);
      });
    });
  });
  test("the worst case is the worst of a fine grid of sizes, and the band lies inside it", () => {
    const zones = {
      "bore zone": [0.02, 0.06],
      "shaft zone": [-0.05, -0.02],
      "outside zone": [0.1, 0.16],
      "housing zone": [0, 0.02],
    };
    const given = { "zone holds": "free", moisture: "humid", "share of grip kept": "70 %" };
    const at = (place: (low: number, high: number, i: number) => string) =>
      sorrel({
        ...given,
        ...Object.fromEntries(Object.entries(zones).map(([key, [a, b]], i) => [key, place(a!, b!, i)])),
      });
    const whole = at((a, b) => `${a}/${b}`);
    const steps = [0, 0.5, 1];
    const all = steps.flatMap((b) =>
      steps.flatMap((s) =>
        steps.flatMap((o) =>
          steps.map((h) =>
            at((low, high, i) => {
              const size = low + (high - low) * [b, s, o, h][i]!;
              return `${size}/${size}`;
            }),
          ),
        ),
      ),
    );
    for (const [state, row] of Object.entries(whole)) {
      const rows = all.flatMap((one) => one[state] ?? []);
      // which state is the narrowest after the hottest hold depends on the sizes
      if (rows.length < all.length) continue;
      expect(least(row)).toBeCloseTo(Math.min(...rows.map(least)), 12);
      expect(greatest(row)).toBeCloseTo(Math.max(...rows.map(greatest)), 12);
      expect(grip(row)).toBeCloseTo(Math.min(...rows.map(grip)), 12);
      expect(row["hoop stress"]).toBeCloseTo(Math.max(...rows.map((one) => one["hoop stress"] as number)), 9);
      expect(row["root-sum-square least"]).toBeGreaterThan(least(row));
      expect(row["root-sum-square greatest"]).toBeLessThan(greatest(row));
    }
  });
  test("a band counts at its harder end in each column", () => {
    const fields = (wall: unknown) => ({ outside: "", wall, moisture: "humid", "outside zone": "+0.1/+0.2" });
    const [thin, thick, banded] = [1.5, 2.5, "1.5 to 2.5"].map((wall) => sorrel(fields(wall)));
    for (const [state, row] of Object.entries(banded!)) {
      const [a, b] = [thin![state], thick![state]];
      expect(least(row)).toBe(Math.min(least(a), least(b)));
      expect(greatest(row)).toBe(Math.max(greatest(a), greatest(b)));
      expect(grip(row)).toBe(Math.min(grip(a), grip(b)));
      expect(words.indexOf(wordOf(row.verdict))).toBe(
        Math.min(...[a, b].map((r) => words.indexOf(wordOf(r!.verdict)))),
      );
    }
  });
});

test("of corners that are as bad each says why", () => {
  const at = (bore: unknown) =>
    sorrel({ bore, outside: "", wall: 1.5, temperature: "-35 to 20", "outside zone": "+0.25/+0.45" }).cold!.verdict;
  expect(at(6)).toBe("fails, overstressed");
  expect(at(90)).toBe("fails, binds, grip lost");
  expect(at("6 to 90")).toBe("fails, overstressed, binds, grip lost");
  expect(at("6 to 7")).toBe("fails, overstressed");
});

const wordOf = (verdict: string) => verdict.split(",")[0] as (typeof words)[number];
const worst = (verdicts: readonly string[]) =>
  words.find((word) => verdicts.some((verdict) => wordOf(verdict) === word));

describe("the rows say what the criteria say", () => {
  const fitCriteria = ["clearance", "grip"];
  const temperatures = ["highest temperature", "bore temperature", "short peak", "lowest temperature"];
  /** The worst row against the worst of the criteria; a state beyond the grade's temperatures is told by those criteria. */
  function expectAgreement(duty: unknown, ...more: unknown[]): void {
    const rows = Object.values(statesOf(duty, ...more));
    const checks = call(functions.DUTYCHECKS, [duty, ...more]) as string[][];
    const said = (names: readonly string[]) => checks.filter(([name]) => names.includes(name!)).map((line) => line[5]!);
    const isBeyond = (verdict: string) => /than the grade bears/.test(verdict);
    const within = rows.map(({ verdict }) => verdict).filter((verdict) => !isBeyond(verdict));
    if (rows.some(({ verdict }) => isBeyond(verdict))) expect(worst(said(temperatures))).toBe("fails");
    else expect(worst(within)).toBe(worst(said(fitCriteria)));
  }

  test("of every greenhouse duty with a fit", () => {
    const table = [dutyHeadings, ...dutyCells];
    const names = call(functions.DUTIES, [table]).map(([name]) => name);
    const fitted = names.filter(
      (name) => name && !(call(functions.FITTABLE, [table, name])[0]![0] instanceof CellError),
    );
    expect(fitted.length).toBeGreaterThanOrEqual(6);
    for (const name of fitted)
      for (const grade of [null, "Demo Sorrel", "Demo Tansy", "Demo Fennel"]) expectAgreement(table, name, grade);
  });

  test("of random duties", () => {
    const found = new Set<unknown>();
    const band = (low: number, high: number) =>
      fc.tuple(between(low, high), between(0.001, 0.08)).map(([a, width]) => `${a}/${a + width}`);
    const duty = fc.record({
      ...{ load: between(1, 2000), bore: between(10, 40), wall: between(1, 4), "shaft zone": band(-0.1, 0) },
      ...{ "bore zone": band(0, 0.2), "outside zone": band(-0.02, 0.5), "housing zone": band(0, 0.02) },
      "zone holds": fc.constantFrom("pressed", "free", ""),
      motion: fc.constantFrom("static", ""),
      moisture: fc.constantFrom("dry", "humid", "wet"),
      "moisture at assembly": fc.constantFrom("dry", "humid", "wet", ""),
      "share of grip kept": fc.constantFrom("30 %", "70 %", "95 %", ""),
      "held at its ends": fc.constantFrom("yes", ""),
      "least clearance wanted": fc.constantFrom("", 0.02),
      temperature: fc.constantFrom("20 to 40", "-10 to 60", "30 to 95", "-50 to 20"),
    });
    check(
      fc.tuple(duty, fc.constantFrom("Demo Sorrel", "Demo Tansy", "Demo Fennel", "Demo Medlar")),
      ([fields, grade]) => {
        const card = pressedBush({ ...fields, outside: "", rpm: fields.motion === "" ? 30 : "" });
        expectAgreement(card, "", grade);
        Object.values(statesOf(card, "", grade)).forEach(({ verdict }) => found.add(verdict.split(", ")[0]));
      },
      400,
    );
    expect([...found].sort()).toEqual(["care", "fails", "fits"]);
  });
});

describe("answers that are no errors, and errors that are", () => {
  test("loose from the start, and binding", () => {
    expect(sorrel({ "outside zone": "h9" }).assembly!.verdict).toBe("fails, loose in the housing");
    expect(sorrel({ "bore zone": "H7", "shaft zone": "k6" }).assembly!.verdict).toBe("fails, binds");
    expect(sorrel({ "bore zone": "H7", "outside zone": "h9", "shaft zone": "k6" }).assembly!.verdict).toBe(
      "fails, binds, loose in the housing",
    );
    expect(sorrel({ "least clearance wanted": 0.061 }).assembly!.verdict).toBe("fails, less clearance than wanted");
    expect(sorrel({ "least clearance wanted": 0.06 }).assembly!.verdict).toBe("fits");
  });
  test("a clearance of zero binds, an interference of zero is loose", () => {
    const at = (bore: string, outside: string, shaft: string) =>
      sorrel({ "bore zone": bore, "outside zone": outside, "housing zone": "0/0", "shaft zone": shaft }).assembly!
        .verdict;
    expect(at("0/0.125", "0.0625/0.125", "-0.125/-0.125")).toBe("fits");
    expect(at("0/0.125", "0.0625/0.125", "0/0")).toBe("fails, binds");
    expect(at("0/0.125", "0/0.125", "-0.125/-0.125")).toBe("fails, loose in the housing");
  });
  test("a bush squeezed beyond its strength, which the criterion grip tells too", () => {
    // 2·p·D²/(D² − d²) = 85 MPa at p = 10.364 MPa: δ = p·D·(ch + cb) = 0.6531 mm
    const limit = ((85 * 129) / 2 / 529) * 23 * (compliance.housing + compliance.bush);
    expect(limit).toBeCloseTo(0.6531, 4);
    const at = (interference: number) => ({
      ...{ "outside zone": `${interference}/${interference}`, "housing zone": "0/0", temperature: 20 },
    });
    const criterion = (interference: number) =>
      call(functions.DUTYCHECKS, [pressedBush(at(interference)), "", "Demo Sorrel"]).find(([name]) => name === "grip")!;
    expect(sorrel(at(limit * 0.999)).assembly!.verdict).toBe("fits");
    expect(criterion(limit * 0.999)[5]).toBe("fits");
    expect(sorrel(at(limit * 1.01)).assembly!.verdict).toBe("fails, overstressed");
    expect(criterion(limit * 1.01).slice(5)).toEqual([
      "fails",
      "grip: crushed when assembly, hoop stress 101 % of the compressive strength",
    ]);
  });

  const headings = ["grade", "compressive modulus", "Poisson's ratio", "expansion", "expansion step"];
  const own = (more: Fields) => [
    [...headings, ...Object.keys(more)],
    ["Shed stock", 2500, 0.4, 8.5e-5, 0, ...Object.values(more)],
  ];
  const strong = { "compressive strength": 85, "highest temperature": 90, "lowest temperature": -40 };
  test("what the grade lacks of the judgement is said in its rows, not passed over", () => {
    const at = (missing: string) =>
      statesOf(pressedBush({ "outside zone": "+0.15/+0.20" }), "", "Shed stock", own({ ...strong, [missing]: null }));
    expect(at("compressive strength").assembly!.verdict).toBe("no data, compressive strength");
    expect(at("highest temperature").hot!.verdict).toBe("no data, highest temperature");
    expect(at("lowest temperature").cold!.verdict).toBe("no data, lowest temperature");
    expect(at("lowest temperature").hot!.verdict).toBe("fits");
    // what is known to fail does not turn into no data
    expect(statesOf(pressedBush(), "", "Shed stock", own({})).cold!.verdict).toBe("fails, grip lost");
  });
  test.each([
    [{ moisture: "wet" }, "swelling saturated"],
    [{ moisture: "humid" }, "swelling at 50 % RH"],
    [{ "moisture at assembly": "" }, "swelling at 50 % RH"],
    [{ motion: "", rpm: 20 }, "PV limit"],
  ])("a figure that the states need is #N/A by its name: %j", (fields, missing) => {
    const [[error]] = call(functions.FITTABLE, [pressedBush(fields), "", "Shed stock", own(strong)]) as [[CellError]];
    expect(error).toEqual(new CellError("#N/A", `grade "Shed stock" has no data on ${missing}`));
  });
  test.each<[string, Fields, string, RegExp]>([
    [
      "no fit at all",
      { "bore zone": "", "shaft zone": "", "outside zone": "", "housing zone": "" },
      "#VALUE!",
      /^bore zone is missing: the states of a fit need it$/,
    ],
    ["no shaft zone", { "shaft zone": "" }, "#VALUE!", /^shaft zone is missing/],
    ["no housing", { housing: "" }, "#VALUE!", /^housing is missing/],
    ["no shaft", { shaft: "" }, "#VALUE!", /^shaft is missing/],
    ["no wall", { outside: "" }, "#VALUE!", /^wall is missing/],
    ["bore not below outside", { bore: 23 }, "#VALUE!", /outside must be above the bore of 23 mm, got 23 mm$/],
    [
      "outside not below the housing's",
      { "housing outside": 23 },
      "#VALUE!",
      /housing outside must be above the bush's outside of 23 mm/,
    ],
    ["zone unknown", { "bore zone": "Q7" }, "#N/A", /bore zone Q7 at 20 mm is not held here/],
    ["zone unreadable", { "outside zone": "press" }, "#VALUE!", /outside zone must be ISO 286 class/],
    ["shaft's zone for a hole", { "housing zone": "h7" }, "#VALUE!", /housing zone must be a hole class/],
    ["hole's zone for a shaft", { "shaft zone": "H7" }, "#VALUE!", /shaft zone must be a shaft class/],
    [
      "size above 500",
      { bore: 510, outside: 530 },
      "#VALUE!",
      /bore must be above 0 mm and at most 500 mm .* got "510 mm"/,
    ],
    ["cold above hot", { temperature: "90 to 80" }, "#VALUE!", /temperature must be .*lowest .*first/],
    ["metal unknown", { housing: "unobtainium" }, "#N/A", /housing "unobtainium" is no metal known here; try/],
    ["moisture no word", { moisture: "damp" }, "#VALUE!", /moisture must be "dry", "humid" or "wet"/],
    [
      "washer",
      {
        part: "washer",
        inner: 20,
        outer: 40,
        ...Object.fromEntries(
          [
            "bore",
            "length",
            "outside",
            "bore zone",
            "shaft zone",
            "outside zone",
            "housing zone",
            "moisture at assembly",
            "share of grip kept",
          ].map((key) => [key, ""]),
        ),
      },
      "#VALUE!",
      /^a washer has no bore, and no fit$/,
    ],
  ])("%s", (_, fields, code, text) => {
    const [[error]] = call(functions.FITTABLE, [pressedBush(fields), "", "Demo Sorrel"]) as [[CellError]];
    expect([error.code, error.message]).toEqual([code, expect.stringMatching(text)]);
    expect(error.message!.length).toBeLessThanOrEqual(120);
  });
  test.each([
    ["Demo Sorrle", {}, /^grade "Demo Sorrle" is unknown; nearest: Demo Sorrel/],
    ["epoxy + PTFE", { moisture: "wet" }, /^grade "epoxy \+ PTFE" has no data on swelling/],
  ])("grade %s", (grade, fields, text) => {
    const [[error]] = call(functions.FITTABLE, [pressedBush(fields), "", grade]) as [[CellError]];
    expect(error).toMatchObject({ code: "#N/A", message: expect.stringMatching(text) as string });
  });
  test("cold and hot may be one temperature, and deviations as text serve any size", () => {
    expect(Object.keys(sorrel({ temperature: 20 }))).toEqual(["assembly", "cold", "hot", "cold again"]);
    const zones = { "bore zone": "0.2/0.3", "housing zone": "0/0.1", "shaft zone": "-0.1/-0.2" };
    expect(least(sorrel({ bore: 600, outside: 620, ...zones }).assembly)).toBeCloseTo(0.3, 9);
  });
});
