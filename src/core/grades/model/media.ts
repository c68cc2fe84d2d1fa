import classes from "../../../../data/media.json";
import { clash, mustBe, orList } from "../../errors";
import type { System } from "../../kinds";
import { measureText } from "../../measure";
import { normal, unknownName } from "../../names";
import { readQuantity } from "../../units/quantity";
import type { Origin } from "./origin";

/** What may surround a bush, in the classes that polymers are rated against. */
export const mediaClasses: readonly string[] = classes;
const byName = new Map(mediaClasses.map((medium) => [normal(medium), medium]));

/** Best first; a note rates nothing: what it says has to be asked for, as a declaration for food contact. */
export const mediaRatings = ["resistant", "limited", "attacked", "note"] as const;
export type MediaRating = (typeof mediaRatings)[number];

export interface Rated {
  readonly medium: string;
  readonly rating: MediaRating;
  /** The highest temperature that the rating holds at, °C; none where it is not said. */
  readonly to?: number | undefined;
  /** Where a published rating comes from. */
  readonly origin?: Origin;
}
/** A grade's ratings, each class at most once; a class that is not there is "no data". */
export type Media = readonly Rated[];

/** The class of that name; an unknown one is an error with the nearest. */
export function findMedium(name: string, word: string): string {
  const medium = byName.get(normal(word));
  if (medium !== undefined) return medium;
  throw clash(name, unknownName(name, word, mediaClasses, 'a class is "sea water", say: see Own data in the docs'));
}

/** Reads "water: resistant to 60 °C; weak acids: limited". */
export function readMedia(name: string, text: string, system: System): Media {
  const media = text
    .split(/[;,]/)
    .filter((part) => part.trim() !== "")
    .map((part) => readMedium(name, part.trim(), system));
  media.forEach(({ medium }, i) => {
    if (media.findIndex((other) => other.medium === medium) < i) throw clash(name, `${name} names "${medium}" twice`);
  });
  return media;
}

function readMedium(name: string, part: string, system: System): Rated {
  const [word = "", rated, ...more] = part.split(":").map((side) => side.trim());
  if (!rated || more.length > 0) throw mustBe(name, 'classes and ratings as "water: resistant; fuels: limited"', part);
  const medium = findMedium(name, word);
  const [, given, limit] = /^(\S+)(?:\s+to\s+(.+))?$/.exec(rated) ?? [];
  const rating = mediaRatings.find((r) => r === given?.toLowerCase());
  if (!rating) throw mustBe(`${name}, ${medium}`, `${orList(mediaRatings)}, as "resistant to 60 °C"`, rated);
  if (limit === undefined) return { medium, rating };
  return { medium, rating, to: readQuantity(`${name}, ${medium}`, "temperature", limit, system) };
}

export const ratingText = ({ rating, to }: Rated, system: System): string =>
  to === undefined ? rating : `${rating} to ${measureText("temperature", to, system)}`;

export const mediaText = (media: Media, system: System): string =>
  media.map((rated) => `${rated.medium}: ${ratingText(rated, system)}`).join("; ");
