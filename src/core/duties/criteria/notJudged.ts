import { criterion } from "../criterion";
import type { Criterion } from "../criterion";
import type { Duty } from "../duty";
import { field, fieldKeys } from "../fields";
import type { FieldKey, Given } from "../fields";

/**
 * What a duty says and no criterion looks at must not pass in silence. Made for the criteria that stand before it; names
 * and costs are not for judging.
 */
export function notJudged(criteria: readonly Criterion[]): Criterion {
  const judged = new Set<FieldKey>(criteria.flatMap(({ fields }) => fields));
  const open = new Set(fieldKeys.filter((key) => !judged.has(key) && !["name", "cost"].includes(field(key).group)));
  const isOpen = (given: Given, key: FieldKey) => open.has(key) && given[key] !== field(key).default;
  const found = ({ given }: Duty) => (Object.keys(given) as FieldKey[]).filter((key) => isOpen(given, key));
  return criterion(
    {
      id: "notJudged",
      heading: "not judged",
      kind: "ratio",
      text: "What the duty says and no criterion looks at is told, and leaves care",
      asked: "where a field is filled that no criterion judges",
      fields: [...open],
      properties: [],
      source: { key: "own", at: "nothing that was typed is passed over in silence" },
      asks: ({ given }) => {
        for (const key in given) if (isOpen(given, key as FieldKey)) return true;
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
