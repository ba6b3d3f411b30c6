// Door: outlines and solids to bytes, and bytes to a pack on disk.
export * from "./bytes.ts";
export { asCouldNotWrite, CouldNotWrite } from "./could-not-write.ts";
export { type Pack, type WrittenPack, writePack } from "./pack.ts";
export type { FileSystem } from "./pack-files.ts";
