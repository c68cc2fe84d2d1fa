import { property as propertyOf } from "../../grades/model/properties";
import type { PropertyKey, Rating, Values } from "../../grades/model/properties";
import { measureText } from "../../measure";
import { criterion, lacking, together } from "../judging/criterion";
import type { Finding } from "../judging/criterion";
import type { Duty } from "../model/duty";

/** Softer than this the grade's rating for soft shafts is asked, HB (common practice). */
export const softBelow = 200;
/** Rougher than this its rating for rough shafts is asked, Ra in µm (common practice). */
export const roughAbove = 0.8;

const passed = (property: PropertyKey): Finding => ({ word: "fits", figures: [property], property });
const missing = (property: PropertyKey, value?: number): Finding => ({
  ...lacking(property, value),
  say: () => `shaft: ${propertyOf(property).heading}`,
});

function material({ shafts }: Values, shaft: string): Finding {
  if (!shafts) return missing("shafts");
  if (shafts.some((word) => word.toLowerCase() === shaft)) return passed("shafts");
  return {
    word: "care",
    figures: ["shafts"],
    property: "shafts",
    say: () => `shaft of ${shaft} not among those suited`,
  };
}

function hardness({ shaftHardness: least }: Values, found: number): Finding {
  if (least === undefined) return missing("shaftHardness", found);
  const shown = { figures: ["shaftHardness"], value: found, limit: least, property: "shaftHardness" } as const;
  if (found >= least) return { word: "fits", ...shown };
  const say = (system: Parameters<typeof measureText>[2]) =>
    `shaft ${measureText("hardness", found, system)}, at least ${measureText("hardness", least, system)} wanted`;
  return { word: "care", ...shown, say };
}

function rating(values: Values, property: "softShaft" | "roughShaft", what: string): Finding {
  const found: Rating | undefined = values[property];
  if (found === undefined) return missing(property);
  if (found === "good") return passed(property);
  return { word: found === "poor" ? "fails" : "care", figures: [property], property, say: () => `${what}: ${found}` };
}

/** One finding for each thing that is known of the shaft. */
function findings(values: Values, { given }: Duty): Finding[] {
  const isSoft = given.shaft === "soft steel" || (given.hardness !== undefined && given.hardness < softBelow);
  return [
    ...(given.hardness === undefined ? [] : [hardness(values, given.hardness)]),
    ...(given.shaft === undefined ? [] : [material(values, given.shaft)]),
    ...(isSoft ? [rating(values, "softShaft", "soft shaft")] : []),
    ...(given.roughness !== undefined && given.roughness > roughAbove
      ? [rating(values, "roughShaft", "rough shaft")]
      : []),
  ];
}

export const shaft = criterion(
  {
    id: "shaft",
    heading: "shaft",
    kind: "hardness",
    text: "Material among those suited, hardness at least the grade's; softer than 200 HB the soft-shaft rating, rougher than Ra 0.8 µm the rough-shaft rating",
    asked: "where the shaft's material, hardness or roughness is given",
    askedBy: ["shaft", "hardness", "roughness"],
    fields: ["shaft", "hardness", "roughness"],
    properties: ["shafts", "shaftHardness", "softShaft", "roughShaft"],
    source: { key: "practice", at: "soft below 200 HB, rough above Ra 0.8 µm" },
    asks: ({ given }) => given.shaft !== undefined || given.hardness !== undefined || given.roughness !== undefined,
  },
  (values, duty) => {
    const all = findings(values, duty);
    return all.length === 0 ? { word: "fits", figures: [] } : together(all);
  },
);
