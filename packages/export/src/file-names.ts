// Names inside a pack: relative, with forward slashes, the same on every system, and never a way out of the folder.

/** One step of a path: no separators of any system, no control characters, nothing that Windows reserves or drops. */
const STEP = /^(?!\.{1,2}$)[^/\\:*?"<>|\p{Cc}]*[^/\\:*?"<>|\p{Cc}. ]$/u;

/** Whether a name can be that of one folder or file. */
export const isPlainName = (name: string): boolean => STEP.test(name);

/**
 * Checks the names of a pack's files.
 * @throws our bug: a name that leads out of the pack, is not portable, or is at once another's (in any case of letters) or another's folder
 */
export function checkFileNames(names: Iterable<string>): void {
  const files = new Set<string>();
  const folders = new Set<string>();
  for (const name of names) {
    const steps = name.toLowerCase().split("/");
    if (!steps.every(isPlainName)) throw new Error(`"${name}" cannot be the name of a file in a pack`);
    if (files.has(steps.join("/"))) throw new Error(`two files of a pack are named "${name}"`);
    files.add(steps.join("/"));
    for (let depth = 1; depth < steps.length; depth++) folders.add(steps.slice(0, depth).join("/"));
  }
  for (const folder of folders) if (files.has(folder)) throw new Error(`"${folder}" is a file and a folder of a pack`);
}

/** Folders that the files lie in, those above before those below, each once. */
export function foldersOf(names: Iterable<string>): string[] {
  const folders = new Set<string>();
  for (const name of names) {
    const steps = name.split("/");
    for (let depth = 1; depth < steps.length; depth++) folders.add(steps.slice(0, depth).join("/"));
  }
  return [...folders].sort();
}
