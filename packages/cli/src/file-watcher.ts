// Word whenever a file is another one than before, or gone: its folder is watched, since editors replace files rather than write in them.
import { type FSWatcher, statSync, watch } from "node:fs";
import { basename, dirname } from "node:path";

/** How long a burst of events is waited out, ms: an editor writes a file in several pieces. */
const SETTLE_DELAY = 60;
/** How often the file is looked at anyway, ms: some file systems tell nothing. */
const POLL_INTERVAL = 1500;

/** @returns what ends the watching */
export function watchFile(file: string, changed: () => void): () => void {
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
    timer = setTimeout(look, SETTLE_DELAY);
  };
  const watcher = watchFolder(dirname(file), (which) => {
    if (which === null || which === name) soon();
  });
  const clock = setInterval(look, POLL_INTERVAL);
  return () => {
    watcher?.close();
    clearInterval(clock);
    clearTimeout(timer);
  };
}

/** @returns undefined where a folder cannot be watched, such as when the system's watches are used up: looking now and then is left */
function watchFolder(folder: string, onChange: (name: string | null) => void): FSWatcher | undefined {
  try {
    const watcher = watch(folder, (_, name) => onChange(name));
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
