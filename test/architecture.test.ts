// Which module may know which: read off the imports of every source file.
import { existsSync, readdirSync, readFileSync, realpathSync, statSync } from "node:fs";
import { isBuiltin } from "node:module";
import { dirname, join, relative, resolve, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";

const PACKAGES = fileURLToPath(new URL("../packages", import.meta.url));

interface Import {
  /** Source file below packages/, with forward slashes. */
  readonly file: string;
  readonly specifier: string;
  /** What the specifier leads to below packages/ for a relative import. */
  readonly target?: string;
}

const slashed = (path: string): string => path.split(sep).join("/");

/** A worker is imported like any source; text that a bundler takes in is data, not a module. */
const ofModules = (specifiers: readonly string[]): string[] =>
  specifiers.filter((s) => !s.endsWith("?raw")).map((s) => s.replace(/\?worker&inline$/, ""));

/** Specifiers of static, side-effect, dynamic and re-exporting imports. */
function specifiersIn(source: string): string[] {
  const code = source.replace(/\/\*[\s\S]*?\*\//g, "").replace(/^\s*\/\/.*$/gm, "");
  return ofModules(
    [
      ...code.matchAll(/(?:^|[;}\s])(?:import|export)\s+(?:type\s+)?(?:[\w*{}\s,$]+?\s+from\s+)?["']([^"'\n]+)["']/g),
      ...code.matchAll(/\b(?:import|require)\s*\(\s*["'`]([^"'`]+)["'`]\s*\)/g),
    ].map((match) => match[1]!),
  );
}

function importsOf(file: string, source: string): Import[] {
  return specifiersIn(source).map((specifier) =>
    specifier.startsWith(".")
      ? { file, specifier, target: slashed(relative("/", resolve("/", dirname(file), specifier))) }
      : { file, specifier },
  );
}

const sources = readdirSync(PACKAGES, { recursive: true, encoding: "utf8" })
  .map(slashed)
  .filter((path) => /^[^/]+\/src\/.*\.ts$/.test(path));
const imports = sources.flatMap((file) => importsOf(file, readFileSync(resolve(PACKAGES, file), "utf8")));

/** What each package's own package.json lets it import of the others. */
const PACKAGE_NAMES = readdirSync(PACKAGES).filter((name) => existsSync(join(PACKAGES, name, "package.json")));
const DECLARED: Readonly<Record<string, readonly string[]>> = Object.fromEntries(
  PACKAGE_NAMES.map((name) => {
    const { dependencies = {}, devDependencies = {} } = JSON.parse(
      readFileSync(join(PACKAGES, name, "package.json"), "utf8"),
    );
    const ours = Object.keys({ ...dependencies, ...devDependencies }).filter((each) => each.startsWith("@lamplane/"));
    return [name, ours.map((each) => each.slice("@lamplane/".length))];
  }),
);

/** Folders and files straight under a package's src/, as nodes of its own graph. */
const roomOf = (path: string): string => path.split("/").slice(0, 3).join("/").replace(/\.ts$/, "");

function betweenPackages(all: readonly Import[]): string[] {
  return all.flatMap(({ file, specifier, target }) => {
    const from = file.split("/")[0]!;
    const to = target ? target.split("/")[0]! : /^@lamplane\/([^/]+)/.exec(specifier)?.[1];
    if (to === undefined || (to === from && target)) return [];
    const allowed = target === undefined && DECLARED[from]?.includes(to);
    return allowed ? [] : [`${file} imports ${specifier}`];
  });
}

/** A way round from a node to itself, where there is one. */
function cycleIn(arrows: ReadonlyMap<string, ReadonlySet<string>>): string[] | undefined {
  const finished = new Set<string>();
  const visit = (node: string, path: readonly string[]): string[] | undefined => {
    if (path.includes(node)) return [...path.slice(path.indexOf(node)), node];
    if (finished.has(node)) return undefined;
    for (const next of arrows.get(node) ?? []) {
      const cycle = visit(next, [...path, node]);
      if (cycle) return cycle;
    }
    finished.add(node);
    return undefined;
  };
  for (const node of arrows.keys()) {
    const cycle = visit(node, []);
    if (cycle) return cycle;
  }
  return undefined;
}

function arrowsBy(all: readonly Import[], nodeOf: (path: string) => string): Map<string, Set<string>> {
  const arrows = new Map<string, Set<string>>();
  for (const { file, target } of all) {
    if (target === undefined || target.split("/")[0] !== file.split("/")[0] || nodeOf(target) === nodeOf(file))
      continue;
    arrows.set(nodeOf(file), (arrows.get(nodeOf(file)) ?? new Set()).add(nodeOf(target)));
  }
  return arrows;
}

const WITHOUT_NODE = ["geometry", "parameters", "bench"];

const jscadElsewhere = (all: readonly Import[]): string[] =>
  all
    .filter(({ file, specifier }) => specifier.startsWith("@jscad/modeling") && !file.startsWith("export/"))
    .filter(({ file }) => roomOf(file) !== "parameters/src/solids")
    .map(({ file, specifier }) => `${file} imports ${specifier}`);

const nodeInPureCode = (all: readonly Import[]): string[] =>
  all
    .filter(({ file, specifier }) => WITHOUT_NODE.includes(file.split("/")[0]!) && specifier.startsWith("node:"))
    .map(({ file, specifier }) => `${file} imports ${specifier}`);

const withoutTs = (all: readonly Import[]): string[] =>
  all
    .filter(({ target }) => target !== undefined && !target.endsWith(".ts"))
    .map(({ file, specifier }) => `${file} imports ${specifier}`);

describe("imports of the sources", () => {
  test("are found at all", () => {
    expect(imports.length).toBeGreaterThan(100);
    expect(imports.some(({ specifier }) => specifier.startsWith("@jscad"))).toBe(true);
    expect(imports.some(({ specifier }) => specifier.startsWith("@lamplane/parameters/"))).toBe(true);
  });

  test("lead to files that exist", () => {
    const lost = imports.filter(({ target }) => target?.endsWith(".ts") && !sources.includes(target));
    expect(lost).toEqual([]);
  });

  test("of another package are declared in package.json and go by its name", () =>
    expect(betweenPackages(imports)).toEqual([]));
  test("of packages have no cycle", () =>
    expect(cycleIn(new Map(Object.entries(DECLARED).map(([name, to]) => [name, new Set(to)])))).toBeUndefined());
  test("of folders within a package have no cycle", () => expect(cycleIn(arrowsBy(imports, roomOf))).toBeUndefined());
  test("of JSCAD's solids stand in parameters' solids/ and in export alone", () =>
    expect(jscadElsewhere(imports)).toEqual([]));
  test("of geometry, parameters and bench need no Node.js", () => expect(nodeInPureCode(imports)).toEqual([]));
  test("of relative files end in .ts", () => expect(withoutTs(imports)).toEqual([]));
});

/** Files and packages that run when a source is imported; what is imported for its types alone is not. */
function runsWith(entry: string, { later = true }: { later?: boolean } = {}): string[] {
  const [reached, queue] = [new Set<string>(), [entry]];
  for (let file = queue.pop(); file !== undefined; file = queue.pop()) {
    if (reached.has(file)) continue;
    reached.add(file);
    const source = readFileSync(file, "utf8");
    for (const specifier of runSpecifiers(later ? source : source.replace(/\bimport\s*\([^)]*\)/g, ""))) {
      if (isBuiltin(specifier)) reached.add(`${specifier} in ${file}`);
      else queue.push(fileOf(specifier, file));
    }
  }
  return [...reached];
}

const runSpecifiers = (source: string): string[] =>
  specifiersIn(source.replace(/\b(?:import|export)\s+type\b[^;]*?from\s*["'][^"']+["']/g, ""));

const CONDITIONS = ["@lamplane/source", "browser", "import", "default"];

/** The file that a page's bundler takes for a specifier. */
function fileOf(specifier: string, from: string): string {
  if (specifier.startsWith(".")) return fileAt(resolve(dirname(from), specifier));
  const [, name, rest] = /^((?:@[^/]+\/)?[^/]+)(.*)$/.exec(specifier)!;
  const home = homeOf(name!, dirname(from));
  const { exports, module, main } = JSON.parse(readFileSync(join(home, "package.json"), "utf8"));
  const exported = exports?.[`.${rest}`] ?? (rest === "" && typeof exports === "string" ? exports : undefined);
  if (exported !== undefined) return join(home, chosen(exported));
  return fileAt(rest === "" ? join(home, module ?? main ?? "index.js") : join(home, rest!));
}

function homeOf(name: string, folder: string): string {
  const here = join(folder, "node_modules", name);
  if (existsSync(here)) return realpathSync(here);
  if (folder === dirname(folder)) throw new Error(`no package ${name}`);
  return homeOf(name, dirname(folder));
}

function chosen(exported: string | readonly unknown[] | Record<string, unknown>): string {
  if (Array.isArray(exported)) return chosen(exported[0]);
  if (typeof exported === "string") return exported;
  const condition = Object.keys(exported).find((key) => CONDITIONS.includes(key));
  if (condition === undefined) throw new Error(`nothing for a page among ${Object.keys(exported)}`);
  return chosen((exported as Record<string, unknown>)[condition] as string | Record<string, unknown>);
}

function fileAt(path: string): string {
  const found = [path, `${path}.js`, `${path}.json`, join(path, "index.js")].find(
    (each) => existsSync(each) && statSync(each).isFile(),
  );
  if (found === undefined) throw new Error(`no file at ${path}`);
  return found;
}

describe("the export package's door for pages", () => {
  const reached = runsWith(resolve(PACKAGES, "export/src/bytes.ts"));

  test("runs without Node.js, down to the last package behind it", () => {
    expect(reached.filter((each) => / in /.test(each))).toEqual([]);
    for (const behind of [
      "export/src/threemf.ts",
      "export/src/dxf.ts",
      "fflate",
      "@noble/hashes",
      "@jscad/stl-serializer",
    ])
      expect(
        reached.some((file) => slashed(file).includes(behind)),
        behind,
      ).toBe(true);
  });
  test("is not the door that writes packs, which does need Node.js", () => {
    const whole = runsWith(resolve(PACKAGES, "export/src/index.ts"));
    expect(whole.some((each) => each.startsWith("node:fs"))).toBe(true);
  });
});

describe("the command starts without the solids and the pages", () => {
  test("and tells its help without the table, the reader of designs or YAML", () => {
    const loaded = runsWith(resolve(PACKAGES, "cli/src/index.ts"), { later: false }).map(slashed);
    expect(loaded.some((each) => each.includes("cli/src/words/"))).toBe(true);
    expect(loaded.filter((each) => /parameters\/src\/(table|design|yaml)\/|\/yaml\/|@jscad|pdfkit/.test(each))).toEqual(
      [],
    );
  });
  test.each(["commands/check", "commands/figures", "commands/next", "sweep/worker"])("%s", (file) => {
    const loaded = runsWith(resolve(PACKAGES, `cli/src/${file}.ts`), { later: false }).map(slashed);
    expect(loaded.some((each) => each.includes("parameters/src/table/"))).toBe(true);
    expect(loaded.filter((each) => /@jscad|pdfkit|fontkit|@tarikjabiri/.test(each))).toEqual([]);
  });
  test("which building loads", () => {
    const loaded = runsWith(resolve(PACKAGES, "cli/src/commands/build.ts")).map(slashed);
    expect(loaded.some((each) => each.includes("@jscad"))).toBe(true);
  });
});

describe("the rules catch", () => {
  const wrong = (file: string, source: string) => importsOf(file, source);

  test("a package that knows one above it, or by its path", () => {
    expect(betweenPackages(wrong("parameters/src/units.ts", 'import { pack } from "@lamplane/export";'))).toHaveLength(
      1,
    );
    expect(betweenPackages(wrong("export/src/stl.ts", 'import "../../parameters/src/units.ts";'))).toHaveLength(1);
    expect(betweenPackages(wrong("export/src/stl.ts", 'import { a } from "@lamplane/parameters/units";'))).toEqual([]);
  });

  test("an elevation that knows the solids, which know it, over a multi-line import", () => {
    const up = wrong(
      "parameters/src/elevation/ramp.ts",
      'import {\n  partsOf,\n  type Part,\n} from "../solids/index.ts";',
    );
    const down = wrong("parameters/src/solids/parts.ts", 'import { blocksAt } from "../elevation/blocks.ts";');
    expect(cycleIn(arrowsBy([...up, ...down], roomOf))).toHaveLength(3);
    expect(cycleIn(arrowsBy(down, roomOf))).toBeUndefined();
  });

  test("JSCAD, Node.js and a bare relative path", () => {
    const source =
      'import modeling from "@jscad/modeling";\nimport "node:fs";\nconst a = await import("node:path");\nimport b from "./b";';
    const found = wrong("parameters/src/drawings/drawing.ts", source);
    expect([jscadElsewhere(found), nodeInPureCode(found), withoutTs(found)].map((f) => f.length)).toEqual([1, 2, 1]);
  });
});
