// The tree of a YAML text: the values that the general library makes of it, at the places where they stand.
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { syntaxText } from "../../../packages/parameters/src/words/text-faults.ts";
import { sanitizeForMessage } from "../../../packages/parameters/src/yaml/fault.ts";
import {
  FaultCollector,
  type FaultDetail,
  parseYaml,
  type RawNode,
} from "../../../packages/parameters/src/yaml/index.ts";

function treeOf(text: string): { text: string; root: RawNode } {
  const document = parseYaml(text, new FaultCollector<FaultDetail>("a.yaml"))!;
  return { text: document.text, root: document.root! };
}

function plainValue(node: RawNode): unknown {
  if (node.kind === "map")
    return Object.fromEntries(node.entries.map(({ key, value }) => [String(plainValue(key)), plainValue(value)]));
  if (node.kind === "list") return node.items.map(plainValue);
  if (node.kind === "text") return node.text;
  return node.kind === "nothing" || node.kind === "alias" ? null : node.value;
}

const files = ["examples", "examples/readings"].flatMap((folder) =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".yaml"))
    .map((name) => `${folder}/${name}`),
);

test("holds what the YAML library makes of every example", () => {
  expect(files.length).toBeGreaterThan(5);
  for (const file of files) {
    const text = readFileSync(file, "utf8");
    expect(plainValue(treeOf(text).root), file).toEqual(parse(text));
  }
});

test("knows lists, quoted words, numbers as they stand, and nothing", () => {
  const { text, root } = treeOf('a: [1.50, "2", yes, true]\nb:\n- x\n-\n');
  expect(plainValue(root)).toEqual({ a: [1.5, "2", "yes", true], b: ["x", null] });
  const list = root.kind === "map" ? root.entries[0]!.value : undefined;
  const items = list?.kind === "list" ? list.items : [];
  expect(items.map(({ start, end }) => text.slice(start, end))).toEqual(["1.50", '"2"', "yes", "true"]);
  expect(items.map(({ at }) => [at.line, at.column])).toEqual([5, 11, 16, 21].map((column) => [1, column]));
  expect(items[0]).toMatchObject({ kind: "number", text: "1.50" });
});

test("marks what makes YAML clever, and follows no alias", () => {
  const { root } = treeOf("a: &x [1]\nb: *x\nc: !y 1\n");
  const kinds = root.kind === "map" ? root.entries.map(({ value }) => [value.kind, value.feature]) : [];
  expect(kinds).toEqual([
    ["list", "anchor"],
    ["alias", "alias"],
    ["text", "tag"],
  ]);
});

test("a key that would steer the terminal is made fit for a message", () => {
  const faults = new FaultCollector<FaultDetail>("a.yaml");
  faults.add({ line: 1, column: 1 }, "\u001b[31m", { code: "some" });
  expect(faults.sorted()[0]!.path).toBe("\ufffd[31m");
});

test("a second byte order mark is a fault at its place, in bytes as in text", () => {
  for (const source of ["\ufeff\ufeffa: 1\n", new TextEncoder().encode("\ufeff\ufeffa: 1\n")]) {
    const faults = new FaultCollector("twice.yaml");
    parseYaml(source, faults);
    expect(faults.sorted()).toMatchObject([{ line: 1, column: 1, code: "hidden-character", codePoint: 0xfeff }]);
  }
});

describe("what the parser stumbles over has a sentence of its own", () => {
  test.each([
    ["a: { b: 1", /^a bracket is not closed/],
    ["a: { b: 1\nc: 2", /^a bracket is not closed, or/],
    ["a: [1, 2", /^a bracket is not closed/],
    ['a: "b', /^a quote is not closed$/],
    ["a:\n\tb: 1", /^a tab indents the line; use spaces$/],
    ["a: 1\n b: 2", /./],
    ["a: b: c", /^there is more than one colon in the line/],
    ["a: 1\nb", /^a key has no colon behind it$/],
    ['a: "\\q"', /^a backslash in double quotes/],
    ["a: @b", /^a value begins with a character that has a meaning of its own/],
    ["a: { b: 1 c: 2 }", /./],
    ["a: {,}", /^a comma stands where none belongs$/],
  ])("%j", (text, sentence) => {
    const [problem] = parseYaml(text, new FaultCollector<FaultDetail>("a.yaml"))!.problems;
    const message = syntaxText(problem!.code);
    expect(message).toMatch(sentence);
    expect(message).not.toMatch(/flow|implicit|scalar|mapping|collection|token/i);
  });
});

test("a quoted text that is too long ends behind a word, or where it has none, behind a whole character", () => {
  expect(sanitizeForMessage("Flow map in block collection must be sufficiently indented and end with a }")).toBe(
    "Flow map in block collection must be sufficiently indented…",
  );
  expect(sanitizeForMessage("x".repeat(61))).toBe(`${"x".repeat(60)}…`);
  expect(sanitizeForMessage(`${"x".repeat(59)}\u{1f600}y`)).not.toMatch(/[\ud800-\udbff](?![\udc00-\udfff])/);
});
