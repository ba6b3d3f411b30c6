// The sole, the mouth, the shape, the first shaving, and the look back after a season.

import type { Season } from "@lamplane/bench";
import {
  asBuiltPlane,
  mouthLifeAt,
  mouthSkew,
  planeSeasons,
  SHAVING,
  STEPS,
  skewText,
  worstTilt,
  yearlyMaximum,
  yearlyMinimum,
} from "@lamplane/bench";
import { sinDeg, tanDeg } from "@lamplane/geometry";
import { ironTaper, mouthGrowth, mouthOpeningAt } from "@lamplane/parameters/elevation";
import { formatDecimal, formatQuantity, toMillimetres } from "@lamplane/parameters/units";
import { seasonPicture } from "../draw/season.ts";
import { tappingPicture } from "../draw/section.ts";
import { shapingPicture } from "../draw/shaping.ts";
import { mouthPicture, solePicture } from "../draw/sole.ts";
import type { StepNumber } from "../step.ts";
import { isDone, type StepContext } from "../step-context.ts";
import { type ContentInput, keepSentences, type StepContent } from "./content.ts";

export function soleContent({ t, report }: ContentInput): StepContent {
  const { allowance } = t.plane.design.sole;
  const { stopShort } = report.mouth;
  const { coarse, fine } = solePasses(allowance - stopShort);
  return {
    why: "The wedge bends the body a little. A sole trued slack is no longer flat when the plane works.",
    numbers: [
      ...t.figureRow("soleToTake", "Wood under the planned sole"),
      t.lengthRow("Stop this much short of it at first", stopShort),
      ...(coarse > 0 ? [t.lengthRow("First, iron out, jack or jointer: take off", coarse)] : []),
      t.lengthRow("Then, iron and wedge in, fine shavings: take off", fine),
      ...t.figureRow("edgeHeightAtContact", "Height at which the edge touched the front block"),
    ],
    instructions: keepSentences(
      "Trim nothing yet but what is in the way; leave the pegs until the sole is true.",
      coarse > 0 &&
        `Iron and wedge out: take ${t.mm(coarse)} off with a jack or jointer plane, toe to heel, flat and square. Stop there: ${t.mm(fine)} and the last of the mouth are for fine shavings.`,
      "Put in iron and wedge, drive the wedge as tight as for work, and draw the edge back well above the sole.",
      "Plane the sole from toe to heel with a sharp, fine-set plane, or on abrasive on a flat plate; straightedge along, across and corner to corner, winding sticks at the ends.",
      "Toe, the wood just before the mouth, just behind it, and heel lie in one plane; between them a little hollow does no harm.",
      `Stop while the mouth is still closed or narrower than wanted: ${t.mm(stopShort)} short of the planned sole at the least.`,
    ),
    checks: [
      "Flat with the wedge at working tension: no light before and behind the mouth.",
      "Sole square to the cheeks' outsides.",
      "The edge never came below the sole.",
    ],
    cautions: ["edgeBack", "sharpIron"],
    draw: (room) => solePicture(t, stopShort, room),
  };
}

/** The last of the sole, mm: taken off in fine shavings (common practice). */
const FINE_FROM = 0.5;

/** What comes off the sole before the mouth is first read: in coarse shavings, and then in fine ones. mm */
export function solePasses(toTake: number): { readonly coarse: number; readonly fine: number } {
  const whole = Math.max(0, toTake);
  const fine = Math.min(whole, FINE_FROM);
  return { coarse: whole - fine, fine };
}

/** What was not measured is not known, and is told so. */
function allowanceLeftRows(t: StepContext): StepNumber[] {
  const label = "Wood left under the planned sole";
  const readings = [...STEPS.sole.measures, ...STEPS.mouth.measures];
  if (readings.some((key) => t.design.measured[key] !== undefined)) return t.figureRow("soleToTake", label);
  return t.figureRow("soleToTake", `${label}: not measured, so taken as planned`);
}

export function mouthContent({ t }: ContentInput): StepContent {
  const { plane } = t;
  const growth = mouthGrowth(plane);
  const built = asBuiltPlane(t.design);
  const { uneven, isRead } = mouthSkew(built);
  const passesWear = plane.ramp.curve !== undefined && plane.ramp.curve.begin.y < 0;
  const { opening } = t.plane.design.mouth;
  return {
    numbers: [
      ...t.figureRow("mouthOpening", "Mouth wanted"),
      ...t.figureRow("mouthGrowth", `It opens, ${t.perFine}`),
      t.lengthRow(
        `One shaving of ${t.mm(SHAVING)} opens it by`,
        mouthOpeningAt(plane, SHAVING) - mouthOpeningAt(plane, 0),
      ),
      t.lengthRow(isRead ? "Left and right cheek differ by" : "Left and right cheek may differ by", uneven),
      t.lengthRow("Side clearance left, the iron tilted to cut even", worstTilt(built).room),
      ...(isDone(t.design, "sole") ? allowanceLeftRows(t) : []),
    ],
    instructions: [
      "Set: with the wedge tight, tap the iron until its edge is just felt in the plane of the sole, then a hair back.",
      "Read: try feeler leaves between the edge and the ramp, at both sides and in the middle; the leaf that just goes in is the mouth seen.",
      passesWear
        ? "Take off, with the edge drawn back, what “lamplane mouth FILE --seen …” says: beyond the ramp's wear it follows the curve, and no one factor holds."
        : `Take off: (wanted − seen) / ${formatDecimal(growth, 2)}, with the edge drawn back; “lamplane mouth FILE --seen …” says it in shavings.`,
      ...skewText(built),
      "Repeat, with half of what is left each time. A mouth that is too wide cannot be planed closed.",
    ],
    checks: [
      `Mouth ${t.mm(opening)} with the edge at the sole, the same at both sides. Tilt the iron by a tap until its edge lies even; the mouth is evened at the ramp.`,
      "Sole still flat when the mouth is right.",
    ],
    cautions: ["edgeBack", "sharpIron"],
    draw: (room) => mouthPicture(t, room),
  };
}

export function shapingContent({ t }: ContentInput): StepContent {
  const { top, design } = t.plane;
  return {
    numbers: [
      t.lengthRow("Finished length", design.body.length),
      ...t.figureRow("bodyHeight"),
      ...t.figureRow("bodyWidth"),
      ...t.figureRow("mouthX", "Edge from the finished toe"),
      t.lengthRow("Height at the toe", top.toeHeight, "up"),
      t.lengthRow("Height at the heel", top.heelHeight, "up"),
      ...(top.outline === "arched" ? [t.lengthRow("Crown from the toe", top.crownX)] : []),
    ],
    instructions: keepSentences(
      "Draw the finished ends from the mouth, not from the blank's ends, and trim them square; the pegs go with the waste.",
      top.outline === "arched" &&
        "Draw the arch from the layout and cut it down with bandsaw, spokeshave or rasp; keep clear of the pin's hole.",
      "Leave the sole's long edges sharp to the touch but broken: a small chamfer, a little more at toe and heel.",
      "Round what the hands hold. Leave the throat's sides and the ramp smooth and waxed, without a ledge.",
    ),
    checks: ["Wood over the pin's hole as drawn, on both sides.", "Sole looked at once more: shaping lets wood move."],
    cautions: ["handTools", "dust"],
    draw: (room) => shapingPicture(t, room),
  };
}

export function firstShavingContent({ t }: ContentInput): StepContent {
  return {
    title: "Oil it, set it, take the first shaving",
    task: "Oil the outside, wax the sole, put the iron in sharp, and take shavings from a board whose grain you know.",
    numbers: [
      ...t.figureRow("mouthOpening", "Mouth"),
      ...t.figureRow("clampWanted", "Clamp that holds the iron in a fine shaving (indicative)"),
      ...t.figureRow("drivingForce", "Push on the wedge that makes it (indicative)"),
      ...t.figureRow("holdMargin", "Self-locking margin of the wedge (indicative)"),
    ],
    instructions: [
      "Oil the outside and the ends thinly, wipe it dry; no oil on bed, wedge or in the throat, where it would make the wedge slip. Wax the sole.",
      "Iron in, edge just above the sole; wedge pushed home by hand, then one light tap.",
      "Tap where it is drawn: the iron's end (1) for a deeper cut, the wedge (2) to hold it, the heel (3) to draw the iron back and free the wedge; the iron's sides to level the edge.",
      "First shavings light, on easy wood; stand so that nothing is before the plane but the bench.",
    ],
    checks: [
      "A whole, even shaving that leaves the throat by itself.",
      "The iron stays where it is after ten strokes; else the wedge does not bear over its length: back to the wedge.",
      "No chatter, no tear-out that the mouth should have stopped.",
    ],
    cautions: ["sharpIron", "rags"],
    draw: (room) => tappingPicture(t, room),
  };
}

type Gap = Exclude<keyof Season, "moisture">;

export function seasonContent({ t }: ContentInput): StepContent {
  const { driest, dampest } = planeSeasons(t.plane);
  const known = yearlyMinimum(t.plane, "sideGap") !== undefined;
  const later = [0.1, 0.25].map((off) => mouthLifeAt(t.plane, off));
  return {
    title: "Look again after a season",
    task: "After the first dry and the first damp season look at sole, mouth, iron's sides, wedge and pin, and true the sole only as much as it needs.",
    why: known
      ? "Across the grain the body moves and iron and pin do not; the figures say how far."
      : "The movement of this wood is not in the tables, so no figures are given: look the more closely.",
    numbers: [
      {
        label: "Wood's moisture, driest and dampest days",
        value: `${formatQuantity(driest.moisture, "%", 1)} to ${formatQuantity(dampest.moisture, "%", 1)}`,
      },
      ...[...YEAR_SIZES].flatMap(([key, label]) => yearRow(t, key, label)),
      ...(known
        ? t.figureRow("wedgeLoosensTravel", "Tap the wedge in by, in the dry season, at most (indicative)")
        : []),
      ...later.map(({ takenOff, opening }) =>
        t.lengthRow(`Mouth once ${t.mm(takenOff)} more is off the sole`, opening),
      ),
    ],
    instructions: keepSentences(
      "With the wedge at working tension and the edge drawn back, lay the straightedge on the sole as at its first truing.",
      "Try the iron's sides: it must still be tapped sideways a little. Try that the wedge and pin move.",
      "Tap the wedge in again in the dry season; ease it before the damp one, or the pin may be crushed.",
      "Tenons that stand out of the cheeks are pared flush; a pin that is pinched is shortened at its shoulders.",
      "A sole that is no longer flat is trued in fine shavings and no more; each costs the mouth as above and cannot be put back. Read the mouth after it and write it down.",
      grindingText(t),
    ),
    checks: ["Flat before and behind the mouth; iron, wedge and pin free; the mouth as wanted or not far over it."],
    cautions: ["edgeBack"],
    draw: (room) => seasonPicture(t, room),
  };
}

/** What grinding the edge back does to the mouth: a tapered iron is thinner or thicker where its new edge is. */
function grindingText({ plane, mm }: StepContext): string | false {
  const perMm = tanDeg(ironTaper(plane.design)) / sinDeg(plane.frame.bedAngle);
  if (perMm === 0) return false;
  const ground = plane.design.units === "in" ? toMillimetres(1, "in") / 4 : 5;
  const way = perMm > 0 ? "opens" : "closes";
  return `The iron tapers: each ${mm(ground)} ground off its edge ${way} the mouth by ${mm(Math.abs(perMm) * ground)}.`;
}

const YEAR_SIZES: readonly (readonly [Gap, string])[] = [
  ["coreWidth", "Core's width over the year"],
  ["sideGap", "Room beside the iron, both sides together"],
  ["wedgeGap", "Room beside the wedge, both sides together"],
  ["pinEndGap", "Gap at each shoulder of the pin"],
  ["bodyHeight", "Body's height over the year"],
];

function yearRow(t: StepContext, key: Gap, label: string): StepNumber[] {
  const [least, most] = [yearlyMinimum(t.plane, key), yearlyMaximum(t.plane, key)];
  if (least === undefined || most === undefined) return [];
  return [{ label: `${label} (indicative)`, value: t.range(least, most) }];
}
