import { Button } from "@fluentui/react-components";
import { useState } from "react";
import { present } from "../../core/present";
import type { SheetPort } from "../../port/sheet";
import { Notice } from "../parts/Notice";
import { useShared } from "../parts/styles";
import type { DutyState } from "../state/dutyState";
import { filledOf } from "../state/form";
import type { Origin } from "../state/origin";
import { fromRowText, readSelectedRow } from "./fromRow";
import { writeBack } from "./writeBack";

interface Note {
  readonly intent: "success" | "warning" | "error";
  readonly text: string;
}

/** Takes the duty out of the selected row, and puts it back there when asked. */
export function RowActions({ duty, port }: { duty: DutyState; port: SheetPort }) {
  const s = useShared();
  const [note, setNote] = useState<Note>();
  const [from, setFrom] = useState<Origin>();
  const isChanged = from !== undefined && filledOf(from.form) !== filledOf(duty.form);

  const attempt = (work: () => Promise<Note>) => {
    work().then(setNote, (error: Error) => setNote({ intent: "error", text: error.message }));
  };
  const read = () =>
    attempt(async () => {
      const found = await readSelectedRow(port, duty.system);
      duty.setForm(found.origin.form);
      duty.setOrigin(found.origin);
      setFrom(found.origin);
      return { intent: found.unread.length > 0 ? "warning" : "success", text: fromRowText(found) };
    });
  const write = (to: Origin) =>
    attempt(async () => {
      const { origin, text, isWhole } = await writeBack(port, to, duty.form, duty.system);
      if (isWhole) duty.setOrigin(origin);
      setFrom(origin);
      return { intent: isWhole ? "success" : "warning", text };
    });

  return (
    <>
      <div className={s.row}>
        <Button size="small" onClick={read}>
          Read selected row
        </Button>
        {from && isChanged && (
          <Button size="small" onClick={() => write(from)}>
            Write back to row {present(from.rows[0]) + 1}
          </Button>
        )}
      </div>
      {note && <Notice intent={note.intent}>{note.text}</Notice>}
    </>
  );
}
