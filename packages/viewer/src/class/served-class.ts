// The class that `lamplane view` follows: its files, and word that one of them changed.
import type { ClassText } from "../protocol/class-view.ts";

/** Whether `lamplane view` serves this page with a roster. */
export const isServedClass = (): boolean => document.querySelector('meta[name="lamplane-class"]') !== null;

/**
 * Gives the class's files now and whenever one of them changes.
 * @param lost is called with the reason where they cannot be had
 */
export async function followClass(
  changed: (files: readonly ClassText[]) => void,
  lost: (words: string) => void,
): Promise<void> {
  if (!isServedClass()) return;
  let requestId = 0;
  const fetchFiles = async () => {
    requestId += 1;
    const ownId = requestId;
    const response = await fetch("./followed/class", { cache: "no-store" }).catch(() => undefined);
    if (!response || ownId !== requestId) return;
    if (!response.ok) return lost((await response.text()).trim());
    const files = (await response.json()) as ClassText[];
    changed(files);
  };
  new EventSource("./followed/changes").addEventListener("changed", () => void fetchFiles());
  await fetchFiles();
}
