// What placing of numbers rests on: how much of a line lies in a box, against sampling the line.
import fc from "fast-check";
import { expect, test } from "vitest";
import { lengthWithin, numberBoxesOverlap } from "../../packages/viewer/src/sheet/obstacles.ts";

/** Off the whole numbers that boxes stand on: a line along a box's edge is neither in nor out. */
const place = fc.integer({ min: -50, max: 50 }).map((whole) => whole + 0.25);
const corner = fc.integer({ min: -50, max: 50 });

test("the length of a line within a box is what sampling it finds", () => {
  fc.assert(
    fc.property(
      place,
      place,
      place,
      place,
      corner,
      corner,
      fc.integer({ min: 1, max: 30 }).map((half) => 2 * half),
      (x1, y1, x2, y2, left, top, size) => {
        const box = { left, top, right: left + size, bottom: top + size / 2 };
        const samples = 4000;
        let inside = 0;
        for (let i = 0; i < samples; i++) {
          const [x, y] = [x1 + ((x2 - x1) * (i + 0.5)) / samples, y1 + ((y2 - y1) * (i + 0.5)) / samples];
          if (x > box.left && x < box.right && y > box.top && y < box.bottom) inside += 1;
        }
        const long = Math.hypot(x2 - x1, y2 - y1);
        expect(Math.abs(lengthWithin([x1, y1, x2, y2], box) - (inside / samples) * long)).toBeLessThan(0.2);
      },
    ),
    { numRuns: 200 },
  );
});

test("boxes that only touch do not overlap", () => {
  const box = { left: 0, right: 10, top: 0, bottom: 10 };
  expect(numberBoxesOverlap(box, { left: 10, right: 20, top: 0, bottom: 10 })).toBe(false);
  expect(numberBoxesOverlap(box, { left: 9, right: 20, top: 9, bottom: 20 })).toBe(true);
});
