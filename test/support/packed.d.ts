// Types of packed.js, which runs without a build.
export function ran(command: string, args: readonly string[], cwd?: string): string;
export function packAll(folder: string): Map<string, string>;
export function installInto(folder: string, tarballs: ReadonlyMap<string, string>): string;
