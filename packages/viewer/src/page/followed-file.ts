// The file that `lamplane view` follows: its text, word that it changed on disk, and the way back into it, only when asked.
import type { ShopSource } from "@lamplane/parameters/design";
import type { ParameterChange } from "../protocol/sheet-data.ts";
import { COMMANDS, FOLLOWED } from "../words/page.ts";
import { watchFollowed } from "./followed-changes.ts";

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

const FILE = "./followed/design";

const fetchFile = (): Promise<Response | undefined> => fetch(FILE, { cache: "no-store" }).catch(() => undefined);

async function fetchShop(): Promise<ShopSource | undefined> {
  const response = await fetch("./followed/shop", { cache: "no-store" }).catch(() => undefined);
  return response?.status === 200 ? ((await response.json()) as ShopSource) : undefined;
}

/** @param version that is written over, and no other */
const putFile = (body: string, token: string, version: string | undefined): Promise<Response | undefined> =>
  fetch(FILE, {
    method: "PUT",
    body,
    headers: { "content-type": "text/yaml", "x-lamplane-token": token, "if-match": version ?? "" },
  }).catch(() => undefined);

const versionOf = (response: Response): string | undefined => response.headers.get("etag") ?? undefined;

/** @returns undefined on a page that no `lamplane view` serves */
export function followFile({ changed, lost, say }: FollowHandlers): FollowedFile | undefined {
  const mark = document.querySelector<HTMLMetaElement>('meta[name="lamplane-follows"]');
  if (!mark) return undefined;
  let version: string | undefined; // as it was read last; undefined before, and while there is none
  let requestId = 0;
  const gone = (why: string): undefined => {
    version = undefined;
    lost(why);
  };
  const events = {
    changed(now: string) {
      if (now === version) return;
      say(FOLLOWED.changed);
      changed();
    },
    lost(why: string) {
      requestId += 1; // what is being read now was there before
      gone(why);
    },
  };
  watchFollowed(events, { changed, say });
  return {
    name: mark.content,
    writeBackHelp: COMMANDS.writeBackHelp(mark.content),
    async text() {
      const ownId = ++requestId;
      const isOld = () => ownId !== requestId; // only the newest request is answered
      const response = await fetchFile();
      if (!response || isOld()) return undefined;
      const text = await response.text();
      if (isOld()) return undefined;
      if (!response.ok) return gone(text.trim());
      const shop = await fetchShop();
      if (isOld()) return undefined;
      version = versionOf(response);
      return { text, shop };
    },
    async writeBack(edit) {
      const read = version;
      const response = await putFile(await edit.text(), mark.dataset.token ?? "", read);
      if (response) version = versionOf(response) ?? version;
      say(!response ? FOLLOWED.notWritten : response.ok ? FOLLOWED.written(mark.content) : await response.text());
      return response?.ok ?? false;
    },
  };
}
