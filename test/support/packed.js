// The packages as others get them: packed, and installed by npm into a project that has nothing else.
import { execFileSync } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { ourPackages } from "./third-party.js";

const PNPM = "pnpm@10.34.9";
const ROOT = fileURLToPath(new URL("../../", import.meta.url));
/** npm answers nothing that is asked for by a pnpm around it. */
const ENV = Object.fromEntries(Object.entries(process.env).filter(([name]) => !/^(npm_|pnpm_)/i.test(name)));

/** Runs a program; what it prints. @throws with all it said where it does not end well */
export function ran(command, args, cwd) {
  try {
    return execFileSync(command, args, { cwd, encoding: "utf8", env: ENV, stdio: "pipe" });
  } catch (error) {
    throw new Error(`${command} ${args.join(" ")} ended with ${error.status}:\n${error.stdout}${error.stderr}`);
  }
}

/** Packs every package into a folder; their tarballs by the name of the package. Builds them first. */
export function packAll(folder) {
  ran(process.execPath, [join(ROOT, "node_modules/typescript/bin/tsc"), "-b"], ROOT);
  mkdirSync(folder, { recursive: true });
  return new Map(
    ourPackages().map(({ home, manifest }) => {
      if (manifest.scripts?.build) ran("npm", ["run", "build"], home);
      const said = ran("npx", ["-y", PNPM, "pack", "--json", "--pack-destination", folder], home);
      return [manifest.name, JSON.parse(said.slice(said.indexOf("{"))).filename];
    }),
  );
}

/** An empty project with the tarballs installed. */
export function installInto(folder, tarballs) {
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, "package.json"), '{ "private": true, "type": "module" }\n');
  ran(
    "npm",
    ["install", "--no-audit", "--no-fund", "--prefer-offline", "--ignore-scripts", ...tarballs.values()],
    folder,
  );
  return folder;
}
