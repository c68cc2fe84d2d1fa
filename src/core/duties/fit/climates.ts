import { assemblyTemperature } from "../../fit/running";
import { present } from "../../present";
import type { Duty } from "../model/duty";
import type { Given } from "../model/fields";

export type Moisture = NonNullable<Given["moisture"]>;

type SwellingKey = "swelling50" | "swellingSaturated";

/** The figure of a grade that tells how far it swells. */
export const swellingKey: Readonly<Partial<Record<Moisture, SwellingKey>>> = {
  humid: "swelling50",
  wet: "swellingSaturated",
};

/** The figures of a grade that tell how far it swells at each of these. */
export function swellingsAt(...moistures: readonly Moisture[]): readonly SwellingKey[] {
  const keys: SwellingKey[] = [];
  for (const moisture of moistures) {
    const key = swellingKey[moisture];
    if (key !== undefined) keys.push(key);
  }
  return keys;
}

/** Where the moisture at assembly is not told it may be that of a dry store or of humid air. */
export const moisturesOf = ({ moisture = "dry", assemblyMoisture }: Given) => ({
  inService: moisture,
  assembled: assemblyMoisture === undefined ? (["dry", "humid"] as const) : [assemblyMoisture],
});

/** Temperatures of one state, °C, and what the bush has swollen. */
export interface Climate {
  readonly name: string;
  /** Of the air about it; a bush that is warmer runs. */
  readonly surroundings: number;
  readonly bush: number;
  readonly housing: number;
  readonly shaft: number;
  /** Linear swelling since the bush was pressed in; below 0 where it has dried. */
  readonly swelling: number;
  /** After the hottest hold, which has relaxed the press fit. */
  readonly isAfter: boolean;
}

/**
 * The states that occur where a bush swells by `change` from assembly to service. In motion friction warms the bore by
 * `rise`, its housing being as warm as the bore or as cold as the surroundings; so it does in a short peak. What has dried
 * also stands where the bush was pressed in; after the hottest hold the bush is as cold and as dry as it gets.
 */
export function climates({ temperature, given }: Duty, rise: number, change: number): Climate[] {
  const { low, high } = temperature;
  const { peakTemperature } = given;
  const standing = Math.min(low, assemblyTemperature);
  const changed = change < 0 ? ", dried" : `, ${given.moisture}`;
  const at = (name: string, t: number, swelling: number, surroundings = t, housing = t, isAfter = false): Climate => ({
    name,
    surroundings,
    bush: t,
    housing,
    shaft: t,
    swelling,
    isAfter,
  });
  const warm = (name: string, running: string, t: number, swelling: number, addition: string): Climate[] => [
    at(`${name}${addition}`, t, swelling),
    ...(rise > 0
      ? [
          at(`${running}${addition}`, t + rise, swelling, t),
          at(`${running}${addition}, housing cool`, t + rise, swelling, t, t),
        ]
      : []),
  ];
  const hot = (swelling: number, addition = ""): Climate[] => [
    ...warm("hot", "running", high, swelling, addition),
    ...(peakTemperature === undefined
      ? []
      : warm("short peak", "running in the short peak", peakTemperature, swelling, addition)),
  ];
  return [
    at("assembly", assemblyTemperature, 0),
    at("cold", low, 0),
    ...hot(0),
    ...(change === 0 ? [] : [at(`cold${changed}`, change < 0 ? standing : low, change), ...hot(change, changed)]),
    at("cold again", standing, Math.min(0, change), standing, standing, true),
  ];
}

/**
 * The states of service once more after the hottest hold: a housing that gives way springs back as the press fit relaxes, and
 * closes the bore. Left out is what is "cold again" or lies between that and "hot again", one of which is as close and one as loose.
 */
export function againOf(all: readonly Climate[]): readonly Climate[] {
  const back = present(all.find(({ isAfter }) => isAfter));
  const isTold = ({ name, bush, swelling }: Climate): boolean =>
    name === "assembly" || (swelling === back.swelling && (name === "cold" || bush === back.bush));
  return all
    .filter((one) => !one.isAfter && !isTold(one))
    .map((one): Climate => ({ ...one, name: nameAgain(one.name), isAfter: true }));
}
const nameAgain = (name: string): string => (name === "cold" ? "cold again, not dried" : `${name} again`);
