import { functions } from "../../../src/core";
import { call, message } from "../../support";

const { MAXLOAD } = functions;

test("just above the speed limit of its grade no size holds", () => {
  expect(Object.keys(MAXLOAD.spec.args)).toEqual(expect.arrayContaining(["grade", "bore", "length", "speed"]));
  const at = (speed: number) => {
    const given = { grade: "Demo Sorrel", bore: 20, length: 20, speed, temperature: 23 } as Record<string, unknown>;
    return call(
      MAXLOAD,
      Object.keys(MAXLOAD.spec.args).map((name) => given[name] ?? null),
    );
  };
  // the demo grade's limit for turning shafts is 1.15 m/s
  expect(message(at(1.15))).toBeUndefined();
  expect(message(at(1.16))).toContain("is above its limit 1.15 m/s: no size holds");
});
