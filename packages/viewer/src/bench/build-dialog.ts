// The build as a whole: kept in the browser, saved to a file, opened from one, shared by its address, others of this device.
import { html } from "../elements.ts";
import { type OfflineState, useNewer, watchOffline } from "../offline/offline.ts";
import { readFile } from "../page/files.ts";
import { switchTheme } from "../page/theme.ts";
import { FIRST_SHOWN } from "../protocol/build-steps.ts";
import { saveText } from "../save-file.ts";
import { ownPage, pageAddress } from "../share/shared-page.ts";
import { designAddress } from "../state/address.ts";
import { BUILDS } from "../words/bench.ts";
import { SHARE } from "../words/share.ts";
import { type BuildSession, newBuild } from "./build-session.ts";
import { commandButton } from "./command-button.ts";
import { type KeptBuild, keptBuilds } from "./kept-builds.ts";
import { openDialog } from "./step-list.ts";

export function openBuildDialog(session: BuildSession, open: (kept: KeptBuild) => void): void {
  const { kept } = session;
  const dialog = openDialog(BUILDS.title);
  const status = html("p", { class: "bench-status", role: "status" });
  const offline = html("div", { class: "bench-offline" });
  const stopWatching = watchOffline((state) => offline.replaceChildren(...offlineWords(state)));
  dialog.addEventListener("close", stopWatching);
  const others = keptBuilds().filter(({ id }) => id !== kept.id);
  const openAnother = (next: KeptBuild) => {
    dialog.close();
    open(next);
  };
  dialog.append(
    html("p", {}, html("strong", {}, kept.name)),
    html("p", {}, session.isKept ? BUILDS.kept : BUILDS.notKept),
    html(
      "div",
      { class: "bench-choices" },
      commandButton(BUILDS.save, () => saveText(kept.name, kept.text), "bench-save"),
      filePicker((file) => void readFile(file).then(({ name, text }) => openAnother(newBuild(name, text)))),
      commandButton(BUILDS.copy, () => void copyAddress(kept, status)),
      commandButton(BUILDS.sheet, () => {
        location.hash = designAddress(kept, FIRST_SHOWN) ?? "";
        location.reload();
      }),
      commandButton(BUILDS.theme, switchTheme),
    ),
    status,
    offline,
    ...(others.length === 0
      ? []
      : [
          html("h3", {}, BUILDS.others),
          html("div", { class: "bench-choices" }, ...others.map((other) => otherBuild(other, openAnother))),
        ]),
    html(
      "div",
      { class: "pad-commands" },
      commandButton(BUILDS.close, () => dialog.close()),
    ),
  );
}

const offlineWords = (state: OfflineState): Node[] => [
  html("p", {}, BUILDS.offline[state]),
  ...(state === "newer" ? [commandButton(BUILDS.useNewer, useNewer)] : []),
];

function otherBuild(build: KeptBuild, open: (build: KeptBuild) => void): HTMLElement {
  const button = commandButton(build.name, () => open(build));
  button.append(html("small", {}, BUILDS.progress(build.reached)));
  return button;
}

async function copyAddress(build: KeptBuild, status: HTMLElement) {
  const design = designAddress(build, FIRST_SHOWN);
  if (design === undefined) {
    status.textContent = SHARE.tooLong;
    return;
  }
  const page = ownPage() ?? pageAddress();
  const address = `${page ?? ""}${design.replace("#", "#bench&")}`;
  const isCopied = await navigator.clipboard?.writeText(address).then(
    () => true,
    () => false,
  );
  status.textContent = !isCopied ? SHARE.notCopied : page === undefined ? SHARE.copiedPart : BUILDS.copied;
}

function filePicker(open: (file: File) => void): HTMLElement {
  const picker = html("input", {
    type: "file",
    accept: ".yaml,.yml,.json,text/yaml,application/json",
    id: "bench-open",
  });
  picker.addEventListener("change", () => {
    const [file] = picker.files ?? [];
    if (file) open(file);
    picker.value = "";
  });
  return html("label", { for: "bench-open", class: "open-file" }, BUILDS.open, picker);
}
