import { functions } from "../../../src/core";
import { call, message } from "../../support";

const given = { radial: 600, axial: 300, bore: 20, length: 20, inner: 21, outer: 30, rpm: 60, friction: 0.15 };

test("without axial load it is a sleeve, without radial load a new washer", () => {
  const pressure = functions.PRESSURE({ load: 600, bore: 20, length: 20 });
  const speed = functions.SPEED({ bore: 20, rpm: 60 });
  const sleeve = functions.FLANGEDBUSH({ ...given, axial: 0 });
  expect(sleeve[0]).toBeCloseTo(pressure, 12);
  expect(sleeve[4]).toBeCloseTo(functions.PVVALUE({ pressure, speed }), 12);
  expect(sleeve[6]).toBeCloseTo(functions.HEAT({ load: 600, speed, friction: 0.15 }), 12);
  const face = functions.FLANGEDBUSH({ ...given, radial: 0 });
  expect(face[5]).toBeCloseTo(functions.WASHERTORQUE({ load: 300, inner: 21, outer: 30, friction: 0.15 }), 12);
  expect([face[0], face[2]]).toEqual([0, 0]);
});

test("both surfaces add up in torque, heat and the PV to compare", () => {
  const [sleeve, face, both] = [{ axial: 0 }, { radial: 0 }, {}].map((more) =>
    functions.FLANGEDBUSH({ ...given, ...more }),
  );
  for (const column of [4, 5, 6]) expect(both![column]).toBeCloseTo(sleeve![column]! + face![column]!, 12);
});

test("a flange's face begins outside the bore and has a width", () => {
  expect(message(call(functions.FLANGEDBUSH, [600, 300, 20, 20, 19, 30, 60, 0.15]))).toMatch(
    /^inner must be at least bore/,
  );
  expect(message(call(functions.FLANGEDBUSH, [600, 300, 20, 20, 21, 21, 60, 0.15]))).toMatch(
    /^outer must be above inner/,
  );
  expect(call(functions.FLANGEDBUSH, [600, 300, 20, 20, 20, 30, 60, 0.15])[0]).toHaveLength(7);
});
