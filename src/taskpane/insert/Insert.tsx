import { Button, Field as FieldBox, Radio, RadioGroup } from "@fluentui/react-components";
import { useState } from "react";
import { addressOf } from "../../port/address";
import type { Block, Corner } from "../../port/sheet";
import type { PaneState } from "../state/usePane";
import { Notice } from "../parts/Notice";
import { useShared } from "../parts/styles";
import { counted } from "../parts/words";
import { useSelection } from "../parts/useSheet";
import { blockOf, pieces, widthsOf } from "./blocks";
import type { Piece } from "./blocks";
import { areaText, countFilled, findFormulas, freeze, hasError, placeOf } from "./write";
import type { Frozen } from "./write";

type Stage =
  | { readonly is: "idle" }
  | { readonly is: "asking"; readonly at: Corner; readonly block: Block; readonly filled: number }
  | { readonly is: "freezing"; readonly formulas: readonly Frozen[] }
  | { readonly is: "done"; readonly text: string }
  | { readonly is: "failed"; readonly text: string };

/** Puts what the pane shows into the sheet as live formulas, and asks before anything is overwritten. */
export function Insert({ pane }: { pane: PaneState }) {
  const { duty: state, ranked, own, chosen, host, goTo } = pane;
  const s = useShared();
  const { port } = host;
  const [piece, setPiece] = useState<Piece>("checks");
  const [stage, setStage] = useState<Stage>({ is: "idle" });
  const selected = useSelection(port);
  const { duty } = state.read;
  const first = ranked[0]?.grade.name;
  const grades = chosen.length > 0 ? chosen : first ? [first] : [];

  const attempt = (work: () => Promise<void>) => {
    work().catch((error: Error) => setStage({ is: "failed", text: error.message }));
  };
  const write = async (at: Corner, block: Block) => {
    // widths first, so that one undo takes the cells back
    await port.widen(at, widthsOf(piece, block));
    await port.write(at, block);
    const place = placeOf(at, block);
    await port.select({ ...place, rows: 1, cols: 1 });
    setStage({ is: "done", text: `Written to ${areaText(place)} on ${at.sheet}. Undo takes it back.` });
  };
  const insert = () =>
    attempt(async () => {
      const at = await port.selection();
      if (!at) return setStage({ is: "failed", text: "Select the cell where it shall begin." });
      if (!duty) return;
      const { system } = state;
      const reference = own.count > 0 ? own.inUse?.reference : undefined;
      const block = blockOf({ piece, duty, system, grades, library: own.library, reference }, at);
      const filled = await countFilled(port, placeOf(at, block));
      if (filled > 0) setStage({ is: "asking", at, block, filled });
      else await write(at, block);
    });
  const startFreeze = () =>
    attempt(async () => {
      const place = await port.selection();
      const formulas = place ? await findFormulas(port, place) : [];
      const good = formulas.filter((one) => !hasError(one));
      if (formulas.length === 0) setStage({ is: "failed", text: "The selected cells hold no formula of this add-in." });
      else if (good.length < formulas.length)
        setStage({
          is: "failed",
          text: `${formulas.length - good.length} of the formulas answer with an error; mend them first.`,
        });
      else setStage({ is: "freezing", formulas: good });
    });

  return (
    <section className={s.panel} aria-label="Insert into the sheet">
      {!duty && (
        <Notice
          intent="info"
          title="No duty yet."
          actions={<Button onClick={() => goTo("duty")}>State the duty</Button>}
        >
          What is inserted works on a duty's own line in the sheet.
        </Notice>
      )}
      <FieldBox label="What to insert">
        <RadioGroup value={piece} onChange={(_, { value }) => setPiece(value as Piece)}>
          {Object.entries(pieces).map(([name, text]) => (
            <Radio key={name} value={name} label={text} />
          ))}
        </RadioGroup>
      </FieldBox>
      <p className={s.quiet}>
        {words(piece, grades)} Headings carry units; every result is a formula on the duty's line, so that a change
        there is judged anew.
      </p>
      <Button appearance="primary" disabled={!duty || !selected} onClick={insert}>
        {selected
          ? `Insert at ${addressOf(selected.place.row, selected.place.col)} on ${selected.place.sheet}`
          : "Select a cell first"}
      </Button>
      <Result
        stage={stage}
        onWrite={(at, block) => attempt(() => write(at, block))}
        onCancel={() => setStage({ is: "idle" })}
        onFreeze={(formulas) =>
          attempt(async () => {
            await freeze(port, formulas);
            setStage({
              is: "done",
              text: `Values now in place of ${counted(formulas.length, "formula")}. Undo takes it back.`,
            });
          })
        }
      />
      <h2 className={s.minor}>For a sheet that leaves this house</h2>
      <p className={s.quiet}>
        Without the add-in its formulas cannot be computed anew. Values can be read by everyone.
      </p>
      <Button onClick={startFreeze}>Freeze selected formulas to values</Button>
    </section>
  );
}

function words(piece: Piece, grades: readonly string[]): string {
  if (piece === "shortlist") return "Own grades in use, or without any the generic families.";
  return piece !== "checks" || grades.length === 0 ? "" : `For ${grades.join(", ")}; choose others on the shortlist.`;
}

interface ResultProps {
  stage: Stage;
  onWrite(at: Corner, block: Block): void;
  onFreeze(formulas: readonly Frozen[]): void;
  onCancel(): void;
}

function Result({ stage, onWrite, onFreeze, onCancel }: ResultProps) {
  if (stage.is === "done") return <Notice intent="success">{stage.text}</Notice>;
  if (stage.is === "failed") return <Notice intent="error">{stage.text}</Notice>;
  if (stage.is === "asking") {
    const place = placeOf(stage.at, stage.block);
    return (
      <Notice
        intent="warning"
        title={`${counted(stage.filled, "cell")} in ${areaText(place)} on ${place.sheet} would be overwritten.`}
        actions={
          <>
            <Button onClick={() => onWrite(stage.at, stage.block)}>Overwrite</Button>
            <Button onClick={onCancel}>Cancel</Button>
          </>
        }
      >
        Or cancel, and select a free cell.
      </Notice>
    );
  }
  if (stage.is === "freezing")
    return (
      <Notice
        intent="warning"
        title={`${counted(stage.formulas.length, "formula")} will become plain values.`}
        actions={
          <>
            <Button onClick={() => onFreeze(stage.formulas)}>Freeze</Button>
            <Button onClick={onCancel}>Cancel</Button>
          </>
        }
      >
        {stage.formulas.map(({ place }) => areaText(place)).join(", ")}
      </Notice>
    );
  return null;
}
