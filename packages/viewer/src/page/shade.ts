// Paper or slate: as the system says, until the maker says otherwise; printed sheets are always paper (in the style sheet).

const dark = matchMedia("(prefers-color-scheme: dark)");

export function switchShade(): void {
  const root = document.documentElement;
  const isDark = root.dataset.shade === undefined ? dark.matches : root.dataset.shade === "slate";
  root.dataset.shade = isDark ? "paper" : "slate";
}

export function watchShade(changed: () => void): void {
  dark.addEventListener("change", changed);
  new MutationObserver(changed).observe(document.documentElement, { attributeFilter: ["data-shade"] });
}
