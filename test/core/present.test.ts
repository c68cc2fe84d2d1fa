import { present } from "../../src/core/present";
import { BushError } from "../../src/core/errors";

test("what is there comes back as it is, a zero, an empty text and a no among it", () => {
  const list = [1];
  expect(present(list)).toBe(list);
  expect([0, "", false, NaN].map((value) => present<unknown>(value))).toEqual([0, "", false, NaN]);
});

test.each([null, undefined])("%s is a fault of ours, not an answer to bad input", (value) => {
  const fault = () => present(value);
  expect(fault).toThrow("missing");
  expect(fault).not.toThrow(BushError);
});
