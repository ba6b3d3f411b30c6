// What is drawn of the elevation at a step: wood with its grain, the stack with its shadow, hidden lines, the sole before and after.
import { cosDeg, point, sinDeg, transformOutline } from "@lamplane/geometry";
import { bedLineTopS, bedToPlane, capIronOutline, stageExtent } from "@lamplane/parameters/elevation";
import { circlePath, linePath, outlinePath, pathOf } from "../../path-data.ts";
import { type StageName, WORK_OF } from "../../protocol/build-steps.ts";
import type { Piece, ViewMark } from "../../protocol/view.ts";
import { outlineMark } from "./outline-mark.ts";
import { shavingMark } from "./shaving.ts";
import type { StagePlane } from "./stage-plane.ts";

export function elevationMarks(at: StagePlane, stage: StageName): ViewMark[] {
  return [
    ...woodMarks(at, stage),
    ...(at.hasStack ? stackMarks(at) : []),
    ...(at.isApart ? [] : pinMarks(at)),
    ...(stage === "first-shaving" ? [shavingMark(at.plane)] : []),
    ...lineMarks(at, stage),
  ];
}

function woodMarks(at: StagePlane, stage: StageName): ViewMark[] {
  const whole: ViewMark = outlineMark(at.cheek, { area: "wood", isGrained: true, part: "body" });
  if (WORK_OF[stage] === "billet") return [{ ...whole, piece: stayingPiece("billet") }];
  const waste: ViewMark[] =
    at.offcut && stage === "cuts"
      ? [outlineMark(at.offcut, { area: "waste", line: "cut", isGrained: true, part: "ramp", piece: OFFCUT })]
      : [];
  const far: ViewMark[] = at.isApart
    ? []
    : [{ ...whole, area: "wood-far", piece: stayingPiece("far cheek") }, ...shadeMarks(at)];
  const { setInToe, setInHeel } = at.plane.cuts;
  const slid = (name: string, by: number): Piece => ({ name, off: point(at.isApart ? by : 0, 0) });
  return [
    ...far,
    ...waste,
    outlineMark(at.front, { area: "wood", isGrained: true, part: "ramp", piece: slid("front", -setInToe) }),
    outlineMark(at.bed, { area: "wood", isGrained: true, part: "bed", piece: slid("bed", setInHeel) }),
  ];
}

const stayingPiece = (name: string): Piece => ({ name, off: point(0, 0) });

/** Falls out of the core once both cuts are through. */
const OFFCUT: Piece = { ...stayingPiece("offcut"), from: point(0, -30) };
const DRAWN_OUT = 60; // mm along the bed by which iron, cap iron and wedge come and go

const SHADE = { x: -5, y: -4 }; // mm from a part to its shade on the far cheek: the light comes over the heel

/** What iron, wedge and pin keep from the light. */
function shadeMarks({ plane, cheek, hasStack }: StagePlane): ViewMark[] {
  const within = outlinePath(cheek);
  const shading = [plane.pinSection, ...(hasStack ? [plane.iron, plane.wedge] : [])];
  return shading.map((outline) => ({
    d: outlinePath(transformOutline(outline, { shift: point(SHADE.x, SHADE.y) })),
    area: "shade",
    within,
  }));
}

function stackMarks({ plane }: StagePlane): ViewMark[] {
  const cap = capIronOutline(plane.design, plane.frame);
  const { bedAngle } = plane.frame;
  const from = point(DRAWN_OUT * cosDeg(bedAngle), DRAWN_OUT * sinDeg(bedAngle));
  const drawn = (name: string): Piece => ({ ...stayingPiece(name), from });
  return [
    outlineMark(plane.iron, { area: "steel", part: "iron", piece: drawn("iron") }),
    ...(cap ? [outlineMark(cap, { area: "cap", part: "iron", piece: drawn("cap iron") })] : []),
    outlineMark(plane.wedge, { area: "wedge", isGrained: true, part: "pin", piece: drawn("wedge") }),
  ];
}

/** The pin's round and its tenon in the far cheek. */
function pinMarks({ plane }: StagePlane): ViewMark[] {
  return [
    outlineMark(plane.pinSection, { area: "pin", isGrained: true, part: "pin", piece: stayingPiece("pin") }),
    { d: circlePath({ centre: plane.pin.centre, radius: plane.pinSize.tenon / 2 }), line: "hidden" },
  ];
}

function lineMarks(at: StagePlane, stage: StageName): ViewMark[] {
  const marks: ViewMark[] = [];
  const work = WORK_OF[stage];
  if (stage === "ripped")
    marks.push({ d: pathOf(at.rampChain), line: "mark" }, { d: pathOf(at.bedChain), line: "mark" });
  if (stage !== "bed" && work !== "billet" && work !== "core") marks.push(...recessMarks(at));
  if (stage === "pin") marks.push(...at.holes.map((hole) => ({ d: circlePath(hole), line: "hidden" as const })));
  if (stage !== "billet") marks.push(...finishMarks(at));
  return at.isApart ? marks : [...marks, ...axisMarks(at)];
}

/** The trued sole and shaped top on the blank, or what the blank had beyond the finished sole. */
function finishMarks({ plane, sole }: StagePlane): ViewMark[] {
  const { length, height } = plane.design.body;
  const blank = stageExtent(plane, "blank");
  if (sole >= 0) return [{ d: linePath(point(0, blank.sole), point(length, blank.sole)), line: "mark" }];
  return [
    { d: linePath(point(blank.toe, 0), point(blank.heel, 0)), line: "mark" },
    ...[0, length].map((x) => ({ d: linePath(point(x, blank.sole), point(x, height)), line: "mark" as const })),
    { d: pathOf(plane.topChain), line: "mark" },
  ];
}

function axisMarks({ plane }: StagePlane): ViewMark[] {
  const { x, y } = plane.pin.centre;
  const arm = plane.pinSize.diameter / 2 + 4;
  const d = `${linePath(point(x - arm, y), point(x + arm, y))}${linePath(point(x, y - arm), point(x, y + arm))}`;
  return [{ d, line: "axis" }];
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
  const corners = [place(recess.low, -frame.thickness), place(recess.low, deep), place(high, deep)];
  return [{ d: linePath(...corners), line: "hidden" }];
}
