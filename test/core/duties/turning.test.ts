import type { Check } from "../../../src/core/duties/judging/criterion";
import { words } from "../../../src/core/duties/judging/criterion";
import { pathOf, turnOf } from "../../../src/core/duties/model/turning";
import type { Moved } from "../../../src/core/duties/model/turning";

const [fails, , care, fits] = [0, 1, 2, 3];

/** Corners that each answer a rank by value. */
function moved(...corners: ((value: number) => number)[]): Moved & { asked: number } {
  const rankAt = (value: number, corner?: number) =>
    corner === undefined ? Math.min(...corners.map((rank) => rank(value))) : corners[corner]!(value);
  const found = {
    asked: 0,
    corners: corners.length,
    rankAt: (value: number, corner?: number) => {
      found.asked++;
      return rankAt(value, corner);
    },
    verdictAt: (value: number) => {
      const word = words[rankAt(value)]!;
      return { word, governing: { criterion: { heading: `makes ${word}` } } as Check };
    },
  };
  return found;
}
/** One rank up to a value, another from just behind it. */
const until = (limit: number, before: number, after: number) => (value: number) => (value <= limit ? before : after);
const up = { kind: "force", value: 1 } as const;
const turn = (of: Moved, path = pathOf(up, 1)) => turnOf(of, 1, path)!;

describe("pathOf", () => {
  test("goes by ratios to a thousand times and a thousandth, four to the decade", () => {
    const path = pathOf({ kind: "force", value: 20 }, 1);
    expect(path).toHaveLength(12);
    expect(path[11]).toBeCloseTo(20_000, 9);
    expect(path[1]! / path[0]!).toBeCloseTo(10 ** 0.25, 12);
    expect(pathOf({ kind: "force", value: 20 }, -1)[11]).toBeCloseTo(0.02, 12);
  });
  test("ends in the bound of the domain, and nowhere beyond it", () => {
    expect(pathOf({ kind: "ratio", value: 2, least: 1 }, -1)).toEqual([2 / 10 ** 0.25, 1]);
    expect(pathOf({ kind: "ratio", value: 2, most: 3 }, 1)).toEqual([3]);
    expect(pathOf({ kind: "ratio", value: 1, least: 1 }, -1)).toEqual([]);
    expect(pathOf({ kind: "force", value: 5, least: 0 }, -1)).toHaveLength(13);
    // the fourth stride is 10 times the value, and the bound
    expect(pathOf({ kind: "ratio", value: 1, most: 10 }, 1)).toHaveLength(4);
  });
  test("goes by distance where the value is a temperature or 0", () => {
    expect(pathOf({ kind: "temperature", value: -3 }, 1)[0]).toBe(-2);
    expect(pathOf({ kind: "temperature", value: -3 }, 1)[12]).toBeCloseTo(997, 9);
    expect(pathOf({ kind: "temperature", value: 20, least: -273.15 }, -1).pop()).toBe(-273.15);
    const fromZero = pathOf({ kind: "force", value: 0, least: 0 }, 1);
    expect(fromZero[0]).toBe(1e-6);
    expect(fromZero[12]).toBeCloseTo(1e6, 3);
  });
  test("holds nothing that is not finite", () =>
    expect(pathOf({ kind: "force", value: 1e307 }, 1).every(Number.isFinite)).toBe(true));
});

describe("turnOf", () => {
  test("finds the last double that holds", () => {
    const limit = 7.123456789012345;
    expect(turn(moved(until(limit, fits, fails)))).toEqual({
      at: limit,
      isEnd: false,
      word: "fails",
      stoppedBy: "makes fails",
      isMonotone: true,
    });
  });
  test("names what made the worse side, on whichever side that is", () => {
    expect(turn(moved(until(3, fits, care))).stoppedBy).toBe("makes care");
    expect(turn(moved(until(3, fails, fits))).stoppedBy).toBe("makes fails");
  });
  test("finds nothing where nothing turns", () =>
    expect(
      turnOf(
        moved(() => fits),
        1,
        pathOf(up, 1),
      ),
    ).toBeUndefined());
  test("takes the first turn, and says whether the verdict turns back", () => {
    const island = (value: number) => (value <= 3 || value > 50 ? fits : fails);
    expect(turn(moved(island))).toMatchObject({ at: 3, isMonotone: false });
    const steps = (value: number) => (value <= 3 ? fits : value <= 50 ? care : fails);
    expect(turn(moved(steps))).toMatchObject({ at: 3, word: "care", isMonotone: true });
  });
  test("a path that ends where there is no duty is no way back", () => {
    const gone = moved((value) => (value > 100 ? -1 : value > 3 ? fits : fails));
    expect(turn(gone)).toMatchObject({ at: 3, word: "fits", isMonotone: true });
  });
  test("what lies behind values without a duty is not reached", () => {
    const behind = moved((value) => (value > 200 ? fails : value > 100 ? -1 : value > 3 ? fits : care));
    expect(turn(behind)).toMatchObject({ at: 3, word: "fits", isMonotone: true });
  });
  test("one point of the path where it is worse is enough to tell that the verdict turns back", () => {
    const island = (value: number) => (value <= 3 || value > 50 ? fits : fails);
    expect(turn(moved(island), [2, 10, 100])).toMatchObject({ at: 3, isMonotone: false });
  });
  test("where the end of the path alone is different, that is the limit, also of a number below 0", () => {
    const cold = moved((value) => (value < 0 ? fits : fails));
    expect(turnOf(cold, -1, [-0.5, 0])).toMatchObject({ at: 0, isEnd: true });
    expect(cold.asked).toBeLessThan(120);
  });
  test.each([
    ["up", 3, 1, [2, 4, 8], fits, fails],
    ["down", 3, 5, [4, 2, 1], fails, fits],
    ["up, to where it is better", 3, 1, [2, 4, 8], fails, fits],
    ["down, to where it is better", 3, 5, [4, 2, 1], fits, fails],
    ["up from below 0", 0, -2, [-1, 1], fits, fails],
    ["down from 0", -3, 0, [-2, -4], fails, fits],
  ])("the criterion that governs is seen a little farther off: %s", (_, limit, start, path, below, above) => {
    const both = moved(until(limit, below, above));
    both.verdictAt = (value) => {
      const off = Math.abs(value - limit);
      const criterion = { heading: off < 1e-9 ? "first" : off < 1e-5 ? "governing" : "another" };
      return { word: words[both.rankAt(value)]!, governing: { criterion } as Check };
    };
    expect(turnOf(both, start, path)!.stoppedBy).toBe("governing");
  });
  test.each([
    [[2, 3 + 1e-8], 1, fits, fails],
    [[4, 3 - 1e-8], 5, fails, fits],
  ])("nothing beyond the end of the path is asked for: %j", (path, start, below, above) => {
    const both = moved(until(3, below, above));
    const asked: number[] = [];
    const { verdictAt } = both;
    both.verdictAt = (value) => {
      asked.push(Math.abs(value - start));
      return verdictAt(value);
    };
    turnOf(both, start, path);
    expect(Math.max(...asked)).toBeLessThanOrEqual(Math.abs(path[1]! - start));
  });
  test("a verdict that turns as soon as a number leaves 0 is turned by what governs there, not at the end of the path", () => {
    const both = moved(until(0, fits, fails));
    both.verdictAt = (value) => {
      const criterion = { heading: value < 1e-6 ? "there" : "at the end" };
      return { word: words[both.rankAt(value)]!, governing: { criterion } as Check };
    };
    expect(turnOf(both, 0, [1, 2])!.stoppedBy).toBe("there");
  });
  test("of several corners the earliest to become worse decides", () => {
    // all within one stretch of the path, the later ones first
    const [a, b, c] = [2.41, 2.2, 2.3].map((limit) => until(limit, fits, fails));
    expect(turn(moved(a!, c!, b!)).at).toBe(2.2);
  });
  test("of several corners the last to become better decides", () => {
    const [a, b, c] = [2.2, 2.41, 2.3].map((limit) => until(limit, fails, fits));
    expect(turn(moved(a!, c!, b!)).at).toBe(2.41);
  });
  test("a corner that is worse only for a stretch is found from within", () => {
    const dip = (value: number) => (value > 2 && value <= 4 ? fails : fits);
    expect(turn(moved(() => fits, dip)).at).toBe(2);
  });
  test("halves until doubles end: about 60 questions, and no more for a limit near 0", () => {
    const one = moved(until(7, fits, fails));
    turn(one);
    expect(one.asked).toBeLessThan(90);
    const zero = moved((value) => (value === 0 ? fails : fits));
    expect(turnOf(zero, 1, pathOf({ ...up, least: 0 }, -1))!.at).toBe(0);
    expect(zero.asked).toBeLessThan(120);
  });
});
