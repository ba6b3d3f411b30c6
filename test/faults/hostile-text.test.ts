// Words of ill will in every kind of file that carries words: each reader finds words, and nothing that it would run or obey.
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { dxfText } from "@lamplane/export";
import { csvLine } from "@lamplane/export/csv";
import { point } from "@lamplane/geometry";
import * as dxfParser from "dxf-parser";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { modelXml } from "../../packages/export/src/threemf-xml.ts";
import { pictureSvg } from "../../packages/sheets/src/svg.ts";
import { fault } from "../support/faults.ts";
import { requireProgram, runForStdout } from "../support/outside-programs.ts";
import { isWholePack } from "../support/packs.ts";
import { runCommand } from "../support/running.ts";

const folder = mkdtempSync(join(tmpdir(), "lamplane-hostile-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const WORDS: [string, string][] = [
  ["a formula", "=cmd|'/C calc'!A0"],
  ["a formula by another sign", "@SUM(1+1)*cmd"],
  ["a formula in wide signs", "＝cmd"],
  ["a sum", "+1+cmd|'/C calc'!A0"],
  ["a difference", "-2+3+cmd"],
  ["a tab before a formula", "\t=1+1"],
  ["a line end before a formula", "\r\n=1+1,2"],
  ["quotes and commas", '","=1+1","'],
  ["the end of a script", "</script><script>alert(1)</script>"],
  ["an image that fails", "<img src=x onerror=alert(1)>"],
  ["the end of an attribute", '" onload="alert(1)" x="'],
  ["the end of a text and another element", "</text></svg><script>alert(1)</script>"],
  ["entities", "&lt;&amp;&#60;&xxe;&#0;"],
  ["a CDATA section", "<![CDATA[x]]>]]>"],
  ["a document type", '<!DOCTYPE x [<!ENTITY y SYSTEM "file:///etc/passwd">]>'],
  ["symbol codes of DXF", "%%c%%d%%p%%u%%130%%%"],
  ["format codes of DXF", "\\P\\U+0041\\M+1A2B3{\\fArial|b1;\\H9x;\\~}"],
  ["carets of DXF", "^J^I^M^ x"],
  ["lines that end a DXF section", "x\n  0\nENDSEC\n  0\nEOF\n"],
  ["controls", "a\u0000\u0001\u0007\u001b[31m\u007f\u0085b"],
  ["half of a pair of surrogates", "a\ud800b\udc00c"],
  ["what XML forbids", "a\ufffe\uffffb"],
  ["right to left", "שלום \u202eevil\u202c עולם"],
  ["zero width", "a\u200b\u200d\u2060\u00ad\ufeffb"],
  ["far from Latin", "木工鉋 🪵🔨 z̴̛͝a̸l̶g̷o"],
  ["10 000 letters", "W".repeat(10_000)],
];

const Parser = dxfParser.default as unknown as typeof dxfParser.DxfParser;
const drawing = (text: string) => ({
  title: text,
  entries: [
    { kind: "circle", work: "DRILL", circle: { centre: point(9, 9), radius: 2 } } as const,
    { kind: "note", work: "NOTE", at: point(5, 5), text, height: 3 } as const,
  ],
});
/** @see Autodesk, DXF reference: \U+XXXX is the character of that number, a caret before a space is a caret */
const read = (text: string) =>
  text
    .replace(/\\U\+([0-9A-F]{4})/g, (_, code) => String.fromCharCode(Number.parseInt(code, 16)))
    .replaceAll("^ ", "^");

describe.each(WORDS)("%s", (_, words) => {
  test(
    "in a DXF: one note of one line, and every other entity as it was",
    fault({
      fault: "words of ill will: symbol and format codes, line ends, controls, marks that turn text …",
      on: "a note of a DXF",
      survives: "one line of plain ASCII that a reader turns back into the words; every other entity as it was",
    }),
    () => {
      const text = dxfText(drawing(words));
      expect(text).toMatch(/^[\x20-\x7e\r\n]*$/);
      const entities = new Parser().parseSync(text)!.entities as unknown as { type: string; text?: string }[];
      expect(entities.map(({ type }) => type)).toEqual(["CIRCLE", "TEXT"]);
      const readBack = entities[1]!.text!;
      expect(readBack).not.toMatch(/%%|\\(?!U\+[0-9A-F]{4})|\^(?! )|\n/);
      const kept = words
        .replace(/\p{Cc}+/gu, " ")
        .trim()
        .replace(/[\ud800-\udfff]|[\u{10000}-\u{10ffff}]/gu, "\ufffd");
      expect(read(readBack).replaceAll("% %", "%%").replaceAll("% %", "%%")).toBe(kept);
      expect(dxfText({ ...drawing(words), title: "x" }).split("\n").length).toBe(
        dxfText(drawing("plain")).split("\n").length,
      );
    },
  );
});

const PARSED = `
import csv, io, json, sys
import xml.etree.ElementTree as tree
def texts(xml): return [part.text for part in tree.fromstring(xml).iter() if part.text and part.text.strip()]
def tags(xml): return sorted(part.tag.split('}')[1] for part in tree.fromstring(xml).iter())
given = json.load(open(sys.argv[1]))
readBack = [{ 'svg': texts(d['svg']), 'tags': tags(d['svg']), 'model': texts(d['model'])[0], 'models': tags(d['model']), 'csv': list(csv.reader(io.StringIO(d['csv'], newline=''))) } for d in given]
print(json.dumps(readBack))
`;
/** What a model without meshes consists of. */
const MODEL_TAGS = "basematerials build components item metadata metadata model object resources".split(" ");

interface ReadBack {
  readonly svg: string[];
  readonly tags: string[];
  readonly model: string;
  readonly models: string[];
  readonly csv: string[][];
}

test(
  "words of ill will in SVG, 3MF and CSV, as Python's readers find them",
  fault({
    fault: "words of ill will: markup, entities, formulas, controls …",
    on: "texts of SVG, 3MF and CSV",
    survives: "words for another program's reader, no element, no formula, no cell more",
  }),
  (context) => {
    const python = requireProgram(context, "python");
    const picture = (words: string) => ({
      name: words.slice(0, 50),
      title: words,
      description: words,
      width: 10,
      height: 10,
      marks: [{ kind: "text", text: words, at: point(1, 1), size: 3 } as const],
    });
    const documents = WORDS.map(([, words]) => ({
      svg: pictureSvg(picture(words)),
      model: modelXml([], { title: words, application: words, colours: [], arrangement: "one" }),
      csv: csvLine([words, "next"]),
    }));
    const file = join(folder, "documents.json");
    writeFileSync(file, JSON.stringify(documents));
    const readBack = JSON.parse(runForStdout(python, ["-c", PARSED, file])) as ReadBack[];
    const unix = (text: string) => text.replace(/\r\n?/g, "\n"); // XML 1.0, 2.11: line ends are read so
    for (const [i, [what, words]] of WORDS.entries()) {
      const visible = unix(words.replace(/[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu, "□"));
      const { svg, tags, model, models, csv } = readBack[i]!;
      expect(svg, what).toEqual([visible, visible, visible]);
      expect(tags, what).toEqual(["desc", "g", "rect", "svg", "text", "title"]);
      expect(model, what).toBe(visible);
      expect(models, what).toEqual(MODEL_TAGS);
      expect(csv, what).toHaveLength(1);
      expect(csv[0], what).toHaveLength(2);
      expect(csv[0]![0], what).toMatch(/^[^=+@\t\r\n＝＋－＠-]/);
      expect(csv[0]![0]!.replace(/^'/, ""), what).toBe(words);
    }
  },
);

describe(
  "woods of ill will",
  fault({
    fault: "a formula, markup, codes of DXF, scripts from right to left, emoji in the names of the woods",
    on: "a design's words",
    survives: "a whole pack: the words as words in every file, nothing that a reader runs",
  }),
  () => {
    const NAMES = {
      body: "=cmd|'/C calc'!A0 </script><img src=x onerror=alert(1)>",
      pin: "%%c\\P\\U+0041^J{\\fArial;} &amp; ]]> שלום",
      wedge: "木工 🪵 z̴a̸lgo WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW",
    };
    const pack = join(folder, "hostile");
    beforeAll(async () => {
      const file = join(folder, "hostile.yaml");
      const wood = Object.entries(NAMES).map(([key, name]) => `  ${key}: ${JSON.stringify(name)}\n`);
      writeFileSync(file, `name: hostile\niron: { width: 48, thickness: 3.6 }\nwood:\n${wood.join("")}`);
      expect(await runCommand("build", file, "--out", folder)).toMatchObject({ exit: 0 });
    });
    const files = () => readdirSync(pack, { recursive: true, encoding: "utf8" }).filter((path) => /\.\w+$/.test(path));

    test("the pack is whole, and no name of a file comes from them", () => {
      expect(isWholePack(pack)).toBe(true);
      for (const path of files()) expect(path).toMatch(/^[\w./-]+$/);
    });
    test("drawings and solids hold none of them", () => {
      for (const path of files().filter((each) => /\.(svg|dxf|stl|3mf)$/.test(each)))
        expect(readFileSync(join(pack, path), "latin1"), path).not.toMatch(/cmd\||onerror|fArial|WWWW/);
    });
    test("the stock list has them as text", () => {
      const lines = readFileSync(join(pack, "stock.csv"), "utf8").trimEnd().split("\r\n");
      expect(lines.some((line) => line.includes(`,'=cmd|'/C calc'!A0 </script>`))).toBe(true);
      expect(lines.join("\n")).not.toMatch(/(^|,)"?[=@+]/m);
    });
    test("figures.json tells them as they are", () => {
      const readBack = JSON.stringify(JSON.parse(readFileSync(join(pack, "figures.json"), "utf8")));
      for (const name of Object.values(NAMES)) expect(readBack).toContain(JSON.stringify(name).slice(1, -1));
    });
    test("the sheets show them, and run nothing", (context) => {
      const pdf = join(pack, "traveller.pdf");
      for (const path of [pdf, join(pack, "layout.pdf")])
        expect(readFileSync(path, "latin1")).not.toMatch(/\/(JavaScript|JS|URI|Launch|OpenAction|AA|EmbeddedFile)\b/);
      const text = runForStdout(requireProgram(context, "pdftotext"), ["-raw", pdf, "-"]).replace(/\s+/g, " ");
      expect(text).toContain("=cmd|'/C calc'!A0 </script><img src=x onerror=alert(1)>");
      const onOneLine = text.replace(/\s+/g, "");
      expect(onOneLine).toContain("%%c\\P\\U+0041^J{\\fArial;}&amp;]]>");
      expect(text).toMatch(/□□ □ z/); // what the typeface lacks is shown as missing
    });
  },
);
