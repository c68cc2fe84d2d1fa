import { functions } from "../../../src/core";
import { shareText } from "../../../src/core/duties/model/bandTally";
import { call, message } from "../../support";
import { card, near, plainGrades, rows, sleeve, speed } from "./plain";
import type { Fields } from "./plain";

const bandOf = (fields: Fields, grade = "Plain") => rows(functions.DUTYBAND, [card(fields), null, grade, plainGrades]);
const row = (fields: Fields, criterion: string, grade?: string) => {
  const [best, likely, worst, verdict, passes] = bandOf(fields, grade).get(criterion)!;
  return { best, likely, worst, verdict, passes };
};
/** PV use of a load in N at 23 °C. */
const use = (load: number) => ((load / 400) * speed) / 0.1;

test("the whole verdict first, then the criteria that are asked, in their order", () =>
  expect([...bandOf({ ...sleeve, load: "200 to 400" }).keys()]).toEqual([
    ...["verdict, Plain", "running pressure", "highest temperature", "speed", "PV", "bore temperature"],
    "length over bore",
  ]));

test("best, likely and worst use: at the ends of the band, and at its middle or likely value", () => {
  const even = row({ ...sleeve, load: "200 to 400" }, "PV");
  [even.best, even.likely, even.worst].forEach((found, i) => near(found, use([200, 300, 400][i]!)));
  expect([even.verdict, even.passes]).toEqual(["fits", "passes throughout"]);
  const tolerance = row({ ...sleeve, load: "300 ± 10 %" }, "PV");
  [tolerance.best, tolerance.likely, tolerance.worst].forEach((found, i) => near(found, use([270, 300, 330][i]!)));
});

describe("how much passes", () => {
  const limit = (0.1 * 400) / speed; // 636.6 N
  test("the share of the band below the limit", () => {
    const { verdict, passes } = row({ ...sleeve, load: "400 to 800" }, "PV");
    expect([verdict, passes]).toEqual(["fails", `${Math.round((limit - 400) / 4)} %`]);
  });
  test("the share of the triangle below the limit", () => {
    const share = 1 - (720 - limit) ** 2 / (240 * 120);
    expect(row({ ...sleeve, load: "600 ± 20 %" }, "PV").passes).toBe(`${Math.round(share * 100)} %`);
  });
  test("of two bands the area below the curve on which their product is at the limit", () => {
    const given = { ...sleeve, load: "400 to 800", rpm: "40 to 80" };
    const product = limit * 60; // N · 1/min
    const [a, b] = [product / 80, 800];
    const area = (a - 400) * 40 + (product * Math.log(b / a) - 40 * (b - a));
    expect(row(given, "PV").passes).toBe(`${Math.round((area / 400 / 40) * 100)} %`);
  });
  test("what fails at every point fails throughout, even where other data are missing", () => {
    const given = { ...sleeve, load: "700 to 800", "impact factor": 2 };
    expect(row(given, "PV").passes).toBe("fails throughout");
    expect(row(given, "verdict, Bare", "Bare")).toMatchObject({ verdict: "fails", passes: "fails throughout" });
  });
  test("without data there is no share", () => {
    const given = { ...sleeve, load: "400 to 800", "impact factor": 2 };
    expect(row(given, "shock", "Bare")).toMatchObject({ best: "", worst: "", verdict: "no data", passes: "no data" });
    expect(row(given, "verdict, Bare", "Bare")).toMatchObject({ verdict: "fails", passes: "no data" });
    expect(row(given, "PV", "Bare").passes).toBe("59 %");
  });
  test("care does not fail, and is told", () =>
    expect(row({ ...sleeve, load: "200 to 300", "impact factor": 2 }, "verdict, Plain")).toMatchObject({
      ...{ verdict: "care", passes: "passes throughout" },
    }));
  test("a corner that fails is not rounded away, nor one that passes", () => {
    expect(row({ ...sleeve, load: "400 to 636.7" }, "PV").passes).toBe(">99 %");
    expect(row({ ...sleeve, load: "636.5 to 900" }, "PV").passes).toBe("<1 %");
    expect(["0", "0.0099", "0.01", "0.456", "0.99", "0.991", "1"].map((x) => shareText(Number(x)))).toEqual([
      ...["<1 %", "<1 %", "1 %", "46 %", "99 %", ">99 %", ">99 %"],
    ]);
  });
});

test("a criterion that is asked in a part of the band is judged there", () => {
  const shock = row({ ...sleeve, "impact factor": "1 to 2" }, "shock");
  expect(shock).toMatchObject({ best: "", likely: "", worst: "", verdict: "care", passes: "passes throughout" });
});

test("where a point is beyond and no ratio tells how far, there is no worst use", () => {
  const worn = { ...sleeve, load: "500 to 700", hours: 10, "wear allowance": 0.2 };
  expect(row(worn, "wear life")).toMatchObject({ worst: "", verdict: "fails" });
  expect(typeof row(worn, "wear life").best).toBe("number");
});

test("a duty without a band, or with one that cannot be, is told what to type", () => {
  const told = (fields: Fields) => message(call(functions.DUTYBAND, [card(fields), null, "Plain", plainGrades]));
  expect(told(sleeve)).toBe('duty holds no band: type a number of it as "640 to 960" or "800 ± 20 %"');
  expect(told({ ...sleeve, load: "800 to 400" })).toContain("lower end first");
});
