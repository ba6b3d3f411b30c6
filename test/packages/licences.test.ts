// What comes with the packages may be passed on, and THIRD-PARTY.md tells all of it as it is installed now.
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { ALLOWED, thirdParties, thirdPartyText } from "../support/third-party.js";

test("THIRD-PARTY.md is current (`pnpm run docs` writes it)", () =>
  expect(readFileSync("packages/cli/THIRD-PARTY.md", "utf8")).toBe(thirdPartyText()));

test("every package that comes with ours has a licence that lets it be passed on", () => {
  const all = thirdParties();
  expect(all.length).toBeGreaterThan(20);
  expect(
    all.filter(({ licence }) => !ALLOWED.includes(licence)).map(({ name, licence }) => `${name}: ${licence}`),
  ).toEqual([]);
});

test("every dependency of the lock file's production tree is told", () => {
  // The lock file lists what each package of the workspace depends on in its own words.
  const told = new Set(thirdParties().map(({ name }) => name));
  const lock = readFileSync("pnpm-lock.yaml", "utf8");
  const importers = [...lock.matchAll(/^ {2}packages\/\w+:\n((?: {4}.*\n)*)/gm)].map((match) => match[1]!);
  const direct = importers.flatMap((part) =>
    [...(part.split(/^ {4}devDependencies:/m)[0] ?? "").matchAll(/^ {6}'?([@\w][^':\n]*)'?:$/gm)].map((m) => m[1]!),
  );
  expect(direct).toContain("yargs");
  expect(direct.filter((name) => !name.startsWith("@lamplane/") && !told.has(name))).toEqual([]);
});
