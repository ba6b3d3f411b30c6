// Bed gauge and ramp gauge: a block with the angle on one flank and its complement on the other, both from one base.

import { cosDeg, isInnerCorner, line, type Point, point, sinDeg } from "@lamplane/geometry";
import { blocksAt } from "../elevation/blocks.ts";
import type { Elevation } from "../elevation/elevation.ts";
import { GAUGE, JIG } from "../words/jigs.ts";
import { corneredOutline } from "./cornered-outline.ts";
import type { JigName, JigPlan, JigResult, Pose } from "./jig.ts";
import { cutEntry, degreesText, nameLabel, noteEntry, plainLabel } from "./lines.ts";
import { cornerRelief } from "./relief.ts";

/** Length of each flank, mm: over it 0.1° is 0.1 mm, which a bevel or a saw shows against the light. */
const FLANK = 60;
/** Blunt end of the base under each flank, mm: a feather edge would bend and chip. */
const NOSE = 7;
/** Along the base between the flanks' upper ends, mm. */
const BETWEEN = 40;
/** How far from its flank the middle of an angle stands at most, mm; twice that for the flatter flank. */
const NEAR_FLANK = 16;
/** Height of the block as it lies, which is its width as it stands on a saw's table, mm. */
const THICK = 16;
/** The same of a gauge cut from sheet: the least stands, the most is still looked past at a blade. */
const FROM_SHEET = { least: 8, best: THICK, most: 40 };

/** The gauge for the bed angle. */
export const bedGauge = (plane: Elevation): JigResult =>
  gauge(plane, { name: "bed-gauge", what: "bed", angle: plane.frame.bedAngle, pose: besideBed });

/** The gauge for the ramp angle; for a curved ramp that of its wear. */
export const rampGauge = (plane: Elevation): JigResult =>
  gauge(plane, {
    name: "ramp-gauge",
    what: plane.ramp.curve ? "wear" : "ramp",
    angle: plane.ramp.angle,
    pose: besideRamp,
  });

/** Corners from the base's left end: nose, flank at the angle, flank at the complement, nose. */
export function gaugeOutlineCorners(angle: number): Point[] {
  const complement = 90 - angle;
  const left = { low: point(0, NOSE), high: point(FLANK * cosDeg(angle), NOSE + FLANK * sinDeg(angle)) };
  const rightHigh = point(left.high.x + BETWEEN, NOSE + FLANK * sinDeg(complement));
  const rightLow = point(rightHigh.x + FLANK * cosDeg(complement), NOSE);
  return [point(0, 0), point(rightLow.x, 0), rightLow, rightHigh, left.high, left.low];
}

interface GaugeOf {
  readonly name: JigName;
  readonly what: string;
  readonly angle: number;
  readonly pose: (plane: Elevation) => Pose;
}

function gauge(plane: Elevation, { name, what, angle, pose }: GaugeOf): JigResult {
  const corners = gaugeOutlineCorners(angle);
  const [, foot, rightLow, rightHigh, leftHigh] = corners as [Point, Point, Point, Point, Point, Point];
  const relief = { radius: cornerRelief(plane.design), into: "after" } as const;
  const boundary = corneredOutline(
    corners.map((at) =>
      at === rightHigh && isInnerCorner(line(rightLow, at), line(at, leftHigh)) ? { at, relief } : { at },
    ),
  );
  const block = { boundary, thickness: THICK, risers: [] };
  const form = { name, bodies: [block], plateRange: FROM_SHEET };
  const plan = (): JigPlan => {
    const [own, other] = [degreesText(angle), degreesText(90 - angle)];
    return {
      ...form,
      title: GAUGE.title({ what: what === "bed" ? "bed" : "ramp", angle: own }),
      bodies: [
        {
          ...block,
          holes: [],
          lightening: [],
          labels: [
            plainLabel(own, point(leftHigh.x * 0.75, leftHigh.y * 0.55), NEAR_FLANK),
            plainLabel(other, point((rightHigh.x + foot.x) / 2 - 8, rightHigh.y * 0.4), 2 * NEAR_FLANK),
            nameLabel([what], plane.design, point(foot.x / 2, 9)),
          ],
          pose: pose(plane),
        },
      ],
      drawing: {
        title: name,
        entries: [
          cutEntry(boundary),
          noteEntry(`${what} ${own}`, point(leftHigh.x * 0.8, leftHigh.y * 0.5)),
          noteEntry(other, point((rightHigh.x + foot.x) / 2 - 8, rightHigh.y * 0.4)),
          noteEntry(plane.design.name, point(NOSE * 3, NOSE)),
        ],
      },
      registersAgainst: GAUGE.against({ what, angle: own, fromSquare: other }),
      use: GAUGE.use({ fromSquare: other }),
      printed: JIG.flatPrint,
    };
  };
  return { form, plan };
}

/** Room between the gauge and the block it is held beside, mm. */
const BESIDE = 1;

/** Base in the line of the blank's sole, the flank in the line of the bed. */
function besideBed(plane: Elevation): Pose {
  const { bedTip } = plane.points;
  return {
    x: [1, 0, 0],
    y: [0, 1, 0],
    z: [0, 0, 1],
    origin: [bedTip.x - flankFoot(plane.frame.bedAngle), -plane.design.sole.allowance, plane.widths.core / 2 + BESIDE],
  };
}

/** Turned over: base in the line of the blank's sole, the flank in the line of the ramp at the sole. */
function besideRamp(plane: Elevation): Pose {
  const tip = blocksAt(plane, "blank").rampChain[0]!.from;
  return {
    x: [-1, 0, 0],
    y: [0, 1, 0],
    z: [0, 0, -1],
    origin: [tip.x + flankFoot(plane.ramp.angle), tip.y, plane.widths.core / 2 + BESIDE + THICK],
  };
}

/** x at which a flank's line meets the base's; the nose stands before it. mm */
const flankFoot = (angle: number): number => (-NOSE * cosDeg(angle)) / sinDeg(angle);
