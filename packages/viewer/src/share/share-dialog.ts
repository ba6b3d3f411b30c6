// The sheet of paper that a plane is shared from: the address, a code to scan, a card to save.
import { html } from "../elements.ts";
import { saveBlob } from "../save-file.ts";
import { SHARE } from "../words/share.ts";
import { drawCard } from "./card.ts";
import { type Code, MOST_CHARACTERS, makeCode } from "./code.ts";
import type { ShareSource } from "./share-source.ts";
import { keepPage, pageAddress } from "./shared-page.ts";

export function openShareDialog(source: ShareSource): void {
  const dialog = html("dialog", { class: "share", "aria-labelledby": "share-title" });
  const field = html("textarea", { class: "share-address", readonly: true, rows: 3, "aria-label": SHARE.address });
  const status = html("p", { class: "status", role: "status" });
  const note = html("p", { class: "share-note" });
  const card = html("canvas", { class: "card", role: "img", "aria-label": SHARE.cardPicture(source.name) });
  let page = source.page ?? pageAddress();
  let body: HTMLCanvasElement | undefined;

  const show = () => {
    field.value = source.whole === undefined ? SHARE.tooLong : `${page ?? ""}${source.whole}`;
    const { code, words } = codeOf(source, page);
    note.textContent = words;
    drawCard(card, { ...source, body, code });
  };
  const copy = button(SHARE.copy, async () => {
    const isCopied = await copyText(field.value);
    if (!isCopied) field.select();
    status.textContent = !isCopied ? SHARE.notCopied : page === undefined ? SHARE.copiedPart : SHARE.copied;
  });
  copy.disabled = source.whole === undefined;
  const changePage = (next: string | undefined) => {
    page = next;
    show();
  };
  const save = button(SHARE.save, () => saveCard(card, `${source.name}.png`));
  const close = button(SHARE.close, () => dialog.close());
  dialog.append(html("h2", { id: "share-title" }, SHARE.title));
  if (source.page === undefined) dialog.append(pageInput(page, changePage));
  dialog.append(field, commandRow(copy, status), card, note, commandRow(save, close));
  dialog.addEventListener("close", () => dialog.remove());
  document.body.append(dialog);
  dialog.showModal();
  show();
  note.textContent = SHARE.making;
  void source.body.then((picture) => {
    body = picture;
    show();
    dialog.dataset.drawn = "";
  });
}

const commandRow = (...elements: HTMLElement[]): HTMLElement => html("div", { class: "share-commands" }, ...elements);

/** @returns whether the browser let it */
async function copyText(text: string): Promise<boolean> {
  try {
    if (!navigator.clipboard) return false;
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

const saveCard = (card: HTMLCanvasElement, name: string): void =>
  card.toBlob((blob) => {
    if (blob) saveBlob(name, blob);
  }, "image/png");

/** The whole design where a code holds it, else the design without comments, else none. */
function codeOf({ whole, short }: ShareSource, page: string | undefined): { code: Code | undefined; words: string } {
  if (page === undefined) return { code: undefined, words: SHARE.noCode.page };
  const code = whole === undefined ? undefined : makeCode(page + whole);
  if (code) return { code, words: SHARE.wholeCode };
  const shortCode = short === undefined ? undefined : makeCode(page + short);
  if (!shortCode) return { code: undefined, words: SHARE.noCode.length };
  return {
    code: shortCode,
    words: SHARE.shortCode({ whole: page.length + (whole?.length ?? 0), most: MOST_CHARACTERS }),
  };
}

function pageInput(page: string | undefined, changed: (page: string | undefined) => void): HTMLElement {
  const input = html("input", { type: "url", id: "share-page", value: page, placeholder: "https://" });
  const fault = html("p", { class: "share-fault", role: "alert" });
  input.addEventListener("change", () => {
    const next = keepPage(input.value);
    fault.textContent = next === undefined && input.value.trim() !== "" ? SHARE.pageNotRead : "";
    changed(next);
  });
  return html(
    "div",
    { class: "share-page" },
    html("label", { for: "share-page" }, SHARE.page),
    input,
    html("p", {}, SHARE.pageHelp),
    fault,
  );
}

function button(words: string, act: () => void): HTMLButtonElement {
  const made = html("button", { type: "button" }, words);
  made.addEventListener("click", act);
  return made;
}
