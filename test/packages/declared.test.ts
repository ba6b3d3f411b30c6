// What a package.json declares is what its sources use, no more and no less, and what a tarball of it needs.
import { readdirSync, readFileSync } from "node:fs";
import { isBuiltin } from "node:module";
import { describe, expect, test } from "vitest";
import { ourPackages, runsWith, sourceOf } from "../support/third-party.js";

const packages = ourPackages();

/** Packages that a source imports, and not for their types alone. */
function importedBy(source: string): string[] {
  const names = [
    ...source.matchAll(/(?:from\s+|import\s+|import\(\s*)["'](@[\w-]+\/[\w.-]+|[\w.-]+)(?:\/[^"']*)?["']/g),
  ];
  return [...new Set(names.map((match) => match[1]!))].filter((name) => !isBuiltin(name) && !name.startsWith("."));
}

test("the packages are found", () =>
  expect(packages.map(({ manifest }) => manifest.name)).toEqual(
    expect.arrayContaining(["@lamplane/parameters", "@lamplane/export", "@lamplane/cli"]),
  ));

test("one version for all, which the changelog begins with", () => {
  const versions = new Set(packages.map(({ manifest }) => manifest.version));
  const changelog = readFileSync("packages/cli/CHANGELOG.md", "utf8");
  expect([...versions]).toEqual([/^## (\S+)$/m.exec(changelog)?.[1]]);
});

describe.each(packages)("$manifest.name", ({ home, manifest }) => {
  const source = sourceOf(home);
  const { dependencies = {}, devDependencies = {}, scripts = {} } = manifest;

  test("depends on nothing that it does not use", () => {
    const needless = Object.keys(dependencies).filter(
      (name) => !runsWith(source, name) && !source.includes(`"${name}`),
    );
    expect(needless).toEqual([]);
  });

  test("declares all that it uses", () => {
    const known = new Set([manifest.name, ...Object.keys({ ...dependencies, ...devDependencies })]);
    expect(importedBy(source).filter((name) => runsWith(source, name) && !known.has(name))).toEqual([]);
  });

  test("runs nothing when it is installed", () =>
    expect(Object.keys(scripts).filter((name) => /install|prepare|prepublish|postpack/.test(name))).toEqual([]));

  test("says what it is, under which licence, for which Node.js, and what is in it", () => {
    expect(manifest).toMatchObject({
      type: "module",
      license: "MIT",
      engines: { node: expect.stringMatching(/^>=20/) },
    });
    expect(manifest.description.length).toBeGreaterThan(20);
    expect(manifest.files).toEqual(expect.arrayContaining(["dist", "LICENSE"]));
    expect(readdirSync(home)).toContain("README.md");
  });
});

test("a dependency that nothing uses, and an import that nothing declares, would be seen", () => {
  expect(runsWith('import { parse } from "yaml";', "yaml")).toBe(true);
  expect(runsWith('import type { Font } from "fontkit";', "fontkit")).toBe(false);
  expect(runsWith("resolve(`some-fonts/ttf/a.ttf`)", "some-fonts")).toBe(true);
  expect(runsWith('import "./yaml.ts";', "yaml")).toBe(false);
  expect(importedBy('import a from "@jscad/modeling/src/x.js";\nimport "node:fs";\nimport b from "./c.ts";')).toEqual([
    "@jscad/modeling",
  ]);
});
