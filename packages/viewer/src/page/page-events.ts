// What comes from the page itself: its keys, its size, its address, printing, a file dropped on it, light or dark.
import { dropFiles } from "./files.ts";
import { type HintSource, watchForHints } from "./hint.ts";
import { type KeyActions, watchKeys } from "./keys.ts";
import { restoreTheme, watchTheme } from "./theme.ts";

interface PageEvents {
  readonly keys: KeyActions;
  readonly hints: HintSource;
  themeChanged(): void;
  filesDropped(files: readonly File[]): void;
  resized(): void;
  printing(isPrinting: boolean): void;
  addressChanged(hash: string): void;
}

/** @param sheet whose size is watched */
export function watchPage(page: HTMLElement, sheet: HTMLElement, events: PageEvents): void {
  watchForHints(page, events.hints);
  watchKeys(events.keys);
  restoreTheme();
  watchTheme(events.themeChanged);
  dropFiles(page, events.filesDropped);
  new ResizeObserver(() => events.resized()).observe(sheet);
  addEventListener("beforeprint", () => events.printing(true));
  addEventListener("afterprint", () => events.printing(false));
  addEventListener("hashchange", () => events.addressChanged(location.hash));
}
