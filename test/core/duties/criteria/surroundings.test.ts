import type { FieldValues } from "../../../../src/core/duties";
import type { Rating } from "../../../../src/core/grades/model";
import { finding, full, line, on, resting, said, without } from "../support";

describe("moisture", () => {
  test("the swelling has to be known; its size is told, and it passes", () => {
    expect(finding("moisture", full, on({ moisture: "wet" }))).toMatchObject({
      word: "fits",
      value: 0.01,
      property: "swellingSaturated",
    });
    expect(finding("moisture", full, on({ moisture: "humid" }))).toMatchObject({
      word: "fits",
      value: 0.003,
      property: "swelling50",
    });
    expect(said("moisture", without("swellingSaturated"), on({ moisture: "wet" }))).toBe(
      "no data, moisture: swelling saturated",
    );
    // the one never stands in for the other
    expect(finding("moisture", without("swelling50"), on({ moisture: "humid" })).word).toBe("no data");
  });
  test("none is nothing to be told, a little is", () => {
    const told = (swellingSaturated: number) => line({ ...full, swellingSaturated }, on({ moisture: "wet" }));
    expect(told(0)).toBe("fits, PV 50 %");
    expect(told(0.0005)).toBe("fits, PV 50 %; swells 0.05 %");
    expect(told(0.02)).toBe("fits, PV 50 %; swells 2 %");
  });
});

describe("media: resistant passes, limited is care, attacked fails, unknown is no data", () => {
  const with_ = (...media: Required<FieldValues>["media"][number][]) => on({ media });
  test("one by one", () => {
    expect(finding("media", full, with_("water"))).toMatchObject({ word: "fits", property: "media" });
    expect(said("media", full, with_("fuels"))).toBe("care, fuels: limited");
    expect(said("media", full, with_("strong acids"))).toBe("fails, strong acids: attacked");
    expect(said("media", full, with_("weak acids"))).toBe("no data, media: weak acids");
    expect(said("media", without("media"), with_("water"))).toBe("no data, media: water");
  });
  test("the worst of several governs, and all that are as bad are named", () => {
    expect(said("media", full, with_("water", "fuels", "alcohols"))).toBe("care, fuels: limited; alcohols: limited");
    expect(said("media", full, with_("fuels", "weak acids", "sea water"))).toBe(
      "no data, media: weak acids; media: sea water",
    );
    expect(said("media", full, with_("weak acids", "strong acids", "fuels"))).toBe("fails, strong acids: attacked");
    expect(line(full, with_("fuels", "alcohols"))).toBe("care, fuels: limited; alcohols: limited; PV 50 %");
  });
  test("at rest as in motion", () =>
    expect(finding("media", full, on({ media: ["fuels"] }, resting)).word).toBe("care"));
  test("hotter than the rating holds for is care, by the surroundings or their short peak; attacked stays so", () => {
    const to40 = (rating: "resistant" | "attacked") => ({ ...full, media: [{ medium: "water", rating, to: 40 }] });
    const at = (high: number, peak?: number) =>
      on({ media: ["water"], temperature: { low: 20, high }, ...(peak !== undefined && { peakTemperature: peak }) });
    for (const duty of [at(40), at(30, 40)]) expect(finding("media", to40("resistant"), duty).word).toBe("fits");
    for (const duty of [at(41), at(30, 41)])
      expect(said("media", to40("resistant"), duty)).toBe("care, water: rated resistant to 40 °C only, here 41 °C");
    expect(said("media", to40("attacked"), at(30, 60))).toBe("fails, water: attacked");
  });
});

/** Each rating of the grade with what it comes to. */
interface Rated {
  readonly id: "dirt" | "shock" | "damping" | "vacuum";
  readonly fields: FieldValues;
  readonly words: Readonly<Record<Rating, string>>;
  readonly because?: string;
}
const strict = { good: "fits", fair: "care", poor: "fails" };
const rated: readonly Rated[] = [
  { id: "dirt", fields: { dirt: "heavy" }, words: strict },
  { id: "dirt", fields: { dirt: "some" }, words: { good: "fits", fair: "fits", poor: "care" } },
  { id: "shock", fields: { impactFactor: 1.5 }, words: strict },
  { id: "damping", fields: { damping: "yes" }, words: strict },
  {
    ...{ id: "vacuum", fields: { vacuum: "yes" }, words: { good: "care", fair: "care", poor: "fails" } },
    because: ": PV limits rely on air",
  },
];
test.each(rated)("$fields by the rating $id", ({ id, fields, words, because = "" }) => {
  for (const rating of ["good", "fair", "poor"] as const) {
    const values = { ...full, [id]: rating };
    expect(finding(id, values, on(fields))).toMatchObject({ word: words[rating], property: id });
    if (words[rating] !== "fits")
      expect(said(id, values, on(fields))).toBe(`${words[rating]}, ${id} ${rating}${because}`);
  }
  expect(finding(id, without(id), on(fields))).toMatchObject({ word: "no data", property: id });
  expect(line(without(id), on(fields))).toBe(`no data, ${id}`);
});
