import { criterion } from "../judging/criterion";
import type { Criterion } from "../judging/criterion";
import type { Duty } from "../model/duty";
import { field, fieldKeys } from "../model/fields";
import type { FieldKey } from "../model/fields";
import { givesPaths, pathFields } from "../model/heatPaths";

/**
 * What a duty says and no criterion looks at must not pass in silence. Made for the criteria that stand before it; names
 * and costs are not for judging.
 */
export function notJudged(criteria: readonly Criterion[]): Criterion {
  const judged = new Set<FieldKey>(criteria.flatMap(({ fields }) => fields));
  const open = new Set(fieldKeys.filter((key) => !judged.has(key) && !["name", "cost"].includes(field(key).group)));
  const paths = new Set<FieldKey>(pathFields);
  const isOpen = (duty: Duty, key: FieldKey): boolean => {
    const value = duty.given[key];
    if (open.has(key)) return value !== field(key).default;
    // they stand for nothing without each other; of a washer an exposed length of 0 says that there is none
    return paths.has(key) && value !== 0 && duty.isMoving && !givesPaths(duty);
  };
  const found = (duty: Duty) => (Object.keys(duty.given) as FieldKey[]).filter((key) => isOpen(duty, key));
  return criterion(
    {
      id: "notJudged",
      heading: "not judged",
      kind: "ratio",
      text: "What the duty says and no criterion ever looks at is told, and leaves care",
      asked: "where a field is filled that no criterion judges, as friction without a way out for the heat",
      fields: [...open],
      properties: [],
      source: { key: "own", at: "what no criterion judges is told" },
      asks: (duty) => {
        for (const key in duty.given) if (isOpen(duty, key as FieldKey)) return true;
        return false;
      },
    },
    (_, duty) => ({
      word: "care",
      figures: [],
      say: () =>
        `not judged: ${found(duty)
          .map((key) => field(key).heading)
          .join(", ")}`,
    }),
  );
}
