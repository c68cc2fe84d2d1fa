import type { Theme } from "@univerjs/themes";
import { palette } from "../../book/looks";

/** The grid's own controls in our accent instead of its default. */
export const themeOf = (base: Theme): Theme => ({
  ...base,
  primary: {
    50: "#eef5f4",
    100: "#d9e8e6",
    200: "#b4d1ce",
    300: "#87b3b1",
    400: "#5a9193",
    500: "#3c7478",
    600: palette.accent,
    700: "#18464d",
    800: "#13383d",
    900: "#0d282c",
  },
});
