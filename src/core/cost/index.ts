/** Offers and how they are read, for the faces. */
export { quoteFieldKeys, quoteFieldOf, quoteFields, quoteHeading, quoteHeadings } from "./quoteFields";
export type { QuoteField } from "./quoteFields";
export { quoteReading, readQuotes } from "./quoteTable";
export { ratesReading } from "./rates";
