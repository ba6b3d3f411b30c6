// The plane that the build writes into the page: as JSON it is what a worker would send.
import { expect, test } from "vitest";
import { openingPlane } from "../../packages/viewer/src/worker/opening-plane.ts";

/** JSON keeps no sign of a zero, and neither does a drawing. */
function unsignZeros(value: unknown): unknown {
  if (value === 0) return 0;
  if (Array.isArray(value)) return value.map(unsignZeros);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, unsignZeros(each)]));
}

test("the plane that a page opens on loses nothing on its way through JSON", () => {
  const plane = openingPlane();
  expect(plane.views.map(({ name }) => name)).toEqual(["elevation", "mouth", "stack", "end"]);
  expect(JSON.parse(JSON.stringify(plane))).toStrictEqual(unsignZeros(plane));
});
