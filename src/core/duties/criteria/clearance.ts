import misses from "../../../../data/misses.json";
import { assemblyTemperature } from "../../fit/running";
import type { System } from "../../kinds";
import { measureText } from "../../measure";
import { criterion, figure, isMissing, joined, rounding, withoutData } from "../judging/criterion";
import type { Given } from "../model/fields";
import { riseUntold, warmerText } from "../model/temperatures";
import { fitFields } from "../fit/assembly";
import { fitProperties, fitStates, ifNothingKept, leastBy, mayClose, narrowest, warmerStates } from "../fit/states";
import type { FitState, FitStates } from "../fit/states";
import { fitWorking } from "../fit/working";

/** What is wrong with the clearance of one state. */
export function clearanceFault({ clearance: { least } }: FitState, { leastClearance = 0 }: Given): string | undefined {
  if (least <= 0) return "binds";
  return least < leastClearance - rounding ? "less clearance than wanted" : undefined;
}

export const clearance = criterion(
  {
    id: "clearance",
    heading: "clearance",
    kind: "length",
    text: "The least running clearance over assembly, cold, hot, short peak, wet, and again after the hottest hold, in the worst case of all tolerances, against the least wanted; from a bush dry or humid at assembly where that is not told. Care where it is missed with the bore as much warmer than its PV implies as was measured",
    asked: "where a zone of the fit or the least clearance wanted is given",
    askedBy: [...fitFields, "leastClearance"],
    fields: [
      ...fitFields,
      "leastClearance",
      "zoneHolds",
      "heldAtEnds",
      "housing",
      "housingOutside",
      "wall",
      "outside",
      "moisture",
      "assemblyMoisture",
      "keptGrip",
      "peakTemperature",
    ],
    properties: fitProperties,
    source: [
      { key: "shigley", at: "press and shrink fits" },
      { key: "iso286", at: "Tables 1 to 5" },
      { key: "own", at: "superposition of free strain and press fit" },
    ],
    working: (values, duty) => {
      const states = fitStates(values, duty);
      if (isMissing(states)) return undefined;
      const wanted = figure(duty.given.leastClearance ?? 0, "length", "Least clearance wanted");
      return joined(fitWorking(narrowest(states), "least"), { lines: ["V = C", "Z = C_w"], known: { C_w: wanted } });
    },
    asks: ({ given }) => given.leastClearance !== undefined || fitFields.some((key) => given[key] !== undefined),
  },
  (values, duty) => {
    const found = fitStates(values, duty);
    if (isMissing(found)) return withoutData(found);
    const limit = duty.given.leastClearance ?? 0;
    const worst = narrowest(found);
    const value = leastOf(worst);
    const when = `when ${worst.name}`;
    const finding = { figures: found.figures, value, limit } as const;
    if (clearanceFault(worst, duty.given) === undefined) {
      const notes = (system: System) => [
        `least ${when}`,
        ...ifNoneKept(found, duty.given, system),
        ...ifThicker(found, duty.given, system),
      ];
      const by = riseUntold(values, duty);
      const warm = mayClose(worst.course, by, value - limit)
        ? warmerStates(found, by).filter((state) => clearanceFault(state, duty.given) !== undefined)
        : [];
      // what is told without being judged counts where corners of a band are as narrow
      const room = () => [value - limit, ...leastSupposed(found, duty.given)];
      if (warm.length === 0) return { word: "fits", ...finding, notes, room };
      const narrow = leastBy(warm, leastOf);
      const say = (system: System) =>
        `clearance ${measureText("length", leastOf(narrow), system, 3)} when ${narrow.name} ${warmerText(by, system)}`;
      return {
        word: "care",
        ...finding,
        notes,
        say,
        room: () => [value - limit, leastOf(narrow), ...leastSupposed(found, duty.given)],
      };
    }
    const say = (system: System) => {
      const told = measureText("length", value, system, 3);
      return value <= 0
        ? `clearance ${told} ${when}: the shaft binds`
        : `clearance ${told} ${when}, ${measureText("length", limit, system, 3)} wanted`;
    };
    return { word: "fails", ...finding, say };
  },
);

const leastOf = (state: FitState): number => state.clearance.least;

/** A share of the press fit that is not told is care of the grip; what it may do to the clearance is said here. */
function ifNoneKept(found: FitStates, given: Given, system: System): string[] {
  const loosened = ifNothingKept(found, given);
  if (!loosened.some((state) => clearanceFault(state, given) !== undefined)) return [];
  const least = leastOf(leastBy(loosened, leastOf));
  return [`${measureText("length", least, system, 3)} with nothing of the press fit kept`];
}

const { thickness } = misses.direction;

/** The narrowest state where the wall alone grows more than the coefficient of the grade says, which is taken alike in all directions. */
function thicker({ states }: FitStates): FitState {
  const grown = states.map((state) => {
    const { ring, expansion } = state.course.assembly;
    const growth = (ring.outside - ring.bore) * (thickness - 1) * expansion * (state.bush - assemblyTemperature);
    const { least, greatest } = state.clearance;
    return { ...state, clearance: { least: least - Math.max(0, growth), greatest } };
  });
  return leastBy(grown, leastOf);
}

function ifThicker(found: FitStates, given: Given, system: System): string[] {
  const narrow = thicker(found);
  if (clearanceFault(narrow, given) === undefined) return [];
  const told = measureText("length", leastOf(narrow), system, 3);
  return [
    `${told} when ${narrow.name} where its wall grows ${thickness} times as much through its thickness, as pressed plates did`,
  ];
}

/** The least clearances with nothing kept of a press fit whose share is not told, and with a wall that grows more. */
const leastSupposed = (found: FitStates, given: Given): number[] => [
  Math.min(Infinity, ...ifNothingKept(found, given).map(leastOf)),
  leastOf(thicker(found)),
];
