// The body beside the elevation: canvas, names with leader lines, standard views, the slider that opens it, the cut.
import { html, reconcileChildren, setAttributes, svg } from "../elements.ts";
import type { BodyInfo, PartMesh } from "../protocol.ts";
import { parameterName } from "../state/format.ts";
import { BODY_VIEWS, type BodyView } from "./body-views.ts";
import { type BodyScene, type BodyState, createBodyScene } from "./scene.ts";

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

const TURN = Math.PI / 24; // one press of an arrow key: 7.5 degrees
const CLOSER = 1.15;

export function createBodyField(): BodyField {
  const canvas = html("canvas", {
    tabindex: 0,
    role: "img",
    "aria-label":
      "Body in 3D: arrow keys turn it, plus and minus bring it closer, 0 fits it, 1 to 5 are the standard views",
  });
  const lines = svg("svg", { class: "name-lines", "aria-hidden": "true" });
  const names = html("ol", { class: "part-names", "aria-label": "Parts shown" });
  const why = html("p", { class: "no-body", role: "status" });
  const open = html("input", { type: "range", min: 0, max: 100, value: 0, id: "open-body" });
  const cut = html("input", { type: "checkbox", id: "cut-body" });
  const named = html("input", { type: "checkbox", id: "name-parts", checked: true });
  const views = (Object.keys(BODY_VIEWS) as BodyView[]).map((view) =>
    html("button", { type: "button", "data-view": view }, BODY_VIEWS[view].label),
  );
  const fit = html("button", { type: "button" }, "fit");
  const board = html("div", { class: "board" }, canvas, lines, names, why);
  const tools = html(
    "div",
    { class: "body-tools" },
    html("div", { class: "views", role: "group", "aria-label": "Standard views" }, ...views, fit),
    html("label", { for: "open-body", class: "opening" }, "open along the glue lines", open),
    html("label", { for: "cut-body" }, cut, "cut at the centre plane"),
    html("label", { for: "name-parts" }, named, "names"),
  );
  const element = html("figure", { class: "field field-body" }, board, tools, html("figcaption", {}, "Body"));
  let scene: BodyScene | undefined;
  let state: BodyState = { open: 0, isCut: false, rings: 20, bedAngle: 47, bodyWidth: 66 };

  const pose = (change: Partial<BodyState>) => {
    state = { ...state, ...change };
    scene?.pose(state);
  };
  open.addEventListener("input", () => pose({ open: open.valueAsNumber / 100 }));
  cut.addEventListener("change", () => pose({ isCut: cut.checked }));
  named.addEventListener("change", placeNames);
  open.addEventListener("change", () => scene?.fit());
  views.forEach((button) => {
    button.addEventListener("click", () => scene?.look(button.dataset.view as BodyView));
  });
  fit.addEventListener("click", () => scene?.fit());
  canvas.addEventListener("keydown", onKey);
  new ResizeObserver(() => scene?.resize()).observe(canvas);

  return {
    element,
    show(parts, about) {
      state = { ...state, ...about };
      if (!scene) scene = started();
      scene?.show(parts, state);
      showMessage(undefined);
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

  function started(): BodyScene | undefined {
    try {
      const made = createBodyScene(canvas);
      made.onDrawn(placeNames);
      return made;
    } catch {
      showMessage("This browser shows no 3D here (WebGL 2 is off); elevation, notes and files do not need it.");
      return undefined;
    }
  }

  function showMessage(words: string | undefined) {
    if (scene || words !== undefined) why.textContent = words ?? "";
    board.classList.toggle("is-empty", words !== undefined);
  }

  function onKey(event: KeyboardEvent) {
    const turn = TURNS[event.key];
    const view = (Object.keys(BODY_VIEWS) as BodyView[])[Number(event.key) - 1];
    if (turn) scene?.turn(turn[0] * TURN, turn[1] * TURN);
    else if (event.key === "+" || event.key === "=") scene?.zoom(CLOSER);
    else if (event.key === "-") scene?.zoom(1 / CLOSER);
    else if (event.key === "0") scene?.fit();
    else if (view) scene?.look(view);
    else return;
    event.preventDefault();
  }

  /** Names stand in two columns, each with a line to its part, in the order of their heights, so that none covers another. */
  function placeNames() {
    const all = named.checked ? (scene?.middles() ?? []) : [];
    const { x: width, y: height } = scene?.size() ?? { x: 0, y: 0 };
    const sides = splitInTwo(all, width);
    const placed = sides.flatMap((side, k) => spreadNames(side, height).map((n) => ({ ...n, isRight: k === 1 })));
    setAttributes(lines, { width, height });
    reconcileChildren(
      names,
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
      (path, { x, y, at, isRight, name }) => {
        const end = isRight ? width - 8 - name.length * 6.4 : 8 + name.length * 6.4;
        setAttributes(path, { d: `M${end} ${at}L${x} ${y}m-2 0a2 2 0 1 0 4 0a2 2 0 1 0 -4 0` });
      },
    );
  }
}

/** A part's name as the trade says it: `cheek-left` is the left cheek. */
const partLabel = (name: string): string =>
  parameterName(name.replaceAll("-", " ")).replace(/^(\w+) (left|right)$/, "$2 $1");

const TURNS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

interface Named {
  readonly name: string;
  readonly x: number;
  readonly y: number;
}

/** Half of the names to the left, half to the right, by where their parts stand. */
function splitInTwo(all: readonly Named[], width: number): [Named[], Named[]] {
  const byX = [...all].sort((a, b) => a.x - b.x);
  const half = byX.filter(({ x }) => x < width / 2).length;
  const left = Math.min(Math.max(half, Math.floor(all.length / 2) - 1), Math.ceil(all.length / 2) + 1);
  return [byX.slice(0, left), byX.slice(left)];
}

const LINE = 22; // px: a name's own height

/** Names one under another near their parts, kept on the canvas. */
function spreadNames(side: readonly Named[], height: number): (Named & { at: number })[] {
  const sorted = [...side].sort((a, b) => a.y - b.y);
  let last = 0;
  const down = sorted.map((n) => {
    last = Math.max(last + LINE, Math.min(n.y, height));
    return { ...n, at: last };
  });
  const over = Math.max(0, last + LINE / 2 - height);
  return down.map((n, i) => ({ ...n, at: Math.max(LINE * (i + 0.7), n.at - over) }));
}
