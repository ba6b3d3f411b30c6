// Why a typed value is refused: a bubble at its number, which moves nothing else and goes once the value is one.
import { html } from "../elements.ts";
import { parameterName } from "../state/format.ts";

export interface Refusal {
  readonly element: HTMLElement;
  /** @param why undefined once the value is taken, or the number is back as it was */
  show(path: string, why: string | undefined): void;
}

const GAP = 7; // px between number and bubble

export function createRefusal(): Refusal {
  const element = html("p", { class: "refusal", role: "alert", id: "refusal", hidden: true });
  let refused: { path: string; input: Element | null } | undefined;
  const place = () => {
    const box = refused?.input?.getBoundingClientRect();
    if (!box) return;
    const wide = document.documentElement.clientWidth - element.offsetWidth - 8;
    element.style.left = `${Math.max(8, Math.min(box.left, wide)) + scrollX}px`;
    element.style.top = `${box.bottom + GAP + scrollY}px`;
  };
  addEventListener("resize", place);
  return {
    element,
    show(path, why) {
      if (why === undefined && refused?.path !== path) return;
      refused?.input?.removeAttribute("aria-describedby");
      element.hidden = why === undefined;
      element.textContent = why === undefined ? "" : `${parameterName(path)}: ${why}`;
      refused = why === undefined ? undefined : { path, input: numberOf(path) };
      refused?.input?.setAttribute("aria-describedby", "refusal");
      place();
    },
  };
}

/** The number that was typed in: the one with the cursor, or else the first of that name. */
function numberOf(path: string): Element | null {
  const active = document.activeElement;
  if (active instanceof HTMLElement && active.dataset.parameter === path) return active;
  return (
    document.querySelector(`[data-parameter="${path}"][aria-invalid]`) ??
    document.querySelector(`[data-parameter="${path}"]`)
  );
}
