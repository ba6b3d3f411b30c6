// Another state of the sources beside this one, built, so that both are measured in turn on the same machine.
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const ROOT = fileURLToPath(new URL("../../", import.meta.url));
const run = (cwd, command, ...args) => execFileSync(command, args, { cwd, stdio: ["ignore", "ignore", "inherit"] });

/** The sources at a commit, checked out beside this tree and built. @returns its folder, and what removes it */
export function buildAt(commit) {
  const folder = join(mkdtempSync(join(tmpdir(), "lamplane-base-")), "tree");
  const remove = () => {
    run(ROOT, "git", "worktree", "remove", "--force", folder);
    rmSync(join(folder, ".."), { recursive: true, force: true });
  };
  run(ROOT, "git", "worktree", "add", "--detach", folder, commit);
  try {
    run(folder, "npx", "-y", "pnpm@10.34.9", "install", "--frozen-lockfile", "--prefer-offline");
    run(folder, "npx", "tsc", "-b");
    run(folder, process.execPath, "packages/cli/build.js");
    return { folder, remove };
  } catch (error) {
    remove();
    throw error;
  }
}
