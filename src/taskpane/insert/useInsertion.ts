import { useState } from "react";
import type { Corner, SheetPort, Wait } from "../../port/sheet";
import type { PaneState } from "../state/usePane";
import type { PieceOrder } from "./blocks";
import { insert } from "./insertion";
import type { Outcome } from "./insertion";

export type Note = Outcome | { readonly is: "failed"; readonly text: string };

/** Inserts a piece where asked, and remembers where the duty then stands. */
export function useInsertion({ duty: state, subjects, own, host }: PaneState) {
  const [note, setNote] = useState<Note>();
  const failed = (text: string) => setNote({ is: "failed", text });
  const start = (where: (port: SheetPort) => Wait<Corner | undefined>, piece: PieceOrder, grades = subjects) => {
    const work = async () => {
      const { port } = host;
      const at = await where(port);
      const { duty } = state.read;
      if (!at) return failed("Select the cell where it shall begin.");
      if (!duty) return failed("No duty yet.");
      const outcome = await insert(port, { piece, state, duty, grades, own }, at);
      if (outcome.is === "written" && outcome.table) {
        const { table } = outcome;
        const top = piece === "card" ? table.row : table.row + 1;
        state.setOrigin({ table, rows: state.form.map((_, i) => top + i), form: state.form });
      }
      setNote(outcome);
    };
    work().catch((error: Error) => failed(error.message));
  };
  return { note, start };
}
