import { Button } from "@fluentui/react-components";
import { useId, useRef, useState } from "react";
import type { ReactNode } from "react";
import { ColumnHeadings } from "../parts/ColumnHeadings";
import { Notice } from "../parts/Notice";
import { useShared } from "../parts/styles";
import { useInsertion } from "../insert/useInsertion";
import type { PaneState } from "../state/usePane";
import { copyPicture } from "./copyPicture";
import { isUntold } from "../figures/told";
import type { Numbers, Told, Untold } from "../figures/told";

interface Props {
  pane: PaneState;
  title: string;
  /** The grade that the sheet's formulas are of. */
  grade: string;
  told: Told | Untold;
  /** Controls between the heading and the picture. */
  controls?: ReactNode;
  /** The picture, named by its summary. */
  children(summaryId: string): ReactNode;
}

/** A picture with its words, its numbers as a table, and the ways to take it along. */
export function Figure({ pane, title, grade, told, controls, children }: Props) {
  const s = useShared();
  const id = useId();
  const box = useRef<HTMLDivElement>(null);
  const [copied, setCopied] = useState<string>();
  const { note, start } = useInsertion(pane);
  if (isUntold(told))
    return (
      <section aria-label={title} className={s.figure}>
        <h2 className={s.heading}>{title}</h2>
        {controls}
        <p className={s.quiet}>{told.why}</p>
      </section>
    );
  const copy = () => {
    const svg = box.current?.querySelector("svg");
    if (svg)
      copyPicture(svg).then(
        () => setCopied("The picture is on the clipboard."),
        (error: Error) => setCopied(`Not copied: ${error.message}`),
      );
  };
  return (
    <section aria-label={title} className={s.figure}>
      <h2 className={s.heading}>{title}</h2>
      {controls}
      <div ref={box}>{children(id)}</div>
      <p id={id} className={s.text}>
        {told.summary}
      </p>
      <details>
        <summary className={s.summary}>Numbers behind the picture</summary>
        <Table numbers={told.numbers} />
      </details>
      <div className={s.row}>
        <Button size="small" onClick={() => start((port) => port.selection(), told.piece, [grade])}>
          Put into the sheet
        </Button>
        <Button size="small" onClick={copy}>
          Copy as picture
        </Button>
        {copied && (
          <span role="status" className={s.quiet}>
            {copied}
          </span>
        )}
      </div>
      {note && (
        <Notice
          intent={note.is === "written" ? "success" : note.is === "failed" ? "error" : "warning"}
          actions={
            note.is === "refused" && (
              <Button onClick={() => start(() => note.free, told.piece, [grade])}>Put it below instead</Button>
            )
          }
        >
          {note.text}
        </Notice>
      )}
    </section>
  );
}

function Table({ numbers: { headings, rows } }: { numbers: Numbers }) {
  const s = useShared();
  return (
    <div className={s.wide} tabIndex={0} role="group" aria-label="Numbers">
      <table className={s.table}>
        <ColumnHeadings texts={headings} />
        <tbody>
          {rows.map((row, r) => (
            <tr key={r}>
              {row.map((cell, c) =>
                c === 0 ? (
                  <th key={c} scope="row">
                    {cell}
                  </th>
                ) : (
                  <td key={c}>{cell}</td>
                ),
              )}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
