import { BandTally, sampleCount } from "../../../../src/core/duties/model/bandTally";

/** A tally of so many samples that fail and the rest that fit, and of two corners, one of which fails. */
function tallied(failing: number): BandTally {
  const tally = new BandTally();
  for (let i = 0; i < sampleCount; i++) tally.add(i < failing ? "fails" : "fits", i < failing ? 1.2 : 0.8, "sample");
  tally.add("fails", 1.5, "corner");
  tally.add("fits", 0.5, "corner");
  return tally;
}

test("the share that passes counts every sample once, and no corner", () => {
  // 1014 of 2048 are 49.51 %, 1013 are 49.46 %
  expect(sampleCount).toBe(2048);
  expect(tallied(1034).answers(sampleCount + 2)).toEqual([0.5, "", 1.5, "fails", "50 %"]);
  expect(tallied(1035).answers(sampleCount + 2)).toEqual([0.5, "", 1.5, "fails", "49 %"]);
});

test("where no point has a use there is neither a best nor a worst", () => {
  const tally = new BandTally();
  tally.add("care", undefined, "likely");
  expect(tally.answers(1)).toEqual(["", "", "", "care", "passes throughout"]);
});
