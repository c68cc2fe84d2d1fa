import sources from "../../data/sources.json";
import type { Source } from "./formula";

/** The citation behind a source key; a key without an entry is shown as it stands, and a test finds it. */
export const sourceTitle = (key: string): string =>
  (sources as Record<string, { citation: string } | undefined>)[key]?.citation ?? key;

/** Each source as it is told beside a result: "Citation: Table 3". */
export const sourceTexts = (source: Source | readonly Source[]): string[] =>
  [source].flat().map(({ key, at }) => [sourceTitle(key), at].filter(Boolean).join(": "));
