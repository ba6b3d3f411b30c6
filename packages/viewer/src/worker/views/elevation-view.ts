// Side elevation with the near cheek taken away: blocks, throat, stack, recess as hidden lines, the sole before and after.

import { boundsOf, point, tessellate } from "@lamplane/geometry";
import { bedToPlane, stageExtent } from "@lamplane/parameters/elevation";
import { type StageName, WORK_OF } from "../../protocol/build-steps.ts";
import type { Dimension, DrawnPart, View } from "../../protocol/view.ts";
import { VIEW_TITLES } from "../../words/views.ts";
import {
  alongShape,
  angleShape,
  leaderShape,
  parameterDimension,
  referenceDimension,
  type SolvedPlane,
} from "./dimensioning.ts";
import { elevationMarks } from "./elevation-marks.ts";
import { type StagePlane, stagePlane } from "./stage-plane.ts";

/** The main view at a stage of the bench. */
export function elevationView(drawn: SolvedPlane, stage: StageName): View {
  const at = stagePlane(drawn.plane, stage);
  const spots = [at.cheek, ...(at.hasStack ? [at.plane.iron, at.plane.wedge] : [])].flatMap((o) => tessellate(o, 0.5));
  const { min, max } = boundsOf([...spots, point(0, -drawn.plane.design.sole.allowance)]);
  return {
    name: "elevation",
    title: VIEW_TITLES.elevation,
    box: { min, max },
    marks: elevationMarks(at, stage),
    dimensions: [...outsideDimensions(drawn, at, stage), ...(stage === "billet" ? [] : insideDimensions(drawn, at))]
      .map(withPart)
      .sort((a, b) => heldRank(a) - heldRank(b)),
    labels: labelsOf(at, stage),
  };
}

function outsideDimensions(drawn: SolvedPlane, at: StagePlane, stage: StageName): Dimension[] {
  const { design, points, pin } = drawn.plane;
  const { length, height, outline } = design.body;
  const isBlank = at.sole < 0;
  const isArched = outline === "arched" && !isBlank && WORK_OF[stage] === "shaped";
  const right = alongShape(points.heel, point(length, height), "right", isBlank ? 0 : 1);
  const pinHeight = alongShape(point(pin.centre.x, 0), pin.centre, "left", 1);
  return [
    ...(isArched ? archDimensions(drawn) : []),
    ...(isBlank ? blankDimensions(drawn) : []),
    ...parameterDimension(drawn, "mouth.fromToe", alongShape(points.toe, points.edge, "below", 0), { rank: 1 }),
    ...parameterDimension(drawn, "body.length", alongShape(points.toe, points.heel, "below", 1), { rank: 1 }),
    ...parameterDimension(drawn, "body.height", right, { rank: 1 }),
    ...(at.isApart ? [] : parameterDimension(drawn, "pin.height", pinHeight, { rank: 1 })),
  ];
}

function archDimensions(drawn: SolvedPlane): Dimension[] {
  const { design, points, top } = drawn.plane;
  const [toeTop, heelTop] = [point(0, top.toeHeight), point(design.body.length, top.heelHeight)];
  return [
    ...parameterDimension(drawn, "body.toeHeight", alongShape(points.toe, toeTop, "left", 0)),
    ...parameterDimension(drawn, "body.heelHeight", alongShape(points.heel, heelTop, "right", 0)),
    ...parameterDimension(drawn, "body.crown", alongShape(toeTop, points.crown, "above", 0), { rank: 3 }),
  ];
}

function blankDimensions(drawn: SolvedPlane): Dimension[] {
  const { length, height, trim } = drawn.plane.design.body;
  const { toe, heel, sole } = stageExtent(drawn.plane, "blank");
  const heelFoot = point(heel, sole);
  return [
    ...referenceDimension(drawn, "blankLength", alongShape(point(toe, sole), heelFoot, "below", 2)),
    ...referenceDimension(drawn, "blankHeight", alongShape(heelFoot, point(heel, height), "right", 1)),
    ...parameterDimension(drawn, "body.trim", leaderShape(point(length + trim / 4, height), -34, -26), {
      before: "trim ",
    }),
  ];
}

function insideDimensions(drawn: SolvedPlane, at: StagePlane): Dimension[] {
  const { points, ramp, frame } = drawn.plane;
  const shift = at.isApart ? drawn.plane.cuts : { setInToe: 0, setInHeel: 0 };
  const bedFoot = point(points.bedFoot.x + shift.setInHeel, 0);
  const rampFoot = point(points.rampFoot.x - shift.setInToe, 0);
  const straight = ramp.shape === "straight";
  const slope = straight ? "ramp.angle" : "ramp.wearAngle";
  const curve = ramp.curve;
  const curved = curve
    ? [
        ...parameterDimension(drawn, "ramp.radius", leaderShape(middleOf(curve.begin, curve.end), -44, 20), {
          before: "R ",
        }),
        ...parameterDimension(drawn, "ramp.exitAngle", angleShape(curve.end, 180 - curve.exitAngle, 180, 34), {
          unit: "°",
        }),
      ]
    : [];
  return [
    ...parameterDimension(drawn, "bed.angle", angleShape(bedFoot, 0, frame.bedAngle, 62), { unit: "°", rank: 1 }),
    ...parameterDimension(drawn, slope, angleShape(rampFoot, 180 - ramp.angle, 180, 62), { unit: "°", rank: 1 }),
    ...curved,
    ...(at.isApart
      ? []
      : [
          ...parameterDimension(drawn, "mouth.opening", leaderShape(points.edge, 22, 26), {
            rank: 1,
            before: "mouth ",
          }),
          ...parameterDimension(drawn, "pin.diameter", leaderShape(at.plane.pin.centre, -86, -74), { before: "pin " }),
          ...referenceDimension(
            drawn,
            "pinToRamp",
            leaderShape(middleOf(at.plane.pin.centre, points.rampTop), -64, -86),
            {
              before: "room ",
              rank: 3,
            },
          ),
          ...(at.hasStack ? ironLength(drawn) : []),
        ]),
  ];
}

function ironLength(drawn: SolvedPlane): Dimension[] {
  const { frame, design } = drawn.plane;
  const end = bedToPlane(frame, design.iron.length, -frame.thickness / 2);
  return parameterDimension(drawn, "iron.length", leaderShape(end, 34, 6), { rank: 1 });
}

/** Part that shows a number when it is pointed at; by the first word of the number's path. */
const PART_OF: Readonly<Record<string, DrawnPart>> = {
  body: "body",
  iron: "iron",
  mouth: "mouth",
  ramp: "ramp",
  pin: "pin",
};
/** Numbers whose part can be taken hold of: they are always there. */
const HELD = ["bed.angle", "mouth.opening", "body.length", "iron.length"];

/** What can be taken hold of comes first, for the eye and for the Tab key. */
const heldRank = ({ id }: Dimension): number => (HELD.includes(id) ? HELD.indexOf(id) : HELD.length);

const withPart = (dimension: Dimension): Dimension => {
  const word = (dimension.parameter ?? dimension.figure ?? "").split(/[.A-Z]/)[0]!;
  return { ...dimension, part: PART_OF[word] ?? "bed", isHeld: HELD.includes(dimension.id) };
};

const middleOf = (a: { x: number; y: number }, b: { x: number; y: number }) => point((a.x + b.x) / 2, (a.y + b.y) / 2);

function labelsOf(at: StagePlane, stage: StageName): View["labels"] {
  const { plane } = at;
  const low = at.sole + plane.design.body.height * 0.16;
  const { length } = plane.design.body;
  if (stage === "billet") return [];
  if (stage === "ripped") return [{ text: "core", at: point(length / 2, low) }];
  return [
    { text: "front block", at: point(plane.points.rampFoot.x * 0.24, low) },
    { text: "bed block", at: point((plane.points.bedFoot.x + 2.2 * length) / 3.2, low) },
  ];
}
