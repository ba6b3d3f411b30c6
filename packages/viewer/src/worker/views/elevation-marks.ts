// What is drawn of the elevation at a step: wood with its grain, the stack with its shadow, hidden lines, the sole before and after.
import { point, transformOutline } from "@lamplane/geometry";
import { bedLineTopS, bedToPlane, capIronOutline, stageExtent } from "@lamplane/parameters/elevation";
import { circlePath, linePath, outlinePath, pathOf } from "../../path-data.ts";
import { type StageName, WORK_OF } from "../../protocol/build-steps.ts";
import type { ViewMark } from "../../protocol/view.ts";
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
  if (WORK_OF[stage] === "billet") return [whole];
  const waste: ViewMark[] =
    at.offcut && stage === "cuts"
      ? [outlineMark(at.offcut, { area: "waste", line: "cut", isGrained: true, part: "ramp" })]
      : [];
  const far: ViewMark[] = at.isApart ? [] : [{ ...whole, area: "wood-far" }, ...shadeMarks(at)];
  return [
    ...far,
    ...waste,
    outlineMark(at.front, { area: "wood", isGrained: true, part: "ramp" }),
    outlineMark(at.bed, { area: "wood", isGrained: true, part: "bed" }),
  ];
}

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
  return [
    outlineMark(plane.iron, { area: "steel", part: "iron" }),
    ...(cap ? [outlineMark(cap, { area: "cap", part: "iron" as const })] : []),
    outlineMark(plane.wedge, { area: "wedge", isGrained: true, part: "pin" }),
  ];
}

/** The pin's round and its tenon in the far cheek. */
function pinMarks({ plane }: StagePlane): ViewMark[] {
  return [
    outlineMark(plane.pinSection, { area: "pin", isGrained: true, part: "pin" }),
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
