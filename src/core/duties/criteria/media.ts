import type { Values } from "../../grades/model/properties";
import { criterion, lacking, together } from "../judging/criterion";
import type { Finding } from "../judging/criterion";

const words = { resistant: "fits", limited: "care", attacked: "fails" } as const;
const figures = ["media"] as const;

function findingOf({ media: known }: Values, medium: string): Finding {
  const rating = known?.find((entry) => entry.medium === medium)?.rating;
  if (rating === undefined) return { ...lacking("media"), say: () => `media: ${medium}` };
  const word = words[rating];
  return { word, figures, property: "media", say: word === "fits" ? undefined : () => `${medium}: ${rating}` };
}

export const media = criterion(
  {
    id: "media",
    heading: "media",
    kind: "ratio",
    text: "How the grade bears each medium: resistant passes, limited is care, attacked fails",
    asked: "where media are named",
    askedBy: ["media"],
    fields: ["media"],
    properties: ["media"],
    source: { key: "practice", at: "rating of the grade" },
    asks: ({ given }) => given.media !== undefined && given.media.length > 0,
  },
  (values, { given }) => together(given.media!.map((medium) => findingOf(values, medium))),
);
