// What a word that is not known may have meant: one letter in three may be wrong, and what holds the word comes after slips.
import { expect, test } from "vitest";
import { nearestWord, nearNames } from "../../../packages/parameters/src/design/suggest.ts";

const KNOWN = ["thickness", "width", "widthAtTop", "angle"];

test("the nearest word is the one with the fewest slips, of a third of its letters at the most", () => {
  expect(nearestWord("thicknes", KNOWN)).toBe("thickness");
  expect(nearestWord("witdh", KNOWN)).toBe("width");
  expect(nearestWord("thinness", KNOWN)).toBe("thickness");
  // Four of nine letters are more than a third.
  expect(nearestWord("thrcxxess", KNOWN)).toBe("thickness");
  expect(nearestWord("thrcxxexs", KNOWN)).toBeUndefined();
  expect(nearestWord("ab", ["a"])).toBe("a");
  expect(nearestWord("abc", ["a"])).toBeUndefined();
});
test("capitals, spaces, dots, dashes and low lines are no slips", () => {
  for (const typed of ["Width At Top", "width_at_top", "width-at-top", "WIDTH.AT.TOP"])
    expect(nearestWord(typed, KNOWN)).toBe("widthAtTop");
});
test("a word of more than 40 letters is not compared, one of 40 is", () => {
  const known = ["x".repeat(40)];
  expect(nearestWord("x".repeat(40), known)).toBe(known[0]);
  expect(nearestWord("x".repeat(41), known)).toBeUndefined();
});
test("names that hold the word follow those that a slip leads from; a word of two letters is held by too many", () => {
  const woods = ["Oak, white", "Oak, live", "Ash, white", "White fir", "Teak"];
  expect(nearNames("whyte fir", woods)[0]).toBe("White fir");
  // "White fir" is three slips away, a third of its nine letters; the others hold the word.
  expect(nearNames("white", woods)).toEqual(["White fir", "Oak, white", "Ash, white"]);
  expect(nearNames("ak", woods)).toEqual([]);
  expect(nearNames("oak", woods, 1)).toHaveLength(1);
  expect(nearNames("eak", woods)).toContain("Teak");
});
