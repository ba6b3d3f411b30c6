// Files of the pack, to be taken one by one or all together: the bytes are those that the command writes.

import { html } from "../elements.ts";
import { packClient } from "../pack/pack-client.ts";
import { saveBlob } from "../save-file.ts";
import { COMMANDS, DOWNLOADS, WHOLE_PACK } from "../words/page.ts";

export interface Downloads {
  readonly element: HTMLElement;
  /** Makes the whole pack, and shows how far it is. */
  readonly whole: HTMLElement;
}

interface DownloadSource {
  /** The design file with every change in it. */
  readonly text: () => Promise<string>;
  readonly name: () => string;
}

export function createDownloads({ text, name }: DownloadSource): Downloads {
  const status = html("p", { class: "status", role: "status" });
  const statusOfFile = html("p", { class: "status", role: "status" });
  let spoken: HTMLElement = status;
  const list = html("ul", { class: "file-list" });
  const button = html("button", { type: "button", class: "whole-pack", title: WHOLE_PACK }, COMMANDS.download);
  const whole = html("div", { class: "download" }, button, status);
  const single = html("details", {}, html("summary", {}, DOWNLOADS.single), list);
  const pack = packClient((words) => {
    spoken.textContent = words;
  });
  const guarded = async (place: HTMLElement, act: () => Promise<void>) => {
    spoken = place;
    place.textContent = DOWNLOADS.making;
    try {
      await act();
      place.textContent = "";
    } catch (error) {
      place.textContent = error instanceof Error ? error.message : String(error);
    }
  };
  const save = (path: string) =>
    guarded(path === "" ? status : statusOfFile, async () => {
      const bytes = await pack.file(await text(), name(), path);
      const type = path.endsWith(".pdf") ? "application/pdf" : "application/octet-stream";
      saveBlob(path === "" ? `${name()}.zip` : path.slice(path.lastIndexOf("/") + 1), new Blob([bytes], { type }));
    });
  button.addEventListener("click", () => save(""));
  single.addEventListener("toggle", () => {
    if (!single.open) return;
    guarded(statusOfFile, async () => {
      const paths = await pack.list(await text(), name());
      list.replaceChildren(...paths.map((path) => fileItem(path, save)));
    });
  });
  const element = html(
    "section",
    { class: "files", "aria-labelledby": "files-title" },
    html("h2", { id: "files-title" }, DOWNLOADS.files),
    html("p", {}, DOWNLOADS.help),
    single,
    statusOfFile,
  );
  return { element, whole };
}

function fileItem(path: string, save: (path: string) => void): HTMLElement {
  const button = html("button", { type: "button", "data-file": path }, path);
  button.addEventListener("click", () => save(path));
  return html("li", {}, button);
}
