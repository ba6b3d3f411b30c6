// The sheet on which a part's router program is played: the path over the outline, its depths over time, its lines.
import { html } from "../elements.ts";
import { ROUTER } from "../words/router.ts";
import { createPathView } from "./path-view.ts";
import type { RouterPaths } from "./router-paths.ts";
import type { RouterRequest, RouterResponse } from "./router-protocol.ts";

/** @param exampleShop a shop file with a router, for a design that names none */
export function openRouterDialog(
  text: string,
  planPaths: (request: RouterRequest) => Promise<RouterResponse>,
  exampleShop: string,
): void {
  const content = html("div", { class: "router-content" }, html("p", { role: "status" }, ROUTER.making));
  const close = html("button", { type: "button", class: "router-close" }, ROUTER.close);
  const dialog = html(
    "dialog",
    { class: "router", "aria-labelledby": "router-title" },
    html("div", { class: "router-head" }, html("h2", { id: "router-title" }, ROUTER.title), close),
    content,
  );
  let stop: () => void = () => {};
  const showPaths = (paths: RouterPaths, note?: string) => {
    const shown = pathsContent(paths, note);
    stop = shown.stop;
    content.replaceChildren(...shown.elements);
    dialog.dataset.drawn = "";
  };
  const showExample = async () => {
    content.replaceChildren(html("p", { role: "status" }, ROUTER.making));
    const response = await planPaths({ text, shop: exampleShop });
    if (response.kind === "paths") return showPaths(response.paths, ROUTER.example);
    content.replaceChildren(html("p", { role: "alert" }, response.kind === "failed" ? response.words : ROUTER.none));
  };
  close.addEventListener("click", () => dialog.close());
  dialog.addEventListener("close", () => {
    stop();
    dialog.remove();
  });
  document.body.append(dialog);
  dialog.showModal();
  void planPaths({ text }).then((response) => {
    if (response.kind === "paths") return showPaths(response.paths);
    if (response.kind === "failed") return content.replaceChildren(html("p", { role: "alert" }, response.words));
    const example = html("button", { type: "button", class: "router-example" }, ROUTER.tryExample);
    example.addEventListener("click", () => void showExample());
    return content.replaceChildren(html("p", {}, ROUTER.none), example);
  });
}

function pathsContent(
  { paths, notCut, style }: RouterPaths,
  note: string | undefined,
): { elements: HTMLElement[]; stop: () => void } {
  const notes = note === undefined ? [] : [html("p", { class: "router-note" }, note)];
  const refused =
    notCut.length === 0
      ? []
      : [
          html(
            "details",
            { class: "router-refused" },
            html("summary", {}, `${ROUTER.notCut} (${notCut.length})`),
            html("dl", {}, ...notCut.flatMap(({ title, why }) => [html("dt", {}, title), html("dd", {}, why)])),
          ),
        ];
  const caution = html("p", { class: "router-caution" }, ROUTER.caution);
  if (paths.length === 0) return { elements: [...notes, html("p", {}, ROUTER.nothingCut), ...refused], stop: () => {} };
  const view = createPathView(style);
  const choice = html(
    "select",
    { id: "router-part" },
    ...paths.map(({ title }, i) => html("option", { value: i }, title)),
  );
  choice.addEventListener("change", () => view.show(paths[Number(choice.value)]!));
  view.show(paths[0]!);
  const part = html("p", { class: "router-part" }, html("label", { for: "router-part" }, ROUTER.part), choice);
  return { elements: [...notes, part, view.element, caution, ...refused], stop: view.stop };
}
