import type { SheetPort } from "../../port/sheet";
import type { ThemeName } from "./theme";

/** What the pane asks of the page that it stands in, beside the sheet itself. */
export interface PaneHost {
  readonly port: SheetPort;
  /** As people call it: "Excel", "the local sheet". */
  readonly name: string;
  theme(): ThemeName;
  /** Calls back when the theme changes. */
  watchTheme?(changed: () => void): void;
  /** The page itself says what stands in the selected cell. */
  readonly explainsCells?: boolean;
}

/** The theme that the system asks for, where no host knows better. */
export function systemTheme(): ThemeName {
  if (matchMedia("(forced-colors: active)").matches) return "contrast";
  return matchMedia("(prefers-color-scheme: dark)").matches ? "dark" : "light";
}

export function watchSystemTheme(changed: () => void): void {
  for (const query of ["(forced-colors: active)", "(prefers-color-scheme: dark)"])
    matchMedia(query).addEventListener("change", changed);
}
