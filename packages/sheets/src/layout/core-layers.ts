// What a layered core has more on its sheet: the pegs of both blocks, and the line along which the middle layers are set back.
import { line, point, splitAtIntersection, transformCircle, transformSegment } from "@lamplane/geometry";
import {
  bedToPlane,
  blocksAt,
  type CoreBlock,
  type Elevation,
  layerPegs,
  recessProfile,
  setBackLayers,
} from "@lamplane/parameters/elevation";
import { formatDimension, formatLength } from "@lamplane/parameters/units";
import { drawLeader } from "../picture/dimensions.ts";
import { LETTERING, type Marks } from "../picture/marks.ts";
import { LAYER_LAYOUT } from "../words/layers.ts";

/** Further than any recess is long, mm. */
const BEYOND = 1e4;

/** Nothing of a core in one piece. x counts from the core's toe end, y from the trued sole. */
export function drawLayerMarks(marks: Marks, e: Elevation): void {
  if (e.design.core.layers === "whole") return;
  const over = e.design.body.trim / 2;
  const shifts = { front: point(over - e.cuts.setInToe, 0), bed: point(over + e.cuts.setInHeel, 0) };
  const pegs = layerPegs(e);
  for (const block of ["front", "bed"] as const)
    for (const hole of pegs[block].holes) {
      const circle = transformCircle(hole, { shift: shifts[block] });
      const { centre, radius } = circle;
      marks.circle("cut", circle.centre, circle.radius);
      marks.line("axis", line(point(centre.x - 2 * radius, centre.y), point(centre.x + 2 * radius, centre.y)));
      marks.line("axis", line(point(centre.x, centre.y - 2 * radius), point(centre.x, centre.y + 2 * radius)));
      const words = `${formatDimension(centre.x, e.design)}, ${formatDimension(centre.y + e.design.sole.allowance, e.design)}`;
      marks.label(words, point(centre.x, centre.y - 2 * radius - 3), { size: LETTERING.small, anchor: "middle" });
    }
  drawSetBack(marks, e, shifts.bed);
}

function drawSetBack(marks: Marks, e: Elevation, shift: { readonly x: number; readonly y: number }): void {
  const setBack = setBackLayers(e);
  const { recess, frame } = e;
  if (!setBack || !recess) return;
  const floor = -frame.thickness - recess.depth;
  const top = splitAtIntersection(blocksAt(e, "blank").topOverBed, [
    line(bedToPlane(frame, recess.low, floor), bedToPlane(frame, BEYOND, floor)),
  ]);
  if (!top) return;
  const profile = recessProfile(frame, recess, top.at, e.design.core.allowanceBed - frame.thickness);
  marks.line("hidden", ...profile.map((s) => transformSegment(s, { shift })));
  const place = transformSegment(profile[0]!, { shift });
  const middle = point((place.from.x + place.to.x) / 2, (place.from.y + place.to.y) / 2);
  drawLeader(
    marks,
    LAYER_LAYOUT.recess({ layers: middleLayers(e) }),
    middle,
    point(middle.x + 10, middle.y - 6),
    "right",
  );
}

/** The layers that are set back, by number. */
function middleLayers(e: Elevation): string[] {
  const setBack = setBackLayers(e);
  if (!setBack) return [];
  return Array.from({ length: setBack.last - setBack.first + 1 }, (_, i) => `${setBack.first + i + 1}`);
}

export const layerCaption = ({ design }: Elevation): string[] => [
  LAYER_LAYOUT.glue,
  LAYER_LAYOUT.drill({
    length: formatLength(design.core.pegDiameter, design),
    left: formatLength(design.core.allowanceBed, design),
  }),
];

/** Half of a block's name, and of a peg with its numbers below it, as they are drawn. mm */
const NAME = { x: 17, y: 6 };
const PEG = { x: 13, y: 9, below: 4 };

interface NamePlace {
  readonly x: number;
  readonly y: number;
  readonly room: number;
}

/**
 * Where a block's name stands: in its middle, a third up; in a layered core as clear of the pegs as may be.
 * @param span from where to where the block goes at a height
 */
export function blockNamePlace(
  e: Elevation,
  block: CoreBlock,
  span: (y: number) => readonly [number, number],
): NamePlace {
  const placeAt = (share: number, up: number): NamePlace => {
    const y = up * e.design.body.height;
    const [from, to] = span(y);
    return { x: from + share * (to - from), y, room: 2 * Math.min(share, 1 - share) * (to - from) - 8 };
  };
  const usual = placeAt(0.5, 0.35);
  if (e.design.core.layers === "whole") return usual;
  const shift = e.design.body.trim / 2 + (block === "front" ? -e.cuts.setInToe : e.cuts.setInHeel);
  const clear = ({ x, y, room }: NamePlace): number =>
    Math.min(
      (room - 2 * NAME.x) / 2,
      ...layerPegs(e)[block].holes.map(({ centre }) =>
        Math.max(Math.abs(centre.x + shift - x) - NAME.x - PEG.x, Math.abs(centre.y - PEG.below - y) - NAME.y - PEG.y),
      ),
    );
  const places = [0.5, 0.4, 0.6, 0.3, 0.7, 0.22, 0.78].flatMap((share) =>
    [0.35, 0.25, 0.5, 0.65, 0.8].map((up) => placeAt(share, up)),
  );
  return places.reduce((best, place) => (clear(place) > clear(best) ? place : best), usual);
}
