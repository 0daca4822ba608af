import { defaultTheme, type Theme } from "@univerjs/themes";

/** The grid's own controls in the walnut of the page. */
export const walnutTheme: Theme = {
  ...defaultTheme,
  primary: {
    50: "#faf5ec",
    100: "#f3e9d8",
    200: "#e6d3b4",
    300: "#d3b58a",
    400: "#ab8457",
    500: "#8a6440",
    600: "#6a4a2b",
    700: "#573c22",
    800: "#442f1a",
    900: "#322213",
  },
};
