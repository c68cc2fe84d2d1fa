import { Button } from "@fluentui/react-components";
import { Notice } from "../parts/Notice";
import { neededFor, neededText } from "../state/needed";
import type { PaneState } from "../state/usePane";

/** What would turn "no data" into a verdict, and the way there. */
export function NeededNote({ pane }: { pane: PaneState }) {
  const { judged, ranked, askFor, goTo } = pane;
  if (!judged) return null;
  const { fields, waiting, lacksFigures } = neededFor(judged, ranked);
  const [first] = fields;
  if (!first && !lacksFigures) return null;
  return (
    <Notice
      intent="info"
      title={first ? `Not judged: ${waiting.join(", ")}.` : "No data."}
      actions={
        <>
          {first && (
            <Button size="small" onClick={() => askFor(first)}>
              State {neededText(first)}
            </Button>
          )}
          {lacksFigures && (
            <Button size="small" onClick={() => goTo("own")}>
              Add own grades
            </Button>
          )}
        </>
      }
    >
      {first && `The duty does not state ${fields.map(neededText).join(", ")}. `}
      {lacksFigures && "Figures that a grade lacks are named with it; a row of own grades can give them."}
    </Notice>
  );
}
