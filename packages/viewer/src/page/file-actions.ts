// Design files of the maker: opened, saved, written back into the file that the sheet follows. What fails is reported.

import { saveText } from "../save-file.ts";
import { CLASS_ADDRESS, followedName } from "../state/address.ts";
import { keepClass, keptClass, withFiles } from "../state/kept-class.ts";
import { isRoster } from "../state/roster-text.ts";
import type { SheetState, Store } from "../state/store.ts";
import { CLASS } from "../words/class.ts";
import { FILES, FOLLOWED } from "../words/page.ts";
import type { DesignLoader } from "./design-loader.ts";
import { type OpenedFile, readFile } from "./files.ts";
import type { FollowedFile } from "./followed-file.ts";

interface FileContext {
  readonly store: Store;
  readonly loader: DesignLoader;
  readonly followed: FollowedFile | undefined;
  /** The design file as it stands now, every change written into it, its comments kept; it carries what its shop file holds. */
  text(): Promise<string>;
  /** The same without the shop file's values. */
  ownText(): Promise<string>;
  say(words: string): void;
  refuse(words: readonly string[]): void;
}

export interface FileActions {
  /** A roster among them is shown as a class; otherwise the first is opened. */
  openFiles(files: readonly File[]): void;
  /** Back to the class that is open in this tab; the plane as it stands goes with it. */
  backToClass(): void;
  save(): void;
  writeBack(): void;
}

export function createFileActions({ store, loader, followed, text, ownText, say, refuse }: FileContext): FileActions {
  /** Changes that were asked about and may be left behind. */
  let left: SheetState["changes"] | undefined;

  /** A file that cannot be read (a folder, or one that is gone) is named, and the sheet stays as it is. */
  async function openFiles(files: readonly File[]) {
    const read: OpenedFile[] = [];
    for (const file of files) {
      try {
        read.push(await readFile(file));
      } catch {
        return refuse([FILES.unreadable(file.name)]);
      }
    }
    if (!read.some(isRoster)) return store.begin({ kind: "text", ...read[0]! });
    if (keepClass(read)) location.hash = CLASS_ADDRESS;
    else refuse([CLASS.notKept]);
  }

  async function backToClass() {
    const { origin, changes } = store.now();
    if (followed && origin.kind === "followed" && changes.size > 0 && changes !== left) {
      left = changes;
      return say(CLASS.unwritten);
    }
    const kept = keptClass();
    if (kept?.planes.includes(loader.fileName))
      keepClass(withFiles(kept.files, [{ name: loader.fileName, text: await text() }]), kept.planes, kept.groups);
    location.hash = CLASS_ADDRESS;
  }

  async function writeBack() {
    if (loader.fileIsRefused) return say(FOLLOWED.unreadable);
    const written = store.now().changes;
    const isWritten = await followed?.writeBack({ changes: [...written], text: ownText });
    const { origin, changes } = store.now();
    if (!isWritten || origin.kind !== "followed") return;
    const since = [...changes].filter(([path, value]) => !(written.has(path) && written.get(path) === value));
    const name = followedName({ origin });
    store.begin({ kind: "followed", ...(name === undefined ? {} : { name }) }, since);
  }

  const reportErrors = async (act: () => Promise<void>) => {
    try {
      await act();
    } catch (error) {
      say(error instanceof Error ? error.message : String(error));
    }
  };
  return {
    openFiles: (files) => void openFiles(files),
    backToClass: () => void reportErrors(backToClass),
    save: () => void reportErrors(async () => saveText(loader.fileName, await text())),
    writeBack: () => void reportErrors(writeBack),
  };
}
