// Laws of packs: the same design gives the same bytes, in whatever unit it is written; only what is told to the maker follows the unit.

import { asBuiltPlane } from "@lamplane/bench";
import { checkPlane } from "@lamplane/bench/checks";
import { makePackContent } from "@lamplane/export/content";
import { readDesign, valueAt } from "@lamplane/parameters/design";
import { type Design, rowsOf, TABLE } from "@lamplane/parameters/table";
import { beforeAll, describe, expect, test } from "vitest";
import { designWith, WORKED } from "../support/designs.ts";
import { sampleDxf } from "../support/outlines.ts";

const DESIGN = designWith({ ...WORKED, name: "small", "shop.paper": "A3", "body.outline": "arched", "pin.tenon": 9.5 });
const INCH = 25.4;

/** A design file that gives every row, each as `write` has it. */
function fileOf(design: Design, units: "mm" | "in", write: (value: number, isLength: boolean) => string): string {
  const lines = rowsOf(TABLE).flatMap(({ path, row }) => {
    const value = path === "units" ? units : valueAt(design, path);
    if (value === undefined) return [];
    const isLength = row.kind === "number" && row.quantity === "length";
    return [`${JSON.stringify(path)}: ${typeof value === "number" ? write(value, isLength) : JSON.stringify(value)}`];
  });
  return `${nested(lines)}\n`;
}

/** Lines by dotted path as the nested flow maps that a design file takes. */
function nested(lines: readonly string[]): string {
  const tree: Record<string, unknown> = {};
  for (const line of lines) {
    const [, path, text] = /^"([^"]+)": (.*)$/.exec(line)!;
    const keys = path!.split(".");
    const last = keys.pop()!;
    let branch = tree;
    for (const key of keys) {
      branch[key] ??= {};
      branch = branch[key] as Record<string, unknown>;
    }
    branch[last] = text;
  }
  const flow = (branch: unknown): string =>
    typeof branch === "string"
      ? branch
      : `{ ${Object.entries(branch as object)
          .map(([key, inner]) => `${key}: ${flow(inner)}`)
          .join(", ")} }`;
  return flow(tree);
}

function readOf(text: string): Design {
  const reading = readDesign(text, "small.yaml");
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.design;
}

const inMm = () => readOf(fileOf(DESIGN, "mm", String));
const inInches = () => readOf(fileOf(DESIGN, "in", (value, isLength) => String(isLength ? value / INCH : value)));
const inInchWords = () =>
  readOf(fileOf(DESIGN, "mm", (value, isLength) => (isLength ? `"${(value / INCH).toFixed(12)} in"` : String(value))));

async function packOf(design: Design): Promise<Map<string, string>> {
  const plane = asBuiltPlane(design);
  const content = await makePackContent({ design, plane, findings: checkPlane(plane), version: "0.1.0" });
  return new Map([...content].map(([path, bytes]) => [path, Buffer.from(bytes).toString("base64")]));
}

const fromBase64 = (text: string): string => Buffer.from(text, "base64").toString();

test("a design in inches is the design in millimetres, to the last bit", () => {
  expect(inMm()).toEqual(DESIGN);
  expect(inInchWords()).toEqual(DESIGN);
  expect(inInches()).toEqual({ ...DESIGN, units: "in" });
});

describe("packs", () => {
  let first: Map<string, string>;
  const differing = (other: Map<string, string>) =>
    [...first].filter(([path, bytes]) => other.get(path) !== bytes).map(([path]) => path);
  beforeAll(async () => {
    first = await packOf(inMm());
  });

  test("of the same design are the same bytes, its keys in any order", async () => {
    const turned = Object.fromEntries(Object.entries(inMm()).reverse()) as unknown as Design;
    const again = await packOf(turned);
    expect([...again.keys()]).toEqual([...first.keys()]);
    expect(differing(again)).toEqual([]);
  });
  test("of inches in words in a file in mm are the same bytes", async () =>
    expect(differing(await packOf(inInchWords()))).toEqual([]));
  test("of a file in inches differ in what is read, engraved or drilled alone", async () => {
    const read =
      /^(layout\.pdf|card\.pdf|traveller\.pdf|appendix\.pdf|plots\/.*\.svg|drawings\/layout-.*\.svg|stock\.csv|figures\.json|manifest\.json)$/;
    const engraved = /^jigs\/((fit-test|recess-template|pin-guide|throat-spacer)\.(stl|dxf)|plate-\d+\.3mf)$/;
    const noted = /^(parts|drawings)\/.*\.(dxf|svg)$/; // their notes: the work is the same, below
    const drilled = /^step\/jigs\/(fit-test|pin-guide)\.step$/; // holes for a drill of the inch chart
    const other = await packOf(inInches());
    expect([...other.keys()]).toEqual([...first.keys()]);
    const expected = (path: string) => [read, engraved, noted, drilled].some((paths) => paths.test(path));
    expect(differing(other).filter((path) => !expected(path))).toEqual([]);
    expect(differing(other)).toContain("layout.pdf");
    for (const path of first.keys())
      if (/^parts\/.*\.dxf$/.test(path)) {
        const [inMm, inInches] = [first, other].map((pack) => sampleDxf(fromBase64(pack.get(path)!), "CUT"));
        expect(inInches, path).toEqual(inMm);
      }
  });
  test("of another design are others", async () => {
    const other = await packOf({ ...inMm(), body: { ...DESIGN.body, height: DESIGN.body.height + 0.1 } });
    expect(differing(other).length).toBeGreaterThan(5);
  });
});
