import { Button } from "@fluentui/react-components";
import type { ReactNode } from "react";
import type { PaneState } from "../state/usePane";
import { Notice } from "./Notice";
import { Stoppable } from "./Stoppable";

/** What stands where nothing is judged: no duty yet, with what it would be for, or judging that lasts or was stopped. */
export function Unjudged({ pane, children }: { pane: PaneState; children: ReactNode }) {
  const { duty, judging, goTo } = pane;
  const { share, problem, stop, again } = judging;
  if (!duty.read.duty)
    return (
      <Notice intent="info" title="No duty yet." actions={<Button onClick={() => goTo("duty")}>State the duty</Button>}>
        {children}
      </Notice>
    );
  if (share !== undefined) return <Stoppable work="Judging" share={share} stop={stop} />;
  if (problem === undefined) return null;
  return (
    <Notice intent="warning" actions={<Button onClick={again}>Judge again</Button>}>
      {problem}
    </Notice>
  );
}
