// Layers of a core together are its blocks, over random designs; manifold-3d unites them.
import { chordCount } from "@lamplane/geometry";
import { withValue } from "@lamplane/parameters/design";
import { elevation, layerPegs, layerShapes } from "@lamplane/parameters/elevation";
import { layerParts, partsOf } from "@lamplane/parameters/solids";
import { expect, test } from "vitest";
import { isBuildable } from "../support/buildable.ts";
import { randomDesigns, seeded } from "../support/designs.ts";
import { extent } from "../support/extent.ts";
import { manifoldOf, overlapVolume, unionVolume } from "../support/meshes.ts";

const DESIGNS = extent(80, 200);
const boards = seeded(12);
const layered = randomDesigns(11, DESIGNS, isBuildable).map(({ design, changes }) => {
  const board = 10 + 20 * boards();
  // a drill that the recess is deep enough for, as the checks ask
  const cutter = Math.min(6, elevation(design).recess?.depth ?? 6);
  const layers = withValue(withValue(design, "core.layers", "auto"), "core.board", board);
  return { changes, whole: design, design: withValue(layers, "core.cornerCutter", cutter) };
});

/** Area within a circle's sector in the fewest equal chords, as the solids have it. */
const sector = (radius: number, degrees: number): number => {
  const chords = chordCount(radius, degrees);
  return (chords / 2) * radius ** 2 * Math.sin(((degrees / chords) * Math.PI) / 180);
};

test(`layers of ${DESIGNS} random designs, united with their pegs, are the blocks to a millionth`, () => {
  let worst = 0;
  for (const { whole, design, changes } of layered) {
    const plane = elevation(design);
    const layers = layerParts(plane, "glued");
    const [oneBlock, built] = [elevation(whole), plane].map(
      (of) => new Map(partsOf(of, "glued").map(({ name, volume }) => [name, volume])),
    ) as [Map<string, number>, Map<string, number>];
    for (const block of ["front", "bed"] as const) {
      const solids = layers.filter(({ name }) => name.startsWith(block)).map(({ inPlace }) => manifoldOf(inPlace));
      const united = unionVolume(solids);
      const sum = solids.reduce((total, solid) => total + solid.volume(), 0);
      const shared = solids.slice(1).reduce((total, solid, i) => total + overlapVolume(solids[i]!, solid), 0);
      for (const solid of solids) solid.delete();
      expect(shared, JSON.stringify(changes)).toBeLessThan(1e-3);
      expect(Math.abs(united / sum - 1), JSON.stringify(changes)).toBeLessThan(1e-6);
      const pegs = layerPegs(plane)[block].holes.reduce((area, { radius }) => area + 2 * sector(radius, 180), 0);
      const filled = united + pegs * plane.widths.core;
      expect(Math.abs(filled / built.get(`${block}-block`)! - 1), JSON.stringify(changes)).toBeLessThan(1e-6);
      // The router rounds the recess's two corners, R; the layers' end is square, and a drill of radius r clears its inner corner.
      const { recess } = plane;
      const rounded = oneBlock.get(`${block}-block`)!;
      const [R, r] = [whole.recess.cutter / 2, recess?.relief ?? 0];
      const lost =
        block === "front" || !recess
          ? 0
          : 2 * (R ** 2 - sector(R, 90)) * recess.depth + (sector(r, 180) - r ** 2) * recess.width;
      const off = Math.abs((filled + lost) / rounded - 1);
      worst = Math.max(worst, off);
      expect(off, JSON.stringify(changes)).toBeLessThan(1e-6);
    }
  }
  expect(worst).toBeGreaterThan(0);
}, 600_000);

test("every layer of them has a shape of its own thickness", () => {
  for (const { design } of layered.slice(0, 20)) {
    const plane = elevation(design);
    const width = layerShapes(plane, "blank")
      .filter(({ block }) => block === "bed")
      .reduce((sum, { from, to }) => sum + to - from, 0);
    expect(width).toBeCloseTo(plane.widths.core, 9);
  }
});
