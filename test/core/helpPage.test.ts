import { errorAnchor, functionPage } from "../../src/core/helpPage";

const names = ["load", "bore", "length", "units"];

test.each([
  ["bore must be above 0 mm, got -20", "error-bore"],
  ["Bore is missing", "error-bore"],
  ["length must be longer than bore", "error-length"],
  ["the boreholes overload nothing", "errors"],
  ["", "errors"],
])("%s: explained at %s", (message, anchor) => {
  expect(errorAnchor(names, message)).toBe(anchor);
});

test("a function's page is named as its id", () => {
  expect(functionPage("PRESSURE")).toBe("functions/pressure.html");
});
