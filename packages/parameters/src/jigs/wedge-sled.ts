// Wedge sled: a bar with the finished wedge's shape cut out of one side, so that what stands out over that side is sawn or planed off.

import { cosDeg, type Point, point, sinDeg, tanDeg, transformPoint } from "@lamplane/geometry";
import type { Elevation } from "../elevation/elevation.ts";
import { wedgeThickness } from "../elevation/stack.ts";
import type { Design } from "../table/index.ts";
import { formatLength } from "../units.ts";
import { JIG, SLED } from "../words/jigs.ts";
import { printedRoom, SHEET_ROOM } from "./clearance.ts";
import { corneredOutline, type OutlineCorner, reliefRadius } from "./cornered-outline.ts";
import type { JigPlan, JigResult, Pose } from "./jig.ts";
import { cutEntry, degreesText, nameLabel, noteEntry } from "./lines.ts";
import { cornerRelief } from "./relief.ts";

/** Bar left between the pocket and the fence's side, mm: it carries letters and takes the push. */
const BAR = 23;
/** Before the wedge's tip and behind its butt, mm; the hand's hole is behind the butt, away from the cut. */
const LEAD = 18;
const TAIL = 62;
/** The hole for fingers or a dowel to push by, mm. */
const GRIP = 12;
/** How steeply a thin end leaves the floor where the cutter is too large to relieve its corner, degrees. */
const TIP_SLOPE = 30;
/** Highest sled, mm: a wedge lying on its side must stand over it, for the fingers of a feather board. */
const HIGHEST = 20;
/** Lowest sled, mm: the blank stands over it and must not tip off. */
const LOWEST = 8;

/** The sled that carries the wedge's blank at the wedge angle. */
export function wedgeSled(plane: Elevation): JigResult {
  const { design, widths } = plane;
  const thick = Math.min(HIGHEST, widths.core - design.wedge.clearance - 2);
  const { left, right, low, outline: boundary } = sledOutline(plane, printedRoom(design).flanks);
  const block = { boundary, thickness: thick, risers: [] };
  const plateRange = { least: Math.min(LOWEST, thick), best: thick, most: thick };
  const form = { name: "wedge-sled", bodies: [block], plateRange } as const;
  const plan = (): JigPlan => {
    const grip = gripHole(point(right - 14 - GRIP, low / 2), -low);
    const angle = degreesText(design.wedge.angle);
    const wide = formatLength(widths.core - design.wedge.clearance, design);
    return {
      ...form,
      title: SLED.title({ angle }),
      bodies: [
        {
          ...block,
          holes: [{ outline: grip }],
          lightening: [],
          labels: [nameLabel([`WEDGE ${angle}`], design, point((left + right) / 2, low + BAR / 2))],
          pose: sledPose(plane, thick),
        },
      ],
      drawing: {
        title: "wedge-sled",
        entries: [
          cutEntry(sledOutline(plane, SHEET_ROOM.flanks).outline),
          cutEntry(grip),
          noteEntry(`wedge ${angle}, ${design.name}`, point(left + 5, low + 5)),
        ],
      },
      registersAgainst: SLED.against,
      use: SLED.use({ length: formatLength(plane.wedgeLength, design), wide }),
      printed: JIG.flatPrint,
    };
  };
  return { form, plan };
}

/** The sled's bar with the pocket in its side; `room` in the wedge's length, mm. */
function sledOutline({ design, wedgeLength }: Elevation, room: number) {
  const { wedge } = design;
  const relief = cornerRelief(design);
  const butt = wedgeThickness(design, wedge.tipFromEdge + wedgeLength);
  const places = pocketLayout(wedgeLength, wedge.tip, wedge.angle, room);
  const left = places.tipMouth.x - LEAD;
  const right = places.buttMouth.x + TAIL;
  const low = Math.min(places.buttFloor.y, places.tipFloor.y) - BAR;
  const corners: OutlineCorner[] = [
    { at: point(left, low), round: 3 },
    { at: point(right, low), round: 3 },
    { at: point(right, 0), round: 3 },
    { at: places.buttMouth },
    { at: places.buttFloor, relief: { radius: reliefRadius(relief, butt), into: "before" } },
    ...tipEnd(places, relief, wedge),
    { at: point(left, 0), round: 3 },
  ];
  return { left, right, low, outline: corneredOutline(corners) };
}

/** The pocket's thin end: relieved for the cutter, or where it is too low for that, a slope off the floor that the cutter follows. */
function tipEnd({ tipFloor, tipMouth }: Pocket, cutter: number, { tip, angle }: Design["wedge"]): OutlineCorner[] {
  if (reliefRadius(cutter, tip) === cutter)
    return [{ at: tipFloor, relief: { radius: cutter, into: "after" } }, { at: tipMouth }];
  const back = cutter * tanDeg(TIP_SLOPE / 2);
  const foot = point(tipFloor.x - back * cosDeg(angle), tipFloor.y + back * sinDeg(angle));
  return [{ at: foot, round: cutter }, { at: point(foot.x + foot.y / tanDeg(TIP_SLOPE + angle), 0) }];
}

interface Pocket {
  readonly tipFloor: Point;
  readonly tipMouth: Point;
  readonly buttFloor: Point;
  readonly buttMouth: Point;
}

/** The wedge with its upper side on y = 0, its thickness below, the tip to the left; the room in its length is at the tip. */
function pocketLayout(length: number, tip: number, omega: number, clearance: number): Pocket {
  const onFloor = (u: number): Point => transformPoint(point(u, -tip), { turn: -omega });
  const atMouth = (u: number): Point => point(u / cosDeg(omega), 0);
  return {
    tipFloor: onFloor(-clearance),
    tipMouth: atMouth(-clearance),
    buttFloor: onFloor(length),
    buttMouth: atMouth(length),
  };
}

/** A hole long across the sled that fingers go into, within its width. */
function gripHole(middle: Point, width: number) {
  const half = Math.max(Math.min(GRIP, width / 2 - 7), 3);
  return corneredOutline(
    [point(-GRIP, -half), point(GRIP, -half), point(GRIP, half), point(-GRIP, half)].map((p) => ({
      at: point(middle.x + p.x, middle.y + p.y),
      round: Math.min(half, GRIP) - 0.5,
    })),
  );
}

/** The pocket round the wedge where the wedge lies in the plane, its middle plane on the plane's. */
function sledPose(plane: Elevation, thick: number): Pose {
  const slope = plane.frame.faceAngle + plane.design.wedge.angle;
  const [c, s] = [cosDeg(slope), sinDeg(slope)];
  const tipTop = plane.wedge.at(-1)!.from;
  return { x: [c, s, 0], y: [-s, c, 0], z: [0, 0, 1], origin: [tipTop.x, tipTop.y, -thick / 2] };
}
