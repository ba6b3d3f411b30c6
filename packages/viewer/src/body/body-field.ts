// The body beside the elevation: the canvas with the names of the parts over it, and its tools.
import { html, reconcileChildren, setAttributes, svg } from "../elements.ts";
import { loadScript } from "../load-script.ts";
import type { BodyInfo, PartMesh } from "../protocol/body-data.ts";
import { BODY } from "../words/page.ts";
import { bodyPicture } from "./body-picture.ts";
import { type BodyState, INITIAL_STATE } from "./body-state.ts";
import { bodyKeyAction, createBodyTools } from "./body-tools.ts";
import { type NamedPart, nameLinePath, partLabel, placeNames } from "./name-layout.ts";
import { createOpeningMotion } from "./opening-motion.ts";
import type { BodyScene } from "./scene.ts";

export interface BodyField {
  readonly element: HTMLElement;
  /**
   * Shows the parts once the body has come into view.
   * @param opened how far they stand apart at this step, 0 to 1
   * @param drawn called when they are drawn
   */
  show(parts: readonly PartMesh[], about: BodyInfo, opened: number, drawn: () => void): void;
  /** A still picture of it opened; undefined where there is none. @param width @param height px */
  picture(width: number, height: number): Promise<HTMLCanvasElement | undefined>;
  /** Says in words why there is no body to be seen. */
  showMessage(why: string | undefined): void;
  recolour(): void;
  drawNow(): void;
  /** Takes the size that it has now, and fits the body into it. */
  refit(): void;
}

export function createBodyField(): BodyField {
  const canvas = createCanvas();
  const names = createNameLayer();
  const message = html("p", { class: "no-body", role: "status" });
  const board = html("div", { class: "board" }, canvas, names.lines, names.list, message);
  let scene: BodyScene | undefined;
  let state = INITIAL_STATE;
  let latest: { parts: readonly PartMesh[]; about: BodyInfo; drawn: () => void } | undefined;

  const pose = (change: Partial<BodyState>) => {
    state = { ...state, ...change };
    scene?.pose(state);
  };
  const motion = createOpeningMotion((open) => pose({ open }));
  const drawNames = () => names.draw(tools.isNamed() && scene ? scene.middles() : [], scene?.size() ?? { x: 0, y: 0 });
  const showMessage = (words: string | undefined) => {
    if (scene || words !== undefined) message.textContent = words ?? "";
    board.classList.toggle("is-empty", words !== undefined);
  };
  const tools = createBodyTools({
    look: (view) => scene?.look(view),
    fit: () => scene?.fit(),
    open: (share) => {
      motion.stop();
      pose({ open: share });
    },
    cut: (isCut) => pose({ isCut }),
    nameParts: drawNames,
  });
  canvas.addEventListener("keydown", (event) => {
    const act = bodyKeyAction(event.key);
    if (!act) return;
    if (scene) act(scene);
    event.preventDefault();
  });
  new ResizeObserver(() => scene?.resize()).observe(canvas);

  let isLoaded = false;
  let stepOpen = 0;
  const showLatest = () => {
    if (!latest) return;
    scene ??= startScene(canvas, drawNames);
    scene?.show(latest.parts, state);
    showMessage(scene ? undefined : BODY.none);
    scene?.drawNow();
    latest.drawn();
  };
  onceInView(board, async () => {
    try {
      await loadScript("body.js");
    } catch (error) {
      return showMessage((error as Error).message);
    }
    isLoaded = true;
    showLatest();
  });

  return {
    element: html("figure", { class: "field field-body" }, board, tools.element, html("figcaption", {}, "Body")),
    show(parts, about, opened, drawn) {
      const before = state.open;
      const isOpenedAnew = opened !== stepOpen;
      if (isOpenedAnew) tools.setOpen(opened);
      state = { ...state, ...about, open: isOpenedAnew ? opened : before };
      stepOpen = opened;
      latest = { parts, about, drawn };
      if (!isLoaded) return;
      showLatest();
      if (isOpenedAnew) motion.go(before, opened);
    },
    picture: async (width, height) => latest && bodyPicture(latest.parts, latest.about, width, height),
    showMessage,
    recolour: () => scene?.recolour(),
    drawNow: () => scene?.drawNow(),
    refit() {
      scene?.resize();
      scene?.fit();
      scene?.drawNow();
    },
  };
}

const createCanvas = (): HTMLCanvasElement =>
  html("canvas", {
    tabindex: 0,
    role: "img",
    "aria-label": BODY.keys,
  });

const SEEN = "-60px"; // of the body must be in view: what only peeps in is not fetched

function onceInView(element: HTMLElement, act: () => void) {
  const observer = new IntersectionObserver(
    (entries) => {
      if (!entries.some(({ isIntersecting }) => isIntersecting)) return;
      observer.disconnect();
      act();
    },
    { rootMargin: SEEN },
  );
  observer.observe(element);
}

/** @returns undefined where the browser draws no 3D */
function startScene(canvas: HTMLCanvasElement, onDrawn: () => void): BodyScene | undefined {
  try {
    const scene = globalThis.openBodyScene!(canvas);
    scene.onDrawn(onDrawn);
    return scene;
  } catch {
    return undefined;
  }
}

function createNameLayer() {
  const lines = svg("svg", { class: "name-lines", "aria-hidden": "true" });
  const list = html("ol", { class: "part-names", "aria-label": BODY.parts });
  const draw = (parts: readonly NamedPart[], { x: width, y: height }: { readonly x: number; readonly y: number }) => {
    const placed = placeNames(parts, width, height);
    setAttributes(lines, { width, height });
    reconcileChildren(
      list,
      placed,
      () => html("li"),
      (item, { name, at, isRight }) => {
        const label = partLabel(name);
        if (item.textContent !== label) item.textContent = label;
        item.className = isRight ? "on-right" : "on-left";
        item.style.transform = `translateY(${at.toFixed(1)}px) translateY(-50%)`;
      },
    );
    reconcileChildren(
      lines,
      placed,
      () => svg("path"),
      (path, name) => setAttributes(path, { d: nameLinePath(name, width) }),
    );
  };
  return { lines, list, draw };
}
