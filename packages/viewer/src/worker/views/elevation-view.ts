// Side elevation with the near cheek taken away: blocks, throat, stack, recess as hidden lines, the sole before and after.

import { boundsOf, point, tessellate } from "@lamplane/geometry";
import { bedLineTopS, bedToPlane, capIronOutline, stageExtent } from "@lamplane/parameters/elevation";
import { circlePath, linePath, outlinePath, pathOf } from "../../path-data.ts";
import type { StageName } from "../../protocol/sheet-data.ts";
import type { Dimension, View, ViewMark } from "../../protocol/view.ts";
import {
  alongShape,
  angleShape,
  type DrawnPlane,
  leaderShape,
  parameterDimension,
  referenceDimension,
} from "./dimensioning.ts";
import { type StagePlane, stagePlane } from "./stage-plane.ts";

/** The main view at a stage of the bench. */
export function elevationView(drawn: DrawnPlane, stage: StageName): View {
  const at = stagePlane(drawn.plane, stage);
  const spots = [at.cheek, ...(at.hasStack ? [at.plane.iron, at.plane.wedge] : [])].flatMap((o) => tessellate(o, 0.5));
  const { min, max } = boundsOf([...spots, point(0, -drawn.plane.design.sole.allowance)]);
  return {
    name: "elevation",
    title: "Side elevation, near cheek taken away",
    box: { min, max },
    marks: [...woodMarks(at, stage), ...(at.hasStack ? stackMarks(at) : []), ...lineMarks(at, stage)],
    dimensions: [...outsideDimensions(drawn, at, stage), ...insideDimensions(drawn, at)],
    labels: labelsOf(at, stage),
  };
}

function woodMarks(at: StagePlane, stage: StageName): ViewMark[] {
  if (stage === "billet") return [{ d: outlinePath(at.cheek), area: "wood", line: "outline" }];
  const waste: ViewMark[] =
    at.offcut && stage === "core" ? [{ d: outlinePath(at.offcut), area: "waste", line: "cut" }] : [];
  const far: ViewMark[] = at.isApart ? [] : [{ d: outlinePath(at.cheek), area: "wood-far", line: "outline" }];
  return [
    ...far,
    ...waste,
    { d: outlinePath(at.front), area: "wood", line: "outline" },
    { d: outlinePath(at.bed), area: "wood", line: "outline" },
  ];
}

function stackMarks({ plane }: StagePlane): ViewMark[] {
  const cap = capIronOutline(plane.design, plane.frame);
  return [
    { d: outlinePath(plane.iron), area: "steel", line: "outline" },
    ...(cap ? [{ d: outlinePath(cap), area: "cap" as const, line: "outline" as const }] : []),
    { d: outlinePath(plane.wedge), area: "wedge", line: "outline" },
    { d: outlinePath(plane.pinSection), area: "pin", line: "outline" },
    { d: circlePath({ centre: plane.pin.centre, radius: plane.design.pin.tenon / 2 }), line: "hidden" },
  ];
}

function lineMarks(at: StagePlane, stage: StageName): ViewMark[] {
  const { plane } = at;
  const { length, height } = plane.design.body;
  const blank = stageExtent(plane, "blank");
  const marks: ViewMark[] = [];
  if (stage === "billet")
    marks.push({ d: pathOf(at.rampChain), line: "mark" }, { d: pathOf(at.bedChain), line: "mark" });
  if (stage !== "billet" && stage !== "core") marks.push(...recessMarks(at));
  if (stage === "glued" || stage === "bed")
    marks.push(...at.holes.map((hole) => ({ d: circlePath(hole), line: "hidden" as const })));
  if (at.sole < 0) {
    marks.push({ d: linePath(point(blank.toe, 0), point(blank.heel, 0)), line: "mark" });
    marks.push(
      ...[0, length].map((x) => ({ d: linePath(point(x, blank.sole), point(x, height)), line: "mark" as const })),
    );
    marks.push({ d: pathOf(plane.topChain), line: "mark" });
  } else marks.push({ d: linePath(point(0, blank.sole), point(length, blank.sole)), line: "mark" });
  const { x, y } = plane.pin.centre;
  const arm = plane.design.pin.diameter / 2 + 4;
  if (!at.isApart)
    marks.push({
      d: `${linePath(point(x - arm, y), point(x + arm, y))}${linePath(point(x, y - arm), point(x, y + arm))}`,
      line: "axis",
    });
  return marks;
}

/** The recess lies between the lands, so it is seen through the wood: hidden lines. */
function recessMarks({ plane, isApart, top }: StagePlane): ViewMark[] {
  const { recess, frame, design } = plane;
  if (!recess) return [];
  const deep = -frame.thickness - recess.depth;
  const high = bedLineTopS(design, frame, top, deep);
  const shift = isApart ? plane.cuts.setInHeel : 0;
  const place = (s: number, v: number) => {
    const p = bedToPlane(frame, s, v);
    return point(p.x + shift, p.y);
  };
  return [
    {
      d: linePath(place(recess.low, -frame.thickness), place(recess.low, deep), place(high, deep)),
      line: "hidden",
    },
  ];
}

function outsideDimensions(drawn: DrawnPlane, at: StagePlane, stage: StageName): Dimension[] {
  const { design, points, top, pin } = drawn.plane;
  const { length, height, outline, trim } = design.body;
  const blank = stageExtent(drawn.plane, "blank");
  const isBlank = at.sole < 0;
  const arched =
    outline === "arched" && !isBlank && stage === "shaped"
      ? [
          ...parameterDimension(drawn, "body.toeHeight", alongShape(points.toe, point(0, top.toeHeight), "left", 0)),
          ...parameterDimension(
            drawn,
            "body.heelHeight",
            alongShape(points.heel, point(length, top.heelHeight), "right", 0),
          ),
          ...parameterDimension(drawn, "body.crown", alongShape(point(0, top.toeHeight), points.crown, "above", 0), {
            rank: 3,
          }),
        ]
      : [];
  const right = point(length, height);
  const blankOnly = isBlank
    ? [
        ...referenceDimension(
          drawn,
          "blankLength",
          alongShape(point(blank.toe, blank.sole), point(blank.heel, blank.sole), "below", 2),
        ),
        ...referenceDimension(
          drawn,
          "blankHeight",
          alongShape(point(blank.heel, blank.sole), point(blank.heel, height), "right", 1),
        ),
        ...parameterDimension(drawn, "body.trim", leaderShape(point(length + trim / 4, height), -34, -26), {
          before: "trim ",
        }),
      ]
    : [];
  return [
    ...arched,
    ...blankOnly,
    ...parameterDimension(drawn, "mouth.fromToe", alongShape(points.toe, points.edge, "below", 0), { rank: 1 }),
    ...parameterDimension(drawn, "body.length", alongShape(points.toe, points.heel, "below", 1), { rank: 1 }),
    ...parameterDimension(drawn, "body.height", alongShape(points.heel, right, "right", isBlank ? 0 : 1), { rank: 1 }),
    ...(at.isApart
      ? []
      : parameterDimension(drawn, "pin.height", alongShape(point(pin.centre.x, 0), pin.centre, "left", 1), {
          rank: 1,
        })),
  ];
}

function insideDimensions(drawn: DrawnPlane, at: StagePlane): Dimension[] {
  const { design, points, ramp, frame } = drawn.plane;
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
          ...parameterDimension(
            drawn,
            "iron.length",
            leaderShape(bedToPlane(frame, design.iron.length, -frame.thickness / 2), 34, 6),
            {
              before: "iron ",
              rank: 3,
            },
          ),
        ]),
  ];
}

const middleOf = (a: { x: number; y: number }, b: { x: number; y: number }) => point((a.x + b.x) / 2, (a.y + b.y) / 2);

function labelsOf(at: StagePlane, stage: StageName): View["labels"] {
  const { plane } = at;
  const low = at.sole + plane.design.body.height * 0.16;
  const { length } = plane.design.body;
  if (stage === "billet") return [{ text: "core", at: point(length / 2, low) }];
  return [
    { text: "front block", at: point(plane.points.rampFoot.x * 0.24, low) },
    { text: "bed block", at: point((plane.points.bedFoot.x + 2.2 * length) / 3.2, low) },
  ];
}
