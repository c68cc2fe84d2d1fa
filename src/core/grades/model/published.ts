import { kinds } from "../../kinds";
import type { Kind } from "../../kinds";
import { present } from "../../present";
import { fromUnit } from "../../units/scale";
import { mediaClasses, readMedia } from "./media";
import type { Media } from "./media";
import type { Origin } from "./origin";
import { kindOf, property } from "./properties";
import type { PropertyKey } from "./properties";
import { readProperty } from "./readProperty";

/** A figure or a word of a generic family, as its file holds it. */
export interface PublishedValue extends Omit<Origin, "printed"> {
  readonly value: number | string;
  /** As printed, where that is not the working unit. */
  readonly unit?: string;
  /** The least and the greatest that are published or known, in the same unit; the value is their safe end. */
  readonly band?: readonly [low: number, high: number];
}

/** Ratings against media out of one source: "water: limited; fuels: resistant". */
export interface PublishedMedia extends Omit<Origin, "printed" | "condition"> {
  readonly ratings: string;
  /** The highest temperature that they hold at, °C. */
  readonly to?: number;
}

/** Of a figure in numbers. */
const numberKind = (key: PropertyKey): Kind => present(kindOf(property(key)));
const unitOf = (key: PropertyKey, { unit }: PublishedValue): string => unit ?? kinds[numberKind(key)].metric;

export function publishedValue(key: PropertyKey, published: PublishedValue): unknown {
  const { value } = published;
  if (typeof value === "string") return readProperty(key, value, undefined, "metric");
  return fromUnit(key, numberKind(key), value, unitOf(key, published));
}

export function publishedOrigin(key: PropertyKey, published: PublishedValue): Origin {
  const { value, source, at, label, condition } = published;
  return { source, at, label, condition, printed: typeof value === "string" ? value : printedText(key, published) };
}

/** "1000 of 1000 to 3000 psi·ft/min". */
const printedText = (key: PropertyKey, published: PublishedValue): string => {
  const { value, band } = published;
  return `${value}${band ? ` of ${band[0]} to ${band[1]}` : ""} ${unitOf(key, published)}`.trim();
};

/** The ratings of all sources, in the order of the classes. */
export function publishedMedia(groups: readonly PublishedMedia[]): Media {
  const media = groups.flatMap(({ ratings, to, source, at, label }) =>
    readMedia("media", ratings, "metric").map(({ medium, rating }) => {
      return { medium, rating, to, origin: { source, at, label, printed: rating } };
    }),
  );
  return media.sort((a, b) => mediaClasses.indexOf(a.medium) - mediaClasses.indexOf(b.medium));
}
