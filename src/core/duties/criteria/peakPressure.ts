import { PEAKPRESSURE } from "../../loading/peakPressure";
import { percentText } from "../../measure";
import { againstStrength, contactWorking, layersOf, loadWorking } from "../model/contacts";
import { criterion, holds, isMissing, joined, lacking, withoutData } from "../judging/criterion";
import { fitFields } from "../fit/assembly";
import { fitProperties } from "../fit/states";

export const peakPressure = criterion(
  {
    id: "peakPressure",
    heading: "peak pressure",
    kind: "pressure",
    text: "The peak pressure of a true shaft in the bore at the greatest clearance of the fit, impact included, against the compressive strength; at worst care, since wear evens it out",
    asked: "where a zone of the fit is given",
    askedBy: fitFields,
    fields: [...fitFields, "load", "impactFactor", "wall", "outside"],
    properties: ["compressiveStrength", ...fitProperties],
    source: { key: "johnson", at: "ch. 4, elastic foundation and line contact" },
    asks: ({ given, part }) => part !== "washer" && fitFields.some((key) => given[key] !== undefined),
    working: (values, duty) => {
      const layers = layersOf(values, duty);
      const strength = values.compressiveStrength;
      if (isMissing(layers) || strength === undefined) return undefined;
      return joined(
        loadWorking(layers.greatest, duty),
        contactWorking(PEAKPRESSURE, layers.greatest, layers.states, "greatest"),
        againstStrength("p", strength),
      );
    },
  },
  (values, duty) => {
    const layers = layersOf(values, duty);
    if (isMissing(layers)) return withoutData(layers);
    const [value] = PEAKPRESSURE.calc(layers.greatest) as [number, number];
    const limit = values.compressiveStrength;
    if (limit === undefined) return lacking("compressiveStrength", value);
    const use = value / limit;
    const found = { figures: [...layers.figures, "compressiveStrength"], value, limit, use } as const;
    if (holds(use)) return { word: "fits", ...found, property: "compressiveStrength" };
    const say = () => `peak pressure ${percentText(use)} of the compressive strength until it has worn in`;
    return { word: "care", ...found, property: "compressiveStrength", say };
  },
);
