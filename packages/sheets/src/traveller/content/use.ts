// The sole, the mouth, the shape, the first shaving, and the look back after a season.

import type { Season } from "@lamplane/bench";
import {
  asBuiltPlane,
  firstMouth,
  mouthLifeAt,
  mouthSkew,
  planeSeasons,
  plannedPlane,
  SHAVING,
  STEPS,
  skewText,
  worstTilt,
  yearlyMaximum,
  yearlyMinimum,
} from "@lamplane/bench";
import { EPSILON, sinDeg, tanDeg } from "@lamplane/geometry";
import { type Elevation, ironTaper, mouthGrowth, mouthOpeningAt, pegHoles } from "@lamplane/parameters/elevation";
import { formatDecimal, formatQuantity, toMillimetres, type Units } from "@lamplane/parameters/units";
import { FIRST_SHAVING, OPEN_MOUTH, SEASON, SHAPING, SOLE } from "../../words/use.ts";
import { seasonPicture } from "../draw/season.ts";
import { tappingPicture } from "../draw/section.ts";
import { shapingPicture } from "../draw/shaping.ts";
import { mouthPicture, solePicture } from "../draw/sole.ts";
import type { StepNumber } from "../step.ts";
import { isDone, readAgain, type StepContext } from "../step-context.ts";
import { type ContentInput, keepSentences, type StepContent } from "./content.ts";

export function soleContent({ t, report }: ContentInput): StepContent {
  const { sole, body } = t.plane.design;
  const { stopShort } = report.mouth;
  const { coarse, fine } = solePasses(sole.allowance - stopShort, t.design.units);
  const first = firstMouth(t.plane, stopShort);
  return {
    why: SOLE.why,
    numbers: [
      ...t.figureRow("soleToTake", SOLE.toTake),
      ...solePassRows(t, stopShort, SOLE),
      ...t.figureRow("edgeHeightAtContact", SOLE.edge),
    ],
    instructions: keepSentences(
      SOLE.trimNothing,
      coarse > 0 &&
        SOLE.coarsePass({
          coarse: t.mm(coarse),
          fine: t.mm(fine),
          height: t.mm(body.height + sole.allowance - coarse),
        }),
      SOLE.wedgeIn,
      SOLE.finePass,
      SOLE.touch,
      SOLE.stop({
        stopShort: t.mm(stopShort),
        height: t.mm(body.height),
        first: first === undefined ? undefined : t.mm(first),
      }),
    ),
    checks: [SOLE.flat, SOLE.square, SOLE.edgeStayed],
    cautions: ["edgeBack", "sharpIron"],
    draw: (room) => solePicture(t, stopShort, room),
  };
}

/** What comes off the sole before the mouth is first read, pass by pass, and what is left for the mouth. */
export function solePassRows(
  t: StepContext,
  stopShort: number,
  labels: Readonly<Record<"coarse" | "fine" | "stopShort", string>>,
): StepNumber[] {
  const { coarse, fine } = solePasses(t.plane.design.sole.allowance - stopShort, t.design.units);
  return [
    ...(coarse > 0 ? [t.lengthRow(labels.coarse, coarse)] : []),
    t.lengthRow(labels.fine, fine),
    t.lengthRow(labels.stopShort, stopShort),
  ];
}

/** The last of the sole, mm: taken off in fine shavings (common practice). */
const FINE_FROM = 0.5;
/** A jack is held to no less, mm. */
const COARSE_DIVISION: Readonly<Record<Units, number>> = { mm: 0.1, in: toMillimetres(1 / 64, "in") };

/**
 * What comes off the sole before the mouth is first read: in coarse shavings, to a whole division, and then in fine ones. mm
 * @param toTake mm
 */
export function solePasses(toTake: number, units: Units): { readonly coarse: number; readonly fine: number } {
  const whole = Math.max(0, toTake);
  const division = COARSE_DIVISION[units];
  const coarse = Math.max(0, Math.floor((whole - FINE_FROM) / division + EPSILON)) * division;
  return { coarse, fine: whole - coarse };
}

/** What was not measured is not known, and its row says so. */
function allowanceLeftRows(t: StepContext): StepNumber[] {
  const readings = [...STEPS.sole.measures, ...STEPS.mouth.measures];
  const isMeasured = readings.some((key) => t.design.measured[key] !== undefined);
  return t.figureRow("soleToTake", isMeasured ? OPEN_MOUTH.left : OPEN_MOUTH.leftNotMeasured);
}

/** What the mouth gains for the wood taken off, in the unit that the mouth is read in. */
export function mouthGrowthRow(t: StepContext, label: string): StepNumber {
  const { units } = t.design;
  const text = (plane: Elevation) => OPEN_MOUTH.growth({ growth: formatDecimal(mouthGrowth(plane), 2), units });
  const [value, was] = [text(t.plane), text(plannedPlane(t.design))];
  return { label, value, ...(was === value ? {} : { was }) };
}

export function mouthContent({ t }: ContentInput): StepContent {
  const { plane } = t;
  const growth = mouthGrowth(plane);
  const built = asBuiltPlane(t.design);
  const { uneven, isRead } = mouthSkew(built);
  const passesWear = plane.ramp.curve !== undefined && plane.ramp.curve.begin.y < 0;
  return {
    numbers: [
      ...t.figureRow("mouthOpening", OPEN_MOUTH.wanted),
      mouthGrowthRow(t, OPEN_MOUTH.opens({ units: t.design.units })),
      t.lengthRow(
        OPEN_MOUTH.oneShaving({ shaving: t.mm(SHAVING) }),
        mouthOpeningAt(plane, SHAVING) - mouthOpeningAt(plane, 0),
      ),
      t.lengthRow(OPEN_MOUTH.differ({ isRead }), uneven),
      t.lengthRow(OPEN_MOUTH.room, worstTilt(built).room),
      ...(isDone(t.design, "sole") ? allowanceLeftRows(t) : []),
    ],
    instructions: [
      OPEN_MOUTH.set,
      OPEN_MOUTH.read,
      ...skewText(built),
      passesWear ? OPEN_MOUTH.takeOffCurve : OPEN_MOUTH.takeOff({ growth: formatDecimal(growth, 2) }),
      OPEN_MOUTH.repeat,
    ],
    checks: [OPEN_MOUTH.right({ opening: t.mm(t.plane.design.mouth.opening) }), OPEN_MOUTH.flat],
    cautions: ["edgeBack", "sharpIron"],
    draw: (room) => mouthPicture(t, room),
  };
}

export function shapingContent({ t }: ContentInput): StepContent {
  const { top, design } = t.plane;
  const isArched = top.outline === "arched";
  return {
    numbers: [
      t.lengthRow(SHAPING.length, design.body.length),
      ...t.figureRow("bodyHeight"),
      ...t.figureRow("bodyWidth"),
      ...t.figureRow("mouthX", SHAPING.edgeFromToe),
      t.planeRow(SHAPING.toeHeight, ({ top }) => top.toeHeight, "up"),
      t.planeRow(SHAPING.heelHeight, ({ top }) => top.heelHeight, "up"),
      ...(isArched ? [t.planeRow(SHAPING.crown, ({ top }) => top.crownX)] : []),
    ],
    instructions: keepSentences(
      SHAPING.ends({
        toMouth: t.mm(t.figure("mouthX")),
        length: t.mm(design.body.length),
        hasPegs: pegHoles(t.plane).length > 0,
      }),
      isArched && SHAPING.arch,
      SHAPING.chamfer,
      SHAPING.round,
    ),
    checks: [SHAPING.overPin, SHAPING.again],
    cautions: ["handTools", "dust"],
    draw: (room) => shapingPicture(t, room),
  };
}

export function firstShavingContent({ t }: ContentInput): StepContent {
  return {
    title: FIRST_SHAVING.title,
    task: FIRST_SHAVING.task,
    numbers: readAgain(...t.figureRow("mouthOpening", FIRST_SHAVING.mouth)),
    instructions: [FIRST_SHAVING.oil, FIRST_SHAVING.ironIn, FIRST_SHAVING.tap, FIRST_SHAVING.light],
    checks: [FIRST_SHAVING.whole, FIRST_SHAVING.stays, FIRST_SHAVING.noTear],
    cautions: ["sharpIron", "rags"],
    draw: (room) => tappingPicture(t, room),
  };
}

/** What a season moves and a step says. */
type Gap = keyof typeof SEASON.sizes & keyof Season;

export function seasonContent({ t }: ContentInput): StepContent {
  const { driest, dampest } = planeSeasons(t.plane);
  const known = yearlyMinimum(t.plane, "sideGap") !== undefined;
  const percent = (moisture: number) => formatQuantity(moisture, "%", 1);
  return {
    title: SEASON.title,
    task: SEASON.task,
    why: known ? SEASON.why : SEASON.whyUnknown,
    numbers: [
      {
        label: SEASON.moisture,
        value: SEASON.range({ from: percent(driest.moisture), to: percent(dampest.moisture) }),
      },
      ...readAgain(...(Object.keys(SEASON.sizes) as Gap[]).flatMap((key) => yearRow(t, key))),
      ...(known ? t.figureRow("wedgeLoosensTravel", SEASON.tapWedge) : []),
      ...readAgain(...LATER.map((off) => mouthAfterRow(t, off))),
    ],
    instructions: keepSentences(
      SEASON.straightedge,
      SEASON.sides,
      SEASON.wedge,
      SEASON.tenons,
      SEASON.trueing,
      grindingText(t),
    ),
    checks: [SEASON.good],
    cautions: ["edgeBack"],
    draw: (room) => seasonPicture(t, room),
  };
}

/** What later truings may take off the sole, mm. */
const LATER = [0.1, 0.25];

function mouthAfterRow(t: StepContext, more: number): StepNumber {
  const { takenOff, opening } = mouthLifeAt(t.plane, more);
  return t.lengthRow(SEASON.mouthAfter({ off: t.mm(takenOff) }), opening);
}

/** What grinding the edge back does to the mouth: a tapered iron is thinner or thicker where its new edge is. */
function grindingText({ plane, mm }: StepContext): string | false {
  const perMm = tanDeg(ironTaper(plane.design)) / sinDeg(plane.frame.bedAngle);
  if (perMm === 0) return false;
  const ground = plane.design.units === "in" ? toMillimetres(1, "in") / 4 : 5;
  return SEASON.grinding({ ground: mm(ground), way: perMm > 0 ? "opens" : "closes", by: mm(Math.abs(perMm) * ground) });
}

function yearRow(t: StepContext, key: Gap): StepNumber[] {
  const [least, most] = [yearlyMinimum(t.plane, key), yearlyMaximum(t.plane, key)];
  if (least === undefined || most === undefined) return [];
  return [{ label: SEASON.indicative({ label: SEASON.sizes[key] }), value: t.caliperRange(least, most) }];
}
