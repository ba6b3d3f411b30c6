// Slips between two words against published distances.
import { expect, test } from "vitest";
import { editDistance } from "../../packages/parameters/src/edit-distance.ts";

// S. Dasgupta, C. Papadimitriou, U. Vazirani, "Algorithms" (2006), 6.3; D. Jurafsky, J. H. Martin, "Speech and Language
// Processing", minimum edit distance with each change counted once: letters added, lost and changed. From memory.
test.each([
  ["SNOWY", "SUNNY", 3],
  ["EXPONENTIAL", "POLYNOMIAL", 6],
  ["intention", "execution", 5],
] as const)("%s and %s are %i apart", (a, b, apart) => {
  expect(editDistance(a, b)).toBe(apart);
  expect(editDistance(b, a)).toBe(apart);
});

// Documentation of RapidFuzz, rapidfuzz.distance.OSA: where exchanged letters may be edited once only, 3; else 2.
test("exchanged letters are not edited again", () => expect(editDistance("CA", "ABC")).toBe(3));

// Damerau 1964: a letter wrong, a letter missing, a letter too many and two neighbours exchanged are one error each.
test.each(["bevil", "bevl", "bevvel", "bevle"])("%s is one slip from bevel", (slip) =>
  expect(editDistance(slip, "bevel")).toBe(1),
);

test("a word is no slip from itself, and its length from nothing", () => {
  expect(editDistance("throat", "throat")).toBe(0);
  expect(editDistance("throat", "")).toBe(6);
  expect(editDistance("", "throat")).toBe(6);
});
