// Runs that write one pack, one at a time: each announces itself by a folder only it may fill, then looks whether another has.
import { join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";
import { CouldNotWrite } from "./could-not-write.ts";
import { type FileSystem, foundAt, isOurs, removeQuietly } from "./pack-files.ts";
import { beginRun, endRun, type Life, lifeOf, processOf } from "./pack-owner.ts";

/** A run's folder beside the pack, and what may be in it. */
export interface Run {
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
export interface Place {
  readonly fs: FileSystem;
  readonly name: string;
  readonly parent: string;
  readonly target: string;
}

const [FRESH, OLD, GONE] = ["new", "old", "gone"] as const;
const INSIDE: readonly string[] = [FRESH, OLD, GONE];
const prefixOf = (name: string): string => `.lamplane-${name}-`;
const SUFFIX = ".tmp";

function runOf({ parent, name }: Place, mark: string): Run {
  const folder = join(parent, `${prefixOf(name)}${mark}${SUFFIX}`);
  return { mark, folder, fresh: join(folder, FRESH), old: join(folder, OLD), gone: join(folder, GONE) };
}

/** ms between two looks at whether another run has ended. */
const PAUSE = 50;
/** Minutes after which a run that nothing is known of, such as another machine's, counts as broken off; writing takes seconds. */
const UNHEARD_OF = 10;

/**
 * Does something while no other run writes the same pack, and hands it what broken-off runs have left.
 * Of two that announce themselves, the one that looks later sees the other; of several that wait, the first by its mark stays.
 * @param patience how long to wait for others, ms
 * @throws CouldNotWrite where another run has not ended by then
 */
export async function inTurn<T>(
  place: Place,
  patience: number,
  act: (own: Run, broken: readonly Run[]) => Promise<T>,
): Promise<T> {
  const own = runOf(place, beginRun());
  try {
    return await act(own, await announced(place, own, patience));
  } finally {
    await place.fs.rmdir(own.folder).catch(() => undefined); // stays where it holds something, which a later run knows
    endRun(own.mark);
  }
}

async function announced(place: Place, own: Run, patience: number): Promise<Run[]> {
  let announces = false;
  for (let waited = 0; ; waited += PAUSE) {
    if (!announces) await place.fs.mkdir(own.folder);
    const { going, broken } = await otherRuns(place, own);
    const [first] = going;
    if (first === undefined) return broken;
    if (waited >= patience) throw refusal(place, first);
    announces = own.mark < first.mark;
    if (!announces) await place.fs.rmdir(own.folder);
    await pause(PAUSE);
  }
}

async function otherRuns(place: Place, own: Run): Promise<{ going: Run[]; broken: Run[] }> {
  const [before, names] = [prefixOf(place.name), await place.fs.readdir(place.parent)];
  const marks = names
    .filter((each) => each.startsWith(before) && each.endsWith(SUFFIX))
    .map((each) => each.slice(before.length, -SUFFIX.length))
    .filter((mark) => processOf(mark) !== undefined && mark !== own.mark)
    .sort();
  const runs = marks.map((mark) => runOf(place, mark));
  const goes = await Promise.all(runs.map((run) => goesOn(place.fs, run)));
  return { going: runs.filter((_, i) => goes[i]), broken: runs.filter((_, i) => !goes[i]) };
}

async function goesOn(fs: FileSystem, { mark, folder }: Run): Promise<boolean> {
  const life: Life = lifeOf(mark);
  if (life !== "unknown") return life === "running";
  const seen = await fs.lstat(folder).catch(() => undefined);
  return seen !== undefined && Date.now() - seen.mtimeMs < UNHEARD_OF * 60_000;
}

function refusal({ target }: Place, { mark, folder }: Run): CouldNotWrite {
  const remedy = "wait until it has ended, then try again";
  if (lifeOf(mark) === "running")
    return new CouldNotWrite(target, `another run of lamplane, process ${processOf(mark)}, is writing it now`, remedy);
  const afterwards = `where it has broken off, what it left is put in order after ${UNHEARD_OF} minutes`;
  return new CouldNotWrite(
    target,
    `a run that cannot be seen from here is writing it (${folder})`,
    `${remedy}; ${afterwards}`,
  );
}

/** Puts an old pack that a broken-off run has moved aside back where none is, and removes all else that such runs left. */
export async function putInOrder({ fs, name, target }: Place, broken: readonly Run[]): Promise<void> {
  for (const run of broken) {
    if (!(await isLeftByUs(fs, name, run))) continue;
    const aside = await foundAt(fs, run.old, name);
    if (aside === "pack" && (await foundAt(fs, target, name)) === "nothing") await fs.rename(run.old, target);
    await clearRun(fs, run, (await foundAt(fs, target, name)) === "pack");
  }
}

/** Whether a run's folder holds nothing but what a run of ours puts there. */
async function isLeftByUs(fs: FileSystem, name: string, run: Run): Promise<boolean> {
  if ((await foundAt(fs, run.folder, name)) !== "folder") return false;
  for (const each of await fs.readdir(run.folder)) {
    if (!INSIDE.includes(each) || !(await isOurs(fs, join(run.folder, each), name))) return false;
  }
  return true;
}

/**
 * Empties a run's folder and removes it. What cannot be removed now, a later run knows and removes.
 * @param replaced whether a newer pack stands in the old one's place
 */
export async function clearRun(fs: FileSystem, run: Run, replaced: boolean): Promise<void> {
  if (replaced) await fs.rename(run.old, run.gone).catch(() => undefined); // so that what is called old is always whole
  for (const each of [run.fresh, run.gone]) await removeQuietly(fs, each);
  await fs.rmdir(run.folder).catch(() => undefined);
}
