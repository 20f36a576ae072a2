import { useEffect } from "react";
import { settings } from "./settings.ts";

/** Puts the chosen look on the page. */
export function useTheme(): void {
  const theme = settings((state) => state.theme);
  useEffect(() => {
    document.documentElement.dataset.theme = theme;
  }, [theme]);
}
