import { functions } from "../../../../src/core";
import { Band } from "../../../../src/core/band";
import { cornerPicks } from "../../../../src/core/duties/model/corners";
import { sizeSteps } from "../../../../src/core/fit/zones/iso286";
import { readZone } from "../../../../src/core/fit/zones/zone";
import { call, pressedBush } from "../../../support";

/** A bush whose size is a band across the end of a range of ISO 286, 24 mm of Table 3 for the shaft's u: limits jump there. */
const bush = (more: Readonly<Record<string, unknown>>) =>
  pressedBush({
    ...{ load: 300, length: 25, wall: 2, outside: "", rpm: 1, motion: "", temperature: 7 },
    ...{ "outside zone": "u7", housing: "carbon steel", shaft: "hardened steel", ...more },
  });
const wordOf = (duty: unknown, id = "grip") =>
  call(functions.DUTYCHECKS, [duty, null, "Demo Sorrel"]).find(([name]) => name === id)![5];
const worstOf = (duty: unknown, id = "grip") =>
  call(functions.DUTYBAND, [duty, null, "Demo Sorrel"])
    .find(([name]) => name === id)!
    .slice(3, 5);

test("a band across the end of a range is judged on both sides of it: what fails within fails", () => {
  for (const bore of [23, 27]) expect(wordOf(bush({ bore }))).toBe("fits");
  expect(wordOf(bush({ bore: 26 }))).toBe("fails");
  expect(wordOf(bush({ bore: "23 to 27" }))).toBe("fails");
  expect(worstOf(bush({ bore: "23 to 27" }))[1]).toBe("fails");
});

test("so is a band of the wall, which moves the seat", () => {
  const of = (wall: unknown) => wordOf(bush({ bore: 23, wall }));
  // seats of 27 and 31 mm, the range ends at 30
  expect([of(2), of(4), of(3.5)]).toEqual(["fits", "fits", "fails"]);
  expect(of("2 to 4")).toBe("fails");
});

test("no point of a band is worse than what its checks tell", () => {
  const use = (duty: unknown) =>
    call(functions.DUTYCHECKS, [duty, null, "Demo Sorrel"]).find(([name]) => name === "peak pressure")![4] as number;
  const banded = use(bush({ bore: "5 to 7", length: 6, wall: 1, load: 20 }));
  for (let i = 0; i <= 40; i++)
    expect(use(bush({ bore: 5 + i / 20, length: 6, wall: 1, load: 20 }))).toBeLessThanOrEqual(banded * (1 + 1e-9));
});

test("the record names the size at which it is worst, and DUTYROOM finds where the verdict turns", () => {
  const duty = bush({ bore: "23 to 27" });
  const record = call(functions.DUTYSHEET, [duty, null, "Demo Sorrel"]);
  expect(record.find(([section, what]) => section === "grip" && what === "worst corner")![4]).toBe("bore 26 mm");
  const room = call(functions.DUTYROOM, [duty, null, "Demo Sorrel"]).slice(1);
  const [, , , least, below] = room.find(([name]) => String(name).startsWith("temperature"))!;
  expect([least, below]).toEqual([expect.anything(), expect.anything()]);
});

test("sizes at which limits jump are those of both tables", () => {
  // ISO 286-1, Table 1 (tolerance grades) and Table 2 (deviations), the latter with intermediate ranges from 10 mm on
  expect(sizeSteps).toEqual(expect.arrayContaining([1, 3, 6, 10, 18, 30, 50, 80, 120, 180, 250, 315, 400, 500]));
  expect(sizeSteps).toEqual(expect.arrayContaining([14, 24, 40, 65, 100, 140, 160, 200, 225, 280, 355, 450]));
});

test("each band of a size stands at the end of a range and just above it, with every corner of the other bands", () => {
  const [bore, load] = [new Band(23, 25), new Band(300, 400)];
  const zone = (text: string) => readZone(text, "metric", "zone");
  // one zone in deviations does not hide the class of another
  const sizes = { bore, load, wall: 2, shaftZone: zone("f7"), outsideZone: zone("+0.05/+0.10") };
  for (const bands of [
    [bore, load],
    [load, bore],
  ]) {
    const at = cornerPicks(bands, sizes).map((pick) => [pick(bore), pick(load)]);
    // 24 mm ends a range of Table 2; no seat of 27 to 29 mm does
    const sides = [23, 24, 24 * (1 + 3e-9), 25];
    expect(at).toHaveLength(8);
    expect(at).toEqual(expect.arrayContaining(sides.flatMap((side) => [300, 400].map((n) => [side, n]))));
  }
  const { shaftZone: _, ...stated } = sizes;
  expect(cornerPicks([bore, load], stated)).toHaveLength(4);
});
