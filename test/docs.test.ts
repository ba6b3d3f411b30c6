// What the documents derive from elsewhere is current; every command, block, link and path that they tell a reader works.
import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { designSchema, parameterTable, readDesign, starterDesign } from "@lamplane/parameters/design";
import { decodeRoster, parseRoster } from "@lamplane/parameters/roster";
import { Ajv2020 } from "ajv/dist/2020.js";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { viewCommand } from "../packages/cli/src/commands/view.ts";
import { cellsOf } from "./faults/matrix.js";
import { apiTexts } from "./support/api-docs.js";
import { runCommand } from "./support/running.ts";

const isReference = (path: string) => path.endsWith("/api.md");
const DOCUMENTS = [
  "README.md",
  "DEVELOPERS.md",
  "examples/cookbook.md",
  "examples/glossary.md",
  ...["test", ...readdirSync("packages").map((name) => `packages/${name}`)].flatMap((folder) =>
    readdirSync(folder)
      .filter((name) => name.endsWith(".md") && !["README.md", "THIRD-PARTY.md"].includes(name))
      .map((name) => `${folder}/${name}`),
  ),
];
const read = (path: string) => readFileSync(path, "utf8");
const README = read("README.md");
const { scripts } = JSON.parse(read("package.json")) as { scripts: Record<string, string> };

test("the table of parameters is current (`pnpm run docs` writes it)", () =>
  expect(read("packages/parameters/parameters.md")).toContain(parameterTable().trim()));

test("the reference is current (`pnpm run docs` writes it)", () => {
  for (const { path, text } of apiTexts()) expect(read(path), path).toBe(text);
});

test("the schema beside the examples is current, and every example and starter keeps it", () => {
  const schema = JSON.parse(read("examples/design.schema.json"));
  expect(schema).toEqual(JSON.parse(JSON.stringify(designSchema())));
  const keeps = new Ajv2020({ strict: false }).compile(schema);
  const examples = readdirSync("examples").filter((name) => name.endsWith(".yaml"));
  const texts = [
    ...examples.map((name) => read(`examples/${name}`)),
    starterDesign("a", "mm"),
    starterDesign("b", "in"),
  ];
  for (const text of texts) expect(keeps(parse(text)), JSON.stringify(keeps.errors)).toBe(true);
});

/** Runs one command as the reader would; `view` is ended as soon as it serves. */
async function tried(args: string[]): Promise<{ exit: number; err: string }> {
  if (args[0] !== "view") return runCommand(...args);
  let err = "";
  const say = (text: string) => {
    err += text;
  };
  const io = { out: () => undefined, err: say, showsProgress: false };
  return { exit: await viewCommand(io, args[1], { port: 0 }, Promise.resolve()), err };
}

test.each(["README.md", "examples/cookbook.md"])("every lamplane command of %s works, in its order", async (path) => {
  const folder = mkdtempSync(join(tmpdir(), "lamplane-docs-"));
  const told = [...read(path).matchAll(/^ {4}lamplane (.+)$/gm)].map(([, line]) =>
    line!
      .split(" # ")[0]!
      .trim()
      .replace(/my-(?:plane|shop)\.yaml/g, (name) => join(folder, name))
      .replace(/(?<=--(?:out|plots) )packs/, folder)
      .split(/\s+/),
  );
  expect(told.length).toBeGreaterThan(10);
  try {
    for (const args of told) {
      if (args[0] === "class" && !args.includes("--plan")) continue; // a dozen packs: class.long.test.ts
      const { exit, err } = await tried(args);
      // Beside a table on the standard output, what was written is told on the other.
      const trouble = err.split("\n").filter((line) => line !== "" && !line.startsWith(`${folder}/`));
      expect({ exit, trouble }, args.join(" ")).toEqual({ exit: 0, trouble: [] });
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test("the README's begin with two commands, and the first pack lies where it says", () => {
  expect(README).toMatch(/^ {4}npx -y pnpm@10\.34\.9 demo$/m);
  expect(README).toMatch(/^ {4}npx -y pnpm@10\.34\.9 test$/m);
  expect(scripts.demo).toMatch(/build examples\/apprentice-smoother\.yaml --out packs$/);
});

test("test/faults.md lists every fault that is put in (`pnpm faults` writes it)", () => {
  const listed = read("test/faults.md");
  const lines = JSON.parse(execFileSync(process.execPath, ["test/faults/run.js", "--list"], { encoding: "utf8" }));
  expect(lines.length).toBeGreaterThan(150);
  for (const line of lines) expect(listed).toContain(`| ${cellsOf(line).join(" | ")} | `);
  expect(listed.match(/^\| (?!fault \||---)/gm)).toHaveLength(lines.length);
  expect(listed).not.toContain("**does not hold**");
});

/** Lines that stand indented by four as a block of their own. */
const blockLines = (text: string): string[] =>
  [...text.matchAll(/(?<=\n\n)(?: {4}\S.*\n(?:(?: {4}.*)?\n)*)/g)]
    .flatMap(([block]) => block.split("\n"))
    .filter(Boolean);
const rosterFaults = (text: string) => {
  const read = parseRoster(text, "roster.csv");
  return read.ok ? decodeRoster(read.roster, "mm").flatMap(({ faults }) => faults) : read.faults;
};

/** pnpm's own commands, which a script of the same name would not be reached by without `run`. */
const PNPM_OWN = ["docs", "pack", "publish", "outdated", "root", "bin"];

describe.each(DOCUMENTS)("%s", (path) => {
  const text = read(path);
  const prose = text.replace(/^```.*?^```$/gms, "");

  test("names only scripts that there are, and reaches them", () => {
    for (const [told, run, name] of text.matchAll(/(?:npx -y )?pnpm(?:@[\d.]+)? (run )?([a-z][\w:-]*)/g)) {
      if (name === "that" || name === "version" || name === "stops") continue;
      expect(Object.keys(scripts), told).toContain(name);
      if (run === undefined)
        expect(PNPM_OWN, `${told}: pnpm has a command of that name; write \`run ${name}\``).not.toContain(name);
    }
  });

  test("names only commands that lamplane has", async () => {
    const { out } = await runCommand("--help");
    const known = [...out.matchAll(/^ {2}lamplane ([a-z]+)/gm)].map(([, name]) => name);
    for (const [told, name] of prose.matchAll(/`lamplane ([a-z]+)/g)) expect(known, told).toContain(name);
  });

  test("links only to what is there, and tells what a picture shows", () => {
    for (const [told, picture, words, to] of prose.matchAll(/(!?)\[([^\]]*)\]\(([^)\s]+)[^)]*\)/g)) {
      if (picture) expect(words!.length, told).toBeGreaterThan(20);
      if (/^https?:/.test(to!)) continue;
      expect(existsSync(join(dirname(path), to!.replace(/#.*$/, ""))), told).toBe(true);
    }
  });

  test("every block is of a kind that is tried", () => {
    // The reference's blocks are declarations, and what stands in docstrings.
    for (const line of isReference(path) ? [] : blockLines(text))
      expect(line, "a command, or the map").toMatch(/^ {4}(lamplane |npx -y pnpm@|packages\/|examples\/|test\/| )/);
    for (const [, kind, block] of text.matchAll(/^```(\w*)\n(.*?)^```$/gms)) {
      expect(isReference(path) ? ["ts"] : ["yaml", "csv"], block).toContain(kind);
      if (kind === "csv") expect(rosterFaults(block!)).toEqual([]);
      if (kind !== "yaml") continue;
      const reading = readDesign(block!, path);
      expect(reading.ok ? [] : reading.faults).toEqual([]);
    }
  });
});

test("every folder and file that the developers' map names is there", () => {
  const map = /## Map\n\n(.*?)\n\n\S/s.exec(read("DEVELOPERS.md"))![1]!;
  let base = "";
  const named = map.split("\n").flatMap((line): string[] => {
    const top = /^ {4}((?:packages|examples|test)\/\S*)/.exec(line);
    if (top) base = top[1]!;
    const under = /^ {6}(\S+(?:, \S+)*) {2,}/.exec(line);
    if (under) return under[1]!.split(", ").map((name) => join(base, name));
    return top ? [base] : [];
  });
  expect(named.length).toBeGreaterThan(15);
  expect(named.filter((path) => !existsSync(path))).toEqual([]);
});

test("each package's README names every door of it", () => {
  for (const name of readdirSync("packages")) {
    const { exports = {} } = JSON.parse(read(`packages/${name}/package.json`)) as { exports?: Record<string, unknown> };
    const doors = Object.keys(exports).filter((door) => !/\.(json|ttf)$/.test(door));
    const line = /^- Doors: .*$/m.exec(read(`packages/${name}/README.md`))?.[0] ?? "";
    for (const door of doors) expect(line, `${name} ${door}`).toContain(`\`${door.replace(/^\.\//, "/")}\``);
  }
});
