// Which of the files that are opened together is the roster, the base design, its shop file, a plane's own.
import { describe, expect, test } from "vitest";
import { isRoster } from "../../packages/viewer/src/state/roster-text.ts";
import { classRoles } from "../../packages/viewer/src/worker/class/class-roles.ts";

const file = (name: string, text = "iron: { width: 50, thickness: 3 }\n") => ({ name, text });
const CSV = file("class.csv", "name,iron.width\nanna,50\nben,51\n");
const YAML = file("class.yaml", "base: designs/smoother.yaml\nplanes:\n  - { name: anna }\n");
const SMOOTHER = file("smoother.yaml");
const IN_SHOP = file("smoother.yaml", "shop: shops/school.yaml\niron: { width: 50, thickness: 3 }\n");
const SHOP = file("school.yaml", "shop: { kerf: 2 }\n");

const roles = (...files: { name: string; text: string; isShop?: boolean }[]) => {
  const found = classRoles(files);
  return "faults" in found
    ? found
    : { base: found.base.name, shop: found.shop?.name, own: [...found.own].map(([plane, { name }]) => [plane, name]) };
};

test.each([
  [CSV, true],
  [YAML, true],
  [file("a.yaml", '{ "planes": [] }'), true],
  [file("a.yaml", "name: a # planes: none\niron: { width: 50, thickness: 3 }\n"), false],
  [SMOOTHER, false],
])("%j is a roster: %j", (each, is) => expect(isRoster(each)).toBe(is));

describe("files by what they are", () => {
  test("the base that the roster names, wherever it stood", () =>
    expect(roles(SMOOTHER, file("other.yaml"), YAML)).toEqual({ base: "smoother.yaml", shop: undefined, own: [] }));
  test("the only design that is no plane's own, beside a table", () =>
    expect(roles(CSV, file("anna.yaml"), SMOOTHER, file("ben.yml"))).toEqual({
      base: "smoother.yaml",
      shop: undefined,
      own: [
        ["anna", "anna.yaml"],
        ["ben", "ben.yml"],
      ],
    }));
  test("the shop file that the base names is no base", () =>
    expect(roles(SHOP, CSV, IN_SHOP)).toEqual({ base: "smoother.yaml", shop: "school.yaml", own: [] }));
  test("a shop file that stands in the place of the one named", () =>
    expect(roles({ ...file("mine.yaml", "shop: { kerf: 3 }\n"), isShop: true }, CSV, SMOOTHER)).toEqual({
      base: "smoother.yaml",
      shop: "mine.yaml",
      own: [],
    }));
});

test.each<[string, { name: string; text: string }[], RegExp]>([
  ["no roster", [SMOOTHER], /^None of these files is a roster/],
  ["two rosters", [CSV, YAML, SMOOTHER], /^class\.csv and class\.yaml are rosters; open one/],
  ["a table alone", [CSV], /^class\.csv names no base design\. Add the file/],
  ["a roster without the base that it names", [YAML], /^class\.yaml names smoother\.yaml as its base design/],
  ["two that may be the base", [CSV, SMOOTHER, file("jack.yaml")], /^smoother\.yaml and jack\.yaml may each be/],
  [
    "a quote that is not closed",
    [file("class.csv", 'name\n"anna\n'), SMOOTHER],
    /^class\.csv line 2, column 1: a quote/,
  ],
])("%s: said in words", (_, files, words) =>
  expect(roles(...files)).toEqual({ faults: [expect.stringMatching(words)] }),
);
