// A shop file: its values stand where a design has none of its own; its faults have their place in it; it can be carried.
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import {
  carryShop,
  type Design,
  faultText,
  readDesign,
  readOwnDesign,
  removeValue,
  type ShopSource,
  setValue,
  starterShop,
} from "../../../packages/parameters/src/design/index.ts";

const IRON = "iron: { width: 48, thickness: 3.6 }\n";
const shopOf = (source: string): ShopSource => ({ source, file: "my-shop.yaml" });
const read = (design: string, shop: string) =>
  readDesign(design, "plane.yaml", {
    open: (name) => (name === "my-shop.yaml" ? shopOf(shop) : { problem: "there is no such file" }),
  });
function designOf(design: string, shop: string): Design {
  const reading = read(design, shop);
  if (!reading.ok) throw new Error(JSON.stringify(reading.faults));
  return reading.design;
}
function faultsOf(design: string, shop: string): string[] {
  const reading = read(design, shop);
  return reading.ok ? [] : reading.faults.map((f) => `${f.file}:${f.line}:${f.column}: ${f.path}: ${faultText(f)}`);
}

const SHOP = `shop: { kerf: 2.5, sawLimit: 60 }
hand: { placement: 0.3 }
router: { area: { width: 600, depth: 400, height: 80 } }
cutters:
  - { name: end-6, diameter: 6, cutting: 22 }
sheets:
  - { name: ply, material: ply, length: 1200, width: 600, thickness: 12 }
  - { name: thin, material: ply, length: 1200, width: 600, thickness: 9, measured: 8.7 }
`;

describe("values", () => {
  const NAMED = `shop: my-shop.yaml\n${IRON}`;
  test("of the shop stand where the design says nothing", () => {
    const design = designOf(NAMED, SHOP);
    expect([design.shop.kerf, design.shop.sawLimit, design.hand.placement]).toEqual([2.5, 60, 0.3]);
    expect(design.shop.millingAllowance).toBe(1.5);
    expect(design.router.area).toEqual({ width: 600, depth: 400, height: 80 });
    expect(design.cutters).toMatchObject([{ name: "end-6", kind: "end", diameter: 6, cutting: 22, step: 3 }]);
  });
  test("of the design stand over the shop's, and name it beside them", () => {
    const design = designOf(`shop: { file: my-shop.yaml, kerf: 1 }\ncutters: []\n${IRON}`, SHOP);
    expect([design.shop.kerf, design.shop.sawLimit, design.cutters]).toEqual([1, 60, []]);
  });
  test("are in the shop file's unit", () => {
    expect(designOf(NAMED, "units: in\nshop: { kerf: 0.1 }").shop.kerf).toBe(2.54);
    expect(designOf(`units: in\nshop: my-shop.yaml\niron: { width: 2, thickness: 1/8 in }`, SHOP).shop.kerf).toBe(2.5);
  });
  test("of another shop file stand in the place of the named one's", () => {
    const instead = { open: () => shopOf(SHOP), instead: shopOf("shop: { kerf: 4 }") };
    const reading = readDesign(NAMED, "", instead);
    expect(reading.ok && [reading.design.shop.kerf, reading.design.shop.sawLimit]).toEqual([4, 45]);
  });
  test("without a shop file are the defaults", () => {
    expect(designOf(IRON, SHOP).shop.kerf).toBe(3.2);
  });
});

describe("faults", () => {
  const NAMED = `${IRON}shop: my-shop.yaml\n`;
  test.each<[string, string, string, RegExp]>([
    ["a value", NAMED, "shop:\n  kerf: 99", /^my-shop\.yaml:2:9: shop\.kerf: read 99; allowed: 0\.2 mm to 8 mm/],
    ["a key", NAMED, "shop: { kerff: 1 }", /^my-shop\.yaml:1:9: shop\.kerff: .*did you mean kerf/],
    [
      "of the plane",
      NAMED,
      "iron: { width: 48 }",
      /^my-shop\.yaml:1:1: iron: this belongs in a design; a shop file takes units/,
    ],
    ["empty", NAMED, "# nothing", /^my-shop\.yaml:1:1: : the shop file is empty/],
    ["no YAML", NAMED, "shop: { kerf: ", /^my-shop\.yaml:1:\d+: : not YAML/],
    [
      "a cutter's value",
      NAMED,
      "cutters:\n  - name: a\n    diameter: 600\n    cutting: 9",
      /^my-shop\.yaml:3:15: cutters\.1\.diameter: read 600; allowed: 0\.5 mm to 40 mm/,
    ],
    [
      "a cutter's key",
      NAMED,
      "cutters: [{ name: a, diameter: 6, cuting: 9, cutting: 9 }]",
      /cutters\.1\.cuting: .*did you mean cutting/,
    ],
    [
      "a cutter without length",
      NAMED,
      "cutters: [{ name: a, diameter: 6 }]",
      /^my-shop\.yaml:1:11: cutters\.1\.cutting: missing/,
    ],
    ["a cutter without a name", NAMED, "cutters: [{ diameter: 6, cutting: 9 }]", /cutters\.1\.name: missing/],
    [
      "cutters twice",
      NAMED,
      "cutters:\n- { name: a, diameter: 6, cutting: 9 }\n- { name: a, diameter: 3, cutting: 9 }",
      /^my-shop\.yaml:3:3: cutters\.2\.name: "a" is the name of the item on line 2 already/,
    ],
    ["no list", NAMED, "cutters: 6", /^my-shop\.yaml:1:10: cutters: this is a list/],
    [
      "no item",
      NAMED,
      "cutters: [6]",
      /^my-shop\.yaml:1:11: cutters\.1: an item of this list is a group of keys: name, kind/,
    ],
    [
      "no file",
      `${IRON}shop: other.yaml\n`,
      SHOP,
      /^plane\.yaml:2:7: shop: shop file other\.yaml: there is no such file/,
    ],
    ["no name", `${IRON}shop: 12\n`, SHOP, /^plane\.yaml:2:7: shop: write the name of a shop file/],
    ["a shop file in a shop file", NAMED, "shop: other.yaml", /^my-shop\.yaml:1:7: shop: this is a section/],
  ])("%s", (_, design, shop, fault) => {
    expect(faultsOf(design, shop)).toHaveLength(1);
    expect(faultsOf(design, shop)[0]).toMatch(fault);
  });
  test("of both files are found at once, each with its place", () => {
    const found = faultsOf(`shop: my-shop.yaml\niron: { width: 480, thickness: 3.6 }`, "shop: { kerf: 99 }");
    expect(found.map((line) => line.split(": ")[0])).toEqual(["plane.yaml:2:16", "my-shop.yaml:1:15"]);
  });
  test("without a way to files a named shop is a fault, never its defaults", () => {
    expect(readDesign(NAMED, "").ok).toBe(false);
  });
});

describe("written back", () => {
  const NAMED = `# mine\nshop: my-shop.yaml # ours\n${IRON}`;
  test("a value of the design's own stands beside the shop's name", () => {
    const text = setValue(NAMED, "shop.kerf", 2);
    expect(text).toBe(`# mine\nshop: { file: my-shop.yaml, kerf: 2 } # ours\n${IRON}`);
    expect([designOf(text, SHOP).shop.kerf, designOf(text, SHOP).shop.sawLimit]).toEqual([2, 60]);
    expect(designOf(removeValue(text, "shop.kerf"), SHOP).shop.kerf).toBe(2.5);
    expect(removeValue(NAMED, "shop.kerf")).toBe(NAMED);
  });
  test("in another unit a design's own cutters stay as large as they were", () => {
    const own = `${IRON}cutters: [{ name: a, diameter: 6, cutting: 20 mm, step: 2 }]\n`;
    expect(designOf(setValue(own, "units", "in"), SHOP).cutters).toMatchObject([{ diameter: 6, cutting: 20, step: 2 }]);
  });
  test.each([
    NAMED,
    `shop: { file: my-shop.yaml, kerf: 1 }\n${IRON}`,
    `${IRON}shop:\n  kerf: 1\n  file: my-shop.yaml\n`,
    `${IRON}shop: { file: my-shop.yaml }`,
    '{"iron": {"width": 48, "thickness": 3.6}, "shop": "my-shop.yaml"}',
    `units: in\nshop: my-shop.yaml\niron: { width: 2, thickness: 1/8 in }\n`,
    `shop: my-shop.yaml\n${IRON}cutters: [{ name: own, diameter: 3, cutting: 9 }]\n`,
  ])("carried, it is the same design without the shop file: %s", (text) => {
    const carried = carryShop(text, shopOf(SHOP));
    const alone = readOwnDesign(carried);
    expect(alone.ok && alone.design).toEqual(designOf(text, SHOP));
    expect(carried).not.toContain("my-shop.yaml");
    expect(readDesign(carried, "").ok).toBe(true);
  });
});

test.each(["mm", "in"] as const)("the starter in %s is read, and changes nothing but its cutters", (units) => {
  const design = `units: ${units}\nshop: my-shop.yaml\niron: { width: 48 mm, thickness: 3.6 mm }\n`;
  expect(designOf(design, starterShop(units))).toEqual(designOf(design.replace(/shop.*\n/, ""), ""));
  expect(Object.keys(parse(starterShop(units)))).toEqual([
    "units",
    "shop",
    "hand",
    "jigs",
    "router",
    "cutters",
    "boards",
    "sheets",
  ]);
});

test.each(["hand", "hobby-router", "school"])("the example %s is read", (name) => {
  const shop = readFileSync(new URL(`../../../examples/shops/${name}.yaml`, import.meta.url), "utf8");
  expect(faultsOf(`shop: my-shop.yaml\n${IRON}`, shop)).toEqual([]);
});
