// Door: outlines and solids to bytes, and bytes to a pack on disk.
export * from "./bytes.ts";
export { makeFolders } from "./folders.ts";
export { type Pack, preparePack, type WrittenPack, writePack } from "./pack.ts";
export { isCurrentPack, type PackOrigin } from "./pack-current.ts";
export type { FileSystem } from "./pack-files.ts";
export { toWriteError, WriteError } from "./write-error.ts";
