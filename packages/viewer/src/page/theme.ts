// Light or dark: as the system says, until the maker says otherwise, which is kept; printed sheets are always light (style sheet).

const dark = matchMedia("(prefers-color-scheme: dark)");
const KEY = "lamplane-theme";

/** A browser may refuse to keep anything: then the choice lasts as long as the page. */
function attempt<T>(act: () => T): T | undefined {
  try {
    return act();
  } catch {
    return undefined;
  }
}

export function restoreTheme(): void {
  const kept = attempt(() => localStorage.getItem(KEY));
  if (kept === "light" || kept === "dark") document.documentElement.dataset.theme = kept;
}

export function switchTheme(): void {
  const root = document.documentElement;
  const isDark = root.dataset.theme === undefined ? dark.matches : root.dataset.theme === "dark";
  const theme = isDark ? "light" : "dark";
  root.dataset.theme = theme;
  attempt(() => localStorage.setItem(KEY, theme));
}

/** @param changed called when the colours are others: light or dark, or another wood */
export function watchTheme(changed: () => void): void {
  dark.addEventListener("change", changed);
  new MutationObserver(changed).observe(document.documentElement, { attributeFilter: ["data-theme", "data-wood"] });
}
