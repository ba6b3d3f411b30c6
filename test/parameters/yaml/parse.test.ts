// The tree of a YAML text: the values that the general library makes of it, at the places where they stand.
import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { parse } from "yaml";
import { type FaultDetail, Faults, parseYaml, type RawNode } from "../../../packages/parameters/src/yaml/index.ts";

function treeOf(text: string): { text: string; root: RawNode } {
  const document = parseYaml(text, new Faults<FaultDetail>("a.yaml"))!;
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
  const faults = new Faults<FaultDetail>("a.yaml");
  faults.add({ line: 1, column: 1 }, "\u001b[31m", { code: "some" });
  expect(faults.sorted()[0]!.path).toBe("\ufffd[31m");
});

test("a second byte order mark is a fault at its place, in bytes as in text", () => {
  for (const source of ["\ufeff\ufeffa: 1\n", new TextEncoder().encode("\ufeff\ufeffa: 1\n")]) {
    const faults = new Faults("twice.yaml");
    parseYaml(source, faults);
    expect(faults.sorted()).toMatchObject([{ line: 1, column: 1, code: "hidden-character", codePoint: 0xfeff }]);
  }
});
