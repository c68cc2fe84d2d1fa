import { Button, Field as FieldBox, Radio, RadioGroup } from "@fluentui/react-components";
import { useState } from "react";
import { addressOf, areaText } from "../../port/address";
import { useShared } from "../parts/styles";
import { Unjudged } from "../parts/Unjudged";
import { useSelection } from "../parts/useSheet";
import type { PaneState } from "../state/usePane";
import { Freeze } from "./Freeze";
import { InsertNote } from "./InsertNote";
import { pieceTexts, pieces } from "./pieces";
import type { Piece } from "./pieces";
import { useInsertion } from "./useInsertion";

/** Puts what the pane shows into the sheet as live formulas on the duty's own cells; nothing is overwritten. */
export function Insert({ pane }: { pane: PaneState }) {
  const s = useShared();
  const { duty: state, judged, subjects, host } = pane;
  const [piece, setPiece] = useState<Piece>("record");
  const selected = useSelection(host.port);
  const { note, start } = useInsertion(pane);
  const isJudged = judged !== undefined && judged === state.read.duty;
  return (
    <section className={s.panel} aria-label="Insert into the sheet">
      {!isJudged && <Unjudged pane={pane}>What is inserted works on a duty's own cells in the sheet.</Unjudged>}
      <FieldBox label="What to insert">
        <RadioGroup value={piece} onChange={(_, { value }) => setPiece(value as Piece)}>
          {Object.entries(pieces).map(([name, text]) => (
            <Radio key={name} value={name} label={text} />
          ))}
        </RadioGroup>
      </FieldBox>
      <p className={s.quiet}>{aboutPiece(piece, subjects, state.origin)}</p>
      <Button
        appearance="primary"
        disabled={!isJudged || !selected}
        onClick={() => start((port) => port.selection(), piece)}
      >
        {selected
          ? `Insert at ${addressOf(selected.place.row, selected.place.col)} on ${selected.place.sheet}`
          : "Select a cell first"}
      </Button>
      <InsertNote note={note} onInstead={(free) => start(() => free, piece)} />
      <Freeze port={host.port} />
    </section>
  );
}

/** What it is, for which grades, and which cells its formulas refer to. */
function aboutPiece(piece: Piece, subjects: readonly string[], origin: PaneState["duty"]["origin"]): string {
  const isOfDuty = piece === "row" || piece === "card" || piece === "rank";
  const names = piece === "checks" ? subjects : subjects.slice(0, 1);
  const grades = !isOfDuty && names.length > 0 ? [`For ${names.join(", ")}.`] : [];
  const cells = origin
    ? `Its formulas refer to the duty in ${areaText(origin.table)} on ${origin.table.sheet}.`
    : "The duty is written with it, and its formulas refer to that.";
  return [pieceTexts[piece], ...grades, ...(piece === "row" || piece === "card" ? [] : [cells])].join(" ");
}
