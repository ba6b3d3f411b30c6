// Every step of the build in a list, with what is done; and the question about steps that would be passed over.
import { html } from "../elements.ts";
import type { BenchBuild } from "../protocol/bench-build.ts";
import { BENCH, BUILDS, PAD } from "../words/bench.ts";
import { commandButton } from "./command-button.ts";

export function openStepList(build: BenchBuild, shown: string, goTo: (step: string) => void): void {
  const dialog = openDialog(BENCH.steps);
  const items = build.screens.map(({ key, title, isDone }, i) => {
    const state = key === build.next ? BENCH.now : isDone ? BENCH.done : "";
    const button = html(
      "button",
      { type: "button", "aria-current": key === shown ? "step" : undefined },
      html("span", {}, `${i + 1}. ${title}`),
      html("span", { class: "step-state" }, state),
    );
    button.classList.toggle("is-done", isDone);
    button.addEventListener("click", () => {
      dialog.close();
      goTo(key);
    });
    return html("li", {}, button);
  });
  dialog.append(
    html("ol", { class: "bench-list" }, ...items),
    html(
      "div",
      { class: "pad-commands" },
      commandButton(BUILDS.close, () => dialog.close()),
    ),
  );
  dialog.querySelector<HTMLElement>("[aria-current]")?.focus();
}

export function askSkips(words: string, areDone: () => void): void {
  const dialog = openDialog(BENCH.stepDone);
  const confirm = commandButton(
    PAD.areDone,
    () => {
      dialog.close();
      areDone();
    },
    "is-main",
  );
  const cancel = commandButton(PAD.cancel, () => dialog.close());
  dialog.append(html("p", {}, words), html("div", { class: "pad-commands" }, cancel, confirm));
  cancel.focus();
}

/** An open dialog over the page, gone once it is closed. */
export function openDialog(title: string): HTMLDialogElement {
  const dialog = html("dialog", { class: "bench-dialog", "aria-labelledby": "dialog-title" });
  dialog.append(html("h2", { id: "dialog-title" }, title));
  dialog.addEventListener("close", () => dialog.remove());
  document.body.append(dialog);
  dialog.showModal();
  return dialog;
}
