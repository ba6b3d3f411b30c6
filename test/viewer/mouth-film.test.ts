// The mouth film's numbers: the same mouth as the plane's own at every height of the sole, for straight and curved ramps.
import { elevation, mouthOpeningAt } from "@lamplane/parameters/elevation";
import { expect, test } from "vitest";
import { makeMouthFilm } from "../../packages/viewer/src/worker/mouth-film.ts";
import { designWith, WORKED } from "../support/designs.ts";

const PLANES = [
  ["straight", {}],
  ["curved", { "bed.angle": 55, "ramp.angle": "auto", "ramp.shape": "curved" }],
  ["without a cap iron", { "capIron.thickness": 0 }],
] as const;

test.each(PLANES)("a plane with a %s ramp", (_, changes) => {
  const plane = elevation(designWith({ ...WORKED, ...changes }));
  const { openings, shaving, along, box } = makeMouthFilm(plane);
  expect(openings[0]!.sole).toBe(-3);
  expect(openings[0]!.opening).toBeLessThan(0);
  const after = openings.findIndex(({ sole }) => sole >= 0);
  const [a, b] = [openings[after - 1]!, openings[after]!];
  const share = -a.sole / (b.sole - a.sole);
  expect(a.opening + share * (b.opening - a.opening)).toBeCloseTo(0.15, 3); // the worked set's mouth
  for (const { sole, opening } of openings) expect(opening).toBeCloseTo(mouthOpeningAt(plane, sole), 9);
  expect(along.x).toBeCloseTo(1 / Math.tan((plane.frame.bedAngle * Math.PI) / 180), 9);
  expect(shaving[0]).toEqual(plane.points.edge);
  for (const { x, y } of shaving) expect(x > box.min.x && x < box.max.x && y >= 0 && y < box.max.y + 20).toBe(true);
});
