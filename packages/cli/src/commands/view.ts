// `lamplane view`: the drawing sheet in a browser on this machine; ends with Ctrl+C.
import { existsSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join, resolve } from "node:path";
import { isRosterFile } from "../class/followed-class.ts";
import { readDesignBytes } from "../design-file.ts";
import { EXIT, type Exit, InputRefused, type Io } from "../io.ts";
import { shopAccess } from "../shop-file.ts";
import { startViewServer } from "../view-server.ts";
import { ARGUMENT_FAULT } from "../words/commands.ts";
import { VIEW } from "../words/view.ts";

const HIGHEST_PORT = 65_535;

export interface ViewOptions {
  /** 0 takes a free one. */
  readonly port: number;
  /** Shop file in the place of the one that the design names. */
  readonly shop?: string | undefined;
  /** Of a roster: the base design, where it names none or another is wanted. */
  readonly base?: string | undefined;
  /** Of a roster: folder with the planes' own files. */
  readonly out?: string;
}

/**
 * @param file design or roster to follow; without one the sheet begins with its examples
 * @param ended resolves when the maker has had enough
 * @throws InputRefused where the file cannot be read or the port is taken
 */
export async function viewCommand(
  io: Io,
  file: string | undefined,
  options: ViewOptions,
  ended = waitForInterrupt(),
): Promise<Exit> {
  const { port, shop } = options;
  if (!(Number.isInteger(port) && port >= 0 && port <= HIGHEST_PORT))
    throw new InputRefused(
      `${ARGUMENT_FAULT.wholeNumber({ option: "--port", read: port, least: 0, most: HIGHEST_PORT })}; ${ARGUMENT_FAULT.freePort}`,
    );
  if (file !== undefined) readDesignBytes(file);
  if (shop !== undefined) shopAccess("", shop);
  const follows = file === undefined ? {} : followed(resolve(file), options);
  const server = await startViewServer({ page: requirePageFolder(), ...follows, shop, port }).catch(portError(port));
  io.out(`${server.address}\n`);
  io.out(`${file === undefined ? VIEW.open : VIEW.follows({ file })}\n`);
  await ended;
  await server.close();
  return EXIT.done;
}

/** A roster is followed with its base design and its planes' own files. */
function followed(file: string, { base, shop, out = "packs" }: ViewOptions) {
  return isRosterFile(file) ? { followedClass: { roster: file, base, shop, out: resolve(out) } } : { file };
}

/** Folder of the page as it was built. */
function requirePageFolder(): string {
  const viewer = dirname(createRequire(import.meta.url).resolve("@lamplane/viewer/package.json"));
  const page = join(viewer, "dist");
  if (existsSync(join(page, "index.html"))) return page;
  throw new InputRefused(VIEW.notBuilt);
}

const portError =
  (port: number) =>
  (error: NodeJS.ErrnoException): never => {
    if (error.code === "EADDRINUSE" || error.code === "EACCES") throw new InputRefused(VIEW.portTaken({ port }));
    throw error;
  };

const waitForInterrupt = (): Promise<void> =>
  new Promise((done) => {
    for (const signal of ["SIGINT", "SIGTERM"] as const) process.once(signal, () => done());
  });
