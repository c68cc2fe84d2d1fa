import { weakest } from "../../grades/model/labels";
import type { Label } from "../../grades/model/labels";
import { labelOf } from "../../grades/model/library";
import type { Grade } from "../../grades/model/library";
import { assess } from "./assess";
import { criteria } from "../criteria";
import { worse } from "./criterion";
import type { Check, Criterion } from "./criterion";
import type { Duty } from "../model/duty";
import { isAskedFor } from "../model/fields";
import type { NamedDuty } from "../model/namedDuty";

/** Every criterion of a duty at its worst corner. */
export function judge(grade: Grade, { corners }: NamedDuty): Check[] {
  const [only] = corners as [NamedDuty["corners"][number]];
  if (corners.length === 1) return assess(grade.values, only);
  const worst = new Map<Criterion, Check>();
  for (const corner of corners)
    for (const check of assess(grade.values, corner)) {
      const before = worst.get(check.criterion);
      worst.set(check.criterion, before ? worse(before, check) : check);
    }
  // a criterion may be asked at some corners only: the list's order is kept
  return criteria.flatMap((criterion) => worst.get(criterion) ?? []);
}

/** How well the weakest figure that counted is founded. */
export function dataLabel(grade: Grade, checks: readonly Check[]): Label | "" {
  const counted: Label[] = [];
  for (const { figures, duty } of checks)
    for (const key of figures) counted.push(labelOf(grade, key, duty.given.media));
  return weakest(counted) ?? "";
}

/** Criteria that optional fields would ask and that were left open: what fits says nothing of them. */
export function notAsked(checks: readonly Check[], { part, corners }: NamedDuty): readonly Criterion[] {
  const [{ given, steps }] = corners as [Duty];
  const motion = steps.find((step) => step.motion !== "static")?.motion ?? "static";
  return criteria.filter(
    ({ id, askedBy }) =>
      askedBy?.every((key) => given[key] === undefined) &&
      askedBy.some((key) => isAskedFor(key, part, motion)) &&
      !checks.some(({ criterion }) => criterion.id === id),
  );
}

/** The value of a criterion, or its limit, where it was asked and found. */
export const found = (checks: readonly Check[], id: string): Check | undefined =>
  checks.find(({ criterion }) => criterion.id === id);
