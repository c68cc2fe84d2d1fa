import { useCallback, useEffect, useState } from "react";
import { quoteReading, ratesReading } from "../../core/cost";
import { splitHeading } from "../../core/table/heading";
import type { NamedTable, SheetPort } from "../../port/sheet";
import { tablesWith } from "../state/tables";

/** Tables of offers and of exchange rates in the workbook, and which are in use. */
export interface OfferTables {
  readonly offers: readonly NamedTable[];
  readonly rates: readonly NamedTable[];
  readonly inUse: NamedTable | undefined;
  readonly ratesInUse: NamedTable | undefined;
  choose(table: NamedTable | undefined): void;
  chooseRates(table: NamedTable | undefined): void;
  refresh(): Promise<void>;
}

/** Whether headings are those of offers: a grade and a price at least. */
export function areOffers(headings: readonly string[]): boolean {
  const keys = headings.map((heading) => quoteReading.keyOf(heading));
  const hasPrice = keys.includes("price") || headings.some((heading) => quoteReading.series.at(heading) !== undefined);
  return hasPrice && keys.includes("grade");
}

function areRates(headings: readonly string[]): boolean {
  const keys = headings.map((heading) => ratesReading.headings.find(splitHeading(heading).name));
  return keys.includes("currency") && keys.includes("rate");
}

export function useOffers(port: SheetPort): OfferTables {
  const [offers, setOffers] = useState<readonly NamedTable[]>([]);
  const [rates, setRates] = useState<readonly NamedTable[]>([]);
  const [inUse, choose] = useState<NamedTable>();
  const [ratesInUse, chooseRates] = useState<NamedTable>();
  const refresh = useCallback(async () => {
    setOffers(await tablesWith(port, areOffers));
    setRates(await tablesWith(port, areRates));
  }, [port]);
  useEffect(() => {
    refresh().catch(() => setOffers([]));
  }, [refresh]);
  return { offers, rates, inUse, ratesInUse, choose, chooseRates, refresh };
}
