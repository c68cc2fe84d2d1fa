import type { Kept } from "./keep";

export const time = (at: number): string => new Date(at).toLocaleTimeString([], { hour: "2-digit", minute: "2-digit" });

/** When a version was kept, day and time. */
export const versionText = (at: number): string =>
  new Date(at).toLocaleString([], { dateStyle: "medium", timeStyle: "medium" });

/** How the keeping stands, in a sentence. */
export function keptText(kept: Kept): string {
  switch (kept.state) {
    case "kept":
      return kept.at === undefined ? "Changes are kept in this browser" : `Kept in this browser at ${time(kept.at)}`;
    case "elsewhere":
      return kept.isBehind
        ? "Another tab holds the file and has changed it since: changes here are not kept. Save as .xlsx, or close that tab."
        : "Another tab holds the file: changes here are not kept. Close that tab, or save as .xlsx.";
    case "full":
      return "The browser's storage is full: nothing further is kept here. Save as .xlsx so that nothing is lost.";
    case "none":
      return "This browser keeps nothing here: save as .xlsx so that nothing is lost.";
  }
}

export const isWarning = ({ state }: Kept): boolean => state !== "kept";
