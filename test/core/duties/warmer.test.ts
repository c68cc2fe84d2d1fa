import misses from "../../../data/misses.json";
import { functions } from "../../../src/core";
import { call, pressedBush } from "../../support";

/** 500 N on 20 × 20 mm; at 60/min π·0.02·1 m/s over Demo Sorrel's 0.13 MPa·m/s and the 67 K from 23 to its 90 °C. */
const riseAt = (rpm: number): number => ((1.25 * Math.PI * 0.02 * (rpm / 60)) / 0.13) * 67;
const turning = (rpm: number, more = {}) =>
  pressedBush({
    ...{ motion: "", rpm, temperature: "20 to 40", "outside zone": "+0.15/+0.20" },
    ...{ "moisture at assembly": "dry", "share of grip kept": "100 %", ...more },
  });
const rows = (duty: unknown) => call(functions.FITTABLE, [duty, "", "Demo Sorrel"]) as (string | number)[][];
const stateOf = (duty: unknown, name: string) => rows(duty).find(([state]) => state === name);
const least = (duty: unknown) => stateOf(duty, "running, housing cool")![6] as number;
const clearanceOf = (rpm: number, wanted: number) =>
  call(functions.DUTYCHECKS, [turning(rpm, { "least clearance wanted": wanted }), "", "Demo Sorrel"]).find(
    ([name]) => name === "clearance",
  )! as (string | number)[];

// Kumar, Whittaker, Constantinou (2015), as data/measurements.json has it: 4.5 K for a highest temperature of 90 °C
test("a bore as much warmer as was measured is that of a duty as much faster", () => {
  expect(misses.boreLowBy.at90).toBe(4.5);
  const faster = 60 * (1 + misses.boreLowBy.at90 / riseAt(60));
  const [told, warm] = [least(turning(60)), least(turning(faster))];
  expect(warm).toBeLessThan(told - 0.001);

  const off = 1e-6;
  expect(clearanceOf(60, warm - off)[5]).toBe("fits");
  expect(clearanceOf(60, told + off)[5]).toBe("fails");
  expect(
    clearanceOf(60, warm + off)
      .slice(5)
      .join(" "),
  ).toMatch(/^care .*when running, housing cool with the bore 4.5 K warmer than its PV implies, as was measured/);
  expect(clearanceOf(60, told - off)[5]).toBe("care");

  const added = stateOf(turning(60, { "least clearance wanted": warm + off }), "running, housing cool, bore warmer")!;
  expect(added[6]).toBeCloseTo(warm, 12);
  expect(added.at(-1)).toBe("care, less clearance than wanted");
  expect(stateOf(turning(60, { "least clearance wanted": warm - off }), "running, housing cool, bore warmer")).toBe(
    undefined,
  );
});

test("at the limit itself the friction is the one that the limit was stated with: nothing is added", () => {
  const atLimit = (60 * 67) / riseAt(60);
  const duty = (wanted: number) => turning(atLimit, { temperature: 23, "least clearance wanted": wanted });
  const told = least(duty(0));
  const [, , , , , word] = call(functions.DUTYCHECKS, [duty(told - 1e-6), "", "Demo Sorrel"]).find(
    ([name]) => name === "clearance",
  )!;
  expect(word).toBe("fits");
});

test("a warmer hold takes more of a press fit that does not keep all of itself", () => {
  const gripOf = (kept: string) =>
    call(functions.DUTYCHECKS, [
      turning(60, { "share of grip kept": kept, "outside zone": "+0.05/+0.10" }),
      "",
      "Demo Sorrel",
    ]).find(([name]) => name === "grip")! as (string | number)[];
  const shares = Array.from({ length: 200 }, (_, i) => `${(100 - i / 2).toFixed(1)} %`);
  const words = shares.map((share) => gripOf(share)[5]);
  expect(new Set(words)).toEqual(new Set(["fits", "care", "fails"]));
  // once lost, never held again by keeping less
  expect(words).toEqual(
    [...words].sort(
      (a, b) => ["fits", "care", "fails"].indexOf(a as string) - ["fits", "care", "fails"].indexOf(b as string),
    ),
  );
  expect(gripOf(shares[words.indexOf("care")]!).slice(5).join(" ")).toContain("warmer than its PV implies");
});

// Goyal et al., as data/measurements.json has it: 3.8 times the expansion through a pressed plate's thickness
test("a wall that grows more than its plane is told where it would miss the clearance wanted", () => {
  expect(misses.direction.thickness).toBe(3.8);
  const duty = (wanted: number) =>
    pressedBush({ "share of grip kept": "100 %", moisture: "dry", "least clearance wanted": wanted });
  const hot = stateOf(duty(0), "hot")![6] as number;
  // two walls of 1.5 mm, 2.8 times 8.5e-5/K more over the 60 K from 20 to 80 °C
  const thick = hot - 3 * 2.8 * 8.5e-5 * 60;
  const notes = (wanted: number) =>
    call(functions.DUTYCHECKS, [duty(wanted), "", "Demo Sorrel"])
      .flat()
      .join(" ");
  expect(notes(thick + 1e-6)).toContain("when hot where its wall grows 3.8 times as much through its thickness");
  expect(notes(thick - 1e-6)).not.toContain("through its thickness");
});

test("what is taken for too far away to matter never matters: with room for all growth inwards nothing changes", () => {
  const found = new Set<unknown>();
  for (const wanted of Array.from({ length: 60 }, (_, i) => i / 1000))
    for (const ends of ["yes", "no"]) {
      const duty = turning(60, { "least clearance wanted": wanted, "held at its ends": ends });
      const [, , , , , word] = call(functions.DUTYCHECKS, [duty, "", "Demo Sorrel"]).find(([n]) => n === "clearance")!;
      const added = rows(duty).some(([state]) => String(state).endsWith("bore warmer"));
      if (word !== "fails") expect([wanted, ends, word === "care"]).toEqual([wanted, ends, added]);
      found.add(word);
    }
  expect(found).toEqual(new Set(["fits", "care", "fails"]));
});
