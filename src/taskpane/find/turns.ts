import { fitRows, fitVerdict, unstatedFit, withField } from "../../core/duties";
import type { FieldKey, FitRow, NamedDuty } from "../../core/duties";
import { BushError, orFault } from "../../core/errors";
import { readZone } from "../../core/fit/zones/zone";
import type { Grade } from "../../core/grades/model";
import { present } from "../../core/present";
import { nameOf } from "../figures/fit";
import type { Room } from "../figures/room";

/** The least length or the greatest load that keeps the verdict, or from where it turns for the better. */
export function turnText(room: Room | undefined, side: "least" | "greatest", word: string): string {
  if (!room) return "Not stated by this duty.";
  const turn = room[side];
  const name = side === "least" ? `Least ${room.field}` : `Greatest ${room.field}`;
  if (word !== "fails" && word !== "no data")
    return turn
      ? `${name}: ${turn.at} ${room.unit} stays "${word}"; beyond it ${turn.word} (${turn.by}).`
      : `${name}: it turns nothing within a thousand times its value.`;
  const way = room[side === "least" ? "greatest" : "least"];
  return way
    ? `At ${room.value} ${room.unit} the verdict is "${word}"; from ${way.at} ${room.unit} on it is ${way.word}.`
    : `At ${room.value} ${room.unit} the verdict is "${word}", and no other ${room.field} changes that.`;
}

/** A bore and an outside that never bind and stay put, with the clearance that they give. */
export interface ZoneFit {
  readonly boreZone: string;
  readonly outsideZone: string;
  readonly greatest: number;
  readonly least: number;
  /** "fits", or care with its reason. */
  readonly verdict: string;
}

const boreZones = ["H", "G", "F", "E", "D", "C", "B"].flatMap((letter) =>
  [7, 8, 9, 10, 11].map((it) => `${letter}${it}`),
);
const outsideZones = ["p", "r", "s", "t", "u", "x", "z", "za", "zb", "zc"].flatMap((letter) =>
  [7, 8, 9].map((it) => `${letter}${it}`),
);

/**
 * The pairs of ISO 286 zones for bore and outside whose states all hold, the tightest running clearance first; housing
 * and shaft stay as they are. Throws what duty or grade lacks where no pair can be judged.
 */
export function zoneFits(duty: NamedDuty, grade: Grade): ZoneFit[] {
  const steps = duty.steps.map((_, i) => i);
  const put = (of: NamedDuty, key: FieldKey, zone: string) => withField(of, key, readZone(zone, "metric", key), steps);
  let lacking: BushError | undefined;
  let isJudged = false;
  const judged = (of: NamedDuty): FitRow[] | undefined => {
    const rows = orFault(() => fitRows(of, grade));
    if (rows instanceof BushError) {
      lacking ??= rows;
      return undefined;
    }
    isJudged = true;
    return rows;
  };
  const tried = outsideZones.flatMap((outsideZone) => {
    const pressed = attempt(() => put(duty, "outsideZone", outsideZone));
    return boreZones.flatMap((boreZone): ZoneFit[] => {
      const paired = pressed && attempt(() => put(pressed, "boreZone", boreZone));
      const rows = paired && judged(paired);
      if (!rows || rows.some(({ word }) => word === "fails" || word === "no data")) return [];
      // what would be with no grip kept is told by the verdict
      const clearances = rows.filter(({ isSupposed }) => !isSupposed).map(({ clearance }) => clearance);
      const greatest = Math.max(...clearances.map((clearance) => clearance.greatest));
      const least = Math.min(...clearances.map((clearance) => clearance.least));
      return [{ boreZone, outsideZone, greatest, least, verdict: worstOf(rows) }];
    });
  });
  if (lacking && !isJudged) throw lacking;
  return tried.sort((a, b) => a.greatest - b.greatest);
}

/** The verdict of the worst state, and which that is. */
function worstOf(rows: readonly FitRow[]): string {
  const cares = rows.filter(({ word }) => word === "care");
  const worst = cares.find(({ isSupposed }) => isSupposed) ?? cares[0];
  return worst ? `${fitVerdict(worst)} (${nameOf(worst)})` : fitVerdict(present(rows[0]));
}

/** A zone that the standard has not at this size is no candidate. */
function attempt<T>(run: () => T): T | undefined {
  const made = orFault(run);
  return made instanceof BushError ? undefined : made;
}

/** Fields that the search needs beside those it looks for. */
export const zoneNeeds = ({ corners: [corner] }: NamedDuty): FieldKey[] =>
  unstatedFit(present(corner).given).filter((key) => key !== "boreZone" && key !== "outsideZone");
