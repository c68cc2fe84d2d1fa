import { notAsked } from "../../core/duties";
import type { Check, NamedDuty } from "../../core/duties";
import { useShared } from "../parts/styles";

/** What the duty leaves open, and no verdict looks at: the same for every grade. */
export function NotAsked({ checks, duty }: { checks: readonly Check[]; duty: NamedDuty }) {
  const s = useShared();
  const open = notAsked(checks, duty).map(({ heading }) => heading);
  return open.length === 0 ? null : <p className={s.quiet}>Not asked by this duty: {open.join(", ")}.</p>;
}
