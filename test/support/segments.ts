// Lines and arcs anywhere, for laws over any of them.
import { arc, cosDeg, distance, line, point, sinDeg } from "@lamplane/geometry";
import fc from "fast-check";

const mm = fc.double({ min: -50, max: 50, noNaN: true });
export const places = fc.tuple(mm, mm).map(([x, y]) => point(x, y));

export const lines = fc
  .tuple(places, places)
  .filter(([a, b]) => distance(a, b) > 1)
  .map(([a, b]) => line(a, b));

/** @param sweeps degrees, the least and the most that an arc turns either way */
export const arcs = (sweeps: { readonly least: number; readonly most: number }) =>
  fc
    .tuple(
      places,
      fc.double({ min: 2, max: 60, noNaN: true }),
      fc.integer({ min: 0, max: 359 }),
      fc.integer({ min: -sweeps.most, max: sweeps.most }),
    )
    .filter(([, , , sweep]) => Math.abs(sweep) >= sweeps.least)
    .map(([centre, radius, start, sweep]) => {
      const at = (turn: number) => point(centre.x + radius * cosDeg(turn), centre.y + radius * sinDeg(turn));
      return arc(at(start), at(start + sweep), centre, sweep);
    });
