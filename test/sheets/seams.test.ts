// A tiled layout's seams run through no cut and no mark, over many lengths of plane and both papers.
import { type Segment, tessellate } from "@lamplane/geometry";
import { elevation } from "@lamplane/parameters/elevation";
import { layoutPictures, type Picture } from "@lamplane/sheets";
import { describe, expect, test } from "vitest";
import type { Paper } from "../../packages/sheets/src/pages/paper.ts";
import { paginatePictures } from "../../packages/sheets/src/pages/sheet.ts";
import type { Tile } from "../../packages/sheets/src/pages/tiling.ts";
import { isBuildable } from "../support/buildable.ts";
import { designWith, randomDesigns, WORKED } from "../support/designs.ts";

const CLEAR = 3; // mm wanted between a seam and a line that is worked to
const WORKED_TO = new Set(["outline", "cut", "mark", "hidden"]);

/** Lines of a picture that are steeper to x than 20°, as short chords. */
const steepChords = ({ marks }: Picture): { from: number; to: number }[] =>
  marks
    .flatMap((mark): readonly Segment[] => (mark.kind === "line" && WORKED_TO.has(mark.line) ? mark.segments : []))
    .flatMap((s) => {
      const points = [...tessellate([s], 0.05), s.to];
      return points.slice(1).flatMap((to, i) => {
        const from = points[i]!;
        const slope = Math.abs(Math.atan2(to.y - from.y, to.x - from.x)) * (180 / Math.PI);
        return Math.min(slope, 180 - slope) > 20 ? [{ from: Math.min(from.x, to.x), to: Math.max(from.x, to.x) }] : [];
      });
    });

function crossed(pictures: readonly Picture[], paper: Paper): string[] {
  const placed = paginatePictures(pictures, paper).flatMap(({ placements }) => placements.map(({ item }) => item));
  return placed.flatMap(({ picture, part }) => {
    const tile: Tile | undefined = part?.tile;
    if (!tile || tile.column === 0) return [];
    const near = steepChords(picture).filter(
      ({ from, to }) => from - CLEAR + 1e-6 < tile.left && tile.left < to + CLEAR - 1e-6,
    );
    return near.map(({ from, to }) => `${picture.name}: seam at ${tile.left}, line from ${from} to ${to}`);
  });
}

describe.each(["A4", "Letter"] as const)("on %s", (paper) => {
  test("blanks of 6 to 24 in", () => {
    let tiled = 0;
    for (let length = 152; length <= 610; length += 12.7) {
      const design = designWith({ ...WORKED, "body.length": length, "mouth.fromToe": "auto", "body.trim": 25.4 });
      const pictures = layoutPictures(elevation(design));
      expect(crossed(pictures, paper), `${length}`).toEqual([]);
      if (paginatePictures(pictures, paper).some(({ placements }) => placements.some(({ item }) => item.part))) tiled++;
    }
    expect(tiled).toBeGreaterThan(20);
  });

  test("random designs, arched and curved ones too", () => {
    for (const { design, changes } of randomDesigns(73, 25, isBuildable))
      expect(crossed(layoutPictures(elevation(design)), paper), JSON.stringify(changes)).toEqual([]);
  });
});

test("every tile fits its page, and the tiles cover the picture", () => {
  for (const { design } of randomDesigns(74, 20, isBuildable)) {
    const pictures = layoutPictures(elevation(design));
    const pieces = paginatePictures(pictures, "Letter").flatMap(({ placements }) => placements.map(({ item }) => item));
    for (const picture of pictures) {
      const tiles = pieces.flatMap((item) => (item.picture === picture && item.part ? [item.part.tile] : []));
      if (tiles.length === 0) continue;
      const row = tiles.filter((tile) => tile.row === 0).sort((a, b) => a.left - b.left);
      expect(row[0]!.left).toBe(0);
      expect(row.at(-1)!.left + row.at(-1)!.width).toBeCloseTo(picture.width, 9);
      for (const [i, tile] of row.slice(1).entries())
        expect(row[i]!.left + row[i]!.width - tile.left).toBeCloseTo(12, 9);
    }
  }
});
