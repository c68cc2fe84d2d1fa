import { startTransition, useEffect, useRef, useState } from "react";
import type { NamedDuty, Ranked } from "../../core/duties";
import type { Library } from "../../core/grades/model";
import { turns } from "../parts/turns";
import type { Turn } from "../parts/turns";
import { inOrder, judgedFor } from "./list";

export interface Ranking {
  /** The duty that was judged last: typing goes before judging. */
  readonly judged: NamedDuty | undefined;
  /** All grades judged for it, best first. */
  readonly ranked: readonly Ranked[];
  readonly judging: Judging;
}

/** Of thousands of grades judging lasts. */
export interface Judging {
  /** Share judged so far. */
  readonly share?: number | undefined;
  /** Why there is no ranking. */
  readonly problem?: string | undefined;
  stop(): void;
  again(): void;
}

type State = Omit<Ranking, "judging"> & Pick<Judging, "share" | "problem">;
const nothing: State = { judged: undefined, ranked: [] };

/** Judges all grades whenever the duty or the library changes; thousands in parts, with a way to stop. */
export function useRanking(duty: NamedDuty | undefined, library: Library): Ranking {
  const [{ judged, ranked, share, problem }, setRanking] = useState(nothing);
  const running = useRef<AbortController>(undefined);
  const [turn, setTurn] = useState(0);
  useEffect(() => {
    const controller = new AbortController();
    running.current = controller;
    let isOld = false;
    const say = (next: State) => {
      // long lists are drawn behind what is typed
      if (!isOld) startTransition(() => setRanking(next));
    };
    if (!duty) say(nothing);
    else {
      const progress = { report: (part: number) => say({ ...nothing, share: part }), signal: controller.signal };
      listInTurns(duty, library, turns(progress, "Judging")).then(
        (list) => say({ judged: duty, ranked: list }),
        (error: Error) => say({ ...nothing, problem: error.message }),
      );
    }
    return () => {
      isOld = true;
      controller.abort();
    };
  }, [duty, library, turn]);
  const judging = { share, problem, stop: () => running.current?.abort(), again: () => setTurn(turn + 1) };
  return { judged, ranked, judging };
}

async function listInTurns(duty: NamedDuty, { grades }: Library, turn: Turn): Promise<Ranked[]> {
  const found: Ranked[] = [];
  for (const grade of grades) {
    found.push(judgedFor(duty, grade));
    await turn(found.length / grades.length);
  }
  return inOrder(found);
}
