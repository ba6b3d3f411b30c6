// Runs that write one pack, one at a time: each announces itself by a folder only it may fill, then looks whether another has.
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { type FileSystem, inspectPath, isOwnFolder, tryRemoveFolder } from "./pack-files.ts";
import { rescueFiles } from "./pack-keep.ts";
import { beginRun, endRun, processIdOf, type RunStatus, runStatus } from "./pack-owner.ts";
import { PACK_LOCK } from "./words/writing.ts";
import { WriteError } from "./write-error.ts";

/** A run's folder beside the pack, and what may be in it. */
export interface PackRun {
  readonly mark: string;
  readonly folder: string;
  /** The new pack until it is whole. */
  readonly fresh: string;
  /** The old pack, whole, while the new one takes its place. */
  readonly old: string;
  /** The old pack once it is no longer needed. */
  readonly gone: string;
}

/** Where a pack goes. */
export interface PackTarget {
  readonly fs: FileSystem;
  readonly name: string;
  readonly parent: string;
  readonly target: string;
}

const [FRESH, OLD, GONE] = ["new", "old", "gone"] as const;
const INSIDE: readonly string[] = [FRESH, OLD, GONE];
const prefixOf = (name: string): string => `.lamplane-${name}-`;
const SUFFIX = ".tmp";

function makeRun({ parent, name }: PackTarget, mark: string): PackRun {
  const folder = join(parent, `${prefixOf(name)}${mark}${SUFFIX}`);
  return { mark, folder, fresh: join(folder, FRESH), old: join(folder, OLD), gone: join(folder, GONE) };
}

/** ms between two looks at whether another run has ended. */
const PAUSE = 50;
/** Minutes after which a run that nothing is known of, such as another machine's, counts as broken off; writing takes seconds. */
const STALE_AFTER = 10;

/**
 * Does something while no other run writes the same pack, and hands it what broken-off runs have left.
 * Of two that announce themselves, the one that looks later sees the other; of several that wait, the first by its mark stays.
 * @param patience how long to wait for others, ms
 * @throws WriteError where another run has not ended by then
 */
export async function withLock<T>(
  pack: PackTarget,
  patience: number,
  act: (own: PackRun, broken: readonly PackRun[]) => Promise<T>,
): Promise<T> {
  const own = makeRun(pack, beginRun());
  try {
    return await act(own, await acquireLock(pack, own, patience));
  } finally {
    await pack.fs.rmdir(own.folder).catch(() => undefined); // stays where it holds something, which a later run knows
    endRun(own.mark);
  }
}

async function acquireLock(pack: PackTarget, own: PackRun, patience: number): Promise<PackRun[]> {
  let announces = false;
  for (let waited = 0; ; waited += PAUSE) {
    if (!announces) await pack.fs.mkdir(own.folder);
    const { going, broken } = await listOtherRuns(pack, own);
    const [first] = going;
    if (first === undefined) return broken;
    if (waited >= patience) throw lockedError(pack, first);
    announces = own.mark < first.mark;
    if (!announces) await pack.fs.rmdir(own.folder);
    await pause(PAUSE);
  }
}

async function listOtherRuns(pack: PackTarget, own: PackRun): Promise<{ going: PackRun[]; broken: PackRun[] }> {
  const [before, names] = [prefixOf(pack.name), await pack.fs.readdir(pack.parent)];
  const marks = names
    .filter((each) => each.startsWith(before) && each.endsWith(SUFFIX))
    .map((each) => each.slice(before.length, -SUFFIX.length))
    .filter((mark) => processIdOf(mark) !== undefined && mark !== own.mark)
    .sort();
  const runs = marks.map((mark) => makeRun(pack, mark));
  const goes = await Promise.all(runs.map((run) => isRunning(pack.fs, run)));
  return { going: runs.filter((_, i) => goes[i]), broken: runs.filter((_, i) => !goes[i]) };
}

async function isRunning(fs: FileSystem, { mark, folder }: PackRun): Promise<boolean> {
  const life: RunStatus = runStatus(mark);
  if (life !== "unknown") return life === "running";
  const seen = await fs.lstat(folder).catch(() => undefined);
  return seen !== undefined && Date.now() - seen.mtimeMs < STALE_AFTER * 60_000;
}

function lockedError({ target }: PackTarget, { mark, folder }: PackRun): WriteError {
  if (runStatus(mark) === "running")
    return new WriteError(target, PACK_LOCK.running({ id: processIdOf(mark)! }), PACK_LOCK.wait);
  return new WriteError(target, PACK_LOCK.unseen({ folder }), PACK_LOCK.waitUnseen({ minutes: STALE_AFTER }));
}

/** Puts an old pack that a broken-off run has moved aside back where none is, and removes all else that such runs left. */
export async function recoverBrokenRuns({ fs, name, target }: PackTarget, broken: readonly PackRun[]): Promise<void> {
  for (const run of broken) {
    if (!(await isOwnLeftover(fs, name, run))) continue;
    const aside = await inspectPath(fs, run.old, name);
    if (aside === "pack" && (await inspectPath(fs, target, name)) === "nothing") await fs.rename(run.old, target);
    const isReplaced = (await inspectPath(fs, target, name)) === "pack";
    if (isReplaced && (await inspectPath(fs, run.old, name)) === "pack") await rescueFiles(fs, run.old, target);
    await removeRun(fs, run, isReplaced);
  }
}

/** Whether a run's folder holds nothing but what a run of ours puts there. */
async function isOwnLeftover(fs: FileSystem, name: string, run: PackRun): Promise<boolean> {
  if ((await inspectPath(fs, run.folder, name)) !== "folder") return false;
  for (const each of await fs.readdir(run.folder)) {
    if (!INSIDE.includes(each) || !(await isOwnFolder(fs, join(run.folder, each), name))) return false;
  }
  return true;
}

/**
 * Empties a run's folder and removes it. What cannot be removed now, a later run knows and removes.
 * @param replaced whether a newer pack stands in the old one's place
 */
export async function removeRun(fs: FileSystem, run: PackRun, replaced: boolean): Promise<void> {
  if (replaced) await fs.rename(run.old, run.gone).catch(() => undefined); // so that what is called old is always whole
  for (const each of [run.fresh, run.gone]) await tryRemoveFolder(fs, each);
  await fs.rmdir(run.folder).catch(() => undefined);
}
