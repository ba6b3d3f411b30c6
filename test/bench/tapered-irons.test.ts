// What a tapered iron does beside the elevation: packing, a sole trued again, seasons, and what is measured on it.
import { applyErrors, asBuiltPlane, mouthLifeAt, NO_ERRORS, tolerancePlan } from "@lamplane/bench";
import { withValue } from "@lamplane/parameters/design";
import { type Elevation, elevation, figureValue } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { describe, expect, test } from "vitest";
import { packing } from "../../packages/bench/src/mouth/packing.ts";
import { movedAngles, wedgeSlack } from "../../packages/bench/src/seasons/side-view.ts";
import { designWith, taperedDesigns, WORKED } from "../support/designs.ts";
import {
  at,
  cross,
  direction,
  type Homogeneous,
  offLine,
  parallel,
  place,
  squareTo,
} from "../support/line-geometry.ts";

const some = taperedDesigns(41, 60, ({ bed }) => bed.angle <= 50).map(({ design }) => elevation(design));
const angleOf = (from: { x: number; y: number }, to: { x: number; y: number }) =>
  (Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI;

/** The iron's face as a line, its edge, and how steep it is, from its outline. */
function faceOf(plane: Elevation) {
  const [edge, , , top] = plane.iron.map(({ from }) => from);
  return { edge: edge!, top: top!, line: cross(at(edge!.x, edge!.y), at(top!.x, top!.y)) };
}

describe("a slip of packing under a tapered iron", () => {
  test("lifts the face toward the pin by as much as the iron, moved along the sole, comes nearer to it", () => {
    for (const plane of some) {
      const { edge, top } = faceOf(plane);
      const moved = cross(at(edge.x - 0.2, edge.y), at(top.x - 0.2, top.y));
      const { capIron } = plane.design;
      const hump = capIron.thickness > 0 ? capIron.hump : 0;
      const left = offLine(moved, at(plane.pin.centre.x, plane.pin.centre.y)) - plane.pinSize.diameter / 2;
      expect(packing(plane, 0.2).roomUnderPin).toBeCloseTo(left - capIron.thickness - hump, 9);
      // What lies between bed and back, square to the bed.
      const back = plane.iron[1]!;
      const bed = cross(at(back.from.x, back.from.y), at(back.to.x, back.to.y));
      expect(packing(plane, 0.2).thickness).toBeCloseTo(offLine(bed, at(back.from.x - 0.2, back.from.y)), 9);
    }
  });
});

/** Thickness of wedge between cap iron and pin, and where the wedge's tip then is, for an iron whose edge is there. */
function wedgeBetween(plane: Elevation, edge: { x: number; y: number }) {
  const { wedge, pin, capIron } = plane.design;
  const face = faceOf(plane);
  const faceAngle = angleOf(face.edge, face.top);
  const line = cross(at(edge.x, edge.y), direction(faceAngle));
  const centre = at(plane.pin.centre.x, plane.pin.centre.y);
  const toward = direction(faceAngle + wedge.angle);
  const upper = parallel(cross(centre, toward), -pin.diameter / 2);
  const lower = parallel(line, capIron.thickness);
  const foot = (of: Homogeneous) => place(cross(of, squareTo(line, centre)));
  const there = Math.hypot(foot(upper).x - foot(lower).x, foot(upper).y - foot(lower).y);
  // The tip is where upper and lower side are one tip's thickness apart.
  const tip = place(cross(upper, parallel(lower, wedge.tip)));
  return {
    there,
    tipFromEdge: (tip.x - edge.x) * direction(faceAngle)[0] + (tip.y - edge.y) * direction(faceAngle)[1],
  };
}

describe("the edge set up the bed to a sole that is trued again", () => {
  const edgeAt = (plane: Elevation, off: number) => {
    const beta = (plane.frame.bedAngle * Math.PI) / 180;
    return { x: plane.frame.mouthX + off / Math.tan(beta), y: off };
  };
  test("sends the wedge in or out by what the face then leaves it", () => {
    for (const plane of some)
      expect(mouthLifeAt(plane, 1).wedgeTipFromEdge).toBeCloseTo(wedgeBetween(plane, edgeAt(plane, 1)).tipFromEdge, 8);
  });
  test("by an error of the sole as well", () => {
    for (const plane of some) {
      const made = applyErrors(tolerancePlan(plane), { ...NO_ERRORS, soleTaken: 0.3 });
      const { there, tipFromEdge } = wedgeBetween(plane, edgeAt(plane, 0.3));
      expect(made.wedgeAtPin).toBeCloseTo(there, 8);
      expect(made.wedgeTipFromEdge).toBeCloseTo(tipFromEdge, 8);
    }
  });
});

describe("an iron read too thick", () => {
  /** The plane round the iron as it is: bed, hole and wedge stay where they were to be. */
  const results = (plane: Elevation, iron: Partial<Design["iron"]>) => {
    const { design } = plane;
    const other = { ...design, iron: { ...design.iron, ...iron } };
    const seated = elevation(withValue(other, "pin.height", plane.pin.centre.y));
    const mouthX = plane.points.bedFoot.x - (seated.points.bedFoot.x - seated.frame.mouthX);
    const moved = elevation({ ...seated.design, mouth: { ...design.mouth, fromToe: mouthX } });
    return { mouthX, wedge: wedgeBetween({ ...moved, pin: plane.pin } as Elevation, moved.points.edge) };
  };
  test.each(["thickness", "thicknessAtTop"] as const)(
    "by 0.05 at its %s moves mouth and wedge as lines say",
    (where) => {
      const error = where === "thickness" ? "ironThickness" : "ironTopThickness";
      let read = 0;
      for (const plane of some) {
        const { iron } = plane.design;
        if (iron.thicknessAtTop === "auto") continue;
        read++;
        const made = applyErrors(tolerancePlan(plane), { ...NO_ERRORS, [error]: 0.05 });
        const { mouthX, wedge } = results(plane, { [where]: Number(iron[where]) + 0.05 });
        const { hand } = plane.design;
        if (hand.placing === "marks") expect(made.mouthOpening).toBeCloseTo(mouthX - plane.points.rampFoot.x, 9);
        expect(made.wedgeAtPin).toBeCloseTo(wedge.there, 8);
        expect(made.wedgeTipFromEdge).toBeCloseTo(wedge.tipFromEdge, 8);
      }
      expect(read).toBeGreaterThan(10);
    },
  );
});

describe("through the year", () => {
  const STRAINS = { height: 0.004, wedge: 0.003, pin: 0.002 };
  test("the iron keeps its taper: slack and edge as the moved bed, hole and iron give them by lines", () => {
    for (const plane of some) {
      const stretched = ({ x, y }: { x: number; y: number }) => ({ x, y: y * (1 + STRAINS.height) });
      const [heel, end] = [plane.points.bedFoot, plane.points.bedTop].map(stretched);
      const bed = cross(at(heel!.x, heel!.y), at(end!.x, end!.y));
      const beta = angleOf(heel!, end!);
      // The iron slides on the moved bed with the place under the pin, which moves with the wood.
      const oldBed = cross(at(plane.points.bedFoot.x, 0), direction(plane.frame.bedAngle));
      const centre = plane.pin.centre;
      const grip = stretched(place(cross(oldBed, squareTo(oldBed, at(centre.x, centre.y)))));
      expect(offLine(bed, at(grip.x, grip.y))).toBeCloseTo(0, 9);
      const old = place(cross(oldBed, squareTo(oldBed, at(centre.x, centre.y))));
      const turn = ((beta - plane.frame.bedAngle) * Math.PI) / 180;
      const [c, s] = [Math.cos(turn), Math.sin(turn)];
      const moved = ({ x, y }: { x: number; y: number }) => ({
        x: grip.x + (x - old.x) * c - (y - old.y) * s,
        y: grip.y + (x - old.x) * s + (y - old.y) * c,
      });
      expect(movedAngles(plane, STRAINS.height).edgeOut).toBeCloseTo(-moved(faceOf(plane).edge).y, 9);
      // With wood and pin as they were across, what the gap under the pin's axis grows by is the slack, the seat aside.
      const face = faceOf(plane);
      const newFace = cross(at(moved(face.edge).x, moved(face.edge).y), at(moved(face.top).x, moved(face.top).y));
      const axis = stretched(centre);
      const [before, after] = [
        { line: face.line, p: centre, edge: face.edge },
        { line: newFace, p: axis, edge: moved(face.edge) },
      ].map(({ line, p, edge }) => {
        const off = offLine(line, at(p.x, p.y));
        const foot = place(cross(line, squareTo(line, at(p.x, p.y))));
        return { off, s: Math.hypot(foot.x - edge.x, foot.y - edge.y) };
      });
      const { wedge } = plane.design;
      const tan = Math.tan((wedge.angle * Math.PI) / 180);
      const cos = Math.cos((wedge.angle * Math.PI) / 180);
      const seatAt = (angle: number, height: number) => {
        const r = (angle * Math.PI) / 180;
        return (
          (plane.pinHole.radius * Math.hypot(Math.sin(r), (1 + height) * Math.cos(r)) - plane.pinSize.tenon / 2) / cos
        );
      };
      const upper = (f: typeof face.edge, g: typeof face.edge) => angleOf(f, g) + wedge.angle;
      const seat =
        seatAt(upper(moved(face.edge), moved(face.top)), STRAINS.height) - seatAt(upper(face.edge, face.top), 0);
      const lines = after!.off - before!.off - (after!.s - before!.s) * tan + seat;
      expect(wedgeSlack(plane, { height: STRAINS.height, wedge: 0, pin: 0 })).toBeCloseTo(lines, 8);
    }
  });
});

describe("measured on the iron", () => {
  const TAPERED = { ...WORKED, "iron.thickness": 4.2, "iron.thicknessFromEdge": 12, "iron.topFromEdge": 150 };
  const measured = (values: Partial<Design["measured"]>, changes = {}) => {
    const design = designWith({ ...TAPERED, "iron.thicknessAtTop": 3, ...changes });
    return asBuiltPlane({ ...design, measured: { ...design.measured, done: "iron", ...values } });
  };
  test("both thicknesses take the file's place: 4.3 and 3.05 in 138 mm (by hand)", () => {
    const plane = measured({ ironThickness: 4.3, ironThicknessAtTop: 3.05 });
    expect(figureValue(plane, "ironTaper")).toBeCloseTo(0.51897, 4);
    expect(figureValue(plane, "edgeThickness")).toBeCloseTo(4.4087, 4);
  });
  test("a thickness near the top takes the place of an angle as well", () => {
    const plane = measured({ ironThicknessAtTop: 3.6 }, { "iron.taper": 0.5, "iron.thicknessAtTop": "auto" });
    expect(figureValue(plane, "ironTaper")).toBeCloseTo((Math.atan(0.6 / 138) * 180) / Math.PI, 9);
  });
  test("an iron entered as parallel that measures thinner near its top is tapered from then on", () => {
    const plane = measured({ ironThicknessAtTop: 3.6 }, { "iron.thicknessAtTop": "auto" });
    expect(figureValue(plane, "ironTaper")).toBeCloseTo((Math.atan(0.6 / 138) * 180) / Math.PI, 9);
  });
});
