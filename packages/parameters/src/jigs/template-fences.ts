// Fences of the recess template that are screwed on in slots, so that one template suits cores of several widths.
import type { Elevation } from "../elevation/elevation.ts";
import { type JigBlock, type JigBody, type JigHole, LEAST_WALL, type Pose, TABLE_CHAMFER } from "./jig.ts";
import { roundedBoxOutline } from "./lines.ts";
import type { TemplateLayout } from "./template-layout.ts";

/** Between the ends of fence and stop, mm: no inner corner that could hold the block's arris off. */
export const CORNER_GAP = 3;
/** Room for the screw in a slot, its head's edge, how far fences can be set either way, mm. M5 countersunk: ISO 10642, head 10. */
const SCREW = 5.5;
const HEAD_CHAMFER = 2.8;
export const SLOT_TRAVEL = 8;
const LOOSE_FENCE = 16;
const BESIDE = 6;

/** Height of fences under the plate, fixed or loose, mm. */
export const FENCE_HEIGHT = 12;
/** How far the fences end below the bed's top, mm. */
export const BELOW_TOP = 4;

/** Half the width of a plate with slots, mm. */
export const slottedHalfWidth = (plane: Elevation): number =>
  screwX(plane) + SLOT_TRAVEL + SCREW / 2 + HEAD_CHAMFER + 4;

/** How far each fence can be set in from this core's side, and out from it, mm. */
export function slotTravel(plane: Elevation, { grown }: TemplateLayout): { inward: number; outward: number } {
  const room = screwX(plane) - SCREW / 2 - HEAD_CHAMFER - plane.recess!.width / 2 - grown - LEAST_WALL - TABLE_CHAMFER;
  return { inward: Math.min(SLOT_TRAVEL, room), outward: SLOT_TRAVEL };
}

/** x of a screw when the fences stand at the core's sides. */
const screwX = (plane: Elevation): number => plane.widths.core / 2 + plane.design.jigs.clearance + LOOSE_FENCE / 2;

/** Heights up the bed of the screws of each loose fence. */
const screwHeights = ({ stop, bedTop }: TemplateLayout): readonly number[] => [stop + 16, bedTop - 16];

export function fenceSlots(plane: Elevation, places: TemplateLayout): JigHole[] {
  const x = screwX(plane);
  const { inward, outward } = slotTravel(plane, places);
  return [-1, 1].flatMap((side) =>
    screwHeights(places).map((y) => {
      const [a, b] = [side * (x - inward), side * (x + outward)];
      const [left, right] = [Math.min(a, b) - SCREW / 2, Math.max(a, b) + SCREW / 2];
      return {
        outline: roundedBoxOutline(left, y - SCREW / 2, right, y + SCREW / 2, SCREW / 2 - 0.05),
        chamfer: HEAD_CHAMFER,
      };
    }),
  );
}

/** A loose fence as it is printed beside the plate; x of its middle there and where it stands under the plate. mm */
interface LooseFence extends JigBlock {
  readonly middle: number;
  readonly target: number;
}

/** Two bars printed beside the plate, which stand under it at the core's sides. */
export function looseFences(plane: Elevation, { stop, bedTop }: TemplateLayout): LooseFence[] {
  const [low, high] = [stop + CORNER_GAP, bedTop - BELOW_TOP];
  const reach = slottedHalfWidth(plane);
  return [0, 1].map((i) => {
    const middle = reach + BESIDE + LOOSE_FENCE / 2 + i * (LOOSE_FENCE + BESIDE);
    return {
      middle,
      target: (i === 0 ? 1 : -1) * screwX(plane),
      boundary: roundedBoxOutline(middle - LOOSE_FENCE / 2, low, middle + LOOSE_FENCE / 2, high, 2),
      thickness: FENCE_HEIGHT,
      risers: [],
    };
  });
}

/** @param pose the plate's */
export function looseFenceBody({ middle, target, ...block }: LooseFence, places: TemplateLayout, pose: Pose): JigBody {
  const [half, round] = [SCREW / 2, SCREW / 2 - 0.05];
  const move = (k: 0 | 1 | 2) => pose.origin[k] + (target - middle) * pose.x[k] + places.plate * pose.z[k];
  return {
    ...block,
    holes: screwHeights(places).map((y) => ({
      outline: roundedBoxOutline(middle - half, y - half, middle + half, y + half, round),
    })),
    lightening: [],
    labels: [],
    pose: { ...pose, origin: [move(0), move(1), move(2)] },
  };
}
