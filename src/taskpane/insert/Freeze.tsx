import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { areaText } from "../../port/address";
import type { SheetPort } from "../../port/sheet";
import { Notice } from "../parts/Notice";
import { useShared } from "../parts/styles";
import { counted } from "../parts/words";
import { findFormulas, freeze, hasError } from "./write";
import type { Frozen } from "./write";

type Stage =
  | { readonly is: "idle" }
  | { readonly is: "asking"; readonly formulas: readonly Frozen[] }
  | { readonly is: "done"; readonly text: string }
  | { readonly is: "failed"; readonly text: string };

/** Puts values in place of the selection's formulas that need the add-in. */
export function Freeze({ port }: { port: SheetPort }) {
  const s = useShared();
  const [stage, setStage] = useState<Stage>({ is: "idle" });
  const attempt = (work: () => Promise<void>) => {
    work().catch((error: Error) => setStage({ is: "failed", text: error.message }));
  };
  const look = () =>
    attempt(async () => {
      const place = await port.selection();
      const formulas = place ? await findFormulas(port, place) : [];
      const bad = formulas.filter(hasError);
      if (formulas.length === 0) setStage({ is: "failed", text: "The selected cells hold no formula of this add-in." });
      else if (bad.length > 0)
        setStage({
          is: "failed",
          text: `${counted(bad.length, "formula")} of ${formulas.length} answer with an error (${bad.map(({ place: at }) => areaText({ ...at, rows: 1, cols: 1 })).join(", ")}); mend them first.`,
        });
      else setStage({ is: "asking", formulas });
    });
  const write = (formulas: readonly Frozen[]) =>
    attempt(async () => {
      await freeze(port, formulas);
      setStage({
        is: "done",
        text: `Values now in place of ${counted(formulas.length, "formula")}. Undo takes it back.`,
      });
    });
  return (
    <>
      <h2 className={s.minor}>For a sheet that leaves this house</h2>
      <p className={s.quiet}>
        Without the add-in its formulas cannot be computed anew. Values can be read by everyone.
      </p>
      <Button onClick={look}>Freeze selected formulas to values</Button>
      {stage.is === "done" && <Notice intent="success">{stage.text}</Notice>}
      {stage.is === "failed" && <Notice intent="error">{stage.text}</Notice>}
      {stage.is === "asking" && (
        <Notice
          intent="warning"
          title={`${counted(stage.formulas.length, "formula")} will become plain values.`}
          actions={
            <>
              <Button onClick={() => write(stage.formulas)}>Freeze</Button>
              <Button onClick={() => setStage({ is: "idle" })}>Cancel</Button>
            </>
          }
        >
          {stage.formulas.map(({ place }) => areaText(place)).join(", ")}
        </Notice>
      )}
    </>
  );
}
