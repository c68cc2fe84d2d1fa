import { measure } from "../../measure";
import { criterion, figure, isMissing, joined, rounding, withoutData } from "../criterion";
import { fitFields, fitProperties, fitStates, leastBy } from "../fitStates";
import type { FitState, FitStates } from "../fitStates";
import { fitWorking } from "../fitWorking";

const tightest = ({ forClearance }: FitStates): FitState => leastBy(forClearance, (state) => state.clearance.least);

export const clearance = criterion(
  {
    id: "clearance",
    heading: "clearance",
    kind: "length",
    text: "The least running clearance over assembly, cold, hot, wet and back, in the worst case of all tolerances, against the least wanted; the bush as dry at assembly as it may have been",
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
      return joined(fitWorking(tightest(states), "least"), { lines: ["V = C", "Z = C_w"], known: { C_w: wanted } });
    },
    asks: ({ given }) => given.leastClearance !== undefined || fitFields.some((key) => given[key] !== undefined),
  },
  (values, duty) => {
    const states = fitStates(values, duty);
    if (isMissing(states)) return withoutData(states);
    const { name, clearance: least } = tightest(states);
    const limit = duty.given.leastClearance ?? 0;
    const found = { figures: states.figures, value: least.least, limit } as const;
    if (least.least > 0 && least.least >= limit - rounding)
      return { word: "fits", ...found, notes: () => [`least when ${name}`] };
    const say = (system: Parameters<typeof measure>[2]) => {
      const told = measure("length", least.least, system, 3);
      return least.least <= 0
        ? `clearance ${told} when ${name}: the shaft binds`
        : `clearance ${told} when ${name}, ${measure("length", limit, system, 3)} wanted`;
    };
    return { word: "fails", ...found, say };
  },
);
