// A code to scan is read by another library than the one that makes it, up to the longest address that is put into one.
import jsqr from "jsqr";
import { expect, test } from "vitest";
import { MOST_CHARACTERS, makeCode } from "../../packages/viewer/src/share/code.ts";

const PITCH = 3; // px to a module

/** The text that jsQR reads off a painted code. */
function scan(code: readonly (readonly boolean[])[]): string | undefined {
  const side = code.length * PITCH;
  const pixels = new Uint8ClampedArray(4 * side * side);
  for (let y = 0; y < side; y++)
    for (let x = 0; x < side; x++) {
      const tone = code[Math.floor(y / PITCH)]![Math.floor(x / PITCH)] ? 0 : 255;
      pixels.set([tone, tone, tone, 255], 4 * (y * side + x));
    }
  return jsqr.default(pixels, side, side)?.data;
}

const address = (length: number): string =>
  "https://example.org/lamplane/#from=plane.yaml&text=".padEnd(length, "Zx-9_bQ7");

test.each([60, 300, 1000, MOST_CHARACTERS])("an address of %i characters is read back", (length) => {
  expect(scan(makeCode(address(length))!)).toBe(address(length));
});

test("letters of more than one byte are read back, and counted as such", () => {
  const text = `https://example.org/#from=Rauhbank für Köln.yaml`;
  expect(scan(makeCode(text)!)).toBe(text);
  expect(makeCode("ü".repeat(MOST_CHARACTERS / 2 + 1))).toBeUndefined();
});

test("an address that is one character too long has no code", () => {
  expect(makeCode(address(MOST_CHARACTERS + 1))).toBeUndefined();
});
