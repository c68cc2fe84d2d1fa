import sources from "../../data/sources.json";

/** The citation behind a source key; a key without an entry is shown as it stands, and a test finds it. */
export const sourceTitle = (key: string): string =>
  (sources as Record<string, { citation: string } | undefined>)[key]?.citation ?? key;
