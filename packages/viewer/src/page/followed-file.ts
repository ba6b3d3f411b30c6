// The file that `lamplane view` follows: its text, word that it changed on disk, and the way back into it, only when asked.
import type { ShopSource } from "@lamplane/parameters/design";
import type { ParameterChange } from "../protocol/sheet-data.ts";
import { COMMANDS, FOLLOWED } from "../words/page.ts";

/** A followed file's text, and the shop file that goes with it. */
export interface FollowedText {
  readonly text: string;
  readonly shop?: ShopSource | undefined;
}

/** What was changed on the sheet since the file was read. */
export interface FileEdit {
  readonly changes: readonly ParameterChange[];
  /** The file's text with the changes in it. */
  text(): Promise<string>;
}

export interface FollowedFile {
  readonly name: string;
  /** Where changes are written, in words. */
  readonly writeBackHelp: string;
  /** @returns undefined where the file cannot be had; `lost` gets the reason */
  text(): Promise<FollowedText | undefined>;
  /**
   * Writes over the file as it was read when this was called, and over no other.
   * @returns whether the file now holds it
   */
  writeBack(edit: FileEdit): Promise<boolean>;
}

export interface FollowHandlers {
  /** The file's text is another one now. */
  changed(): void;
  /** It cannot be had, for the moment or for good. */
  lost(why: string): void;
  say(words: string): void;
}

async function fetchShop(): Promise<ShopSource | undefined> {
  const response = await fetch("./followed/shop", { cache: "no-store" }).catch(() => undefined);
  return response?.status === 200 ? ((await response.json()) as ShopSource) : undefined;
}

/** @returns undefined on a page that no `lamplane view` serves */
export function followFile({ changed, lost, say }: FollowHandlers): FollowedFile | undefined {
  const mark = document.querySelector<HTMLMetaElement>('meta[name="lamplane-follows"]');
  if (!mark) return undefined;
  const token = mark.dataset.token ?? "";
  let version: string | undefined; // as it was read last; undefined before, and while there is none
  let [requestId, isGone] = [0, false];
  const events = new EventSource("./followed/changes");
  events.addEventListener("changed", ({ data }) => {
    if (data === version) return;
    say(FOLLOWED.changed);
    changed();
  });
  const gone = (why: string) => {
    version = undefined;
    lost(why);
  };
  events.addEventListener("lost", ({ data }) => {
    requestId += 1; // what is being read now was there before
    gone(String(JSON.parse(data)).trim());
  });
  events.addEventListener("error", () => {
    if (!isGone) say(FOLLOWED.silent);
    isGone = true;
  });
  events.addEventListener("open", () => {
    if (isGone) changed(); // no word came of what changed meanwhile
    isGone = false;
  });
  return {
    name: mark.content,
    writeBackHelp: COMMANDS.writeBackHelp(mark.content),
    async text() {
      const ownId = ++requestId;
      const response = await fetch("./followed/design", { cache: "no-store" }).catch(() => undefined);
      if (!response || ownId !== requestId) return undefined; // only the newest request is answered
      const text = await response.text();
      if (ownId !== requestId) return undefined;
      if (!response.ok) {
        gone(text.trim());
        return undefined;
      }
      const shop = await fetchShop();
      if (ownId !== requestId) return undefined;
      version = response.headers.get("etag") ?? undefined;
      return { text, shop };
    },
    async writeBack(edit) {
      const read = version;
      const text = await edit.text();
      const response = await fetch("./followed/design", {
        method: "PUT",
        body: text,
        headers: { "content-type": "text/yaml", "x-lamplane-token": token, "if-match": read ?? "" },
      }).catch(() => undefined);
      if (!response) {
        say(FOLLOWED.notWritten);
        return false;
      }
      version = response.headers.get("etag") ?? version;
      say(response.ok ? FOLLOWED.written(mark.content) : await response.text());
      return response.ok;
    },
  };
}
