import { Button, makeStyles, tokens } from "@fluentui/react-components";
import { useState } from "react";
import { addressOf } from "../../port/address";
import type { SheetPort } from "../../port/sheet";
import { useSelection } from "../parts/useSheet";
import { useShared } from "../parts/styles";
import { explain, sayCell } from "./explain";

const useStyles = makeStyles({
  root: {
    flexShrink: 0,
    maxHeight: "40%",
    overflowY: "auto",
    padding: "8px 12px",
    borderTop: `1px solid ${tokens.colorNeutralStroke2}`,
    backgroundColor: tokens.colorNeutralBackground2,
  },
});

/** What stands in the selected cell, why it is an error, and what its functions compute. */
export function CellNote({ port }: { port: SheetPort }) {
  const s = useShared();
  const own = useStyles();
  const [isOpen, setOpen] = useState(false);
  const selected = useSelection(port);
  if (!selected?.cell) return null;
  const { place, cell } = selected;
  const functions = explain(cell);
  if (functions.length === 0 && !cell.error) return null;
  return (
    <aside className={own.root} aria-label="Selected cell">
      <p className={s.text} role="status">
        <strong>{addressOf(place.row, place.col)}</strong> {sayCell(cell)}
      </p>
      {functions.length > 0 && (
        <Button size="small" appearance="transparent" aria-expanded={isOpen} onClick={() => setOpen(!isOpen)}>
          {isOpen ? "Less" : "What is computed"}
        </Button>
      )}
      {isOpen &&
        functions.map(({ signature, text, working, sources }) => (
          <div key={signature}>
            <p className={s.mono}>{signature}</p>
            <p className={s.text}>{text}.</p>
            {working.map((line) => (
              <p key={line} className={s.mono}>
                {line}
              </p>
            ))}
            <p className={s.quiet}>{sources.join("; ")}</p>
          </div>
        ))}
    </aside>
  );
}
