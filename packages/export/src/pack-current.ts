// Whether a pack on the disk is whole and made from the design as it is now: then it need not be made again.
import { join } from "node:path";
import { isManifestOf, MANIFEST, manifestOrigin, manifestRows } from "./manifest.ts";
import { DISK, type FileSystem } from "./pack-files.ts";

export interface PackOrigin {
  readonly parent: string;
  readonly name: string;
  /** What tells one state of the design from another. */
  readonly state: string;
  readonly version: string;
}

/** Files that only a pack with all its sections has. */
const OF_EACH_SECTION = ["body.stl", "layout.pdf", "traveller.pdf"];

/** True only where every file of the manifest stands there at its size, and all of them were made from that state. */
export async function isCurrentPack(origin: PackOrigin, fs: FileSystem = DISK): Promise<boolean> {
  const folder = join(origin.parent, origin.name);
  try {
    const text = await fs.readFile(join(folder, MANIFEST), "utf8");
    if (!isManifestOf(origin.name, text)) return false;
    const { madeFrom, version } = manifestOrigin(text);
    const rows = manifestRows(text);
    const paths = new Set(rows.map(({ path }) => path));
    if (madeFrom !== origin.state || version !== origin.version) return false;
    if (!OF_EACH_SECTION.every((path) => paths.has(path)) || rows.some((row) => row.madeFrom !== undefined))
      return false;
    for (const { path, bytes } of rows) if ((await fs.lstat(join(folder, path))).size !== bytes) return false;
    return true;
  } catch {
    return false; // not there, or not to be read: writing it anew says what is wrong
  }
}
