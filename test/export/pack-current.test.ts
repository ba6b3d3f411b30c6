// Whether a pack need not be made again: only where it is whole, by what its own manifest says.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { isCurrentPack, manifestText, writePack } from "@lamplane/export";
import { afterEach, beforeEach, expect, test } from "vitest";

const SECTIONS = ["parts", "sheets"];
const FILES = { parts: ["body.stl.txt"], sheets: ["card.txt", "layout.txt"] } as const;
let parent = "";
beforeEach(() => {
  parent = mkdtempSync(join(tmpdir(), "lamplane-current-"));
});
afterEach(() => rmSync(parent, { recursive: true, force: true }));

interface Made {
  readonly sections?: readonly (keyof typeof FILES)[];
  readonly state?: string;
  readonly version?: string;
}
async function make({ sections = ["parts", "sheets"], state = "now", version = "1.0.0" }: Made = {}) {
  const files = new Map<string, string>(
    sections.flatMap((section) => FILES[section].map((path) => [path, `${section} ${state}`])),
  );
  files.set("manifest.json", manifestText("plane", version, files, state, sections));
  await writePack({ parent, name: "plane", files, carriesOthers: sections.length < SECTIONS.length });
}
const isCurrent = (more: Partial<Parameters<typeof isCurrentPack>[0]> = {}) =>
  isCurrentPack({ parent, name: "plane", state: "now", version: "1.0.0", sections: SECTIONS, ...more });

test("a whole pack of the same state and version is current, and no other", async () => {
  expect(await isCurrent()).toBe(false);
  await make();
  expect(await isCurrent()).toBe(true);
  expect(await isCurrent({ state: "other" })).toBe(false);
  expect(await isCurrent({ version: "1.0.1" })).toBe(false);
  expect(await isCurrent({ sections: [...SECTIONS, "jigs"] })).toBe(false);
});

test.each(Object.values(FILES).flat())("a pack without its %s is not", async (path) => {
  await make();
  rmSync(join(parent, "plane", path));
  expect(await isCurrent()).toBe(false);
});

test("nor one with a file of another size, or whose manifest is no JSON", async () => {
  await make();
  const at = join(parent, "plane", "card.txt");
  const before = readFileSync(at);
  writeFileSync(at, "");
  expect(await isCurrent()).toBe(false);
  writeFileSync(at, before);
  expect(await isCurrent()).toBe(true);
  writeFileSync(join(parent, "plane", "manifest.json"), "{");
  expect(await isCurrent()).toBe(false);
});

test("one made section by section is, where all of them are of that state and version", async () => {
  await make({ sections: ["parts"] });
  expect(await isCurrent()).toBe(false);
  await make({ sections: ["sheets"] });
  expect(await isCurrent()).toBe(true);
});

test.each<[string, Made]>([
  ["another state", { state: "before" }],
  ["another version", { version: "0.9.0" }],
])("one whose older section is of %s is not", async (_, older) => {
  await make({ sections: ["parts"], ...older });
  await make({ sections: ["sheets"] });
  expect(await isCurrent()).toBe(false);
});
