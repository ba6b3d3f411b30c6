// What of an older pack stays when a newer one takes its place: whatever lamplane did not write, or somebody changed since.
import { dirname, join } from "node:path";
import { MANIFEST, type ManifestRow, manifestRows, type PackFiles, toBytes } from "./manifest.ts";
import { type FileSystem, listFiles, syncFolder } from "./pack-files.ts";
import { ancestorFolders } from "./pack-names.ts";
import { sha256Hex } from "./sha256.ts";
import { systemErrorCode } from "./write-error.ts";

/** A file of the older pack and its path in the newer one. */
export interface KeptFile {
  readonly from: string;
  readonly to: string;
}

export interface KeepPlan {
  /** Files that are not the older pack's own, or were changed since it was written. */
  readonly kept: readonly KeptFile[];
  /** Rows of the older pack's own files that stay because the newer one makes no such section. */
  readonly carried: readonly ManifestRow[];
  /** Every file that the plan has read, with its stamp: one that bears it still need not be read again. */
  readonly known: ReadonlyMap<string, string>;
}

export const NOTHING_KEPT: KeepPlan = { kept: [], carried: [], known: new Map() };

/**
 * What stays of an older pack.
 * @param files the newer pack's
 * @param carriesOthers whether the older pack's own files stay that the newer one does not make
 */
export async function planKeeping(
  fs: FileSystem,
  folder: string,
  files: PackFiles,
  carriesOthers: boolean,
): Promise<KeepPlan> {
  const rows = new Map((await rowsIn(fs, folder)).map((row) => [row.path, row]));
  const written = new Set([...files.keys(), ...[...files.keys()].flatMap(ancestorFolders)].map(folded));
  const known = new Map<string, string>();
  const carried: ManifestRow[] = [];
  const theirs: string[] = [];
  for (const path of await listFiles(fs, folder)) {
    if (path === MANIFEST) continue;
    known.set(path, await stampOf(fs, join(folder, path))); // before it is read, so that no later change bears it
    const row = rows.get(path);
    const hash = await hashOf(fs, join(folder, path));
    const isOwn = row !== undefined && row.sha256 === hash;
    if (isOwn && carriesOthers && !written.has(folded(path))) carried.push(row);
    else if (!isOwn && !isSame(hash, files.get(path))) theirs.push(path);
  }
  return { kept: namesFor(theirs, written, carried), carried, known };
}

/** Names in the newer pack for files of the user's: their own, unless the newer pack writes one of that name. */
function namesFor(
  theirs: readonly string[],
  written: ReadonlySet<string>,
  carried: readonly ManifestRow[],
): readonly KeptFile[] {
  const stays = theirs.filter((each) => !written.has(folded(each)));
  const taken = new Set([...written, ...[...carried.map(({ path }) => path), ...stays].map(folded)]);
  return theirs.map((from) => {
    const to = written.has(folded(from)) ? freeName(from, taken) : from;
    taken.add(folded(to));
    return { from, to };
  });
}

/** Puts what stays into a newer pack's folder, by a second name for the same file where the disk can, else as a copy. */
export async function keepFiles(fs: FileSystem, folder: string, fresh: string, { kept, carried }: KeepPlan) {
  const all = [...kept, ...carried.map(({ path }) => ({ from: path, to: path }))];
  if (all.length === 0) return;
  for (const { from, to } of all) {
    await fs.mkdir(dirname(join(fresh, to)), { recursive: true });
    await linkOrCopy(fs, join(folder, from), join(fresh, to));
  }
  await syncFolder(fs, fresh);
}

/**
 * Moves into a pack what an older one, set aside, still holds that is nobody's but the user's.
 * @param known files of the older pack that a plan has cared for, by their stamps
 * @returns their paths in the pack
 */
export async function rescueFiles(
  fs: FileSystem,
  aside: string,
  target: string,
  known: KeepPlan["known"] = NOTHING_KEPT.known,
): Promise<string[]> {
  const rows = new Map((await rowsIn(fs, aside)).map((row) => [row.path, row]));
  const taken = new Set((await listFiles(fs, target)).map(folded));
  const rescued: string[] = [];
  for (const path of await listFiles(fs, aside)) {
    if (path === MANIFEST || known.get(path) === (await stampOf(fs, join(aside, path)))) continue;
    const hash = await hashOf(fs, join(aside, path));
    if (rows.get(path)?.sha256 === hash || (await standsIn(fs, target, path, hash))) continue;
    const to = freeName(path, taken);
    await fs.mkdir(dirname(join(target, to)), { recursive: true });
    await fs.rename(join(aside, path), join(target, to));
    taken.add(folded(to));
    rescued.push(to);
  }
  return rescued;
}

/** Names that differ by capitals are one on some disks. */
const folded = (path: string): string => path.toLowerCase();

const rowsIn = async (fs: FileSystem, folder: string): Promise<readonly ManifestRow[]> =>
  manifestRows(await fs.readFile(join(folder, MANIFEST), "utf8"));

/** SHA-256 of a plain file; undefined for a link or anything else that has no bytes of its own. */
async function hashOf(fs: FileSystem, path: string): Promise<string | undefined> {
  return (await fs.lstat(path)).isFile() ? sha256Hex(await fs.readFile(path)) : undefined;
}

const isSame = (hash: string | undefined, content: Uint8Array | string | undefined): boolean =>
  content !== undefined && hash === sha256Hex(toBytes(content));

/** Differs once a file is written to or is another. A second name, by which a file is kept, does not change it. */
async function stampOf(fs: FileSystem, path: string): Promise<string> {
  const { ino, size, mtimeMs } = await fs.lstat(path);
  return `${ino} ${size} ${mtimeMs}`;
}

/** Whether a pack holds a file's content by its own name or by one that it was kept under. */
async function standsIn(fs: FileSystem, folder: string, path: string, hash: string | undefined): Promise<boolean> {
  for (let n = 0; ; n++) {
    const name = n === 0 ? path : keptName(path, n);
    const found = await fs.lstat(join(folder, name)).catch(() => undefined);
    if (found === undefined) return false;
    if (hash === undefined ? !found.isFile() : (await hashOf(fs, join(folder, name))) === hash) return true;
  }
}

/** The path itself where it is free, else one with "kept" before its ending. */
function freeName(path: string, taken: ReadonlySet<string>): string {
  let name = path;
  for (let n = 1; taken.has(folded(name)); n++) name = keptName(path, n);
  return name;
}

const keptName = (path: string, n: number): string =>
  path.replace(/((?:\.[^./]*)?)$/, `.kept${n === 1 ? "" : `-${n}`}$1`);

/** Errors of a disk, or of a place on it, that has no second names. */
const NO_LINKS = ["EPERM", "EACCES", "ENOTSUP", "EOPNOTSUPP", "EMLINK", "ENOSYS", "EXDEV"];

async function linkOrCopy(fs: FileSystem, from: string, to: string): Promise<void> {
  if ((await fs.lstat(from)).isSymbolicLink()) return fs.symlink(await fs.readlink(from), to);
  try {
    await fs.link(from, to);
  } catch (error) {
    if (!NO_LINKS.includes(systemErrorCode(error) ?? "")) throw error;
    await fs.copyFile(from, to);
  }
}
