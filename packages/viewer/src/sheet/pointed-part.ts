// Which part of a drawing is pointed at: its numbers come then, and stay while the pointer or the cursor is on them.
import type { DrawnPart } from "../protocol/view.ts";

const LEAVE = 700; // ms: time to move from a part onto its number

/** @param changed called whenever another part is pointed at, or none */
export function watchPointedPart(board: HTMLElement, changed: () => void): () => DrawnPart | undefined {
  let part: DrawnPart | undefined;
  let timer = 0;
  const set = (next: DrawnPart | undefined) => {
    if (next === part) return;
    part = next;
    changed();
  };
  const clearLater = () => {
    clearTimeout(timer);
    timer = window.setTimeout(() => set(undefined), LEAVE);
  };
  board.addEventListener("pointerover", ({ target }) => {
    clearTimeout(timer);
    const element = target as Element;
    if (element.closest(".number, .grip.is-held")) return;
    const found = element.closest<SVGElement>("[data-part]")?.dataset.part as DrawnPart | undefined;
    if (found) set(found);
    else clearLater();
  });
  board.addEventListener("pointerleave", ({ pointerType }) => {
    if (pointerType === "mouse") clearLater();
  });
  return () => part;
}
