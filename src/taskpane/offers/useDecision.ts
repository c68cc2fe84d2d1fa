import { useCallback, useEffect, useRef, useState } from "react";
import { useWatch } from "../parts/useSheet";
import type { PaneState } from "../state/usePane";
import type { OfferTables } from "./useOffers";
import { decided, tablesOf } from "./question";
import type { Decided, Tables } from "./question";

/** So many offers are decided on beside the sheet without holding the page up. */
export const mostInPane = 1000;

export interface Decision {
  readonly tables?: Tables | undefined;
  readonly decided?: Decided | undefined;
  readonly fault?: string;
}

/** What DECISION answers for the pane's duty and the offers in use; follows the sheet. */
export function useDecision(pane: PaneState, { inUse, ratesInUse }: OfferTables): Decision {
  const [found, setFound] = useState<Decision>({});
  const last = useRef("");
  const latest = useRef(pane);
  useEffect(() => {
    latest.current = pane;
  });
  const { read, origin, system } = pane.duty;
  const reread = useCallback(() => {
    void (async () => {
      try {
        if (!inUse) return setFound({});
        const tables = await tablesOf(latest.current, inUse, ratesInUse);
        if (inUse.place.rows - 1 > mostInPane) return setFound({ tables });
        // the sheet reports every recalculation
        const seen = JSON.stringify([tables, read.duty?.steps, origin?.table, system]);
        if (seen === last.current) return;
        last.current = seen;
        setFound({ tables, decided: await decided(latest.current, tables) });
      } catch (error) {
        last.current = "";
        setFound({ fault: (error as Error).message });
      }
    })();
  }, [inUse, ratesInUse, read, origin, system]);
  useEffect(reread, [reread, pane.own]);
  useWatch(pane.host.port, reread);
  return found;
}
