// Files of the pack, to be taken one by one or all together: the bytes are those that the command writes.

import { html } from "../elements.ts";
import { packClient } from "../pack/pack-client.ts";
import { saveBlob } from "./files.ts";

export interface Downloads {
  readonly element: HTMLElement;
}

interface DownloadSource {
  /** The design file with every change in it. */
  readonly text: () => Promise<string>;
  readonly name: () => string;
}

export function createDownloads({ text, name }: DownloadSource): Downloads {
  const status = html("p", { class: "status", role: "status" });
  const list = html("ul", { class: "file-list" });
  const whole = html("button", { type: "button", class: "whole-pack" }, "whole pack as zip");
  const single = html("details", {}, html("summary", {}, "single files"), list);
  const pack = packClient((words) => {
    status.textContent = words;
  });
  const guarded = async (act: () => Promise<void>) => {
    status.textContent = "making…";
    try {
      await act();
      status.textContent = "";
    } catch (error) {
      status.textContent = error instanceof Error ? error.message : String(error);
    }
  };
  const save = (path: string) =>
    guarded(async () => {
      const bytes = await pack.file(await text(), name(), path);
      const type = path.endsWith(".pdf") ? "application/pdf" : "application/octet-stream";
      saveBlob(path === "" ? `${name()}.zip` : path.slice(path.lastIndexOf("/") + 1), new Blob([bytes], { type }));
    });
  whole.addEventListener("click", () => save(""));
  single.addEventListener("toggle", () => {
    if (!single.open) return;
    guarded(async () => {
      const paths = await pack.list(await text(), name());
      list.replaceChildren(...paths.map((path) => fileItem(path, save)));
    });
  });
  const element = html(
    "section",
    { class: "files", "aria-labelledby": "files-title" },
    html("h2", { id: "files-title" }, "Files"),
    html("p", {}, "Solids, drawings and true-size sheets, the same as the command writes. ", whole),
    single,
    status,
  );
  return { element };
}

function fileItem(path: string, save: (path: string) => void): HTMLElement {
  const button = html("button", { type: "button", "data-file": path }, path);
  button.addEventListener("click", () => save(path));
  return html("li", {}, button);
}
