// Word whenever a file is another one than before, or gone: its folder is watched, since editors replace files rather than write in them.
import { type FSWatcher, statSync, watch } from "node:fs";
import { basename, dirname } from "node:path";

/** How long a burst of events is waited out, ms: an editor writes a file in several pieces. */
const SETTLED = 60;
/** How often the file is looked at anyway, ms: some file systems tell nothing. */
const LOOK = 1500;

/** @returns what ends the watching */
export function watched(file: string, changed: () => void): () => void {
  const name = basename(file);
  let seen = stampOf(file);
  let timer: NodeJS.Timeout | undefined;
  const look = () => {
    const now = stampOf(file);
    if (now === seen) return;
    seen = now;
    changed();
  };
  const soon = () => {
    clearTimeout(timer);
    timer = setTimeout(look, SETTLED);
  };
  const watcher = folderWatcher(dirname(file), (which) => {
    if (which === null || which === name) soon();
  });
  const clock = setInterval(look, LOOK);
  return () => {
    watcher?.close();
    clearInterval(clock);
    clearTimeout(timer);
  };
}

/** @returns undefined where a folder cannot be watched, such as when the system's watches are used up: looking now and then is left */
function folderWatcher(folder: string, told: (name: string | null) => void): FSWatcher | undefined {
  try {
    const watcher = watch(folder, (_, name) => told(name));
    watcher.on("error", () => {}); // the folder is gone
    return watcher;
  } catch {
    return undefined;
  }
}

function stampOf(file: string): string | undefined {
  try {
    const { mtimeMs, size, ino } = statSync(file);
    return `${mtimeMs} ${size} ${ino}`;
  } catch {
    return undefined;
  }
}
