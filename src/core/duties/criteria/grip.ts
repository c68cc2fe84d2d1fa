import { measure, percentText } from "../../measure";
import { criterion, isMissing, withoutData } from "../criterion";
import { fitFields, fitProperties, fitStates, leastBy } from "../fitStates";

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
      "assemblyMoisture",
    ],
    properties: fitProperties,
    source: [
      { key: "shigley", at: "press and shrink fits" },
      { key: "own", at: "history of a press fit whose polymer relaxes" },
    ],
    asks: ({ given }) => fitFields.some((key) => given[key] !== undefined),
  },
  (values, duty) => {
    const states = fitStates(values, duty);
    if (isMissing(states)) return withoutData(states);
    const { name, grip: least } = leastBy(states.forGrip, (state) => state.grip);
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
