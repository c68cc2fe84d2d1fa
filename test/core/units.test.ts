import { convert, fromWorking, readQuantity, toWorking } from "../../src/core/units";

test("smoke", () => {
  expect(readQuantity("p", "pv", "6,600 psi*ft/min", "metric")).toBeCloseTo(6600 * 3.502536704929527e-5, 12);
  expect(readQuantity("p", "temperature", "32 F", "metric")).toBe(0);
  expect(readQuantity("p", "rate", "120 1/min", "metric")).toBe(120);
  expect(readQuantity("p", "pressure", "3 N/mm2", "metric")).toBe(3);
  expect(readQuantity("p", "expansion", "90e-6 1/K", "metric")).toBe(90e-6);
  expect(readQuantity("p", "length", '1.5"', "metric")).toBeCloseTo(38.1, 12);
  expect(fromWorking("temperature", 100, "inch")).toBeCloseTo(212, 12);
  expect(toWorking("wearRate", 1, "inch")).toBeCloseTo(201.4413024030683, 9);
  expect(convert(1, "rev/min", "Hz")).toBeCloseTo(1 / 60, 15);
});
