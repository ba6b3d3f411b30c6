// The bed: where the straightedge is laid, and the recess in plan and in section.
import { layings, SAFE_WAYS } from "@lamplane/bench";
import { cotDeg, line, placedSegment, point, pointAlong } from "@lamplane/geometry";
import type { Elevation } from "@lamplane/parameters/elevation";
import { blocksAt, fromIron, recessEdge, toIron } from "@lamplane/parameters/elevation";
import { box, composed, HALF, type Sketch, view, within } from "../sketch.ts";
import type { Telling } from "../telling.ts";
import { drawRecess } from "./section.ts";
import { WOOD } from "./stack.ts";

/** s of the bed's ends on the blank. */
function bedEnds(plane: Elevation): { low: number; high: number } {
  const { x, y } = plane.points.bedTip;
  const bed = blocksAt(plane, "blank").bedChain.at(-1)!;
  return { low: toIron(plane.frame, point(x, y)).s, high: toIron(plane.frame, bed.to).s };
}

export function bedPicture(t: Telling) {
  const { plane } = t;
  const { low, high } = bedEnds(plane);
  const half = plane.widths.core / 2;
  return composed({ name: "step-bed", title: "The bed with the places where a straightedge is laid" }, [
    view("Bed, seen square to it, tip below", { ...HALF, height: 80 }, (sketch) => {
      sketch.area(WOOD, box(-half, low, half, high)).outline("outline", box(-half, low, half, high));
      // The survey counts across from the left as the maker stands behind the heel: here, facing the bed, from the right.
      const at = (along: number, across: number) => point(half - across, low + along);
      const lays = layings(plane).map(({ from, to }) => line(at(from.along, from.across), at(to.along, to.across)));
      for (const lay of lays) sketch.line("cut", lay);
      lays.forEach((lay, i) => {
        const beside = i < 3 ? { up: 4.6 } : i < 6 ? { right: 4.6 } : {};
        const place = i < 3 ? lay.to : i < 6 ? lay.from : pointAlong(lay, 0.25);
        sketch.words(`${i + 1}`, place, { ...beside, bold: true });
      });
      const heel = plane.design.iron.thickness * cotDeg(plane.design.iron.bevel);
      sketch.level(t.ruled(2 * half, SAFE_WAYS.coreWidth), point(-half, low), point(half, low));
      sketch.line("mark", line(point(-half, heel), point(half, heel)));
      sketch.name("left", [{ words: "iron bears above", place: point(-half, heel) }]);
    }),
    view("Bed block, the bed level", { ...HALF, width: 88 }, (sketch) => {
      const turned = blocksAt(plane, "blank").bed.map((s) => placedSegment(s, { turn: -plane.frame.bedAngle }));
      sketch.area(WOOD, turned).outline("outline", turned);
      const tip = placedSegment(line(plane.points.bedTip, plane.points.bedTip), { turn: -plane.frame.bedAngle }).from;
      sketch.angle(t.deg(plane.frame.bedAngle), tip, -plane.frame.bedAngle, 0, 16);
      sketch.name("right", [{ words: "straightedge here", place: point(tip.x + 0.6 * (high - low), tip.y) }]);
    }),
  ]);
}

export function recessPicture(t: Telling) {
  const { plane } = t;
  const { recess, design } = plane;
  const { low, high } = bedEnds(plane);
  const half = plane.widths.core / 2;
  return composed({ name: "step-recess", title: "The recess, seen square to the bed and cut along the middle" }, [
    view("Bed, seen square to it, tip below", { ...HALF, height: 80 }, (sketch) => {
      sketch.area(WOOD, box(-half, low, half, high)).outline("outline", box(-half, low, half, high));
      sketch.line("axis", line(point(0, low), point(0, high)));
      const soleS = design.iron.thickness * cotDeg(plane.frame.bedAngle);
      if (soleS > low) sketch.line("mark", line(point(-half, soleS), point(half, soleS)));
      if (!recess) return;
      const wide = recess.width / 2;
      sketch.line("cut", ...recessEdge(recess, high).map((s) => placedSegment(s, { turn: 90, mirrored: true })));
      sketch.level(t.ruled(recess.width, SAFE_WAYS.recessWidth), point(-wide, high), point(wide, high), "above");
      sketch.level(`land ${t.ruled(half - wide)}`, point(wide, low), point(half, low));
      sketch.upright(
        t.ruled(recess.low - soleS, SAFE_WAYS.recessFromBedTip),
        point(half, soleS),
        point(half, recess.low),
        "right",
      );
      sketch.name("left", [{ words: "trued sole", place: point(-half, soleS) }]);
    }),
    ...(recess ? [view("Cut along the middle", { ...HALF, width: 88 }, (sketch) => drawRecessSection(sketch, t))] : []),
  ]);
}

function drawRecessSection(sketch: Sketch, t: Telling): void {
  const { plane } = t;
  const { recess, design, frame } = plane;
  const { high } = bedEnds(plane);
  const { bed, bedChain } = blocksAt(plane, "blank");
  const [tip, top] = [bedChain[0]!.from, bedChain.at(-1)!.to];
  const room = { left: tip.x - 1, right: top.x + 4 * recess!.depth, low: tip.y, high: top.y };
  const seen = within(bed, room);
  sketch.area(WOOD, seen).outline("outline", seen);
  drawRecess(sketch, plane, high - recess!.depth * cotDeg(frame.bedAngle));
  const thick = -design.iron.thickness;
  const floor = fromIron(frame, recess!.low + 0.5 * (high - recess!.low), thick - recess!.depth);
  sketch.name("left", [
    { words: `deep ${t.mm(recess!.depth, SAFE_WAYS.recessDepth)}, square to the bed`, place: floor },
    {
      words: "screw's head at work",
      place: fromIron(frame, design.capIron.screwHead.fromEdge, thick - 0.5 * design.capIron.screwHead.height),
    },
    { words: "pad, bears the iron", place: fromIron(frame, 0.6 * recess!.low, thick) },
  ]);
}
