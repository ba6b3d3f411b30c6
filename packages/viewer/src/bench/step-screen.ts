// One step of the build on one screen: what to do, its drawing, its cautions, its numbers, its blanks.
import { html } from "../elements.ts";
import { drawingWidthIn, PX_PER_MM, pictureDrawing } from "../plots/plot-field.ts";
import type { BenchBlank, BenchBuild, BenchLoss, BenchScreen } from "../protocol/bench-build.ts";
import { BENCH } from "../words/bench.ts";
import { commandButton } from "./command-button.ts";

export interface ScreenActions {
  fill(blank: BenchBlank): void;
  /** The step is done without a value. */
  finish(): void;
  goToNow(): void;
}

/** @param number of the step, from 1 */
export function stepScreen(
  build: BenchBuild,
  screen: BenchScreen,
  number: number,
  actions: ScreenActions,
): HTMLElement {
  const isNow = screen.key === build.next;
  const isNews = isNow || build.news?.from === screen.title;
  const mayGoToNow = !isNow && build.next !== undefined && !screen.isDone;
  return html(
    "article",
    { class: "bench-step", "aria-labelledby": "bench-title", "data-step": screen.key },
    stateLine(screen, BENCH.step({ number, of: build.screens.length }), isNow),
    html("h2", { id: "bench-title", tabindex: -1 }, screen.title),
    ...(isNow ? warningsOf(build) : []),
    html("p", { class: "bench-task" }, screen.task),
    ...(isNews ? newsOf(build) : []),
    drawing(screen),
    ...section(BENCH.cautions, "bench-cautions", itemsOf(screen.cautions), "ul"),
    ...numbersOf(screen),
    ...section(BENCH.work, "bench-work", itemsOf(screen.instructions), "ol"),
    ...section(BENCH.checks, "bench-checks", itemsOf(screen.checks), "ul"),
    ...blanksOf(screen, actions),
    ...(mayGoToNow ? [commandButton(BENCH.toNow, actions.goToNow, "bench-to-now")] : []),
  );
}

/** Which step it is, and where the build stands with it. */
function stateLine({ isDone, isKept }: BenchScreen, place: string, isNow: boolean): HTMLElement {
  const state = isNow ? BENCH.now : isDone ? BENCH.done : BENCH.later;
  return html("p", { class: `bench-state${isNow ? " is-now" : ""}` }, place + (isKept ? ` · ${state}` : ""));
}

const itemsOf = (texts: readonly string[]): HTMLElement[] => texts.map((words) => html("li", {}, words));

function section(title: string, kind: string, items: readonly HTMLElement[], list: "ul" | "ol"): HTMLElement[] {
  if (items.length === 0) return [];
  return [html("section", { class: kind }, html("h3", {}, title), html(list, {}, ...items))];
}

function warningsOf({ stops, tooWideBy }: BenchBuild): HTMLElement[] {
  const lines = [...stops, ...(tooWideBy === undefined ? [] : [BENCH.tooWide(tooWideBy)])];
  if (lines.length === 0) return [];
  const head = stops.length === 0 ? [] : [html("h3", {}, BENCH.stops(stops.length))];
  return [html("section", { class: "bench-stops" }, ...head, ...lines.map((words) => html("p", {}, words)))];
}

function newsOf({ news, earlier, unread }: BenchBuild): HTMLElement[] {
  const parts: HTMLElement[] = [];
  if (news)
    parts.push(
      html("h3", {}, BENCH.news(news.from)),
      ...news.values.map(lossItem),
      ...(news.moved.length === 0
        ? []
        : [
            html("h4", {}, BENCH.moved),
            pairs(news.moved.map(({ name, now, planned }) => [name, BENCH.change({ now, planned })])),
          ]),
    );
  if (earlier.length > 0) parts.push(html("details", {}, html("summary", {}, BENCH.earlier), ...earlier.map(lossItem)));
  if (unread !== "") parts.push(html("details", {}, html("summary", {}, BENCH.unread), html("p", {}, unread)));
  return parts.length === 0 ? [] : [html("section", { class: "bench-news" }, ...parts)];
}

const lossItem = ({ name, came, costs }: BenchLoss): HTMLElement =>
  html(
    "div",
    { class: "bench-loss" },
    html("p", {}, html("strong", {}, name), `: ${came}`),
    ...(costs.length === 0 ? [] : [html("ul", {}, ...costs.map((cost) => html("li", {}, cost)))]),
  );

const pairs = (rows: readonly (readonly [string, string])[]): HTMLElement =>
  html("dl", {}, ...rows.map(([name, value]) => html("div", {}, html("dt", {}, name), html("dd", {}, value))));

const WIDEST = 920; // px of a screen, and what stands round its drawing: as in the style sheet
const ROUND_DRAWING = 68;

/** mm that a step's drawing has on this screen. */
export const drawingWidth = (): number => drawingWidthIn(Math.min(WIDEST, innerWidth) - ROUND_DRAWING);

/** Fitted to the screen at first; as large as it is printed when asked, to be moved about under the finger. */
function drawing({ picture }: BenchScreen): HTMLElement {
  const drawn = pictureDrawing(picture);
  // A drawing too wide for its letters to be read is moved about under the finger.
  drawn.style.setProperty("--least-width", `${picture.width * PX_PER_MM}px`);
  const board = html(
    "div",
    { class: "plot bench-drawing", tabindex: 0, role: "group", "aria-label": BENCH.picture },
    drawn,
  );
  const resize = () => {
    const isLarge = board.classList.toggle("is-large");
    size.textContent = isLarge ? BENCH.fitting : BENCH.larger;
  };
  const size = commandButton(BENCH.larger, resize);
  board.addEventListener("click", resize);
  size.classList.add("bench-larger");
  return html("figure", {}, board, size);
}

function numbersOf({ numbers }: BenchScreen): HTMLElement[] {
  if (numbers.length === 0) return [];
  const rows = numbers.map(({ label, value, was }) =>
    html(
      "div",
      {},
      html("dt", {}, label),
      html("dd", {}, value, ...(was === undefined ? [] : [html("small", {}, BENCH.planned(was))])),
    ),
  );
  return [html("section", { class: "bench-numbers" }, html("h3", {}, BENCH.numbers), html("dl", {}, ...rows))];
}

function blanksOf({ blanks, isDone, isKept }: BenchScreen, { fill, finish }: ScreenActions): HTMLElement[] {
  const rows = blanks.map((blank) => {
    const button = html(
      "button",
      { type: "button", class: "bench-blank", "data-path": blank.path },
      html("span", { class: "blank-label" }, blank.label),
      html("span", { class: "blank-value" }, blank.value ?? BENCH.enter),
      html(
        "span",
        { class: "blank-expected" },
        [BENCH.expected(blank.expected), ...(blank.times === undefined ? [] : [BENCH.times(blank.times)])].join("; "),
      ),
    );
    button.classList.toggle("is-filled", blank.value !== undefined);
    button.addEventListener("click", () => fill(blank));
    return button;
  });
  const isOpen = isKept && !isDone;
  const done = commandButton(blanks.length === 0 ? BENCH.stepDone : BENCH.stepDoneUnread, finish, "bench-finish");
  const parts = [...(rows.length === 0 ? [] : [html("h3", {}, BENCH.measure), ...rows]), ...(isOpen ? [done] : [])];
  return parts.length === 0 ? [] : [html("section", { class: "bench-blanks" }, ...parts)];
}
