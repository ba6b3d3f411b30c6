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
  /** Sections that are asked for. */
  readonly sections: readonly string[];
}

/** True only where the pack has every section, and every file of its manifest stands there at its size, made from that state. */
export async function isCurrentPack(origin: PackOrigin, fs: FileSystem = DISK): Promise<boolean> {
  const folder = join(origin.parent, origin.name);
  try {
    const text = await fs.readFile(join(folder, MANIFEST), "utf8");
    if (!isManifestOf(origin.name, text)) return false;
    const { madeFrom, version, sections } = manifestOrigin(text);
    const rows = manifestRows(text);
    if (madeFrom !== origin.state || version !== origin.version) return false;
    if (!origin.sections.every((section) => sections.includes(section))) return false;
    if (rows.some((row) => row.madeFrom !== undefined)) return false;
    for (const { path, bytes } of rows) if ((await fs.lstat(join(folder, path))).size !== bytes) return false;
    return true;
  } catch {
    return false; // not there, or not to be read: writing it anew says what is wrong
  }
}
