// What comes with the packages may be passed on, and THIRD-PARTY.md tells all of it as it is installed now.
import { execFileSync } from "node:child_process";
import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { buildIfStale } from "../support/built.ts";
import { ALLOWED, pageThirdPartyText, thirdParties, thirdPartyText } from "../support/third-party.js";

test("THIRD-PARTY.md is current (`pnpm run docs` writes it)", () =>
  expect(readFileSync("packages/cli/THIRD-PARTY.md", "utf8")).toBe(thirdPartyText()));

test("the page's own THIRD-PARTY.md is current, and goes into its package", () => {
  expect(readFileSync("packages/viewer/THIRD-PARTY.md", "utf8")).toBe(pageThirdPartyText());
  expect(pageThirdPartyText()).not.toMatch(/^\| yargs /m);
  expect(JSON.parse(readFileSync("packages/viewer/package.json", "utf8")).files).toContain("THIRD-PARTY.md");
});

test("the built page holds every licence, each script says where, and keeps the notices of its sources", () => {
  execFileSync(process.execPath, ["packages/viewer/build.js"]);
  const built = (name: string) => readFileSync(`packages/viewer/dist/${name}`, "utf8");
  expect(built("licences.txt")).toBe(pageThirdPartyText());
  const scripts = readdirSync("packages/viewer/dist").filter((name) => name.endsWith(".js"));
  expect(scripts).toEqual(expect.arrayContaining(["sheet.js", "body.js", "service-worker.js"]));
  for (const script of scripts)
    expect(built(script).slice(0, 200), script).toMatch(/^\/\*! .*licences\.txt beside this file/);
  expect(built("body.js")).toMatch(/@license\s[^/]*Three\.js Authors/);
  expect(built("index.html")).toContain('<link rel="license" href="./licences.txt" />');
});

test("the command's scripts say where the licences of what is joined into them stand", () => {
  buildIfStale();
  const scripts = readdirSync("packages/cli/bundle", { recursive: true, encoding: "utf8" }).filter((name) =>
    name.endsWith(".js"),
  );
  expect(scripts.length).toBeGreaterThan(10);
  for (const script of scripts)
    expect(readFileSync(`packages/cli/bundle/${script}`, "utf8"), script).toMatch(/^\/\*! lamplane.* THIRD-PARTY\.md/);
});

test("every package that comes with ours has a licence that lets it be passed on", () => {
  const all = thirdParties();
  expect(all.length).toBeGreaterThan(20);
  expect(
    all.filter(({ licence }) => !ALLOWED.includes(licence)).map(({ name, licence }) => `${name}: ${licence}`),
  ).toEqual([]);
});

test("every dependency of the lock file's production tree is told", () => {
  // The lock file lists what each package of the workspace depends on in its own words.
  const listed = new Set(thirdParties().map(({ name }) => name));
  const lock = readFileSync("pnpm-lock.yaml", "utf8");
  const importers = [...lock.matchAll(/^ {2}packages\/\w+:\n((?: {4}.*\n)*)/gm)].map((match) => match[1]!);
  const direct = importers.flatMap((part) =>
    [...(part.split(/^ {4}devDependencies:/m)[0] ?? "").matchAll(/^ {6}'?([@\w][^':\n]*)'?:$/gm)].map((m) => m[1]!),
  );
  expect(direct).toContain("yargs");
  expect(direct.filter((name) => !name.startsWith("@lamplane/") && !listed.has(name))).toEqual([]);
});
