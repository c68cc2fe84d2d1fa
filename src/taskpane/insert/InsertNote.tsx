import { Button } from "@fluentui/react-components";
import { addressOf } from "../../port/address";
import type { Corner } from "../../port/sheet";
import { Notice } from "../parts/Notice";
import type { Note } from "./useInsertion";

/** What came of an insertion; where something stood in its place, a way to the next free one. */
export function InsertNote({ note, onInstead }: { note: Note | undefined; onInstead(free: Corner): void }) {
  if (!note) return null;
  if (note.is === "written") return <Notice intent="success">{note.text}</Notice>;
  if (note.is === "failed") return <Notice intent="error">{note.text}</Notice>;
  const { text, free } = note;
  const instead = `Insert at ${addressOf(free.row, free.col)} instead`;
  return (
    <Notice intent="warning" actions={<Button onClick={() => onInstead(free)}>{instead}</Button>}>
      {text}
    </Notice>
  );
}
