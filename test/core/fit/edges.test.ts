import { checkStrain } from "../../../src/core/fit/lame";
import { findMetal } from "../../../src/core/fit/metals";
import { readFit } from "../../../src/core/fit/zones/zone";

test("an interference of a tenth of the outside is the last that counts as elastic", () => {
  expect(() => checkStrain(2, 20)).not.toThrow();
  expect(() => checkStrain(2.001, 20)).toThrow("interference over outside must be at most 0.1, got 0.1");
});

test("a metal that is not known is told with the names near to it, or with what to try", () => {
  expect(() => findMetal("shaft", "hardend steel")).toThrow(/no metal known here; nearest: .*hardened steel/);
  // one name alone may be near
  expect(() => findMetal("housing", "brass x")).toThrow(/nearest: brass$/);
  expect(() => findMetal("shaft", "xyzzy")).toThrow(
    "no metal known here; try carbon steel, stainless steel or aluminium alloy",
  );
});

test("a fit longer than any is refused by its length, before it is read", () =>
  expect(() => readFit(`H7/${"f7 ".repeat(2000)}`, "metric", "fit")).toThrow(/characters/));
