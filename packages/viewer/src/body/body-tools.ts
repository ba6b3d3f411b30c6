// What the body is looked at with: standard views, the slider that opens it, the cut, names; the same views by key.
import { html } from "../elements.ts";
import { BODY_VIEWS, type BodyView } from "./body-views.ts";
import type { BodyScene } from "./scene.ts";

export interface BodyTools {
  readonly element: HTMLElement;
  /** Whether parts are to be named. */
  isNamed(): boolean;
  /** Where the slider stands, 0 to 1. */
  setOpen(share: number): void;
}

export interface BodyToolHandlers {
  look(view: BodyView): void;
  fit(): void;
  /** @param share 0 together, 1 as far apart as it goes */
  open(share: number): void;
  cut(isCut: boolean): void;
  nameParts(): void;
}

const NARROW = 708; // px: on a phone's body names leave too little of it to see
const VIEW_NAMES = Object.keys(BODY_VIEWS) as BodyView[];

export function createBodyTools(handlers: BodyToolHandlers): BodyTools {
  const open = html("input", { type: "range", min: 0, max: 100, value: 0, id: "open-body" });
  const cut = html("input", { type: "checkbox", id: "cut-body" });
  const named = html("input", { type: "checkbox", id: "name-parts", checked: innerWidth > NARROW });
  open.addEventListener("input", () => handlers.open(open.valueAsNumber / 100));
  open.addEventListener("change", () => handlers.fit());
  cut.addEventListener("change", () => handlers.cut(cut.checked));
  named.addEventListener("change", () => handlers.nameParts());
  const element = html(
    "div",
    { class: "body-tools" },
    createViewButtons(handlers),
    html("label", { for: "open-body", class: "opening-slider" }, "open along the glue lines", open),
    html("label", { for: "cut-body" }, cut, "cut at the centre plane"),
    html("label", { for: "name-parts" }, named, "names"),
  );
  const setOpen = (share: number) => {
    open.value = String(Math.round(100 * share));
  };
  return { element, isNamed: () => named.checked, setOpen };
}

function createViewButtons({ look, fit }: BodyToolHandlers): HTMLElement {
  const views = VIEW_NAMES.map((view) => {
    const button = html("button", { type: "button", "data-view": view }, BODY_VIEWS[view].label);
    button.addEventListener("click", () => look(view));
    return button;
  });
  const fitButton = html("button", { type: "button" }, "fit");
  fitButton.addEventListener("click", () => fit());
  return html("div", { class: "views", role: "group", "aria-label": "Standard views" }, ...views, fitButton);
}

const TURN = Math.PI / 24; // one press of an arrow key: 7.5 degrees
const CLOSER = 1.15;
const TURNS: Readonly<Record<string, readonly [across: number, up: number]>> = {
  ArrowLeft: [-TURN, 0],
  ArrowRight: [TURN, 0],
  ArrowUp: [0, TURN],
  ArrowDown: [0, -TURN],
};

/** What a key does to the body, undefined for one that does nothing. */
export function bodyKeyAction(
  key: string,
): ((scene: Pick<BodyScene, "turn" | "zoom" | "fit" | "look">) => void) | undefined {
  const turn = TURNS[key];
  const view = VIEW_NAMES[Number(key) - 1];
  if (turn) return (scene) => scene.turn(...turn);
  if (key === "+" || key === "=") return (scene) => scene.zoom(CLOSER);
  if (key === "-") return (scene) => scene.zoom(1 / CLOSER);
  if (key === "0") return (scene) => scene.fit();
  return view && ((scene) => scene.look(view));
}
