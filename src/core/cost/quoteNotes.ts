import { headingOf } from "./quoteTable";
import type { Field, Quote } from "./quoteTable";

/** What is said about a quote beside its verdict: reasons keep it out of the ranking, remarks do not. */
export interface Notes {
  readonly reasons: string[];
  readonly remarks: string[];
}

/** Whether a cell is blank or could be read; a fault becomes a reason. An error that came in has its code as its only word. */
export function isRead(quote: Quote, field: Field, { reasons }: Notes): boolean {
  const fault = quote.faults.get(field);
  if (fault) reasons.push(fault.code === "passed" ? `${headingOf(field)} holds ${fault.argument}` : fault.message);
  return !fault;
}

/** Whether a cell holds a value; what is missing becomes a reason. */
export function has(quote: Quote, field: Field, notes: Notes): boolean {
  if (!isRead(quote, field, notes)) return false;
  if (quote[field] !== undefined) return true;
  notes.reasons.push(field === "price" ? "no price" : `no data, ${headingOf(field)}`);
  return false;
}
