import { functions } from "../../../src/core";
import { call, CellError, pressedBush } from "../../support";
import { card, near, plainGrades, rows, sleeve, speed } from "./plain";
import type { Fields } from "./plain";

describe("FITTABLE", () => {
  type Row = Readonly<Record<string, number | string>>;
  const statesOf = (fields: Readonly<Record<string, unknown>>, grades: unknown = null, grade = "Demo Sorrel") => {
    const [headings, ...lines] = call(functions.FITTABLE, [pressedBush(fields), "", grade, grades]) as [
      string[],
      ...(number | string)[][],
    ];
    const names = headings.map((heading) => heading.replace(/ \[.*/, ""));
    return Object.fromEntries(
      lines.map((line) => [line[0], Object.fromEntries(names.map((name, i) => [name, line[i]!])) as Row]),
    );
  };
  const tight = { "outside zone": "+0.2/+0.3" };

  // Demo Sorrel bears −35 to 90 °C
  test("at the grade's own temperatures a state fits", () => {
    expect(statesOf({ ...tight, temperature: "20 to 90" }).hot!.verdict).toBe("fits");
    expect(statesOf({ ...tight, temperature: "-35 to 20" }).cold!.verdict).toBe("fits");
  });
  test("the lowest temperature is asked below 20 °C alone, not at the assembly's", () => {
    const own = [
      ["grade", "compressive modulus", "Poisson's ratio", "expansion", "expansion step", "compressive strength"],
      ["Shed stock", 2500, 0.4, 8.5e-5, 0, 85],
    ].map((row, i) => [...row, i === 0 ? "highest temperature" : 90]);
    const { assembly, cold } = statesOf({ ...tight, temperature: "10 to 30" }, own, "Shed stock");
    expect([assembly!.verdict, cold!.verdict]).toEqual(["fits", "no data, lowest temperature"]);
  });

  const turning = { ...tight, motion: "", rpm: 60, temperature: "20 to 40" };
  test("where one of the states told fails none is added for a warmer bore", () => {
    const least = statesOf(turning)["running, housing cool"]!["least clearance"] as number;
    const told = statesOf({ ...turning, "least clearance wanted": least + 1e-6 });
    expect(told["running, housing cool"]!.verdict).toBe("fails, less clearance than wanted");
    expect(told.assembly!.verdict).toBe("fits");
    expect(Object.keys(told).filter((name) => /bore warmer/.test(name))).toEqual([]);
  });
  test("of a band each column tells its harder end, and the verdict that of the harder corner", () => {
    const at = (load: number | string, wanted: number) =>
      statesOf({ ...turning, load, "least clearance wanted": wanted });
    const clearanceAt = (load: number) => at(load, 0)["running, housing cool"]!["least clearance"] as number;
    const wanted = (clearanceAt(250) + clearanceAt(500)) / 2;
    for (const state of ["running", "running, housing cool"]) {
      const [light, heavy, band] = [250, 500, "250 to 500"].map((load) => at(load, wanted)[state]!) as [Row, Row, Row];
      const ends = (heading: string) => [light[heading], heavy[heading]] as [number, number];
      for (const heading of ["bush temperature", "housing temperature", "greatest clearance", "hoop stress"])
        expect([heading, band[heading]]).toEqual([heading, Math.max(...ends(heading))]);
      for (const heading of ["least clearance", "least interference", "root-sum-square least"])
        expect([heading, band[heading]]).toEqual([heading, Math.min(...ends(heading))]);
      // the heavier load runs warmer, tighter in its housing
      expect(heavy["bush temperature"]).toBeGreaterThan(light["bush temperature"] as number);
      expect(heavy["hoop stress"]).toBeGreaterThan(light["hoop stress"] as number);
    }
    const verdicts = [250, 500, "250 to 500"].map((load) => at(load, wanted)["running, housing cool"]!.verdict);
    expect(verdicts).toEqual([
      expect.stringMatching(/^(fits|care)/),
      ...Array<string>(2).fill("fails, less clearance than wanted"),
    ]);
  });
});

describe("a band is told at its hardest corner", () => {
  const pressed = {
    ...{ bore: 15, length: 18, wall: 1.5, rpm: 30, temperature: "10 to 40", shaft: "hardened steel" },
    ...{ housing: "carbon steel", "housing outside": 35, "bore zone": "D10", "outside zone": "+0.12/+0.16" },
    ...{ "housing zone": "H7", "shaft zone": "h8" },
  };
  const told = (criterion: string, fields: Fields) =>
    rows(functions.DUTYCHECKS, [card(fields), null, "Demo Medlar"]).get(criterion)!;
  const sheet = (criterion: string, fields: Fields) =>
    call(functions.DUTYSHEET, [card(fields), null, "Demo Medlar"]).filter(([section]) => section === criterion);
  /** The band says what its harder end says, of which the milder one says less. */
  const isHarder = (criterion: string, fields: Fields, harder: Fields, milder: Fields) => {
    const [band, hard, mild] = [fields, harder, milder].map((more) => told(criterion, { ...pressed, ...more }));
    expect(band).toEqual(hard);
    expect(band).not.toEqual(mild);
  };

  test.each(["load", "rpm"])("grip that %s does not move: the share at which it is lost, the hoop stress", (field) => {
    const [low, high] = field === "load" ? [100, 900] : [10, 40];
    const band = { load: 300, [field]: `${low} to ${high}` };
    isHarder("grip", band, { load: 300, [field]: high }, { load: 300, [field]: low });
    const corner = sheet("grip", { ...pressed, ...band }).find(([, what]) => what === "worst corner");
    expect(corner![4]).toMatch(new RegExp(`^${field} ${high}`));
  });
  test("grip that is held with care: where less of it is left", () => {
    const swinging = { load: 300, bore: 20, length: 20, swing: 40, cycles: 2, temperature: "-5 to 40" };
    const { rpm: _, ...still } = pressed;
    const fields = { ...still, ...swinging, housing: "aluminium alloy", "housing outside": 45 };
    const [band, thin, thick] = ["1.5 to 3", 1.5, 3].map((wall) =>
      told("grip", { ...fields, wall, "moisture at assembly": "dry" }),
    );
    expect(band).toEqual(thick);
    expect(thick![0]).toBeLessThan(thin![0] as number);
  });
  test("a crushed bush: where it is crushed the most", () =>
    isHarder(
      "grip",
      { load: 300, "outside zone": "+0.6/+0.8", wall: "1.5 to 2" },
      { load: 300, "outside zone": "+0.6/+0.8", wall: 2 },
      { load: 300, "outside zone": "+0.6/+0.8", wall: 1.5 },
    ));
  test("clearance that the load does not move: what is left with nothing of the press fit kept", () => {
    const { rpm: _, ...still } = pressed;
    const cold = {
      ...{ ...still, swing: 40, cycles: 10, temperature: "-20 to 15", length: 15, "housing outside": 60 },
      ...{ "outside zone": "+0.05/+0.08", "moisture at assembly": "dry", moisture: "humid" },
    };
    const [band, light, heavy] = ["100 to 900", 100, 900].map((load) => told("clearance", { ...cold, load }));
    expect(light![0]).toBe(heavy![0]);
    expect(light).not.toEqual(heavy);
    expect(band).toEqual(heavy);
  });
  test("bore temperature that the PV implies: the hotter of the ways out", () => {
    const way = { "housing conductance": 50, friction: 0.05, load: 300 };
    isHarder("bore temperature", { ...way, wall: "1 to 2" }, { ...way, wall: 2 }, { ...way, wall: 1 });
    expect(told("bore temperature", { ...pressed, ...way, wall: 1 })[0]).toBe(
      told("bore temperature", { ...pressed, ...way, wall: 2 })[0],
    );
  });
});

describe("DUTYROOM", () => {
  const roomOf = (fields: Fields, label: string, grade = "Plain") => {
    const [value, , least, , down, greatest, , up] = rows(functions.DUTYROOM, [
      card(fields),
      null,
      grade,
      plainGrades,
    ]).get(label)!;
    return { value, least, down, greatest, up };
  };
  /** N on 20 × 20 mm at 60/min where the PV limit of 0.1 MPa·m/s is reached. */
  const most = (0.1 * 400) / speed;
  test("looks no farther than to a thousand times the value", () => {
    expect(roomOf({ ...sleeve, load: most / 2000 }, "load").up).toBe("none");
    near(roomOf({ ...sleeve, load: most / 900 }, "load").greatest, most);
  });
  test("and no farther than to a thousandth", () => {
    const life = (hours: number) => (hours * 1e-6 * (300 / 400) * speed * 3600) / 0.2;
    const hours = (use: number) => ({ ...sleeve, hours: use / life(1), "wear allowance": 0.2 });
    expect(roomOf(hours(1 / 2000), "wear allowance").down).toBe("none");
    near(roomOf(hours(1 / 900), "wear allowance").least, 0.2 / 900);
  });
  test("a corner that fails outweighs one before it whose data are missing", () => {
    const band = { ...sleeve, hours: 10, "wear allowance": 0.2, load: "250 to 350" };
    near(roomOf(band, "load, middle of its band", "Bare").greatest, most * (300 / 350));
  });
});

test("DUTYSWEEP passes an error among its values on", () => {
  const [, row] = call(functions.DUTYSWEEP, [
    card(sleeve),
    ...["load", [[new CellError("#DIV/0!")]], null, "Plain", plainGrades],
  ]);
  expect([(row![0] as CellError).code, row![1]]).toEqual(["#DIV/0!", ""]);
});
