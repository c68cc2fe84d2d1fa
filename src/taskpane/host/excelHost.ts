/// <reference types="office-js" />
import { excelPort } from "./excel";
import { systemTheme, watchSystemTheme } from "./host";
import type { PaneHost } from "./host";
import type { ThemeName } from "./theme";

/** Excel as the pane's host, or undefined where the page was opened outside it. */
export async function excelHost(): Promise<PaneHost | undefined> {
  if (typeof Office === "undefined") return undefined;
  const { host } = await Office.onReady();
  if (host !== Office.HostType.Excel) return undefined;
  return { port: excelPort(), name: "Excel", theme: officeTheme, watchTheme };
}

function officeTheme(): ThemeName {
  const system = systemTheme();
  if (system === "contrast") return system;
  const background = Office.context.officeTheme?.bodyBackgroundColor;
  return background ? (isDark(background) ? "dark" : "light") : system;
}

/** Excel tells no pane that its theme changed; whoever changed it comes back to the pane, which then looks again. */
function watchTheme(changed: () => void): void {
  watchSystemTheme(changed);
  addEventListener("focus", changed);
  document.addEventListener("visibilitychange", changed);
  document.documentElement.addEventListener("pointerenter", changed);
}

/** Relative luminance of "#rrggbb" below a half of the grey scale. */
export function isDark(color: string): boolean {
  const [r = 255, g = 255, b = 255] = (color.match(/[0-9a-f]{2}/gi) ?? []).map((pair) => parseInt(pair, 16));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b < 128;
}
