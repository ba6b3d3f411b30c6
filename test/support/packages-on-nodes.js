// `pnpm packages`: packs the packages, installs them into an empty project, and runs them on every Node.js they are meant for.
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { installInto, packAll, ran } from "./packed.js";

/** The oldest that the packages say they run on, and the last of each line with long-term support. */
const NODES = ["20.19.0", "20", "22", "24"];
const EXAMPLES = readdirSync("examples").filter((file) => file.endsWith(".yaml"));

const folder = mkdtempSync(join(tmpdir(), "lamplane-packages-"));
try {
  const tarballs = packAll(join(folder, "tarballs"));
  const project = installInto(join(folder, "project"), tarballs);
  console.log(`Installed by npm ${ran("npm", ["--version"]).trim()}: ${[...tarballs.keys()].join(", ")}\n`);
  const packs = NODES.map((version) => runOn(version, project));
  const same = packs.every((each) => each === packs[0]);
  console.log(
    same
      ? "\nThe packs are the same on all of them, byte for byte."
      : "\nThe packs DIFFER from one Node.js to another.",
  );
  console.log(`\nBy npx from the packed files alone, in an empty folder:\n${firstUseByNpx(tarballs)}`);
  if (!same) process.exitCode = 1;
} finally {
  rmSync(folder, { recursive: true, force: true });
}

/** Runs the installed command on one Node.js; gives the manifests of the packs it wrote. @throws where a run fails */
function runOn(version, project) {
  const node = ran("npx", ["-y", "-p", `node@${version}`, "which", "node"], folder).trim();
  const bin = join(project, "node_modules/@lamplane/cli/bin/lamplane.js");
  const lamplane = (...args) => ran(node, [bin, ...args], project);
  const out = join(folder, `packs-${version}`);
  const begin = performance.now();
  const told = lamplane("--version").trim();
  const manifests = EXAMPLES.map((file) => {
    const { written } = JSON.parse(lamplane("build", resolve("examples", file), "--out", out, "--json"));
    return readFileSync(join(written, "manifest.json"), "utf8");
  });
  lamplane(
    "sweep",
    resolve("examples/apprentice-smoother.yaml"),
    "--vary",
    "bed.angle=43..57:0.02",
    "--out",
    join(out, "sweep.csv"),
  );
  const seconds = ((performance.now() - begin) / 1000).toFixed(1);
  console.log(
    `${ran(node, ["--version"]).trim().padEnd(10)} lamplane ${told}: ${EXAMPLES.length} packs and a sweep in ${seconds} s`,
  );
  return manifests.join("\n") + readFileSync(join(out, "sweep.csv"), "utf8");
}

/** A newcomer's first three commands where npx alone fetches and runs them, with a cache that holds nothing of it; what they print. */
function firstUseByNpx(tarballs) {
  const packed = [...tarballs.values()].flatMap((tarball) => ["--package", tarball]);
  const empty = mkdtempSync(join(folder, "first-use-"));
  const lamplane = (...args) =>
    ran("npx", ["-y", "--cache", join(folder, "cache"), ...packed, "lamplane", ...args], empty);
  return [
    ["new", "my-plane.yaml"],
    ["check", "my-plane.yaml"],
    ["build", "my-plane.yaml", "--out", "packs"],
  ]
    .map((args) => `$ lamplane ${args.join(" ")}\n${lamplane(...args)}`)
    .join("\n");
}
