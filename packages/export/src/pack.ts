// Writing a pack: at every moment there is either the old pack or the new one, whole; what isn't ours is never touched.
import { join } from "node:path";
import { makeFolders } from "./folders.ts";
import { isManifestOf, MANIFEST, manifestRows, type PackFiles, toBytes, withCarriedRows } from "./manifest.ts";
import { DISK, type FileSystem, inspectPath, syncParentFolder, writeFolder } from "./pack-files.ts";
import { type KeepPlan, type KeptFile, keepFiles, NOTHING_KEPT, planKeeping, rescueFiles } from "./pack-keep.ts";
import { type PackRun, type PackTarget, recoverBrokenRuns, removeRun, withLock } from "./pack-lock.ts";
import { assertFileNames, assertPackName } from "./pack-names.ts";
import { PACK_PLACE } from "./words/writing.ts";
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
    await makeFolders(fs, parent);
    return await withLock(place, patience, (own, broken) => replacePack(place, own, broken, files, carriesOthers));
  } catch (error) {
    throw toWriteError(place.target, error);
  }
}

/**
 * Makes the folder that a pack goes into and looks whether the pack may go there, before the work of making it is begun.
 * @throws WriteError as writePack does
 */
export async function preparePack({ parent, name, fileSystem: fs = DISK }: Omit<Pack, "files">): Promise<void> {
  assertPackName(name);
  const place = { fs, name, parent, target: join(parent, name) };
  try {
    await makeFolders(fs, parent);
    await isReplaceable(place);
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
  await isReplaceable(pack); // before anything is put in order: what isn't ours stays among what it was found among
  await recoverBrokenRuns(pack, broken);
  try {
    const plan = await planReplacement(pack, files, carriesOthers);
    await writeFolder(pack.fs, own.fresh, plan.files);
    await keepFiles(pack.fs, pack.target, own.fresh, plan.keeping);
    const replaced = await takePlace(pack, own);
    const late = replaced ? await rescueLateFiles(pack, own, plan.keeping) : [];
    await syncParentFolder(pack.fs, pack.target);
    await removeRun(pack.fs, own, replaced && late !== undefined);
    return { path: pack.target, replaced, ...keptAndCarried(plan, late ?? []) };
  } catch (error) {
    await removeRun(pack.fs, own, false);
    throw error;
  }
}

interface ReplacementPlan {
  readonly keeping: KeepPlan;
  /** The newer pack's files, its manifest whole. */
  readonly files: PackFiles;
}

async function planReplacement(pack: PackTarget, files: PackFiles, carriesOthers: boolean): Promise<ReplacementPlan> {
  const { fs, target } = pack;
  const keeping = (await isReplaceable(pack)) ? await planKeeping(fs, target, files, carriesOthers) : NOTHING_KEPT;
  return { keeping, files: await mergeManifest(pack, files, keeping) };
}

/** Puts the newer pack where it belongs. @returns whether an older one stood there, asked anew, since writing took a while */
async function takePlace(pack: PackTarget, own: PackRun): Promise<boolean> {
  const replaced = await isReplaceable(pack);
  await (replaced ? swapPacks(pack, own) : pack.fs.rename(own.fresh, pack.target));
  return replaced;
}

/**
 * What was put into the older pack while the newer one was written.
 * @returns undefined where it cannot be moved now: then the older pack stays for a later run to empty
 */
const rescueLateFiles = ({ fs, target }: PackTarget, { old }: PackRun, { known }: KeepPlan) =>
  rescueFiles(fs, old, target, known).catch(() => undefined);

function keptAndCarried({ keeping, files }: ReplacementPlan, late: readonly string[]) {
  const older = new Set(
    manifestRows(textIn(files)).flatMap(({ path, madeFrom }) => (madeFrom === undefined ? [] : [path])),
  );
  return {
    kept: [...keeping.kept, ...late.map((path) => ({ from: path, to: path }))],
    carried: keeping.carried.map(({ path }) => ({ path, isOlder: older.has(path) })),
  };
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
      const found = PACK_PLACE.notSwapped({ code: systemErrorCode(again) ?? "?" });
      throw new WriteError(target, found, PACK_PLACE.swapRemedy({ old }), error);
    });
    throw error;
  }
}

/** Whether a pack of this design is there (true) or nothing (false). */
async function isReplaceable({ fs, name, target }: PackTarget): Promise<boolean> {
  const found = await inspectPath(fs, target, name);
  if (found === "nothing" || found === "pack") return found === "pack";
  throw new WriteError(target, PACK_PLACE[found], PACK_PLACE.remedy);
}
