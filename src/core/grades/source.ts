import { formula } from "../formula";
import { present } from "../present";
import { sourceTitle } from "../sources";
import { findGrade, findProperty } from "./model/find";
import { propertyCell, gradeArg, lacks } from "./grade";
import { kindText } from "./model/library";
import type { Grade } from "./model/library";
import type { Media } from "./model/media";
import type { Origin } from "./model/origin";
import type { PropertyKey } from "./model/properties";
import { gradesArg } from "./model/table";

/** Where a grade's value comes from, in one line. */
export function originText(grade: Grade, key: PropertyKey): string {
  if (grade.kind === "own") return grade.values.source ?? "own row, no source given";
  if (grade.kind === "generic" && key === "media") return mediaOrigins(present(grade.values.media));
  const origin = grade.origins[key];
  if (origin) return publishedText(origin);
  return grade.kind === "demo" ? kindText.demo : "wording of this library";
}

const placeText = ({ source, at }: Origin): string => [sourceTitle(source), at].filter(Boolean).join(" ");

const publishedText = (origin: Origin): string =>
  [placeText(origin), `${origin.printed}, ${origin.label}`, origin.condition].filter(Boolean).join("; ");

/** Each source once, with the media that it rates. */
function mediaOrigins(media: Media): string {
  const bySource = new Map<string, string[]>();
  for (const { medium, origin } of media) {
    const own = present(origin);
    const from = `${placeText(own)}, ${own.label}`;
    bySource.set(from, [...(bySource.get(from) ?? []), medium]);
  }
  return [...bySource].map(([from, rated]) => `${from}: ${rated.join(", ")}`).join("; ");
}

export const SOURCE = formula(
  {
    id: "SOURCE",
    text: "Where a grade's value comes from: source, place in it, the number as printed, the band whose safe end it is, how well it is founded (label), condition",
    args: {
      grade: gradeArg,
      property: { kind: "text", text: "Heading of the property" },
      grades: gradesArg,
    },
    units: false,
    result: { kind: "text", text: "The source in one line" },
    source: { key: "own" },
    example: ["PA66", "PV limit"],
    see: ["GRADE"],
  },
  ({ grade, property, grades }) => {
    const found = findGrade(grade, grades);
    const p = findProperty(property);
    if (propertyCell(found, p, "metric") === undefined) throw lacks(found, p.heading);
    return originText(found, p.key);
  },
);
