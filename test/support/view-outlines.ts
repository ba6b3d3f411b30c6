// The outlines of a view of the page, read back from its SVG paths as the browser would: mm, y up.
import { svgPathProperties } from "svg-path-properties";
import type { View, ViewMark } from "../../packages/viewer/src/protocol/view.ts";
import type { Place } from "./drawn-lines.ts";

/** Ends of the pieces of a path. */
export function endsOf({ d }: ViewMark): Place[] {
  return new svgPathProperties(d)
    .getParts()
    .flatMap(({ start, end }) => [start, end].map(({ x, y }) => ({ x, y: -y })));
}

/** A closed path as corners, arcs in steps. */
export function cornersOf({ d }: ViewMark): Place[] {
  return new svgPathProperties(d).getParts().flatMap((part) => {
    const steps = /A/.test(d) ? 12 : 1;
    return Array.from({ length: steps }, (_, i) => {
      const { x, y } = part.getPointAtLength((part.length * i) / steps);
      return { x, y: -y };
    });
  });
}

export const areaOf = (corners: readonly Place[]): number =>
  Math.abs(
    corners.reduce((sum, a, i) => {
      const b = corners[(i + 1) % corners.length]!;
      return sum + a.x * b.y - b.x * a.y;
    }, 0) / 2,
  );

/** @see W. R. Franklin, PNPOLY: crossings of a ray, odd inside */
export const isWithin = (p: Place, corners: readonly Place[]): boolean =>
  corners.reduce((inside, a, i) => {
    const b = corners[(i + 1) % corners.length]!;
    const crosses = a.y > p.y !== b.y > p.y && p.x < ((b.x - a.x) * (p.y - a.y)) / (b.y - a.y) + a.x;
    return crosses ? !inside : inside;
  }, false);

export const viewNamed = (views: readonly View[], name: View["name"]): View => {
  const found = views.find((view) => view.name === name);
  if (!found) throw new Error(`no view ${name}`);
  return found;
};
