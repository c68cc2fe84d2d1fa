import type { Progress } from "../../files/delimited";

/** A page that is busy longer than this, ms, feels stuck. */
const patience = 40;

export type Turn = (share: number) => Promise<void>;

/** Gives the page a turn now and then during long work; throws where it was stopped. */
export function turns({ report, signal }: Progress, work: string): Turn {
  let last = performance.now();
  return async (share) => {
    if (performance.now() - last < patience) return;
    report(share);
    await new Promise((resolve) => setTimeout(resolve));
    if (signal.aborted) throw new Error(`${work} was stopped.`);
    last = performance.now();
  };
}
