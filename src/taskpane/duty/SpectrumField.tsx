import { Button, Field as FieldBox, Textarea } from "@fluentui/react-components";
import { useState } from "react";
import type { SheetPort } from "../../port/sheet";
import { useShared } from "../parts/styles";
import type { DutyState } from "./DutyForm";
import { quantityText } from "./fields";
import { rateField } from "./spectrum";

/** Optional steps of a load spectrum; they are drawn and checked in the window. */
export function SpectrumField({ state, port }: { state: DutyState; port: SheetPort }) {
  const s = useShared();
  const [fault, setFault] = useState<string>();
  const { steps, spectrum, system, texts, read } = state;
  const rate = rateField(texts);

  const take = () => {
    void (async () => {
      const place = await port.selection();
      const cells = place ? await port.read(place) : [];
      if (cells[0]?.length !== 3) return setFault(`Select three columns: load, ${rate}, time.`);
      setFault(undefined);
      state.setSteps(cells.map((row) => row.map((cell) => cell.value ?? "").join("; ")).join("\n"));
    })();
  };
  const problem = fault ?? spectrum.fault;
  const hint =
    spectrum.pv === undefined
      ? steps && !read.duty
        ? "Read when the duty above is complete."
        : `One step per line: load; ${rate}; time`
      : `${spectrum.steps.length} steps, mean PV ${quantityText("pv", spectrum.pv, system)}`;
  return (
    <details open={steps !== ""}>
      <summary className={s.summary}>Load spectrum (optional)</summary>
      <FieldBox
        label="Steps"
        hint={hint}
        validationState={problem ? "error" : "none"}
        validationMessage={problem}
        style={{ marginTop: 8 }}
      >
        <Textarea value={steps} rows={4} onChange={(_, { value }) => state.setSteps(value)} />
      </FieldBox>
      <Button size="small" onClick={take}>
        Take selected cells
      </Button>
    </details>
  );
}
