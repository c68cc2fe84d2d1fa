import misses from "../../../../data/misses.json";
import type { System } from "../../kinds";
import { measureText, percentText } from "../../measure";
import { criterion, figure, holds, isMissing, joined, lacking, withoutData } from "../judging/criterion";
import type { Working } from "../judging/criterion";
import type { FieldKey, Given } from "../model/fields";
import { riseUntold, warmerText } from "../model/temperatures";
import { fitFields } from "../fit/assembly";
import { fitProperties, fitStates, leastBy, neededShare, neededShareOf, warmerStates } from "../fit/states";
import type { FitState, FitStates } from "../fit/states";
import { fitWorking } from "../fit/working";

/** What is wrong with the grip of one state. */
export function gripFault({ name, grip }: FitState): string | undefined {
  if (grip > 0) return undefined;
  return name === "assembly" ? "loose in the housing" : "grip lost";
}

/** What should be told before one state's grip can be relied on. */
export function gripUntold({ name, isAfter }: FitState, { keptGrip, assemblyMoisture }: Given): FieldKey | undefined {
  if (isAfter && keptGrip === undefined) return "keptGrip";
  return name !== "assembly" && assemblyMoisture === undefined ? "assemblyMoisture" : undefined;
}

/** Whether the press fit squeezes the bush beyond its compressive strength, where no elastic figure holds. */
export const isCrushed = ({ stress }: FitState, strength: number): boolean => !holds(stress / strength);

const loosest = ({ states }: FitStates): FitState => leastBy(states, (state) => state.grip);

/** The share of the press fit at which its grip is lost, as `neededShareOf` has it. */
const share: Working = {
  lines: ["q = 1 - δ / δ_hot", "R_a = cb / ((ch + cb) / q - ch)"],
  known: {},
  between: {
    q: { unit: "", text: "Share of the pressure that cold bush and housing need" },
    R_a: { unit: "", text: "Share of the press fit at which the grip is lost" },
  },
};

const tooMuch = misses.keptTooMuch.nearTransition;

/** Shares extrapolated from short holds came out too high: said where a share that is so much too high would lose the grip. */
const extrapolated = (kept: number | undefined, needed: number): string[] =>
  kept !== undefined && mayBeLost(kept, needed)
    ? [
        `lost where less than ${percentText(needed)} of the press fit is kept; shares extrapolated from short holds were up to ${tooMuch} times too high`,
      ]
    : [];
const mayBeLost = (kept: number, needed: number): boolean => kept / tooMuch < needed;

/** The share that is needed, where it is told. */
function toldShare(found: FitStates, { keptGrip = 0 }: Given): number {
  const needed = neededShare(found);
  return mayBeLost(keptGrip, needed) ? needed : 0;
}

export const grip = criterion(
  {
    id: "grip",
    heading: "grip",
    kind: "length",
    text: "The interference of bush and housing that is left in the worst case, the coldest state after the hottest hold included; from a bush dry or humid at assembly where that is not told. Where the share kept is not known, care, with the share at which the grip is lost; care too where it is lost with the bore as much warmer than its PV implies as was measured. A hoop stress at the bore above the compressive strength crushes the bush, and fails",
    asked: "where a zone of the fit is given",
    askedBy: fitFields,
    fields: [
      ...fitFields,
      "keptGrip",
      "heldAtEnds",
      "housing",
      "housingOutside",
      "wall",
      "outside",
      "moisture",
      "assemblyMoisture",
      "peakTemperature",
    ],
    properties: [...fitProperties, "compressiveStrength"],
    source: [
      { key: "shigley", at: "press and shrink fits" },
      { key: "own", at: "history of a press fit whose polymer relaxes" },
    ],
    working: (values, duty) => {
      const states = fitStates(values, duty);
      if (isMissing(states)) return undefined;
      const loose = loosest(states);
      const after = states.states.filter(({ isAfter }) => isAfter);
      const again = leastBy(after, ({ course }) => -neededShareOf(course));
      // with the whole fit kept the last state is as loose as the coldest, and leads on to the share that is needed
      const isShare = duty.given.keptGrip === undefined && loose.grip > 0 && again.grip <= loose.grip;
      const least = figure(0, "length", "Least interference of a bush that is held");
      return joined(
        fitWorking(isShare ? again : loose, "grip"),
        isShare && neededShare(states) > 0 ? share : { lines: [], known: {} },
        { lines: ["V = δ", "Z = δ_a"], known: { δ_a: least } },
      );
    },
    asks: ({ given }) => fitFields.some((key) => given[key] !== undefined),
  },
  (values, duty) => {
    const found = fitStates(values, duty);
    if (isMissing(found)) return withoutData(found);
    const { states } = found;
    const least = loosest(found);
    const finding = { figures: found.figures, value: least.grip, limit: 0 } as const;
    if (gripFault(least) !== undefined) {
      const say = (system: System) => {
        const by = measureText("length", -least.grip, system, 3);
        return least.name === "assembly"
          ? `grip: loose in the housing by ${by}`
          : `grip lost when ${least.name}, by ${by}`;
      };
      return { word: "fails", ...finding, say };
    }
    const strength = values.compressiveStrength;
    if (strength === undefined) return lacking("compressiveStrength", least.grip);
    const tightest = leastBy(states, ({ stress }) => -stress);
    const squeeze = tightest.stress / strength;
    const squeezed = () => `hoop stress ${percentText(squeeze)} of the compressive strength`;
    const figures = [...found.figures, "compressiveStrength"] as const;
    if (isCrushed(tightest, strength)) {
      const say = () => `grip: crushed when ${tightest.name}, ${squeezed()}`;
      return { word: "fails", ...finding, figures, say, room: () => [0, -squeeze] };
    }
    const notes = () => [
      `least when ${least.name}`,
      `at most ${squeezed()}, when ${tightest.name}`,
      ...extrapolated(duty.given.keptGrip, neededShare(found)),
    ];
    // care leaves the grip held; what else is told counts where corners of a band are as loose
    const room = () => [least.grip, -toldShare(found, duty.given), -squeeze];
    const judged = { ...finding, figures, notes, room } as const;
    const untold = states.map((state) => gripUntold(state, duty.given));
    if (untold.includes("keptGrip")) {
      const say = () => `grip: lost where less than ${percentText(neededShare(found))} of the press fit is kept`;
      return { word: "care", ...judged, say };
    }
    if (untold.includes("assemblyMoisture"))
      return { word: "care", ...judged, say: () => "grip: moisture at assembly not told" };
    const by = riseUntold(values, duty);
    const warm = warmerStates(found, by).find((state) => gripFault(state) !== undefined);
    if (warm) {
      const say = (system: System) => `grip lost when ${warm.name}, ${warmerText(by, system)}`;
      return { word: "care", ...judged, say };
    }
    return { word: "fits", ...judged };
  },
);
