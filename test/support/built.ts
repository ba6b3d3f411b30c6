// The packages as built, for tests that run them in a process of their own: brought up to date first, so that no old build is tested.
import { type ChildProcess, execFileSync, spawn, spawnSync } from "node:child_process";
import { join, parse } from "node:path";
import { fileURLToPath } from "node:url";
import { build } from "vite";

export const COMMAND = "packages/cli/bin/lamplane.js";

/** Builds what has changed since. */
export function buildIfStale(): void {
  for (const script of [["node_modules/typescript/bin/tsc", "-b", "packages/cli"], ["packages/cli/build.js"]]) {
    const { status, stdout, stderr } = spawnSync(process.execPath, script, { encoding: "utf8" });
    if (status !== 0) throw new Error(`the packages do not build:\n${stdout}${stderr}`);
  }
}

/**
 * Joins a script and all that it loads into one file, which starts in a fifth of the time: for one that is started again and again.
 * @param folder that the file goes into
 * @returns its path
 */
export async function bundleScript(script: string, folder: string): Promise<string> {
  await build({
    configFile: false,
    logLevel: "error",
    build: {
      ssr: script,
      outDir: folder,
      emptyOutDir: false,
      rollupOptions: { output: { entryFileNames: "[name].mjs" } },
    },
    ssr: { noExternal: true },
  });
  return join(folder, `${parse(script).name}.mjs`);
}

/** Builds the page. */
export const buildPage = (): void => {
  execFileSync(process.execPath, [fileURLToPath(new URL("../../packages/viewer/build.js", import.meta.url))]);
};

export interface EndedProcess {
  readonly code: number | null;
  readonly signal: string | null;
  readonly out: string;
  readonly err: string;
}

/** Runs the command; its worker threads end by themselves at one of their answers, thrown out or by leaving. */
export const runWithEndingWorkers = (how: "throw" | "exit", answer: number, ...args: string[]) =>
  spawnSync(process.execPath, ["--require", "./test/faults/ending-worker.cjs", COMMAND, ...args], {
    env: { ...process.env, LAMPLANE_TEST_END: `${how} ${answer}` },
    encoding: "utf8",
  });

/** Starts Node.js with arguments; `ended` resolves when it has, `says` when it first prints a text. */
export function startCommand(...args: string[]): {
  child: ChildProcess;
  ended: Promise<EndedProcess>;
  says: (text: string) => Promise<void>;
} {
  const child = spawn(process.execPath, args, { stdio: "pipe" });
  let [out, err] = ["", ""];
  child.stdout.on("data", (data) => {
    out += data;
  });
  child.stderr.on("data", (data) => {
    err += data;
  });
  const ended = new Promise<EndedProcess>((resolve) =>
    child.on("close", (code, signal) => resolve({ code, signal, out, err })),
  );
  const says = (text: string) =>
    new Promise<void>((resolve, reject) => {
      const look = () => void (out.includes(text) && resolve());
      child.stdout.on("data", look);
      look();
      void ended.then((end) => reject(new Error(`ended without a "${text}": ${JSON.stringify(end)}`)));
    });
  return { child, ended, says };
}
