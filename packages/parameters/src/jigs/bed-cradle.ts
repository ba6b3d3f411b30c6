// Bed cradle: a V that takes the bed block by its sole and heel, so that the bed lies level; the base reaches under the block's middle.

import { cosDeg, type Point, point, sinDeg, tessellate } from "@lamplane/geometry";
import { blocksAt, stageExtent } from "../elevation/blocks.ts";
import type { Elevation } from "../elevation/elevation.ts";
import { bedToPlane, planeToBed } from "../elevation/frame.ts";
import type { Design } from "../table/index.ts";
import { formatLength } from "../units.ts";
import { CRADLE, JIG } from "../words/jigs.ts";
import { areaAndCentroid, corneredOutline, windowOutline } from "./cornered-outline.ts";
import type { JigPlan, JigResult, Pose } from "./jig.ts";
import { cutEntry, degreesText, nameLabel, noteEntry } from "./lines.ts";
import { plateOf, plateTotal } from "./plate.ts";
import { cornerRelief } from "./relief.ts";

/** Under the V and its relief, mm: two lines of letters, so that the cradle carries the plane's name. */
const BASE = 20.5;
/** Behind each seat, mm. */
const WALL = 12;
/** Base beyond the block's middle, mm: it does not tip when a straightedge is laid on. */
const BEYOND_MIDDLE = 20;
/** Shortest seat on the sole, longest on the heel, mm. */
const LEAST_SEAT = 40;
const HEEL_SEAT = 30;
/** Sole left free before the bed's tip, mm. */
const FREE_TIP = 12;
/** Clears the block's arris in the V, mm. */
const ARRIS = 1.5;

/** Radius of the relief in the V's corner, mm: no less than clears the arris. */
const reliefOf = (design: Design): number => Math.max(ARRIS, cornerRelief(design));
/** Height of the base under the V's corner, mm. */
const baseOf = (design: Design): number => BASE + reliefOf(design);
/** Widest cradle, mm: wide enough to stand, narrower than the core so that a vise grips the block too. */
const WIDEST = 30;
/** Narrowest that stands, mm; and how much narrower than the core it must be for the vise to hold the block. */
const NARROWEST = 18;
const NARROWER = 2;

/** Corners in the bed's own directions (x up the bed, y off it), where the bed is level. */
export interface CradleLayout {
  readonly corner: Point;
  /** Ends of the seats on sole and heel. */
  readonly soleEnd: Point;
  readonly heelEnd: Point;
  readonly base: number;
}

export function cradleLayout(plane: Elevation): CradleLayout {
  const { blockHeel, sole, top } = stageExtent(plane, "blank");
  const blocks = blocksAt(plane, "blank");
  const turned = (p: Point): Point => {
    const { s, v } = planeToBed(plane.frame, p);
    return point(s, v);
  };
  const corner = turned(point(blockHeel, sole));
  const { middle } = areaAndCentroid(tessellate(blocks.bed).map(turned));
  const [c, s] = [cosDeg(plane.frame.bedAngle), sinDeg(plane.frame.bedAngle)];
  const soleLength = blockHeel - blocks.bedChain[0]!.from.x;
  const wanted = Math.max((corner.x - middle.x + BEYOND_MIDDLE - WALL * s) / c, LEAST_SEAT);
  const seat = Math.min(wanted, soleLength - FREE_TIP);
  const heel = Math.min(HEEL_SEAT, 0.6 * (top[0]!.from.y - sole));
  return {
    corner,
    soleEnd: point(corner.x - seat * c, corner.y + seat * s),
    heelEnd: point(corner.x + heel * s, corner.y + heel * c),
    base: corner.y - baseOf(plane.design),
  };
}

/** The cradle that holds the bed block with its bed level. */
export function bedCradle(plane: Elevation): JigResult {
  const { design, widths, frame } = plane;
  const { corner, soleEnd, heelEnd, base } = cradleLayout(plane);
  const [c, s] = [cosDeg(frame.bedAngle), sinDeg(frame.bedAngle)];
  const underSole = point(soleEnd.x - WALL * s, soleEnd.y - WALL * c);
  const behindHeel = point(heelEnd.x + WALL * c, heelEnd.y - WALL * s);
  const boundary = corneredOutline([
    { at: point(underSole.x, base), round: 2 },
    { at: point(behindHeel.x, base), round: 2 },
    { at: behindHeel, round: 2 },
    { at: heelEnd },
    { at: corner, relief: { radius: reliefOf(design), into: "before" } },
    { at: soleEnd },
    { at: underSole, round: 2 },
  ]);
  const most = widths.core - NARROWER;
  const thick = Math.min(WIDEST, most);
  const block = { boundary, thickness: thick, risers: [] };
  const plateRange = { least: Math.min(NARROWEST, thick), best: thick, most };
  const form = { name: "bed-cradle", bodies: [block], plateRange } as const;
  const plan = (): JigPlan => {
    const sheet = plateOf(plateRange, design);
    const narrower = (by: number) => formatLength(widths.core - by, design);
    const fromSheet = sheet ? ` ${CRADLE.fromSheet({ narrower: narrower(plateTotal(sheet)) })}` : "";
    const angle = degreesText(frame.bedAngle);
    const letters = point((underSole.x + behindHeel.x) / 2, base + baseOf(design) / 2);
    const window = [point(underSole.x, base), point(corner.x, base), corner, soleEnd, underSole];
    return {
      ...form,
      title: CRADLE.title({ angle }),
      bodies: [
        {
          ...block,
          holes: [],
          lightening: windowOutline(window, (side) => [baseOf(design), 4, 9][side] ?? 8),
          labels: [nameLabel([`CRADLE ${angle}`], design, letters)],
          pose: cradlePose(plane, thick),
        },
      ],
      drawing: {
        title: "bed-cradle",
        entries: [cutEntry(boundary), noteEntry(`cradle ${angle}, ${design.name}`, point(underSole.x + 4, base + 4))],
      },
      registersAgainst: CRADLE.against,
      use: CRADLE.use({ narrower: narrower(thick) }) + fromSheet,
      printed: JIG.layered({ thick: formatLength(thick, design) }),
    };
  };
  return { form, plan };
}

function cradlePose({ frame }: Elevation, thick: number): Pose {
  const [c, s] = [cosDeg(frame.bedAngle), sinDeg(frame.bedAngle)];
  const { x, y } = bedToPlane(frame, 0, 0);
  return { x: [c, s, 0], y: [-s, c, 0], z: [0, 0, 1], origin: [x, y, -thick / 2] };
}
