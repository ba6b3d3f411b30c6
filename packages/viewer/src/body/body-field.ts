// The body beside the elevation: the canvas with the names of the parts over it, and its tools.
import { html, reconcileChildren, setAttributes, svg } from "../elements.ts";
import type { BodyInfo, PartMesh } from "../protocol/body-data.ts";
import { bodyKeyAction, createBodyTools } from "./body-tools.ts";
import { type NamedPart, nameLinePath, partLabel, placeNames } from "./name-layout.ts";
import { type BodyState, INITIAL_STATE } from "./part-set.ts";
import { type BodyScene, createBodyScene } from "./scene.ts";

export interface BodyField {
  readonly element: HTMLElement;
  show(parts: readonly PartMesh[], about: BodyInfo): void;
  /** Says in words why there is no body to be seen. */
  showMessage(why: string | undefined): void;
  recolour(): void;
  drawNow(): void;
  /** Takes the size that it has now, and fits the body into it. */
  refit(): void;
}

const NO_3D = "This browser shows no 3D here (WebGL 2 is off); elevation, notes and files do not need it.";

export function createBodyField(): BodyField {
  const canvas = createCanvas();
  const names = createNameLayer();
  const message = html("p", { class: "no-body", role: "status" });
  const board = html("div", { class: "board" }, canvas, names.lines, names.list, message);
  let scene: BodyScene | undefined;
  let state = INITIAL_STATE;

  const pose = (change: Partial<BodyState>) => {
    state = { ...state, ...change };
    scene?.pose(state);
  };
  const drawNames = () => names.draw(tools.isNamed() && scene ? scene.middles() : [], scene?.size() ?? { x: 0, y: 0 });
  const showMessage = (words: string | undefined) => {
    if (scene || words !== undefined) message.textContent = words ?? "";
    board.classList.toggle("is-empty", words !== undefined);
  };
  const tools = createBodyTools({
    look: (view) => scene?.look(view),
    fit: () => scene?.fit(),
    open: (share) => pose({ open: share }),
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

  return {
    element: html("figure", { class: "field field-body" }, board, tools.element, html("figcaption", {}, "Body")),
    show(parts, about) {
      state = { ...state, ...about };
      scene ??= startScene(canvas, drawNames);
      scene?.show(parts, state);
      showMessage(scene ? undefined : NO_3D);
    },
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
    "aria-label":
      "Body in 3D: arrow keys turn it, plus and minus bring it closer, 0 fits it, 1 to 5 are the standard views",
  });

/** @returns undefined where the browser draws no 3D */
function startScene(canvas: HTMLCanvasElement, onDrawn: () => void): BodyScene | undefined {
  try {
    const scene = createBodyScene(canvas);
    scene.onDrawn(onDrawn);
    return scene;
  } catch {
    return undefined;
  }
}

function createNameLayer() {
  const lines = svg("svg", { class: "name-lines", "aria-hidden": "true" });
  const list = html("ol", { class: "part-names", "aria-label": "Parts shown" });
  const draw = (parts: readonly NamedPart[], { x: width, y: height }: { readonly x: number; readonly y: number }) => {
    const placed = placeNames(parts, width, height);
    setAttributes(lines, { width, height });
    reconcileChildren(
      list,
      placed,
      () => html("li"),
      (item, { name, at, isRight }) => {
        item.textContent = partLabel(name);
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
