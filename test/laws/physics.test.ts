import fc from "fast-check";
import * as core from "../../src/core";
import type { Formula } from "../../src/core/formula";
import { call, pressedBush } from "../support";
import { between, check, equal, rises } from "./check";

/** How answers must change with their arguments, whatever the numbers: scaling, direction, and functions that undo each other. */
const number = (cells: unknown[][], at = 0): number => {
  const cell = cells[0]![at];
  if (typeof cell !== "number") throw new Error(`no number: ${JSON.stringify(cell)}`);
  return cell;
};

/** The power of each argument in the answer: doubling the argument multiplies by 2 to that power. */
const powers: readonly [Formula, Record<string, number>, (readonly unknown[])?][] = [
  [core.functions.PRESSURE, { load: 1, bore: -1, length: -1 }],
  [core.functions.WASHERPRESSURE, { load: 1 }],
  [core.functions.SPEED, { bore: 1, rpm: 1 }],
  [core.functions.SWINGSPEED, { bore: 1, swing: 1, cycles: 1 }],
  [core.functions.STROKESPEED, { stroke: 1, cycles: 1 }],
  [core.functions.WASHERSPEED, { rpm: 1 }],
  [core.functions.PVVALUE, { pressure: 1, speed: 1 }],
  [core.functions.TORQUE, { load: 1, bore: 1, friction: 1 }],
  [core.functions.WASHERTORQUE, { load: 1, friction: 1 }],
  [core.functions.HEAT, { load: 1, speed: 1, friction: 1 }],
  [core.functions.HEATPV, { rise: 1, friction: -1 }],
  [core.functions.DERATEDPV, { pvlimit: 1 }],
  [core.functions.WEARRATE, { base: 1, geometry: 1, heat: 1, temperature: 1, counterface: 1, finish: 1 }],
  [core.functions.WEAR, { wearrate: 1, pressure: 1, distance: 1 }, [2e-6, 2.67, 400]],
  [core.functions.WEAR, { wearrate: 1, pressure: 1, distance: 1 }, [2e-6, 2.67, 400, "flat", 0]],
  [core.functions.LIFE, { wearrate: -1, pressure: -1, speed: -1, allowance: 1 }, [2e-6, 2.67, 0.1257, 0.5]],
  [core.functions.LIFE, { wearrate: -1, pressure: -1, speed: -1 }],
  [core.functions.RUNCOST, { life: -1 }],
  [core.functions.PRESSFIT, { interference: 1 }, [20, 23, 40, 0.02, 2500, 0.4, 69000, 0.33]],
  [core.functions.PUSHOUT, { pressure: 1, outside: 1, length: 1, friction: 1 }],
  [core.functions.SPINTORQUE, { friction: 1 }],
  [core.functions.SPINTORQUE, { pressure: 1, outside: 2, length: 1, friction: 1 }, [1.8, 23, 15, 0.2]],
  [core.functions.PRESSIN, { pressure: 1, outside: 1 }, [5, 23, 15, 0.02, 0.2]],
];
const scalings = powers.map(([f, of, given = f.spec.example]) => [f.spec.id, f, of, given] as const);
test.each(scalings)("%s scales as its formula says", (_, f, of, example) => {
  const names = Object.keys(f.spec.args);
  for (const [name, power] of Object.entries(of))
    // friction ends at 2
    check(between(0.01, name === "friction" ? 10 : 100), (factor) => {
      const at = names.indexOf(name);
      const scaled = example.map((x, i) => (i === at ? (x as number) * factor : x));
      const [before, after] = [call(f, example), call(f, scaled)];
      before[0]!.forEach((_, i) => equal(number(after, i), number(before, i) * factor ** power));
    });
});

const lengths = { bore: 20, outside: 23, housing: 40 };
const elastic = { bushmodulus: 2500, bushpoisson: 0.4, housingmodulus: 69000, housingpoisson: 0.33 };
describe("geometry and stiffness by ratio alone", () => {
  test("CLOSEIN knows neither the unit of length nor that of modulus", () =>
    check(fc.tuple(between(0.01, 100), between(0.01, 100)), ([size, stiffness]) => {
      const given = {
        bore: lengths.bore * size,
        outside: lengths.outside * size,
        housing: lengths.housing * size,
        bushmodulus: elastic.bushmodulus * stiffness,
        bushpoisson: elastic.bushpoisson,
        housingmodulus: elastic.housingmodulus * stiffness,
        housingpoisson: elastic.housingpoisson,
      };
      equal(core.functions.CLOSEIN(given), core.functions.CLOSEIN({ ...lengths, ...elastic }));
    }));
  test("FREETILT knows the ratio alone", () =>
    check(fc.tuple(between(0, 1), between(1, 100), between(0.01, 100)), ([clearance, length, by]) =>
      equal(
        core.functions.FREETILT({ clearance: clearance * by, length: length * by }),
        core.functions.FREETILT({ clearance, length }),
      ),
    ));
  test("a bush twice as large in everything has twice the running clearance", () => {
    const small = {
      ...{ clearance: 0.04, bore: 20, outside: 23, interference: 0.05, closein: 1.03, temperature: 80 },
      ...{ bushexpansion: 9e-5, housingexpansion: 2.36e-5, shaftexpansion: 1.17e-5, swelling: 0.003 },
    };
    check(between(0.1, 10), (by) => {
      const { clearance, bore, outside, interference } = small;
      const large = {
        clearance: clearance * by,
        bore: bore * by,
        outside: outside * by,
        interference: interference * by,
      };
      equal(core.functions.RUNCLEARANCE({ ...small, ...large }), core.functions.RUNCLEARANCE(small) * by);
    });
  });
});

const grade = "Demo Sorrel";
const running = {
  ...{ clearance: 0.2, bore: 20, outside: 23, interference: 0.08, closein: 1.03, temperature: 50 },
  ...{ bushexpansion: 9e-5, housingexpansion: 2.36e-5, shaftexpansion: 1.17e-5 },
};
/** The least clearance of a state in surroundings that are hot up to a temperature. */
function fitLeast(state: string, hot: number, moisture = "wet"): number {
  const card = pressedBush({ temperature: `-20 to ${hot}`, moisture, housing: "carbon steel" });
  const [headings, ...rows] = call(core.functions.FITTABLE, [card, "", grade]);
  return rows.find(([name]) => name === state)![headings!.indexOf("least clearance [mm]")] as number;
}

describe("direction", () => {
  test("use grows with pressure and with speed", () => {
    rises(1, [0, 100], (p) => number(call(core.functions.USE, [grade, p, 0.05, 40])));
    rises(1, [0, 3], (v) => number(call(core.functions.USE, [grade, 2, v, 40])));
  });
  test("use grows as it gets hotter, and with a wider range of temperature", () => {
    rises(1, [-35, 89], (t) => number(call(core.functions.USE, [grade, 2, 0.05, t])));
    rises(1, [25, 89], (hot) => number(call(core.functions.USE, [grade, 2, 0.05, `20 to ${hot}`])));
  });
  test("the least length grows, the greatest load and speed fall with the other", () => {
    rises(1, [0, 5000], (load) => number(call(core.functions.MINLENGTH, [grade, load, 20, 0.05, 40])));
    rises(-1, [0, 1.15], (speed) => number(call(core.functions.MAXLOAD, [grade, 20, 15, speed, 40])));
    rises(-1, [1, 9000], (load) => number(call(core.functions.MAXRPM, [grade, load, 20, 15, 40])));
  });
  test("running clearance shrinks as moisture or heat grows, and with a stiffer grip", () => {
    rises(-1, [0, 0.02], (swelling) => core.functions.RUNCLEARANCE({ ...running, swelling }));
    rises(-1, [20, 90], (temperature) => core.functions.RUNCLEARANCE({ ...running, temperature }));
    rises(-1, [0, 1.2], (closein) => core.functions.RUNCLEARANCE({ ...running, closein }));
  });
  test("FITTABLE, in a steel housing: hotter is tighter and wet is tighter still", () => {
    for (const state of ["hot", "hot, wet"]) rises(-1, [21, 89], (hot) => fitLeast(state, hot));
    for (const hot of [30, 60, 89]) {
      const byMoisture = [fitLeast("hot", hot), fitLeast("hot, humid", hot, "humid"), fitLeast("hot, wet", hot)];
      expect(byMoisture).toEqual([...byMoisture].sort((a, b) => b - a));
    }
  });
  test("a press fit closes the bore more the stiffer its housing", () => {
    rises(1, [100, 1e6], (housingmodulus) => core.functions.CLOSEIN({ ...lengths, ...elastic, housingmodulus }));
    rises(1, [25, 500], (housing) => core.functions.CLOSEIN({ ...lengths, ...elastic, housing }));
  });
  test("a larger size has no narrower tolerance", () => {
    const width = (size: number) => {
      const [least, greatest] = core.functions.LIMITS({ size, zone: "H8" }) as [number, number];
      return Math.round((greatest - least) * 1e6);
    };
    rises(1, [0.1, 500], width);
  });
  test("landed cost falls with the lot and the planned volume, grows with the duty", () => {
    rises(-1, [1, 1e5], (quantity) => core.functions.LANDED({ price: 2, quantity: Math.round(quantity), freight: 60 }));
    rises(-1, [1, 1e5], (volume) =>
      core.functions.LANDED({ price: 2, quantity: 10, tooling: 900, volume: Math.round(volume) }),
    );
    rises(1, [0, 1], (duty) => core.functions.LANDED({ price: 2, quantity: 10, duty }));
  });
});

const size = between(5, 80);
const temperature = between(-35, 85);
describe("one function undoes the other", () => {
  const useOf = (load: number, bore: number, length: number, speed: number, t: number): number => {
    const checks = call(core.functions.CHECKS, [grade, load / (bore * length), speed, t]);
    return Math.max(
      ...checks.filter((row) => ["running pressure", "PV"].includes(row[0] as string)).map((row) => row[4] as number),
    );
  };
  test("the load of MAXLOAD uses exactly all of pressure or PV", () =>
    check(fc.tuple(size, size, between(0, 1.15), temperature), ([bore, length, speed, t]) => {
      const load = number(call(core.functions.MAXLOAD, [grade, bore, length, speed, t]));
      equal(useOf(load, bore, length, speed, t), 1);
    }));
  test("the length of MINLENGTH uses exactly all of pressure or PV, and MAXLOAD gives its load back", () =>
    check(fc.tuple(between(1, 5000), size, between(0, 1.15), temperature), ([load, bore, speed, t]) => {
      const length = number(call(core.functions.MINLENGTH, [grade, load, bore, speed, t]));
      equal(useOf(load, bore, length, speed, t), 1);
      equal(number(call(core.functions.MAXLOAD, [grade, bore, length, speed, t])), load);
    }));
  test("the speed of MAXRPM has a use of 1 where the pressure does not govern", () =>
    check(fc.tuple(between(1, 500), between(10, 40), between(10, 40), temperature), ([load, bore, length, t]) => {
      const rpm = number(call(core.functions.MAXRPM, [grade, load, bore, length, t]));
      const speed = core.functions.SPEED({ bore, rpm });
      equal(number(call(core.functions.USE, [grade, core.functions.PRESSURE({ load, bore, length }), speed, t])), 1);
    }));
  test("WEAR over the distance of a LIFE is the allowance, whatever shapes the wear", () =>
    check(
      fc.tuple(
        fc.tuple(between(1e-8, 1e-4), between(0.01, 50), between(0.001, 3), between(0.01, 2)),
        fc.constantFrom("bush" as const, "flat" as const),
        fc.oneof(fc.constant(0), between(1e-3, 2)),
      ),
      ([[wearrate, pressure, speed, allowance], from, clearance]) => {
        const life = core.functions.LIFE({ wearrate, pressure, speed, allowance, from, clearance });
        equal(core.functions.WEAR({ wearrate, pressure, distance: life * speed * 3.6, from, clearance }), allowance);
      },
    ));
  test("the PV of HEATPV heats a bush by its rise", () =>
    check(
      fc.tuple(size, size, between(0.5, 5), between(1, 100), between(0.01, 2)),
      ([bore, length, wall, rise, housingpath]) => {
        const paths = { bushconductivity: 0.3, shaftconductivity: 45, endlength: 80, ends: 1, film: 12, housingpath };
        const [pv] = core.functions.HEATPV({ bore, length, wall, rise, friction: 0.2, ...paths });
        const speed = 0.1;
        const load = (pv! / speed) * bore * length;
        const duty = { load, bore, length, wall, speed, friction: 0.2, ambient: 20 };
        equal((core.functions.RUNTEMP({ ...duty, ...paths })[1] as number) - 20, rise);
      },
    ));
  test("at the PV that DERATEDPV allows, BORETEMP is the highest temperature", () =>
    check(
      fc.tuple(between(23, 89), between(91, 260), between(1, 2), between(0.01, 1)),
      ([ambient, highest, exponent, pvlimit]) => {
        const pv = core.functions.DERATEDPV({ pvlimit, highest, ambient, exponent });
        equal(core.functions.BORETEMP({ pv, pvlimit, highest, ambient, exponent }), highest);
      },
    ));
  test("UNIT there and back is the number", () =>
    check(between(-1e6, 1e6), (value) => {
      for (const [a, b] of [
        ["psi", "MPa"],
        ...(value < -459.67 ? [] : ([["°F", "°C"]] as const)),
        ["mi", "km"],
        ["lbf", "N"],
      ] as const) {
        const there = number(call(core.functions.UNIT, [value, a, b]));
        expect(number(call(core.functions.UNIT, [there, b, a]))).toBeCloseTo(value, 6);
      }
    }));
  test("a DUTYPV of equal steps is the PV of one, and the order of steps does not count", () =>
    check(
      fc.array(fc.tuple(between(0, 20), between(0, 2), between(0.1, 50)), { minLength: 1, maxLength: 8 }),
      (steps) => {
        const column = (at: 0 | 1 | 2, rows: typeof steps) => rows.map((step) => [step[at]]);
        const of = (rows: typeof steps) =>
          number(call(core.functions.DUTYPV, [column(0, rows), column(1, rows), column(2, rows)]));
        equal(of(steps), of([...steps].reverse()));
        const [p, v] = steps[0]!;
        equal(of(steps.map((step) => [p, v, step[2]])), p * v);
      },
    ));
});

const rowWise = core.catalogue.filter(
  (f) =>
    !("shape" in f.spec.result && f.spec.result.shape === "table") && f.spec.example.some((x) => typeof x === "number"),
);
test.each(rowWise.map((f) => [f.spec.id, f] as const))("%s: shuffled rows give shuffled answers", (_, f) => {
  const at = f.spec.example.findIndex((x) => typeof x === "number");
  const base = f.spec.example[at] as number;
  const cell = fc.oneof(
    between(0, 3).map((by) => base * by),
    fc.constantFrom<unknown>("", -1, "no such thing", true),
  );
  check(fc.array(cell, { minLength: 2, maxLength: 12 }), (cells) => {
    const order = cells.map((_, i) => i).sort((a, b) => ((a * 7 + 3) % 13) - ((b * 7 + 3) % 13));
    const over = (column: unknown[]) =>
      call(
        f,
        f.spec.example.map((x, i) => (i === at ? column.map((c) => [c]) : x)),
      );
    const padded = (rows: unknown[][]) => rows.map((row) => row.filter((x) => x !== ""));
    const straight = padded(over(cells));
    expect(padded(over(order.map((i) => cells[i])))).toEqual(order.map((i) => straight[i]));
  });
});
