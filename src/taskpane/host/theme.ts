import { createDarkTheme, createLightTheme, teamsHighContrastTheme } from "@fluentui/react-components";
import type { BrandVariants, Theme } from "@fluentui/react-components";

/** The local sheet's accent from dark to light. */
const accent: BrandVariants = {
  10: "#040b0c",
  20: "#09191b",
  30: "#0d272b",
  40: "#12353a",
  50: "#163f46",
  60: "#1a4a51",
  70: "#1d535c",
  80: "#215f69",
  90: "#27717c",
  100: "#2f8693",
  110: "#47939e",
  120: "#5aa9b5",
  130: "#79b9c3",
  140: "#99cad1",
  150: "#bcdce1",
  160: "#dfeef1",
};

export type ThemeName = "light" | "dark" | "contrast";

/** Text and lines in the accent need its light half on a dark ground. */
const dark: Theme = {
  ...createDarkTheme(accent),
  colorBrandForeground1: accent[120],
  colorBrandForeground2: accent[130],
  colorBrandForegroundLink: accent[120],
  colorBrandForegroundLinkHover: accent[130],
  colorBrandForegroundLinkPressed: accent[110],
};

export const themes: Readonly<Record<ThemeName, Theme>> = {
  light: createLightTheme(accent),
  dark,
  // links and what unfolds in the colour that the person chose for them: the theme's yellow is unreadable on a light ground
  contrast: { ...teamsHighContrastTheme, fontFamilyBase: dark.fontFamilyBase, colorBrandForegroundLink: "LinkText" },
};
