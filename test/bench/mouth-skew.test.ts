// The mouth at both cheeks and the tilted iron against planes and boxes in space, which know no formula of the plane's.
import {
  asBuiltPlane,
  buildState,
  ironTilt,
  mouthReading,
  mouthSkew,
  skewText,
  toleranceReport,
  unreadValues,
  worstTilt,
} from "@lamplane/bench";
import { checkPlane, checkWithoutCures, passedChecks } from "@lamplane/bench/checks";
import { type Elevation, elevation } from "@lamplane/parameters/elevation";
import type { Design } from "@lamplane/parameters/table";
import { Matrix3, Matrix4, Plane, Ray, Vector3 } from "three";
import { describe, expect, test } from "vitest";
import { designWith, randomDesigns, taperedDesigns, WORKED } from "../support/designs.ts";
import { readIron } from "../support/plane-by-lines.ts";

const measuring = (values: Partial<Design["measured"]>, design = designWith(WORKED)): Design => ({
  ...design,
  measured: { ...design.measured, ...values } as Design["measured"],
});
const RADIAN = Math.PI / 180;
const upright = (skew: number, width: number) => new Matrix4().makeRotationY(Math.atan2(skew, width));

/** Where three planes meet, by Cramer's rule in three.js. */
function meeting(...planes: readonly [Plane, Plane, Plane]): Vector3 {
  const [a, b, c] = planes.map(({ normal }) => normal) as [Vector3, Vector3, Vector3];
  const rows = new Matrix3().set(a.x, a.y, a.z, b.x, b.y, b.z, c.x, c.y, c.z).invert();
  return new Vector3(-planes[0].constant, -planes[1].constant, -planes[2].constant).applyMatrix3(rows);
}
const planeAt = (normal: Vector3, place: Vector3) => new Plane().setFromNormalAndCoplanarPoint(normal, place);

/** Iron's face and ramp of the worked set, each turned about an upright line where it meets the trued sole. */
function turned(bedSkew: number, frontSkew: number, width: number) {
  const face = new Vector3(-Math.sin(47 * RADIAN), Math.cos(47 * RADIAN), 0);
  const ramp = new Vector3(Math.sin(60 * RADIAN), Math.cos(60 * RADIAN), 0);
  return {
    face: planeAt(face.transformDirection(upright(bedSkew, width)), new Vector3(78, 0, 0)),
    ramp: planeAt(ramp.transformDirection(upright(frontSkew, width)), new Vector3(78 - 0.15, 0, 0)),
  };
}

describe("a skewed front block and a bed out of square", () => {
  test("open the mouth by what three planes' meetings show at each cheek, whatever comes off the sole", () => {
    const width = 49.6;
    for (const [bedSkew, frontSkew] of [
      [0.3, 0],
      [0, 0.3],
      [0.2, -0.1],
    ] as const) {
      const { face, ramp } = turned(bedSkew, frontSkew, width);
      for (const off of [0, 0.4]) {
        const sole = planeAt(new Vector3(0, 1, 0), new Vector3(0, off, 0));
        const [left, right] = [width / 2, -width / 2].map((z) => {
          const cheek = planeAt(new Vector3(0, 0, 1), new Vector3(0, 0, z));
          return meeting(face, sole, cheek).x - meeting(ramp, sole, cheek).x;
        }) as [number, number];
        const plane = asBuiltPlane(measuring({ mouthSeenLeft: left, mouthSeenRight: right }));
        expect(left - right).toBeCloseTo(bedSkew - frontSkew, 12);
        expect(mouthSkew(plane).uneven).toBeCloseTo(Math.abs(bedSkew - frontSkew), 12);
      }
    }
  });

  test("come out as the tolerances have them, independent of each other", () => {
    const design = designWith({ ...WORKED, "hand.frontSkew": 0.3, "hand.bedSkew": 0.4 });
    const report = toleranceReport(design, { runs: 20_000 });
    const uneven = report.results.find(({ key }) => key === "mouthUneven")!;
    expect(uneven).toMatchObject({ planned: 0, within: 0.5 });
    expect(report.trial.results.mouthUneven.deviation).toBeCloseTo(0.25, 2);
    expect(mouthSkew(elevation(design))).toEqual({ left: 0.15, right: 0.15, isRead: false, uneven: 0.5 });
    const read = measuring({ mouthSeenLeft: 0.2, mouthSeenRight: 0.1 }, design);
    const known = toleranceReport(read, { runs: 1000 }).results.find(({ key }) => key === "mouthUneven")!;
    expect(known).toMatchObject({ planned: expect.closeTo(0.1, 12), within: 0, lines: [] });
  });
});

describe("an iron tilted to cut even", () => {
  /** Corners of the iron between the cheeks from the side, x up the bed and y off it: edge, bevel's heel, back, face. */
  function profile(design: Design, long: number): [number, number][] {
    const { thickness, slope } = readIron(design);
    const bevel = design.iron.bevel * RADIAN - Math.atan(slope);
    return [
      [0, thickness],
      [thickness / Math.tan(bevel), 0],
      [long, 0],
      [long, thickness + slope * long],
    ];
  }

  /** An iron's corners on a turned bed, its edge level, as three.js turns them; z across. */
  function onTurnedBed(plane: Elevation, skew: number, long: number) {
    const { design, widths } = plane;
    const onBed = upright(skew, widths.core).multiply(new Matrix4().makeRotationZ(design.bed.angle * RADIAN));
    const half = design.iron.width / 2;
    const corners = profile(design, long).flatMap(([x, y]) => [-half, half].map((z) => new Vector3(x, y, z)));
    return { onBed, corners: corners.map((corner) => corner.applyMatrix4(onBed)) };
  }

  test("takes the room across that its corners in space take, tapered or not, and makes its angle with the cheeks", () => {
    for (const { design } of [...randomDesigns(17, 30), ...taperedDesigns(17, 30)])
      for (const skew of [0.1, -0.7, 3]) {
        const plane = elevation(design);
        const long = Math.min(design.iron.length, plane.bedTopS);
        const core = plane.widths.core;
        const { onBed, corners } = onTurnedBed(plane, skew, long);
        const across = corners.map(({ z }) => z);
        const { angle, room, lean } = ironTilt(plane, skew);
        expect(room).toBeCloseTo(core - (Math.max(...across) - Math.min(...across)), 9);
        // The bed's face and a cheek's meet along a line; the iron's side lies in the same face.
        const face = new Vector3(0, 1, 0).transformDirection(onBed);
        const alongCheek = new Ray(
          new Vector3(),
          face
            .clone()
            .cross(new Vector3(0, 0, 1))
            .normalize(),
        ).direction;
        const alongIron = new Vector3(1, 0, 0).transformDirection(onBed);
        const between = alongCheek.angleTo(alongIron) / RADIAN;
        expect(angle).toBeCloseTo(Math.min(between, 180 - between), 6);
        expect(lean).toBeCloseTo(long * Math.sin(angle * RADIAN), 9);
        // The edge lies even with the sole.
        const edge = new Vector3(0, 0, 1).transformDirection(onBed);
        expect(edge.y).toBeCloseTo(0, 12);
      }
  });

  test("that the cheeks stop is warned of, and cured by a squarer bed or more side clearance", () => {
    const tight = { ...WORKED, "body.sideClearance": 0.8, "hand.bedSkew": 0.8 };
    const plane = elevation(designWith(tight));
    expect(worstTilt(plane).room).toBeLessThan(0);
    const found = checkPlane(plane).find(({ code }) => code === "iron-tilt-room")!;
    expect(found).toMatchObject({ severity: "warning", limit: 0 });
    const [{ parameter, value }] = found.cure as [{ parameter: string; value: number }];
    expect(parameter).toBe("hand.bedSkew");
    const wider = elevation(designWith({ ...tight, [parameter]: value }));
    expect(checkWithoutCures(wider).map(({ code }) => code)).not.toContain("iron-tilt-room");
    expect(passedChecks(elevation(designWith(WORKED))).map(({ code }) => code)).toContain("iron-tilt-room");
  });
});

describe("a mouth read beside both cheeks", () => {
  test("is taken to be midway in its middle, and stays uneven by as much once the sole is down", () => {
    const design = measuring({ allowanceLeft: 0.2, mouthSeenLeft: 0.03, mouthSeenRight: 0.07 });
    const plane = asBuiltPlane(design);
    const { takeOff } = mouthReading(plane, { seen: 0.05 });
    expect(plane.design.sole.allowance).toBeCloseTo(takeOff, 9);
    expect(plane.design.sole.allowance).toBeCloseTo(0.1 / 1.5099, 5);
    const { left, right } = mouthSkew(plane);
    expect([left, right]).toEqual([expect.closeTo(0.13, 9), expect.closeTo(0.17, 9)]);
    expect(mouthSkew(asBuiltPlane(plane.design)).left).toBeCloseTo(left, 12);
    expect(unreadValues(design).map(({ key }) => key)).not.toContain("mouthSeen");
    expect(unreadValues(measuring({ mouthSeen: 0.1 })).map(({ key }) => key)).not.toContain("mouthSeenLeft");
    expect(buildState(design).step).toBe("mouth");
  });

  test("on one side only says nothing of the other", () => {
    const design = measuring({ mouthSeenLeft: 0.3 });
    expect(mouthSkew(asBuiltPlane(design)).isRead).toBe(false);
    expect(unreadValues(design).map(({ key }) => key)).toContain("mouthSeen");
  });

  test("is warned of beyond what each side may be off, with what to do on the narrower side", () => {
    const built = (left: number, right: number) =>
      asBuiltPlane(measuring({ mouthSeenLeft: left, mouthSeenRight: right }));
    const codes = (left: number, right: number) => checkWithoutCures(built(left, right)).map(({ code }) => code);
    expect(codes(0.05, 0.24)).not.toContain("mouth-evenness");
    expect(codes(0.05, 0.26)).toContain("mouth-evenness");
    const text = skewText(built(0.05, 0.25)).join("\n");
    expect(text).toMatch(/Uneven by 0\.2 mm: .*0\.15 mm in the middle.*0\.05 mm at the left.*0\.25 mm at the right/);
    expect(text).toMatch(/plane that much off the foot of the ramp at the left cheek/);
    expect(text).toMatch(/leans 0\.\d+ mm to one side/);
    expect(skewText(built(0.15, 0.15))).toEqual(["Mouth alike at both cheeks: 0.15 mm."]);
  });
});
