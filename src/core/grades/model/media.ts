import classes from "../../../../data/media.json";
import { clash, mustBe, orList } from "../../errors";
import { normal, unknownName } from "../../names";

/** What may surround a bush, in the classes that polymers are rated against. */
export const mediaClasses: readonly string[] = classes;
const byName = new Map(mediaClasses.map((medium) => [normal(medium), medium]));

export const mediaRatings = ["resistant", "limited", "attacked"] as const;
export type MediaRating = (typeof mediaRatings)[number];

/** A grade's ratings, each class at most once; a class that is not there is "no data". */
export type Media = readonly { readonly medium: string; readonly rating: MediaRating }[];

/** Reads "water: resistant; weak acids: limited". */
export function readMedia(name: string, text: string): Media {
  const media = text
    .split(/[;,]/)
    .filter((part) => part.trim() !== "")
    .map((part) => readMedium(name, part.trim()));
  media.forEach(({ medium }, i) => {
    if (media.findIndex((other) => other.medium === medium) < i) throw clash(name, `${name} names "${medium}" twice`);
  });
  return media;
}

function readMedium(name: string, part: string): Media[number] {
  const [word, rated, ...more] = part.split(":").map((side) => side.trim());
  if (!rated || more.length > 0) throw mustBe(name, 'classes and ratings as "water: resistant; fuels: limited"', part);
  const medium = byName.get(normal(word!));
  if (medium === undefined)
    throw clash(name, unknownName(name, word!, mediaClasses, 'a class is "sea water", say: see Own data in the docs'));
  const rating = mediaRatings.find((r) => r === rated.toLowerCase());
  if (!rating) throw mustBe(`${name}, ${medium}`, orList(mediaRatings), rated);
  return { medium, rating };
}

export const mediaText = (media: Media): string => media.map(({ medium, rating }) => `${medium}: ${rating}`).join("; ");
