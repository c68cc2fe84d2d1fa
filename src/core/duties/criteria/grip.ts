import { measure, percentText } from "../../measure";
import { criterion, figure, isMissing, joined, withoutData } from "../criterion";
import { fitFields, fitProperties, fitStates, leastBy } from "../fitStates";
import type { Working } from "../criterion";
import type { FitState, FitStates } from "../fitStates";
import { fitWorking } from "../fitWorking";

const loosest = ({ forGrip }: FitStates): FitState => leastBy(forGrip, (state) => state.grip);

/** The share of the press fit at which its grip is lost, as `neededShare` has it. */
const share: Working = {
  lines: ["q = 1 - δ / δ_hot", "R_a = cb / ((ch + cb) / q - ch)"],
  known: {},
  between: {
    q: { unit: "", text: "Share of the pressure that cold bush and housing need" },
    R_a: { unit: "", text: "Share of the press fit at which the grip is lost" },
  },
};

export const grip = criterion(
  {
    id: "grip",
    heading: "grip",
    kind: "length",
    text: "The interference of bush and housing that is left in the worst case, the coldest state after the hottest hold included; the bush as moist at assembly as it may have been. Where the share kept is not known, care, with the share at which the grip is lost",
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
    ],
    properties: fitProperties,
    source: [
      { key: "shigley", at: "press and shrink fits" },
      { key: "own", at: "history of a press fit whose polymer relaxes" },
    ],
    working: (values, duty) => {
      const states = fitStates(values, duty);
      if (isMissing(states)) return undefined;
      const loose = loosest(states);
      const again = states.forGrip.find(({ climate }) => climate.isAfter)!;
      // with the whole fit kept the last state is as loose as the coldest, and leads on to the share that is needed
      const isShare = duty.given.keptGrip === undefined && loose.grip > 0 && again.grip <= loose.grip;
      const { neededShare } = states;
      const least = figure(0, "length", "Least interference of a bush that is held");
      return joined(
        fitWorking(isShare ? again : loose, "grip"),
        isShare && neededShare > 0 ? share : { lines: [], known: {} },
        { lines: ["V = δ", "Z = δ_a"], known: { δ_a: least } },
      );
    },
    asks: ({ given }) => fitFields.some((key) => given[key] !== undefined),
  },
  (values, duty) => {
    const states = fitStates(values, duty);
    if (isMissing(states)) return withoutData(states);
    const { name, grip: least } = loosest(states);
    const found = { figures: states.figures, value: least, limit: 0 } as const;
    if (least <= 0) {
      const say = (system: Parameters<typeof measure>[2]) =>
        name === "assembly"
          ? `grip: loose in the housing by ${measure("length", -least, system, 3)}`
          : `grip lost when ${name}, by ${measure("length", -least, system, 3)}`;
      return { word: "fails", ...found, say };
    }
    if (duty.given.keptGrip !== undefined && duty.given.assemblyMoisture !== undefined)
      return { word: "fits", ...found, notes: () => [`least when ${name}`] };
    const { neededShare } = states;
    const say = () =>
      duty.given.keptGrip === undefined
        ? `grip: lost where less than ${percentText(neededShare)} of the press fit is kept`
        : "grip: moisture at assembly not told";
    return { word: "care", ...found, say };
  },
);
