import { Button, Field as FieldBox, Textarea } from "@fluentui/react-components";
import { useState } from "react";
import type { SheetPort } from "../../port/sheet";
import { useShared } from "../parts/styles";
import { counted } from "../parts/words";
import { linesOf, stepKeys, stepText } from "../state/spectrum";
import type { DutyState } from "../state/dutyState";

/** Optional steps of a load spectrum: with them the whole of the steps is judged. */
export function SpectrumField({ state, port }: { state: DutyState; port: SheetPort }) {
  const s = useShared();
  const [fault, setFault] = useState<string>();
  const { steps, texts, read } = state;
  const wanted = stepText(texts.motion);

  const take = () => {
    void (async () => {
      const place = await port.selection();
      const cells = place ? await port.read(place) : [];
      const { length } = stepKeys(texts.motion);
      if (cells[0]?.length !== length) return setFault(`Select ${length} columns: ${wanted}.`);
      setFault(undefined);
      state.setSteps(cells.map((row) => row.map((cell) => cell.value ?? "").join("; ")).join("\n"));
    })();
  };
  const problem = fault ?? read.stepsFault;
  const count = linesOf(steps, texts.motion).length;
  const hint = `One step per line: ${wanted}; time in minutes unless it says otherwise`;
  return (
    <details open={steps !== ""}>
      <summary className={s.summary}>Load spectrum (optional)</summary>
      <FieldBox
        label="Steps"
        hint={count === 0 ? hint : `${counted(count, "step")}, judged together: ${wanted}`}
        validationState={problem ? "error" : "none"}
        validationMessage={problem}
        style={{ marginTop: 8 }}
      >
        <Textarea value={steps} rows={4} onChange={(_, { value }) => state.setSteps(value)} />
      </FieldBox>
      <Button size="small" onClick={take} style={{ marginTop: 4 }}>
        Take selected cells
      </Button>
    </details>
  );
}
