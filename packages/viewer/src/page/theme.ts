// Light or dark: as the system says, until the maker says otherwise; printed sheets are always light (in the style sheet).

const dark = matchMedia("(prefers-color-scheme: dark)");

export function switchTheme(): void {
  const root = document.documentElement;
  const isDark = root.dataset.theme === undefined ? dark.matches : root.dataset.theme === "dark";
  root.dataset.theme = isDark ? "light" : "dark";
}

export function watchTheme(changed: () => void): void {
  dark.addEventListener("change", changed);
  new MutationObserver(changed).observe(document.documentElement, { attributeFilter: ["data-theme", "data-wood"] });
}
