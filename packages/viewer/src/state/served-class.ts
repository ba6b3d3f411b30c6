// The class that `lamplane view` follows: its files, and word that one of them changed.
import type { ClassText } from "../protocol/class-view.ts";

const mark = (): HTMLMetaElement | null => document.querySelector<HTMLMetaElement>('meta[name="lamplane-class"]');

/** Whether `lamplane view` serves this page with a roster. */
export const isServedClass = (): boolean => mark() !== null;

/** The roster's file; undefined where no class is served. */
export const servedRoster = (): string | undefined => mark()?.content;

/** The roster's name, without its ending. */
export const servedClassName = (): string | undefined => servedRoster()?.replace(/\.[^.]*$/, "");

/** What shows the server that a request to write is its own page's. */
export const classToken = (): string => mark()?.dataset.token ?? "";

/** Files of the class as they are on the disk. @returns why they cannot be had, or nothing where the server is silent */
export async function fetchClass(): Promise<
  { readonly files: readonly ClassText[] } | { readonly lost: string } | undefined
> {
  const response = await fetch("./followed/class", { cache: "no-store" }).catch(() => undefined);
  if (!response) return undefined;
  if (!response.ok) return { lost: (await response.text()).trim() };
  return { files: (await response.json()) as ClassText[] };
}

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
    const read = await fetchClass();
    if (!read || ownId !== requestId) return;
    if ("lost" in read) return lost(read.lost);
    changed(read.files);
  };
  new EventSource("./followed/changes").addEventListener("changed", () => void fetchFiles());
  await fetchFiles();
}
