// The packages as others get them: packed, installed by npm into an empty project, run and typed there.
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { checkPackage, createPackageFromTarballData } from "@arethetypeswrong/core";
import { publint } from "publint";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { installInto, packAll, ran } from "../support/packed.js";
import { ourPackages } from "../support/third-party.js";

const SMOOTHER = resolve("examples/apprentice-smoother.yaml");
const TSC = resolve("node_modules/typescript/bin/tsc");
const folder = mkdtempSync(join(tmpdir(), "lamplane-test-"));
const project = join(folder, "project");
const packages = ourPackages();
let tarballs = new Map<string, string>();

beforeAll(() => {
  tarballs = packAll(join(folder, "tarballs"));
  installInto(project, tarballs);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const lamplane = (...args: string[]) => ran("npx", ["--no-install", "lamplane", ...args], project);
const bytesOf = (name: string) => readFileSync(tarballs.get(name)!);

describe.each(packages)("$manifest.name", ({ manifest }) => {
  const name: string = manifest.name;
  const entries = Object.keys(manifest.exports).filter((entry) => !entry.endsWith(".json"));

  test("is laid out as Node.js, bundlers and TypeScript look for it", async () => {
    const tarball = new Uint8Array(bytesOf(name)).buffer;
    expect((await publint({ pack: { tarball }, strict: true })).messages).toEqual([]);
    const { types, ...analysis } = await checkPackage(createPackageFromTarballData(bytesOf(name)));
    if (entries.length === 0) return;
    // The packages are ES modules alone: require() under the oldest resolution of TypeScript is not meant to find them.
    const meant = (analysis as Exclude<Awaited<ReturnType<typeof checkPackage>>, { types: false }>).problems.filter(
      (problem) => !("resolutionKind" in problem && /^node10$|^node16-cjs$/.test(problem.resolutionKind)),
    );
    expect({ types, meant }).toEqual({ types: { kind: "included" }, meant: [] });
  });

  test("holds what it needs and nothing that it does not", () => {
    const home = join(project, "node_modules", name);
    const top = readdirSync(home).filter((entry) => entry !== "node_modules");
    const notices = manifest.bin || name === "@lamplane/viewer" ? ["THIRD-PARTY.md"] : [];
    const wanted = [
      "LICENSE",
      "README.md",
      "dist",
      "package.json",
      ...notices,
      ...(name === "@lamplane/sheets" ? ["typefaces"] : []),
      ...(manifest.bin ? ["bin", "bundle", "CHANGELOG.md"] : []),
    ];
    expect(top.sort()).toEqual(wanted.sort());
    const files = readdirSync(home, { recursive: true, encoding: "utf8" });
    expect(files.filter((file) => /\.tsbuildinfo$|\.test\.|(?<!\.d)\.ts$/.test(file))).toEqual([]);
  });

  test("runs what its README shows", () => {
    const readme = readFileSync(join(project, "node_modules", name, "README.md"), "utf8");
    const shown = [...readme.matchAll(/```js\n([\s\S]*?)```/g)].map((match) => match[1]!);
    if (manifest.exports["."] || entries.length > 0) expect(shown.length).toBeGreaterThan(0);
    for (const [i, code] of shown.entries()) {
      const file = join(project, `${name.replace(/\W/g, "-")}-${i}.js`);
      writeFileSync(file, code);
      expect(ran(process.execPath, [file], project).length).toBeGreaterThan(40);
    }
  });
});

test("every door opens by itself, and its types stand without any other declarations", () => {
  const doors = packages.flatMap(({ manifest }) =>
    Object.entries<Record<string, string> | string>(manifest.exports)
      .filter(([, target]) => typeof target === "object" && "types" in target)
      .map(([entry]) => `${manifest.name}${entry.slice(1)}`),
  );
  expect(doors.length).toBeGreaterThan(12);
  const imports = doors.map((door, i) => `import * as door${i} from "${door}";`).join("\n");
  const used = doors.map((_, i) => `door${i}`).join(", ");
  writeFileSync(
    join(project, "doors.ts"),
    `${imports}\nfor (const door of [${used}]) if (Object.keys(door).length === 0) throw new Error("empty");\n`,
  );
  writeFileSync(
    join(project, "doors.js"),
    `${imports}\nfor (const door of [${used}]) if (Object.keys(door).length === 0) throw new Error("empty");\n`,
  );
  ran(process.execPath, ["doors.js"], project);
  for (const [module, moduleResolution] of [
    ["NodeNext", "NodeNext"],
    ["ESNext", "Bundler"],
  ])
    ran(
      process.execPath,
      [
        TSC,
        "--noEmit",
        "--strict",
        "--exactOptionalPropertyTypes",
        "--target",
        "ES2023",
        "--lib",
        "ES2023",
        "--types",
        "",
        "--module",
        module!,
        "--moduleResolution",
        moduleResolution!,
        "doors.ts",
      ],
      project,
    );
});

describe("the command, installed", () => {
  test("tells its version", () =>
    expect(lamplane("--version").trim()).toBe(packages.find(({ folder: f }) => f === "cli")!.manifest.version));

  test("builds the same pack as the command from this tree", () => {
    lamplane("build", SMOOTHER, "--out", join(folder, "installed"));
    ran(process.execPath, ["packages/cli/bin/lamplane.js", "build", SMOOTHER, "--out", join(folder, "tree")]);
    const files = (from: string) => readdirSync(join(folder, from), { recursive: true, encoding: "utf8" }).sort();
    expect(files("installed")).toEqual(files("tree"));
    expect(files("installed").length).toBeGreaterThan(15);
    const manifest = (from: string) => readFileSync(join(folder, from, "apprentice-smoother/manifest.json"), "utf8");
    expect(manifest("installed")).toBe(manifest("tree"));
  });

  test("sweeps in its worker threads", () => {
    const out = join(folder, "sweep.csv");
    lamplane("sweep", SMOOTHER, "--vary", "bed.angle=43..57:0.02", "--out", out);
    expect(readFileSync(out, "utf8").split("\r\n")).toHaveLength(703);
  });

  test("asks npm to run nothing at installing, anywhere down to the last package", () => {
    const lock = JSON.parse(readFileSync(join(project, "package-lock.json"), "utf8"));
    const installed = Object.entries<{ hasInstallScript?: boolean }>(lock.packages);
    expect(installed.length).toBeGreaterThan(20);
    expect(installed.filter(([, { hasInstallScript }]) => hasInstallScript).map(([path]) => path)).toEqual([]);
    expect(existsSync(join(project, "node_modules", "typescript"))).toBe(false);
  });
});
