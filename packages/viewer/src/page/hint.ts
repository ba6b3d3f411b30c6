// What a figure is: a card beside the number under the pointer or the cursor, with its meaning, limits, formula and source.

import { rowAt } from "@lamplane/parameters/design";
import { defaultIn, UNIT_OF } from "@lamplane/parameters/table";
import { formatValue, type LengthStyle } from "@lamplane/parameters/units";
import { html } from "../elements.ts";
import type { FigureDescription, SheetPlane } from "../protocol/sheet-data.ts";
import { limitsText, parameterName } from "../state/format.ts";
import { HINT } from "../words/page.ts";

export interface HintSource {
  readonly figures: () => Readonly<Record<string, FigureDescription>>;
  readonly plane: () => SheetPlane | undefined;
}

const LEAVE = 120; // ms: time to move the pointer onto the card

/** Watches the whole page for numbers that have something to tell. Escape puts the card away. */
export function watchForHints(page: HTMLElement, from: HintSource): void {
  const card = html("div", { class: "hint", role: "tooltip", id: "hint", hidden: true });
  document.body.append(card);
  let timer = 0;
  let shown: HTMLElement | undefined;
  const hide = () => {
    card.hidden = true;
    shown = undefined;
    redrawn.disconnect();
  };
  // A number that is taken off the page under a resting pointer is never left by it.
  const redrawn = new MutationObserver(() => {
    if (!shown?.isConnected) hide();
  });
  const over = (event: Event) => {
    const target = (event.target as Element).closest?.<HTMLElement>("[data-parameter], [data-figure]");
    if (!target) return;
    clearTimeout(timer);
    const plane = from.plane();
    if (!plane || target.matches(".is-dragged")) return;
    fillCard(card, target, plane, from.figures());
    if (card.hidden) return;
    shown = target;
    redrawn.observe(page, { childList: true, subtree: true });
  };
  const leave = () => {
    clearTimeout(timer);
    timer = window.setTimeout(hide, LEAVE);
  };
  page.addEventListener("pointerover", over);
  page.addEventListener("focusin", over);
  page.addEventListener("pointerout", leave);
  page.addEventListener("focusout", leave);
  page.addEventListener("pointerdown", hide);
  card.addEventListener("pointerenter", () => clearTimeout(timer));
  card.addEventListener("pointerleave", leave);
  document.addEventListener("keydown", ({ key }) => {
    if (key === "Escape") hide();
  });
}

function fillCard(
  card: HTMLElement,
  target: HTMLElement,
  plane: SheetPlane,
  figures: Readonly<Record<string, FigureDescription>>,
) {
  const style = plane.design;
  const path = target.dataset.parameter;
  const key = target.dataset.figure;
  if (path) card.replaceChildren(...parameterLines(path, style));
  else if (key && figures[key]) card.replaceChildren(...figureLines(key, figures[key], plane, style));
  else return;
  card.hidden = false;
  const box = target.getBoundingClientRect();
  const { offsetWidth: width, offsetHeight: height } = card;
  const left = Math.min(
    Math.max(8, box.left + box.width / 2 - width / 2),
    document.documentElement.clientWidth - width - 8,
  );
  const below = box.bottom + 10 + height < innerHeight;
  card.style.left = `${left + scrollX}px`;
  card.style.top = `${(below ? box.bottom + 10 : box.top - height - 10) + scrollY}px`;
}

function parameterLines(path: string, style: LengthStyle): Node[] {
  const row = rowAt(path);
  const unit = row.kind === "number" ? UNIT_OF[row.quantity] : "";
  const standard =
    row.kind === "number" && typeof row.default === "number"
      ? `; default ${formatValue(Number(defaultIn(row, style.units)), unit, style)}`
      : "";
  return [
    html("strong", {}, parameterName(path)),
    html("p", {}, row.help),
    html("p", {}, `${limitsText(row, style)}${standard}`),
    ...(row.kind === "number" && row.auto ? [html("p", {}, `auto: ${row.auto}`)] : []),
    html("p", { class: "source" }, HINT.ofParameter({ path, source: row.source })),
  ];
}

function figureLines(
  key: string,
  { name, help, formula, source, unit }: FigureDescription,
  plane: SheetPlane,
  style: LengthStyle,
): Node[] {
  const value = plane.figures[key];
  return [
    html("strong", {}, name),
    html("p", {}, help),
    html("p", {}, `= ${formula}${value === undefined ? "" : ` = ${formatValue(value, unit, style)}`}`),
    html("p", { class: "source" }, HINT.ofFigure(source)),
  ];
}
