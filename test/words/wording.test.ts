// What the packages say: every sentence is listed, plain, and stands in words/ alone.
import { readdirSync, readFileSync } from "node:fs";
import { FIGURES } from "@lamplane/parameters/elevation";
import { rowsOf, TABLE } from "@lamplane/parameters/table";
import { sentence } from "@lamplane/parameters/words";
import { expect, test } from "vitest";
import { sentencesOf, wordingTexts } from "../support/wording.js";

const read = (path: string) => readFileSync(path, "utf8");
const pages = wordingTexts();

test("every wording.md is current (`pnpm run docs` writes it)", () => {
  expect(pages.map(({ path }) => path)).toEqual(
    ["parameters", "bench", "sheets", "export", "cli", "viewer"].map((name) => `packages/${name}/wording.md`),
  );
  for (const { path, text } of pages) expect(read(path), path).toBe(text);
});

test("a sentence without an example is refused, one with two is listed twice", () => {
  expect(() => sentencesOf("KEY", () => "text")).toThrow(/KEY .*no example/);
  const both = sentence(({ n }: { n: number }) => `n ${n}`, { n: 1 }, { n: 2 });
  expect(sentencesOf("KEY", { a: both })).toEqual([
    ["KEY.a", "n 1"],
    ["KEY.a", "n 2"],
  ]);
});

test.each(pages)("$path: nothing is missing in a sentence, and no private word is used", ({ text }) => {
  expect(text.split("\n").length).toBeGreaterThan(30);
  expect(text).not.toMatch(/undefined|NaN|\[object|\$\{/);
  expect(text).not.toMatch(/\b(told|mended by|shown above|heals|mends|settled|kinder|unless told)\b/i);
});

/** Sources of each speaking package outside words/ and the tables of parameters. */
const sources = ["parameters", "bench", "sheets", "export", "cli", "viewer"].flatMap((name) =>
  readdirSync(`packages/${name}/src`, { recursive: true, encoding: "utf8" })
    .filter((path) => path.endsWith(".ts") && !/^(words|table)\//.test(path))
    .map((path) => `packages/${name}/src/${path}`),
);
/** Formulas, sources, notes on the wood tables, headers of HTTP, typefaces, code between two texts, and errors of ours, which are no words for a maker. */
const NOT_FOR_READERS =
  /[=·√]|Handbook|common practice|NDS|JCGM|Table \d|memory|plane geometry|GEOMETRY|\}\)|JSON|null, 2|engineering estimate|binary STL|automotive mechanical|mark from toe end|pin over blank sole|default-src|sans-serif|position: fixed|^units: |^[a-z|: -]*\|/;
const FORMULAS = /elevation\/(\w+-)?figures\.ts|bench\/src\/figures\/|species-data\.ts|elevation\/blocks\.ts/;

/** Texts of four plain words or more in a source, comments and thrown errors left out. */
function proseOf(source: string): string[] {
  const code = source.replace(/\/\*[\s\S]*?\*\//g, "").replace(/(^|\s)\/\/.*$/gm, "");
  return [...code.matchAll(/["`]((?:[^"`\\\n]|\\.)*)["`]/g)]
    .filter(
      ({ index }) => !/(Error\(|throw new \w+\(|faults\.push\()\s*$/.test(code.slice(Math.max(0, index - 40), index)),
    )
    .map(([, text]) => text!)
    .filter((text) => {
      const words = text.replace(/\$\{[^}]*\}/g, "…").split(/\s+/);
      return words.filter((word) => /^[A-Za-z][a-z'’-]*[.,;:?]?$/.test(word)).length >= 4;
    });
}

test("prose is told from code: four plain words, in no comment and no error of ours", () => {
  expect(proseOf(`io.out("Take off what stands there.");`)).toEqual(["Take off what stands there."]);
  expect(proseOf("io.out(`read all of it again`);")).toHaveLength(1);
  expect(proseOf(`// Take off what stands there.\nthrow new Error("this is a fault of ours");`)).toEqual([]);
});

test("no other source of these packages holds a sentence for a reader", () => {
  const prose = sources
    .filter((path) => !FORMULAS.test(path))
    .flatMap((path) =>
      proseOf(read(path))
        .filter((text) => !NOT_FOR_READERS.test(text))
        .map((text) => `${path}: ${text}`),
    );
  expect(prose).toEqual([]);
});

test("every parameter and every figure has a name of its own, lower case, and a help that is a sentence", () => {
  const named = [
    ...rowsOf(TABLE).map(({ path, row }) => ({ key: path, ...row })),
    ...Object.entries(FIGURES).map(([key, row]) => ({ key, ...row })),
  ];
  for (const { key, name, help } of named) {
    expect(name, key).toMatch(/^[a-z0-9][^.]*$/);
    expect(help, key).toMatch(/^[A-Z0-9].*\.$/);
  }
  const planned = rowsOf(TABLE).filter(({ path }) => !path.startsWith("measured."));
  expect(new Set(planned.map(({ row }) => row.name)).size).toBe(planned.length);
  const figures = Object.values(FIGURES).map(({ name }) => name);
  expect(new Set(figures).size).toBe(figures.length);
});
