import { Button } from "@fluentui/react-components";
import { useId, useRef, useState } from "react";
import type { ReactNode } from "react";
import { ColumnHeadings } from "../parts/ColumnHeadings";
import { Notice } from "../parts/Notice";
import { useShared } from "../parts/styles";
import { useInsertion } from "../insert/useInsertion";
import type { Picture } from "../../port/sheet";
import type { PaneState } from "../state/usePane";
import { pictureOf } from "./picture";
import { copy, putBeside } from "./takeAlong";
import { isUntold } from "../figures/told";
import type { Numbers, Told, Untold } from "../figures/told";

interface Props {
  pane: PaneState;
  title: string;
  /** The grade that the sheet's formulas are of. */
  grade: string;
  /** What its letters stand for, where there is more in it than that grade. */
  legend?: readonly string[];
  told: Told | Untold;
  /** Controls between the heading and the picture. */
  controls?: ReactNode;
  /** The picture, named by its summary. */
  children(summaryId: string): ReactNode;
}

/** A picture with its words, its numbers as a table, and the ways to take it along. */
export function Figure({ pane, title, grade, legend = [grade], told, controls, children }: Props) {
  const s = useShared();
  const id = useId();
  const box = useRef<HTMLDivElement>(null);
  const [taken, setTaken] = useState<string>();
  const { note, start } = useInsertion(pane);
  if (isUntold(told))
    return (
      <section aria-label={title} className={s.figure}>
        <h2 className={s.heading}>{title}</h2>
        {controls}
        <p className={s.quiet}>{told.why}</p>
      </section>
    );
  const take = (way: (picture: Picture) => Promise<string>) => {
    if (!box.current) return;
    const duty = pane.judged?.name ?? "";
    const lines = [duty, ...legend].filter((line) => line !== "");
    way(pictureOf(box.current, { title, lines }, told.summary)).then(setTaken, (error: Error) =>
      setTaken(`Not done: ${error.message}`),
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
        <Button size="small" onClick={() => take((picture) => putBeside(pane.host.port, picture))}>
          Put beside the cells
        </Button>
        <Button size="small" onClick={() => take(copy)}>
          Copy as picture
        </Button>
        {taken && (
          <span role="status" className={s.quiet}>
            {taken}
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
