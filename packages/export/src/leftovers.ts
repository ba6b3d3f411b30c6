// Folders that a run keeps beside a pack while it works, and what becomes of those that a killed run left behind.
import { join } from "node:path";
import { hasCode } from "./could-not-write.ts";
import type { FileSystem } from "./file-system.ts";
import { designOf, MANIFEST } from "./manifest.ts";

/**
 * Beside the pack `name` a run with the process number `pid` keeps
 *   `.lamplane-<name>-<pid>-<n>.tmp`  a pack half written or half removed: never of use to anyone
 *   `.lamplane-<name>-<pid>-<n>.old`  the pack that is being replaced, always whole
 */
export type Ending = "tmp" | "old";

/** A run older than this, ms, is taken for dead even where its process number is in use (by another program, then). */
const ABANDONED = 3_600_000;

/** Path of a working folder that isn't there yet. */
export async function workingFolder(fs: FileSystem, parent: string, name: string, ending: Ending): Promise<string> {
  for (let n = 0; ; n++) {
    const path = join(parent, `.lamplane-${name}-${fs.process}-${n}.${ending}`);
    if ((await fs.look(path)).kind === "nothing") return path;
  }
}

interface Leftover {
  readonly path: string;
  readonly ending: Ending;
  readonly changed: number;
}

/**
 * Clears up after killed runs: a pack set aside goes back to its place where that is empty, and all else of theirs is removed.
 * Only folders with a working folder's name, a dead run's number and a pack of this design (or nothing yet) in them are touched.
 */
export async function clearLeftovers(fs: FileSystem, parent: string, name: string, designName: string): Promise<void> {
  const left: Leftover[] = [];
  for (const entry of await fs.list(parent)) {
    const leftover = await leftoverAt(fs, parent, entry, name, designName);
    if (leftover) left.push(leftover);
  }
  left.sort((a, b) => b.changed - a.changed);
  for (const { path, ending } of left) {
    const target = join(parent, name);
    if (ending === "old" && (await fs.look(target)).kind === "nothing") await fs.rename(path, target);
    else await ignoringFailure(() => removePack(fs, path));
  }
}

async function leftoverAt(
  fs: FileSystem,
  parent: string,
  entry: string,
  name: string,
  designName: string,
): Promise<Leftover | undefined> {
  const start = `.lamplane-${name}-`;
  const [, pid, ending] = (entry.startsWith(start) && /^(\d+)-\d+\.(tmp|old)$/.exec(entry.slice(start.length))) || [];
  if (pid === undefined) return undefined;
  const path = join(parent, entry);
  const found = await fs.look(path);
  if (found.kind !== "folder") return undefined;
  if (fs.isRunning(Number(pid)) && fs.now() - found.changed < ABANDONED) return undefined;
  if (!(await isOurs(fs, path, ending as Ending, designName))) return undefined;
  return { path, ending: ending as Ending, changed: found.changed };
}

/** A pack's manifest is the first file in and the last out, so a folder of ours has it, or it alone in part, or nothing. */
async function isOurs(fs: FileSystem, path: string, ending: Ending, designName: string): Promise<boolean> {
  if ((await packAt(fs, path)) === designName) return true;
  return ending === "tmp" && (await fs.list(path)).every((entry) => entry === MANIFEST);
}

/** Name of the design whose pack a folder is; undefined where it is no pack. */
export async function packAt(fs: FileSystem, folder: string): Promise<string | undefined> {
  const path = join(folder, MANIFEST);
  if ((await fs.look(path)).kind !== "file") return undefined;
  return designOf(await fs.read(path));
}

/** Removes a pack's folder, whole or in part, its manifest last, so that a run killed on the way leaves what the next one knows. */
export async function removePack(fs: FileSystem, folder: string): Promise<void> {
  for (const entry of await listOrNothing(fs, folder)) if (entry !== MANIFEST) await fs.remove(join(folder, entry));
  await fs.remove(folder);
}

async function listOrNothing(fs: FileSystem, folder: string): Promise<string[]> {
  try {
    return await fs.list(folder);
  } catch (error) {
    if (hasCode(error, "ENOENT")) return [];
    throw error;
  }
}

/** For clearing up, which must not hide what went before; what stays behind is cleared by a later run. */
export async function ignoringFailure(act: () => Promise<void>): Promise<void> {
  try {
    await act();
  } catch {
    // left for the next run
  }
}
