import released from "../../data/released.json";
import { accepted } from "../../scripts/release/accepted";
import { boundsText, checkDomain, isInside, limitsOf } from "../../src/core/domain";

test.each(["functions", "properties", "fields"] as const)("%s accept what was released, and nothing else", (list) => {
  const now = accepted()[list];
  const agreed: Readonly<Record<string, string>> = released.accepts[list];
  const isNew = Object.entries(now).filter(([key]) => agreed[key] === undefined);
  expect(
    isNew.map(([key, text]) => `${key} is not in data/released.json: npm run release adds what it accepts, ${text}`),
  ).toEqual([]);
  expect(now).toEqual(agreed);
});

describe("bounds", () => {
  const hair = 1e-12;
  test("above and below leave the bound out, from and to take it in", () => {
    expect([0, hair].map((x) => isInside({ kind: "length", above: 0 }, x))).toEqual([false, true]);
    expect([-hair, 0].map((x) => isInside({ kind: "length", from: 0 }, x))).toEqual([false, true]);
    expect([1, 1 - hair].map((x) => isInside({ kind: "ratio", below: 1 }, x))).toEqual([false, true]);
    expect([1 + hair, 1].map((x) => isInside({ kind: "ratio", to: 1 }, x))).toEqual([false, true]);
  });
  test("a temperature may not be below 0 K, every other number may be any finite one", () => {
    expect([-273.15, -273.16].map((x) => isInside({ kind: "temperature" }, x))).toEqual([true, false]);
    for (const x of [-Number.MAX_VALUE, Number.MAX_VALUE]) expect(isInside({ kind: "rise" }, x)).toBe(true);
    for (const x of [NaN, Infinity, -Infinity]) expect(isInside({ kind: "rise" }, x)).toBe(false);
    expect(limitsOf({ kind: "rise", above: 1, below: 2 })).toEqual({
      least: 1,
      most: 2,
      withLeast: false,
      withMost: false,
    });
  });
  test("a percentage is a ratio of at most 1, unless told otherwise", () => {
    expect([1, 1 + hair].map((x) => isInside({ kind: "percent" }, x))).toEqual([true, false]);
    expect([0.1, 0.1 + hair].map((x) => isInside({ kind: "percent", to: 0.1 }, x))).toEqual([true, false]);
    expect([1, 1 - hair].map((x) => isInside({ kind: "percent", below: 1 }, x))).toEqual([false, true]);
  });
  test("a percentage typed in per cent is refused, and what to type is said where that would do", () => {
    const refused = (value: number, found: unknown) => {
      try {
        checkDomain("swelling", { kind: "percent", from: 0, to: 0.1 }, value, "metric", found);
        return undefined;
      } catch (error) {
        return (error as Error).message;
      }
    };
    expect(refused(0.1, 0.1)).toBeUndefined();
    expect(refused(4, 4)).toBe("swelling must be from 0 % to 10 %, got 4: type 4 %");
    expect(refused(4, "4")).toBe('swelling must be from 0 % to 10 %, got "4": type 4 %');
    for (const [value, found] of [
      [4, "400 %"],
      [0.4, "40 %"],
      [40, 40],
      [-4, -4],
    ])
      expect(refused(value as number, found)).toMatch(/^swelling must be from 0 % to 10 %, got [^:]*$/);
  });
  test("are told in the sheet's units", () => {
    expect(boundsText({ kind: "length", above: 25.4 }, "inch")).toBe("above 1 in");
    expect(boundsText({ kind: "ratio", from: 0, to: 0.5 }, "metric")).toBe("from 0 to 0.5");
    expect(boundsText({ kind: "angle", from: 0 }, "metric")).toBe("0° or more");
    expect(boundsText({ kind: "percent", above: 0, below: 1 }, "metric")).toBe("above 0 % and below 100 %");
    expect(boundsText({ kind: "percent", from: 0 }, "inch")).toBe("from 0 % to 100 %");
    expect(boundsText({ kind: "percent", above: 0 }, "metric")).toBe("above 0 % and at most 100 %");
    expect(boundsText({ kind: "percent" }, "metric")).toBe("at most 100 %");
    expect(boundsText({ kind: "percent", from: -0.1, to: 0.07 }, "metric")).toBe("from -10 % to 7 %");
    expect(boundsText({ kind: "length", above: 0, to: 500 }, "metric")).toBe("above 0 mm and at most 500 mm");
    expect(boundsText({ kind: "temperature" }, "metric")).toBe("-273.15 °C or more");
    expect(boundsText({ kind: "temperature", above: 0 }, "metric")).toBe("above 0 °C");
    expect(boundsText({ kind: "temperature", to: 90 }, "metric")).toBe("from -273.15 °C to 90 °C");
    expect(boundsText({ kind: "ratio" }, "metric")).toBe("");
  });
});
