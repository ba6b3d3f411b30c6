// Whatever is thrown at the reader, it answers in faults with a place; it never throws.
import fc from "fast-check";
import { expect, test } from "vitest";
import { completeDesign, faultText, readDesign, starterDesign } from "../../../packages/parameters/src/design/index.ts";
import { rowsOf, TABLE } from "../../../packages/parameters/src/table/index.ts";

function soundAnswer(source: string | Uint8Array): void {
  const reading = readDesign(source, "junk.yaml");
  if (reading.ok) return;
  expect(reading.faults.length).toBeGreaterThan(0);
  for (const fault of reading.faults) {
    expect(fault.line).toBeGreaterThan(0);
    expect(fault.column).toBeGreaterThan(0);
    expect(faultText(fault)).not.toMatch(/undefined|\[object|[\n\u202e]/);
  }
}

test("random bytes", () => {
  fc.assert(fc.property(fc.uint8Array({ maxLength: 300 }), soundAnswer), { numRuns: 1000 });
});

test("random text, and text of YAML's own signs", () => {
  const signs = fc.string({ unit: fc.constantFrom(..."ab1:-?[]{}&*!|>%@`'\",# \n\t\r~<.e"), maxLength: 120 });
  const words = fc.array(fc.constantFrom("iron", "width", ": ", "\n", "  ", "48", "{", "}", "&a ", "*a", "<<", "- "));
  const texts = fc.oneof(
    signs,
    fc.string({ unit: "binary", maxLength: 200 }),
    words.map((parts) => parts.join("")),
  );
  fc.assert(fc.property(texts, soundAnswer), { numRuns: 3000 });
});

test("a sound file with one stretch of it spoilt", () => {
  const source = starterDesign("plane", "mm");
  const places = fc.nat(source.length - 1);
  fc.assert(
    fc.property(places, fc.nat(20), fc.string({ unit: "grapheme" }), (at, count, text) =>
      soundAnswer(source.slice(0, at) + text + source.slice(at + count)),
    ),
    { numRuns: 300 },
  );
});

test("junk at any path of the table is told at its own line", () => {
  const junk = fc.constantFrom(".nan", ".inf", "1e308", "[]", "{}", "~", "true", '"\\u202e"', "&a 1", "!x 1", "-99999");
  fc.assert(
    fc.property(fc.constantFrom(...rowsOf(TABLE)), junk, ({ path }, value) => {
      const lines = ["iron:", "  width: 48", "  thickness: 3.6"];
      const keys = path.split(".").map((key, depth) => `${"  ".repeat(depth)}${key}:`);
      const without = path.startsWith("iron.") ? withIron(path, value) : [...lines, ...keys];
      if (!path.startsWith("iron.")) without[without.length - 1] += ` ${value}`;
      const reading = readDesign(without.join("\n"), "junk.yaml");
      const line = without.findIndex((text) => text.endsWith(` ${value}`)) + 1;
      expect(reading.ok ? [] : reading.faults.map((fault) => [fault.line, fault.path])).toEqual([[line, path]]);
    }),
    { numRuns: 500 },
  );
});

function withIron(path: string, value: string): string[] {
  const given: Record<string, string> = { width: "48", thickness: "3.6", [path.slice(5)]: value };
  return ["iron:", ...Object.entries(given).map(([key, text]) => `  ${key}: ${text}`)];
}

test("any plain value", () => {
  fc.assert(
    fc.property(fc.anything({ withBigInt: true, withDate: true, withMap: true, withNullPrototype: true }), (values) => {
      expect(completeDesign(values).ok).toBe(false);
    }),
    { numRuns: 1000 },
  );
});
