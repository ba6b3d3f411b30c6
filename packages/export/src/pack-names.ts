// Which names a pack and its files may have: such as every file system takes, and none that leads out of the pack.

const PLAIN = /^[A-Za-z0-9_]([A-Za-z0-9._-]*[A-Za-z0-9_-])?$/;
/** Names that Windows keeps for devices, with any ending. */
const DEVICE = /^(con|prn|aux|nul|com\d|lpt\d)(\.|$)/i;

const isPortableName = (segment: string): boolean => PLAIN.test(segment) && !DEVICE.test(segment);

/** @throws our bug: a pack's name that is not one plain word; whatever the parameter table lets a design be called is one */
export function assertPackName(name: string): void {
  if (!isPortableName(name)) throw new Error(`not a name for a pack: ${JSON.stringify(name)}`);
}

/** @throws our bug: a path that is not relative and plain, or two paths that some disk takes for one */
export function assertFileNames(paths: Iterable<string>): void {
  const files = new Set<string>();
  const folders = new Set<string>();
  for (const path of paths) {
    if (!path.split("/").every(isPortableName)) throw new Error(`not a path in a pack: ${JSON.stringify(path)}`);
    const folded = path.toLowerCase();
    if (files.has(folded)) throw new Error(`two files of a pack have the path ${path}, but for capitals`);
    files.add(folded);
    for (const folder of ancestorFolders(folded)) folders.add(folder);
  }
  for (const folder of folders)
    if (files.has(folder)) throw new Error(`${folder} is both a file and a folder of a pack`);
}

/** Folders that a path lies in, outermost first. */
export function ancestorFolders(path: string): string[] {
  const segments = path.split("/").slice(0, -1);
  return segments.map((_, i) => segments.slice(0, i + 1).join("/"));
}
