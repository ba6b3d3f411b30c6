// A measured value is one row of the parameter table. Few other sources may name it: those that say what its step makes of it.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { MEASURED_KEYS, MEASURED_ROWS } from "@lamplane/bench";
import { rowAt } from "@lamplane/parameters/design";
import { FIGURES } from "@lamplane/parameters/elevation";
import { expect, test } from "vitest";

const PACKAGES = new URL("../../packages", import.meta.url).pathname;
const MOST_FILES = 3;

const sources = readdirSync(PACKAGES).flatMap((name) =>
  readdirSync(join(PACKAGES, name, "src"), { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .map((file) => ({ file: `${name}/src/${file}`, code: codeOf(join(PACKAGES, name, "src", file)) })),
);

/** A file without its comments. */
function codeOf(path: string): string {
  return readFileSync(path, "utf8")
    .replace(/\/\*.*?\*\//gs, "")
    .replace(/(^|\s)\/\/.*/g, "");
}

/** Whether code names a key as a measured value's, and not as a figure or an error that is called the same. */
function namesKey(code: string, key: string): boolean {
  const word = new RegExp(`\\b${key}\\b`);
  if (new RegExp(`\\bmeasured\\??\\.${key}\\b`).test(code)) return true;
  const taken = code.matchAll(/\{([^{}]*)\}\s*(?::\s*Measured\b|=\s*[\w.]*\bmeasured\b)/g);
  if ([...taken].some(([, names]) => word.test(names!))) return true;
  return code.split(/;\n/).some((statement) => /\bMeasuredKey\b/.test(statement) && word.test(statement));
}

const filesNaming = (key: string): string[] =>
  sources
    .filter(({ file, code }) => file === "parameters/src/table/measured.ts" || namesKey(code, key))
    .map(({ file }) => file);

test.each(MEASURED_KEYS)(`%s stands in no more than ${MOST_FILES} sources`, (key) => {
  const files = filesNaming(key);
  expect(files).toContain("parameters/src/table/measured.ts");
  expect(files.length, files.join(", ")).toBeLessThanOrEqual(MOST_FILES);
});

test("the rule sees a key read off the measured values, taken out of them, or listed among the keys", () => {
  for (const code of [
    "const seen = design.measured.mouthSeen;",
    "const { done, mouthSeen } = t.design.measured;",
    "function applyMouth(snapshot, { mouthSeen }: Measured) {}",
    'const FINE = new Set<MeasuredKey>(["mouthSeen"]);',
  ])
    expect(namesKey(code, "mouthSeen"), code).toBe(true);
  expect(namesKey('const figures: FigureKey[] = ["coreWidth"];', "coreWidth")).toBe(false);
});

test("sources that replace a parameter by a reading alone need no other file", () => {
  const generic = MEASURED_KEYS.filter((key) => MEASURED_ROWS[key].replaces);
  expect(generic.length).toBeGreaterThan(5);
  for (const key of generic) expect(filesNaming(key), key).toEqual(["parameters/src/table/measured.ts"]);
});

test("every row names a parameter, a figure and tolerances that exist", () => {
  for (const key of MEASURED_KEYS) {
    const { parameter, figure, held, reading, errors = [] } = MEASURED_ROWS[key];
    expect(() => rowAt(parameter), key).not.toThrow();
    if (figure) expect(FIGURES, key).toHaveProperty(figure);
    expect(errors.length > 0 ? reading : held, key).toBeDefined();
  }
});
