import { Button, makeStyles, tokens } from "@fluentui/react-components";
import { Fragment } from "react";
import { decisionPage } from "../../book/record/decision";
import { addressOf } from "../../port/address";
import { InsertNote } from "../insert/InsertNote";
import { useInsertion } from "../insert/useInsertion";
import { Notice } from "../parts/Notice";
import { savePage } from "../parts/savePage";
import { useShared } from "../parts/styles";
import { Unjudged } from "../parts/Unjudged";
import { useSelection } from "../parts/useSheet";
import type { PaneState } from "../state/usePane";
import type { Decided } from "./question";
import { pieceOf } from "./question";
import { mostInPane, useDecision } from "./useDecision";
import type { OfferTables } from "./useOffers";

/** What to buy and why, as DECISION answers it, and the ways to take that along. */
export function Answer({ pane, tables: inUse }: { pane: PaneState; tables: OfferTables }) {
  const s = useShared();
  const { tables, decided, fault } = useDecision(pane, inUse);
  const decision = useInsertion(pane);
  const ranking = useInsertion(pane);
  const selected = useSelection(pane.host.port);
  if (!pane.duty.read.duty) return <Unjudged pane={pane}>Offers are judged for the duty that stands there.</Unjudged>;
  if (fault !== undefined) return <Notice intent="error">{fault}</Notice>;
  if (!tables) return null;
  const at = selected ? ` at ${addressOf(selected.place.row, selected.place.col)}` : "";
  return (
    <section aria-label="The decision" className={s.figure}>
      <h2 className={s.heading}>Which offer to buy</h2>
      {decided ? (
        <Lines decided={decided} />
      ) : (
        <p className={s.quiet}>Of more than {mostInPane} offers the formulas decide in the sheet.</p>
      )}
      <div className={s.row}>
        <Button
          appearance="primary"
          disabled={!selected}
          onClick={() => decision.start((port) => port.selection(), pieceOf("DECISION", tables))}
        >
          Insert the decision{at}
        </Button>
        <Button
          disabled={!selected}
          onClick={() => ranking.start((port) => port.selection(), pieceOf("QUOTES", tables))}
        >
          Insert the ranking{at}
        </Button>
        <Button
          disabled={!decided}
          onClick={() => decided && savePage("decision.html", decisionPage(decided.decision, decided.ranking))}
        >
          Save as a page to print
        </Button>
      </div>
      <InsertNote note={decision.note} onInstead={(free) => decision.start(() => free, pieceOf("DECISION", tables))} />
      <InsertNote note={ranking.note} onInstead={(free) => ranking.start(() => free, pieceOf("QUOTES", tables))} />
    </section>
  );
}

const useStyles = makeStyles({
  lines: {
    margin: 0,
    overflowWrap: "anywhere",
    "& dt": { color: tokens.colorNeutralForeground2, fontSize: tokens.fontSizeBase200 },
    "& dd": { margin: "0 0 4px" },
    "& dd:first-of-type": { fontWeight: tokens.fontWeightSemibold },
  },
});

/** Statements of one name stand under it together. */
function Lines({ decided: { decision } }: { decided: Decided }) {
  const own = useStyles();
  const lines = decision.slice(1);
  return (
    <dl className={own.lines}>
      {lines.map(([what, answer], i) => (
        <Fragment key={i}>
          {what !== lines[i - 1]?.[0] && <dt>{what}</dt>}
          <dd>{answer}</dd>
        </Fragment>
      ))}
    </dl>
  );
}
