import { functions } from "../../../src/core";
import { convert } from "../../../src/core/units/conversion";
import { call, message } from "../../support";
import { card, near, plainGrades, rows, sleeve, speed } from "./plain";
import type { Fields } from "./plain";

const roomOf = (fields: Fields, grade = "Plain") => rows(functions.DUTYROOM, [card(fields), null, grade, plainGrades]);
/** Least and greatest of a field with the words and the criteria beyond them. */
const row = (fields: Fields, label: string, grade?: string) => {
  const found = roomOf(fields, grade).get(label);
  if (!found) throw new Error(`no row "${label}": ${[...roomOf(fields, grade).keys()].join("; ")}`);
  const [value, unit, least, below, down, greatest, above, up] = found;
  return { value, unit, least, below, down, greatest, above, up };
};
const none = { least: "", below: "", down: "none" };

test("each number of a duty has its row, in the order of the fields, and the verdict stands above them", () => {
  const all = roomOf({ ...sleeve, "design factor": 1, hours: 100, "wear allowance": 0.2 });
  expect([...all.keys()]).toEqual([
    ...["verdict, Plain", "load", "design factor", "bore", "length", "rpm", "temperature", "hours", "wear allowance"],
  ]);
  expect(all.get("verdict, Plain")).toEqual(["fits, PV 47 %", ...Array(7).fill("")]);
});

describe("limits that can be worked by hand", () => {
  // PV_a = 0.1 at 23 °C: load and rpm up to PV_a, length down to it; bore and length over each other from 0.5 to 2
  test("load, to the PV limit", () => {
    const { value, unit, least, down, greatest, above, up } = row(sleeve, "load");
    expect([value, unit, least, down, above, up]).toEqual([300, "N", "", "none", "fails", "PV"]);
    near(greatest, (0.1 * 20 * 20) / speed);
  });
  test("load, to the running pressure where it is slow", () => {
    const { greatest, up } = row({ ...sleeve, rpm: 1 }, "load");
    expect(up).toBe("running pressure");
    near(greatest, 20 * 20 * 20);
  });
  test("rpm, to the speed limit where the load is light", () => {
    const { greatest, up } = row({ ...sleeve, load: 1 }, "rpm");
    expect(up).toBe("speed");
    near(greatest, 60_000 / (Math.PI * 20));
  });
  test("length, down to half the bore or the PV limit", () => {
    const { least, below, down, greatest, above, up } = row(sleeve, "length");
    expect([below, down, above, up]).toEqual(["care", "length over bore", "care", "length over bore"]);
    near(least, 10);
    near(greatest, 40);
    const loaded = row({ ...sleeve, load: 500 }, "length");
    expect([loaded.below, loaded.down]).toEqual(["fails", "PV"]);
    near(loaded.least, (500 * speed) / (20 * 0.1));
  });
  test("temperature, where the derated limit meets the PV", () => {
    const { greatest, above, up, least, below, down } = row(sleeve, "temperature");
    expect([above, up, below, down]).toEqual(["fails", "PV", "fails", "lowest temperature"]);
    near(greatest, 123 - ((300 / 400) * speed) / 0.001);
    near(least, -40);
  });
  test("design factor, down to its own bound without a turn", () => {
    const found = row({ ...sleeve, "design factor": 1.5 }, "design factor");
    expect(found).toMatchObject({ ...none, above: "fails", up: "PV" });
    near(found.greatest, 0.1 / ((300 / 400) * speed));
  });
  test("hours and allowance, to the shortest life", () => {
    const wear = { ...sleeve, hours: 100, "wear allowance": 0.2 };
    const life = (allowance: number) => allowance / (1e-6 * (300 / 400) * speed * 3600);
    near(row(wear, "hours").greatest, life(0.2));
    near(row(wear, "wear allowance").least, (0.2 * 100) / life(0.2));
    expect(row(wear, "hours").up).toBe("wear life");
  });
});

describe("a verdict that is not good", () => {
  test("may move to where it becomes good, and the criterion that kept it is named", () => {
    const { least, below, down, greatest, up } = row({ ...sleeve, load: 900 }, "load");
    expect([below, down, greatest, up]).toEqual(["fits", "PV", "", "none"]);
    near(least, (0.1 * 20 * 20) / speed);
  });
  test("without data stays so until something fails", () => {
    const found = row({ ...sleeve, hours: 10, "wear allowance": 0.2 }, "load", "Bare");
    expect(found).toMatchObject({ ...none, above: "fails", up: "PV" });
  });
});

describe("what is at a bound", () => {
  test("a number that turns the verdict as soon as it moves", () => {
    const { least, down, greatest, above, up } = row({ ...sleeve, "impact factor": 1 }, "impact factor");
    expect([least, down, greatest, above, up]).toEqual(["", "none", 1, "care", "shock"]);
  });
  test("a bound at which the verdict turns is the limit itself, and has the other word alone", () => {
    const { least, below, down } = row({ ...sleeve, "impact factor": 2 }, "impact factor");
    expect([least, below, down]).toEqual([1, "fits, at it alone", "shock"]);
  });
  test("a shaft at rest has another criterion, so that 0 itself is the limit", () => {
    const { least, below, down } = row(sleeve, "rpm", "Bare");
    expect([least, below, down]).toEqual([0, "no data, at it alone", "static pressure"]);
  });
  test("a number that is 0", () => {
    const { value, greatest, above, up } = row({ ...sleeve, load: "0 N" }, "load");
    expect([value, above, up]).toEqual([0, "fails", "PV"]);
    near(greatest, (0.1 * 20 * 20) / speed);
  });
  test("a number that nothing depends on", () =>
    expect(row({ ...sleeve, "pieces a year": 40 }, "pieces a year")).toMatchObject({ ...none, up: "none" }));
  test("where there is no such duty, the reason is told", () => {
    const { greatest, above, up } = row({ ...sleeve, hours: 10, "wear allowance": 0.2, wall: 1.5 }, "wear allowance");
    expect([above, up]).toEqual(["no duty", "wear allowance must be below the wall of 1.5 mm, got 1.5 mm"]);
    near(greatest, 1.5);
  });
});

test("a verdict that turns back farther out is said to", () => {
  const short = row({ ...sleeve, load: 150, length: 8 }, "length");
  expect([short.above, short.up]).toEqual(["fits", "length over bore; not monotone"]);
  near(short.greatest, 10);
  // from fits to care to fails is one way
  expect(row({ ...sleeve, load: 250 }, "length").down).toBe("length over bore");
});

test("of two temperatures each moves as far as the other", () => {
  const span = { ...sleeve, temperature: "5 to 45" };
  expect(row(span, "temperature, colder end")).toMatchObject({ value: 5, unit: "°C", greatest: "", up: "none" });
  near(row(span, "temperature, colder end").least, -40);
  expect(row(span, "temperature, warmer end")).toMatchObject({ value: 45, least: "", down: "none", up: "PV" });
  near(row(span, "temperature, warmer end").greatest, 123 - ((300 / 400) * speed) / 0.001);
  // a warmer end that fails is made good between the two
  const hot = row({ ...sleeve, temperature: "5 to 100" }, "temperature, warmer end");
  expect([hot.below, hot.down]).toEqual(["fits", "PV"]);
  near(hot.least, 123 - ((300 / 400) * speed) / 0.001);
});

describe("bands", () => {
  test("one moves as a whole, in proportion, told by its middle or its likely value", () => {
    const even = row({ ...sleeve, load: "250 to 350" }, "load, middle of its band");
    expect(even.value).toBe(300);
    near(even.greatest, ((0.1 * 20 * 20) / speed) * (300 / 350));
    const likely = row({ ...sleeve, load: "300 ± 20 %" }, "load, likely value of its band");
    near(likely.greatest, (0.1 * 20 * 20) / speed / 1.2);
  });
  test("the others are held at the ends that are hardest", () => {
    const bands = { ...sleeve, load: "250 to 350", rpm: "50 to 70", bore: "20 ± 1 %" };
    near(row(bands, "length").least, (350 * ((Math.PI * 70) / 60_000)) / 0.1, 1e-8);
    near(row(bands, "load, middle of its band").greatest, (300 / 350) * ((0.1 * 20) / ((Math.PI * 70) / 60_000)), 1e-8);
  });
  test("neither of its ends leaves the domain", () => {
    const factor = row({ ...sleeve, "design factor": "1.2 to 1.8" }, "design factor, middle of its band");
    expect(factor).toMatchObject(none);
    const limit = 0.1 / ((300 / 400) * speed);
    near(factor.greatest, (limit * 1.5) / 1.8);
  });
});

describe("steps", () => {
  const heading = ["duty", "load", "bore", "length", "rpm", "temperature", "time"];
  const steps = [
    heading,
    ["Drum", 300, 20, 20, 60, 23, 5],
    [null, 500, null, null, null, null, 3],
    [null, 300, null, null, 20, null, 5],
  ];
  const all = rows(functions.DUTYROOM, [steps, null, "Plain", plainGrades]);
  test("a number moves in all steps that share it, each time by itself", () =>
    expect([...all.keys()].slice(1)).toEqual([
      ...["load, steps 1, 3", "load, step 2", "bore", "length", "rpm, steps 1, 2", "rpm, step 3"],
      ...["time, step 1", "time, step 2", "time, step 3", "temperature"],
    ]));
  test("the step that is hardest stops it", () => {
    near(all.get("load, steps 1, 3")![5], (0.1 * 20 * 20) / speed);
    near(all.get("rpm, steps 1, 2")![5], 0.1 / ((500 / 400) * ((Math.PI * 20) / 60_000)));
    near(all.get("rpm, step 3")![5], 0.1 / ((300 / 400) * ((Math.PI * 20) / 60_000)));
  });
});

test("in inch units numbers are inch and the limits the same", () => {
  const typed = { "load [N]": 180, "bore [mm]": 15, "length [mm]": 20, rpm: 120, temperature: "5 to 45 °C" };
  const load = (units: "metric" | "inch") =>
    rows(functions.DUTYROOM, [card(typed), null, "Demo Medlar"], units).get("load")!;
  expect(load("inch").slice(1, 2)).toEqual(["lbf"]);
  for (const at of [0, 5]) near(load("inch")[at], convert(load("metric")[at] as number, "N", "lbf"));
});

test("the best grade is named where none is chosen, and a duty that cannot be read is an error", () => {
  expect([...rows(functions.DUTYROOM, [card(sleeve), null, null, plainGrades]).keys()][0]).toBe("verdict, Plain");
  expect(message(call(functions.DUTYROOM, [card({ ...sleeve, load: "much" }), null, "Plain", plainGrades]))).toContain(
    "load",
  );
});
