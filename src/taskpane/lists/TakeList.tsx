import { Button, Field as FieldBox, Textarea } from "@fluentui/react-components";
import { useRef, useState } from "react";
import type { Progress } from "../../files/delimited";
import type { List } from "../../files/list";
import type { SheetPort } from "../../port/sheet";
import { Notice } from "../parts/Notice";
import { Stoppable } from "../parts/Stoppable";
import { useShared } from "../parts/styles";
import type { Sort } from "./sort";

interface Props {
  sort: Sort;
  port: SheetPort;
  /** Whether a list was taken already. */
  isFurther: boolean;
  /** Throws where the list is none of this sort. */
  onList(list: List, of: string): void;
}

/** Characters that a page lays out in a box of text in no time; a longer paste is read at once. */
const mostInBox = 20_000;

/** Takes a list as it comes: pasted, from a file, from cells of the sheet. */
export function TakeList({ sort, port, isFurther, onList }: Props) {
  const s = useShared();
  const file = useRef<HTMLInputElement>(null);
  const [text, setText] = useState("");
  const [busy, setBusy] = useState<{ readonly share: number; readonly stop: () => void }>();
  const [fault, setFault] = useState<string>();
  const readers = () => import("./open");

  const take = async (source: (progress: Progress) => Promise<List>, of: string) => {
    const controller = new AbortController();
    const report = (share: number) => setBusy({ share, stop: () => controller.abort() });
    report(0);
    setFault(undefined);
    try {
      onList(await source({ report, signal: controller.signal }), of);
      setText("");
    } catch (error) {
      setFault((error as Error).message);
    } finally {
      setBusy(undefined);
    }
  };
  const takeText = (lines: string) =>
    void take(async (progress) => (await readers()).readText(lines, sort.kind, progress), "");
  const fromCells = async (): Promise<List> => {
    const { readCells } = await readers();
    const place = await port.selection();
    if (!place) throw new Error("Select the cells of the list.");
    return readCells(await port.read(place), place.row, sort.kind);
  };

  return (
    <>
      <h2 className={s.heading}>
        {isFurther ? `Add ${sort.kind} of another supplier` : `Add a supplier's ${sort.kind}`}
      </h2>
      <p className={s.quiet}>
        Any columns, title rows above them, decimals in the supplier's way. The list stays in this workbook: the pane
        sends and stores nothing elsewhere.
      </p>
      <FieldBox label={`Paste ${sort.kind}`}>
        <Textarea
          value={text}
          rows={4}
          onChange={(_, { value }) => setText(value)}
          onPaste={(event) => {
            const pasted = event.clipboardData.getData("text");
            if (pasted.length <= mostInBox || busy) return;
            event.preventDefault();
            takeText(pasted);
          }}
        />
      </FieldBox>
      <div className={s.row}>
        <Button
          appearance={isFurther ? "secondary" : "primary"}
          disabled={text.trim() === "" || busy !== undefined}
          onClick={() => takeText(text)}
        >
          Read the list
        </Button>
        <Button disabled={busy !== undefined} onClick={() => file.current?.click()}>
          Open a file
        </Button>
        <Button disabled={busy !== undefined} onClick={() => void take(fromCells, "")}>
          Take selected cells
        </Button>
      </div>
      {busy && <Stoppable work="Reading" {...busy} />}
      {fault && <Notice intent="error">{fault}</Notice>}
      <input
        ref={file}
        type="file"
        accept=".csv,.tsv,.txt,.xlsx,.xlsm"
        hidden
        aria-label={`File of ${sort.kind}`}
        onChange={({ target }) => {
          const chosen = target.files?.[0];
          target.value = "";
          if (!chosen) return;
          const of = chosen.name.replace(/\.[^.]*$/, "");
          void take(async (progress) => (await readers()).readFile(chosen, sort.kind, progress), of);
        }}
      />
    </>
  );
}
