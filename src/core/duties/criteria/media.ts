import type { Rated } from "../../grades/model/media";
import type { Values } from "../../grades/model/properties";
import { measureText } from "../../measure";
import { present } from "../../present";
import { criterion, lacking, rounding, together } from "../judging/criterion";
import type { Finding } from "../judging/criterion";

const words = { resistant: "fits", limited: "care", attacked: "fails", note: "care" } as const;
const said = {
  resistant: "resistant",
  limited: "limited",
  attacked: "attacked",
  note: "ask for a declaration of the grade itself",
} as const;
const figures = ["media"] as const;

function findingOf({ media: known }: Values, medium: string, hottest: number): Finding {
  const rated = known?.find((entry) => entry.medium === medium);
  if (rated === undefined) return { ...lacking("media"), say: () => `media: ${medium}` };
  if (rated.rating !== "attacked" && rated.to !== undefined && hottest > rated.to + rounding)
    return { word: "care", figures, property: "media", say: hotter(rated, rated.to, hottest) };
  const word = words[rated.rating];
  return {
    word,
    figures,
    property: "media",
    say: word === "fits" ? undefined : () => `${medium}: ${said[rated.rating]}`,
  };
}

const hotter =
  ({ medium, rating }: Rated, to: number, hottest: number): Finding["say"] =>
  (system) => {
    const [rated, found] = [to, hottest].map((t) => measureText("temperature", t, system));
    return `${medium}: rated ${said[rating]} to ${rated} only, here ${found}`;
  };

export const media = criterion(
  {
    id: "media",
    heading: "media",
    kind: "ratio",
    text: "How the grade bears each medium: resistant passes, limited is care, attacked fails; hotter than the rating holds for, for a short peak too, is care",
    asked: "where media are named",
    askedBy: ["media"],
    fields: ["media", "temperature", "peakTemperature"],
    properties: ["media"],
    source: { key: "practice", at: "rating of the grade" },
    asks: ({ given }) => given.media !== undefined && given.media.length > 0,
  },
  (values, { given, temperature }) => {
    const hottest = Math.max(temperature.high, given.peakTemperature ?? -Infinity);
    return together(present(given.media).map((medium) => findingOf(values, medium, hottest)));
  },
);
