// The strip of steps over the drawing: a small drawing of each, scrubbed with the pointer, stepped with the arrow keys, played.
import { html, reconcileChildren, setAttributes, svg } from "../elements.ts";
import { playSign } from "../play-sign.ts";
import { FIRST_SHOWN, STAGES, type StageName, stageLabel } from "../protocol/build-steps.ts";
import type { StripDrawing } from "../protocol/sheet-data.ts";
import { STRIP } from "../words/page.ts";

export interface Strip {
  readonly element: HTMLElement;
  show(stage: StageName): void;
  draw(drawings: readonly StripDrawing[]): void;
}

interface Cell {
  readonly stage: StageName;
  readonly input: HTMLInputElement;
  readonly drawing: SVGSVGElement;
  readonly item: HTMLElement;
}

const PACE = 1700; // ms for a step while it is played

export function createStrip(goTo: (stage: StageName) => void): Strip {
  const cells = STAGES.map((stage, i) => createCell(stage, i, goTo));
  const list = html("ol", { class: "strip-cells" }, ...cells.map(({ item }) => item));
  const play = html("button", { type: "button", class: "play" });
  let shown: StageName = FIRST_SHOWN;
  let timer = 0;

  const setPlaying = (isPlaying: boolean) => {
    clearInterval(timer);
    timer = isPlaying ? window.setInterval(next, PACE) : 0;
    play.replaceChildren(playSign(isPlaying), isPlaying ? STRIP.pause : STRIP.play);
  };
  function next() {
    const after = STAGES[STAGES.indexOf(shown) + 1];
    if (after === undefined) return setPlaying(false);
    goTo(after);
    if (after === STAGES.at(-1)) setPlaying(false);
  }
  play.addEventListener("click", () => {
    if (timer !== 0) return setPlaying(false);
    if (STAGES.indexOf(shown) >= STAGES.indexOf(FIRST_SHOWN)) goTo(STAGES[0]!);
    setPlaying(true);
  });
  list.addEventListener("change", () => setPlaying(false));
  scrub(list, cells, (stage) => {
    setPlaying(false);
    if (stage !== shown) goTo(stage);
  });
  setPlaying(false);
  return {
    element: html("div", { class: "strip", role: "group", "aria-label": STRIP.label }, play, list),
    show(stage) {
      shown = stage;
      const reached = STAGES.indexOf(stage);
      cells.forEach(({ input, item }, i) => {
        input.checked = i === reached;
        item.classList.toggle("is-passed", i < reached);
        item.classList.toggle("is-shown", i === reached);
      });
    },
    draw(drawings) {
      for (const { stage, drawing } of cells)
        drawCell(
          drawing,
          drawings.find((each) => each.stage === stage),
        );
    },
  };
}

function createCell(stage: StageName, i: number, goTo: (stage: StageName) => void): Cell {
  const id = `stage-${stage}`;
  const input = html("input", { type: "radio", name: "stage", value: stage, id, "aria-label": stageLabel(stage) });
  input.addEventListener("change", () => goTo(stage));
  const drawing = svg("svg", { class: "strip-drawing", "aria-hidden": "true", preserveAspectRatio: "xMidYMax meet" });
  const words = html("span", { class: "strip-words" }, stageLabel(stage));
  const item = html("li", { "data-index": i }, input, html("label", { for: id }, drawing, words));
  return { stage, input, drawing, item };
}

/** The pointer goes along the strip with its button down: each step that it comes over is shown. */
function scrub(list: HTMLElement, cells: readonly Cell[], show: (stage: StageName) => void) {
  let isDown = false;
  const showAt = (x: number) => {
    const under = cells.find(({ item }) => {
      const { left, right } = item.getBoundingClientRect();
      return x >= left && x < right;
    });
    if (under) show(under.stage);
  };
  list.addEventListener("pointerdown", (event) => {
    if (event.button !== 0) return;
    isDown = true;
    showAt(event.clientX);
  });
  list.addEventListener("pointermove", (event) => {
    if (isDown) showAt(event.clientX);
  });
  for (const type of ["pointerup", "pointercancel"])
    addEventListener(type, () => {
      isDown = false;
    });
}

const ROUND = 4; // mm round a drawing

function drawCell(drawing: SVGSVGElement, found: StripDrawing | undefined) {
  if (found) {
    const { min, max } = found.box;
    const [x, y] = [min.x - ROUND, -max.y - ROUND];
    setAttributes(drawing, { viewBox: `${x} ${y} ${max.x - min.x + 2 * ROUND} ${max.y - min.y + 2 * ROUND}` });
  }
  reconcileChildren(
    drawing,
    found?.marks ?? [],
    () => svg("path"),
    (path, { d, area }) => setAttributes(path, { d, class: `area-${area}` }),
  );
}
