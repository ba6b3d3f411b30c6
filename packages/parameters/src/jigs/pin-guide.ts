// Pin guide: a flat plate that leads the drill over the pin's axis. It registers on the cheek blank's sole and toe, as they are
// when the pin's hole is bored: before glue-up, allowance and trim in place.

import { circleOutline, type Point, point } from "@lamplane/geometry";
import type { DrawingEntry } from "../drawings/drawing.ts";
import { stageExtent } from "../elevation/blocks.ts";
import type { Elevation } from "../elevation/elevation.ts";
import { drillFor, formatBareLength, formatDrill, formatLength } from "../units.ts";
import { PIN_GUIDE } from "../words/jigs.ts";
import { printedRoom, SHEET_ROOM } from "./clearance.ts";
import { corneredOutline, windowOutline } from "./cornered-outline.ts";
import { type JigHole, type JigPlan, type JigResult, poseAsDrawn, STOUT_WALL } from "./jig.ts";
import { cutEntry, nameLabel, noteEntry } from "./lines.ts";

/** Thickness, mm: enough to keep a drill upright, thin enough for its length to reach through plate and cheek. */
const THICK = 12;
/** The same of a guide cut from sheet, by the same reasons. */
const FROM_SHEET = { least: 8, best: THICK, most: 20 };
/** Bars of the plate's frame, mm; the lower one carries two lines of letters. */
const BAR = 14;
const LOWER_BAR = 22;
export interface PinGuideLayout {
  /** Middle of the drill's hole: the pin's axis. */
  readonly axis: Point;
  readonly drillRadius: number;
  /** Middles of the pegs: two under the sole, one before the toe. */
  readonly pegs: readonly Point[];
  readonly pegRadius: number;
}

/** Where pegs and drill stand in the plane's frame, the pegs touching the cheek blank's sole and toe. mm */
export function pinGuideLayout(plane: Elevation): PinGuideLayout {
  const { toe, sole } = stageExtent(plane, "blank");
  const { diameter } = plane.design.pegs;
  const pegRadius = diameter / 2;
  const under = sole - pegRadius;
  const { centre, radius } = plane.pinHole;
  const drill = drillFor(2 * radius, plane.design.units)?.diameter ?? 2 * radius;
  return {
    axis: centre,
    drillRadius: plane.design.jigs.drillBush > 0 ? plane.design.jigs.drillBush / 2 : drill / 2,
    pegs: [
      point(toe + Math.max(12, 2 * diameter), under),
      point(centre.x, under),
      point(toe - pegRadius, sole + 0.4 * plane.widths.blankHeight),
    ],
    pegRadius,
  };
}

/** The guide that leads the drill, for both cheeks. */
export function pinGuide(plane: Elevation): JigResult {
  const places = pinGuideLayout(plane);
  const { design } = plane;
  const corners = guideCorners(places, plane);
  const boundary = corneredOutline(corners.map((at) => ({ at, round: 4 })));
  const block = { boundary, thickness: THICK, risers: [] };
  const form = { name: "pin-guide", bodies: [block], plateRange: FROM_SHEET } as const;
  const plan = (): JigPlan => {
    const room = printedRoom(design).holes;
    const hole = (centre: Point, radius: number): JigHole => ({ outline: circleOutline({ centre, radius }) });
    const bore = formatBareLength(2 * places.drillRadius, design);
    return {
      ...form,
      title: PIN_GUIDE.title({ content: holeContentText(places, plane) }),
      bodies: [
        {
          ...block,
          holes: [
            hole(places.axis, places.drillRadius + room),
            ...places.pegs.map((at) => hole(at, places.pegRadius + room)),
          ],
          lightening: windowOutline(corners, (side) => barsOf(places, room)[side]!),
          labels: [nameLabel(["PIN", bore], design, point(places.axis.x / 2, places.pegs[0]!.y + 16))],
          pose: poseAsDrawn(plane.widths.body / 2),
        },
      ],
      drawing: {
        title: "pin-guide",
        entries: [
          cutEntry(boundary),
          drillEntry(places.axis, places.drillRadius + SHEET_ROOM.holes),
          ...places.pegs.map((at) => drillEntry(at, places.pegRadius + SHEET_ROOM.holes)),
          noteEntry(
            `pin guide ${bore}, ${design.name}`,
            point(stageExtent(plane, "blank").toe + 20, places.pegs[0]!.y + 10),
          ),
        ],
      },
      registersAgainst: PIN_GUIDE.against,
      use: guideUseText(places, plane),
      printed: PIN_GUIDE.printed,
    };
  };
  return { form, plan };
}

/** Widths of the frame's bars, from the lower side round. mm */
function barsOf({ pegRadius, drillRadius }: PinGuideLayout, room: number): readonly number[] {
  const round = (radius: number) => 2 * (radius + room) + 2 * STOUT_WALL;
  return [
    Math.max(LOWER_BAR, round(pegRadius)) + pegRadius,
    round(drillRadius) + STOUT_WALL,
    BAR,
    BAR,
    round(pegRadius) + 1,
  ];
}

const drillEntry = (centre: Point, radius: number): DrawingEntry => ({
  kind: "circle",
  work: "DRILL",
  circle: { centre, radius },
});

/** What goes through the guide's hole, in words. */
const holeContentText = ({ drillRadius }: PinGuideLayout, { design }: Elevation): string =>
  design.jigs.drillBush > 0
    ? PIN_GUIDE.bush({ outside: formatLength(2 * drillRadius, design) })
    : PIN_GUIDE.drill({ drill: formatDrill(2 * drillRadius, design) });

function guideUseText(places: PinGuideLayout, plane: Elevation): string {
  const peg = formatLength(plane.design.pegs.diameter, plane.design);
  const below = formatLength(2 * plane.widths.cheek, plane.design);
  return PIN_GUIDE.use({ peg, below, content: holeContentText(places, plane) });
}

/** The plate's corners from its lower left: round the pegs below and before, up to the drill's hole. */
function guideCorners({ axis, drillRadius, pegs, pegRadius }: PinGuideLayout, plane: Elevation): Point[] {
  const wall = STOUT_WALL + printedRoom(plane.design).holes;
  const low = pegs[0]!.y - pegRadius - wall;
  const left = pegs[2]!.x - pegRadius - wall;
  const right = axis.x + Math.max(drillRadius, pegRadius) + wall + 2;
  const high = Math.max(axis.y + drillRadius + wall + 2, low + LOWER_BAR + BAR);
  const shoulder = Math.min(Math.max(pegs[2]!.y + pegRadius + wall, low + LOWER_BAR), high - 0.01);
  const slant = Math.max(left + 1, axis.x - drillRadius - wall - 12);
  return [point(left, low), point(right, low), point(right, high), point(slant, high), point(left, shoulder)];
}
