// Writing a pack: at every moment there is either the old pack or the new one, whole; what isn't ours is never touched.
import { join } from "node:path";
import { isManifestOf, MANIFEST, manifestRows, type PackFiles, toBytes, withCarriedRows } from "./manifest.ts";
import { DISK, type FileSystem, inspectPath, type PathKind, syncParentFolder, writeFolder } from "./pack-files.ts";
import { type KeepPlan, type KeptFile, keepFiles, NOTHING_KEPT, planKeeping, rescueFiles } from "./pack-keep.ts";
import { type PackRun, type PackTarget, recoverBrokenRuns, removeRun, withLock } from "./pack-lock.ts";
import { assertFileNames, assertPackName } from "./pack-names.ts";
import { systemErrorCode, toWriteError, WriteError } from "./write-error.ts";

export interface Pack {
  /** Folder that the pack's folder goes into; made where it is missing. */
  readonly parent: string;
  /** The design's name, which is also the folder's. */
  readonly name: string;
  /** Its files with manifest.json among them, which says the same name. */
  readonly files: PackFiles;
  /** Whether an older pack's own files stay that are not among these; otherwise they go with it. */
  readonly carriesOthers?: boolean;
  /** The disk, unless a test puts something else in its place. */
  readonly fileSystem?: FileSystem;
  /** How long to wait for another run that writes the same pack, ms; 3 s by default. */
  readonly patience?: number;
}
export interface WrittenPack {
  readonly path: string;
  /** Whether an older pack stood there. */
  readonly replaced: boolean;
  /** Files of the older pack that were not its own, or were changed since: their paths now, and before where that was another. */
  readonly kept: readonly KeptFile[];
  /** The older pack's own files that stay, and whether each was made from an earlier state of the design. */
  readonly carried: readonly { readonly path: string; readonly isOlder: boolean }[];
}

const PATIENCE = 3_000; // ms: a pack is written in a second or two

/**
 * Writes a pack whole, or leaves everything as it was; while another run writes the same one, waits.
 * @throws WriteError where something else is in the way, the disk refuses or another run doesn't end; any other error is our bug
 */
export async function writePack(pack: Pack): Promise<WrittenPack> {
  const { parent, name, files, carriesOthers = false, fileSystem: fs = DISK, patience = PATIENCE } = pack;
  assertNames(name, files);
  const place = { fs, name, parent, target: join(parent, name) };
  try {
    await fs.mkdir(parent, { recursive: true });
    return await withLock(place, patience, (own, broken) => replacePack(place, own, broken, files, carriesOthers));
  } catch (error) {
    throw toWriteError(place.target, error);
  }
}

function assertNames(name: string, files: PackFiles): void {
  assertPackName(name);
  assertFileNames(files.keys());
  if (!isManifestOf(name, textIn(files))) throw new Error(`the pack ${name} has no ${MANIFEST} of its own`);
}

async function replacePack(
  pack: PackTarget,
  own: PackRun,
  broken: readonly PackRun[],
  files: PackFiles,
  carriesOthers: boolean,
): Promise<WrittenPack> {
  const { fs, target } = pack;
  await isReplaceable(pack); // before anything is put in order: what isn't ours stays among what it was found among
  await recoverBrokenRuns(pack, broken);
  try {
    const plan = (await isReplaceable(pack)) ? await planKeeping(fs, target, files, carriesOthers) : NOTHING_KEPT;
    const merged = await mergeManifest(pack, files, plan);
    await writeFolder(fs, own.fresh, merged);
    await keepFiles(fs, target, own.fresh, plan);
    const replaced = await isReplaceable(pack); // again: writing took a while
    await (replaced ? swapPacks(pack, own) : fs.rename(own.fresh, target));
    // What was put there while the newer pack was written. Where it cannot be moved now, the older pack stays for a later run to empty.
    const late = replaced ? await rescueFiles(fs, own.old, target).catch(() => undefined) : [];
    await syncParentFolder(fs, target);
    await removeRun(fs, own, replaced && late !== undefined);
    const older = new Set(
      manifestRows(textIn(merged)).flatMap(({ path, madeFrom }) => (madeFrom === undefined ? [] : [path])),
    );
    return {
      path: target,
      replaced,
      kept: [...plan.kept, ...(late ?? []).map((path) => ({ from: path, to: path }))],
      carried: plan.carried.map(({ path }) => ({ path, isOlder: older.has(path) })),
    };
  } catch (error) {
    await removeRun(fs, own, false);
    throw error;
  }
}

/** The newer pack's files, its manifest with the rows of what it carries over from the older one. */
async function mergeManifest({ fs, target }: PackTarget, files: PackFiles, { carried }: KeepPlan): Promise<PackFiles> {
  if (carried.length === 0) return files;
  const older = await fs.readFile(join(target, MANIFEST), "utf8");
  return new Map([...files, [MANIFEST, withCarriedRows(textIn(files), older, carried)]]);
}

const textIn = (files: PackFiles): string => new TextDecoder().decode(toBytes(files.get(MANIFEST) ?? ""));

/** The new pack takes the old one's place; where it can't, the old one returns to it. */
async function swapPacks({ fs, target }: PackTarget, { fresh, old }: PackRun): Promise<void> {
  await fs.rename(target, old);
  try {
    await fs.rename(fresh, target);
  } catch (error) {
    await fs.rename(old, target).catch((again: unknown) => {
      const remedy = `the pack that was there is whole in ${old}: move it back, or write again, which puts it back first`;
      throw new WriteError(
        target,
        `neither the new pack nor the old one could be put there (${systemErrorCode(again)})`,
        remedy,
        error,
      );
    });
    throw error;
  }
}

const OBSTACLES: Readonly<Record<Exclude<PathKind, "nothing" | "pack">, string>> = {
  folder: "a folder that is no pack of this design",
  file: "a file",
  link: "a symbolic link, which is not followed",
};

/** Whether a pack of this design is there (true) or nothing (false). */
async function isReplaceable({ fs, name, target }: PackTarget): Promise<boolean> {
  const found = await inspectPath(fs, target, name);
  if (found === "nothing" || found === "pack") return found === "pack";
  const what = `there is ${OBSTACLES[found]}`;
  throw new WriteError(target, what, "it was left as it is: move it away or choose another folder");
}
