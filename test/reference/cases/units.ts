import { all, create } from "mathjs";
import Qty from "js-quantities";
import { functions } from "../../../src/core";
import { kinds } from "../../../src/core/kinds";
import type { Kind } from "../../../src/core/kinds";
import { convert } from "../../../src/core/units/conversion";
import { toWorking } from "../../../src/core/units/scale";
import { call } from "../../support";
import type { ReferenceCase } from "../case";

const family = "Units and teaching";

/** An algebra of units of its own. */
const math = create(all!);

/** From, to, and how js-quantities spells them where it spells them otherwise. */
const pairs: readonly [string, string, string?, string?][] = [
  ["lbf", "N"],
  ["ft/min", "m/s"],
  ["in", "mm"],
  ["mi", "km"],
  ["lbf*in", "N*m"],
  ["bar", "psi"],
  ["lb/in^3", "g/cm^3"],
  ["kN", "lbf"],
  ["h", "min"],
  ["deg", "rad"],
  ["BTU/h", "W", "btu/h", "W"],
];

const sp811 = "NIST Special Publication 811, 2008 edition, Appendix B.8";
/** Inch unit of a kind in working units, as SP 811 prints the factor to seven digits, moved to mm, MPa, g/cm³. */
const factors: readonly [Kind, string, true?][] = [
  ["force", "4.448222"],
  ["length", "25.4"],
  ["pressure", "6.894757e-3"],
  ["speed", "5.08e-3"],
  ["torque", "0.1129848"],
  ["conductivity", "0.1442279"],
  ["film", "5.678263"],
  ["distance", "1.609344"],
  ["density", "27.67990"],
];

export const unitCases: readonly ReferenceCase[] = [
  ...factors.map(([kind, expected]): ReferenceCase => ({
    family,
    what: `1 ${kinds[kind].inch} in ${kinds[kind].metric}`,
    source: sp811,
    kind: "memory",
    unit: kinds[kind].metric,
    expected,
    compute: () => toWorking(kind, 1, "inch"),
  })),
  ...pairs.map(([from, to, theirs = from, theirTo = to]): ReferenceCase => ({
    family,
    what: `UNIT: 12.5 ${from} in ${to}`,
    source: "js-quantities 1.8.0 (its psi and Btu have six digits)",
    kind: "other method",
    unit: to,
    expected: () => Qty(`12.5 ${theirs}`).to(theirTo).scalar,
    within: 1e-6,
    compute: () => call(functions.UNIT, [12.5, from, to])[0]![0] as number,
  })),
  ...pairs
    .filter(([from, to]) => !/psi/.test(from + to))
    .map(([from, to]): ReferenceCase => ({
      family,
      what: `UNIT: 12.5 ${from} in ${to}`,
      source: "mathjs 15.2.0",
      kind: "other method",
      unit: to,
      expected: () => math.unit(12.5, from).toNumber(to),
      within: 1e-14,
      compute: () => convert(12.5, from, to),
    })),
];
