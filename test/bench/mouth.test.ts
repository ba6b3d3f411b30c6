// The mouth against the whole elevation computed again with a sole further down, and against cuts through the blocks' outlines.
import { lifeDepth, mouthLife, mouthLifeAt, mouthLifeCells, mouthReading, mouthText } from "@lamplane/bench";
import { cosDeg, cotDeg, sinDeg, tanDeg, tessellate } from "@lamplane/geometry";
import {
  blocksAt,
  type Elevation,
  elevation,
  figureValue,
  mouthGrowthAt,
  mouthOpeningAt,
  rampXAt,
  removalForOpening,
} from "@lamplane/parameters/elevation";
import { TABLE } from "@lamplane/parameters/table";
import { describe, expect, test } from "vitest";
import { isBuildable } from "../support/buildable.ts";
import { type Changes, designWith, randomDesigns, WORKED } from "../support/designs.ts";

const designs = randomDesigns(31, 60, isBuildable);
const curved = designs.filter(({ design }) => elevation(design).ramp.curve);
const worked = elevation(designWith(WORKED));

/** The same plane, its sole `off` mm further down: every place in the body stays where it is. */
function retrued(changes: Changes, plane: Elevation, off: number, opening: number): Elevation {
  const { design, frame, top, pin, ramp, wedgeLength } = plane;
  const up = off / sinDeg(frame.bedAngle);
  const curve = ramp.curve ? { "ramp.radius": ramp.curve.radius, "ramp.wearHeight": design.ramp.wearHeight - off } : {};
  return elevation(
    designWith({
      ...changes,
      ...curve,
      "mouth.fromToe": frame.mouthX + off * cotDeg(frame.bedAngle),
      "mouth.opening": opening,
      "body.height": design.body.height - off,
      "body.crown": top.crownX,
      "body.toeHeight": top.toeHeight - off,
      "body.heelHeight": top.heelHeight - off,
      "pin.height": pin.centre.y - off,
      "wedge.tipFromEdge": design.wedge.tipFromEdge - up,
      "wedge.length": wedgeLength,
      "capIron.screwHead.fromEdge": design.capIron.screwHead.fromEdge - up,
      "ramp.shape": ramp.shape,
      ...(ramp.shape === "straight" ? { "ramp.angle": ramp.angle } : {}),
    }),
  );
}

/** Mouth at a height over the trued sole, read off the facetted outlines of the two blocks before the sole is trued. */
function openingByOutlines(plane: Elevation, y: number): number {
  const { front, bed } = blocksAt(plane, "glued");
  const xs = (outline: typeof front) => {
    const corners = tessellate(outline, 1e-4);
    return corners.flatMap((a, i) => {
      const b = corners[(i + 1) % corners.length]!;
      return a.y < y !== b.y < y ? [a.x + ((b.x - a.x) * (y - a.y)) / (b.y - a.y)] : [];
    });
  };
  const { design, frame } = plane;
  return Math.min(...xs(bed)) - design.iron.thickness / sinDeg(frame.bedAngle) - Math.max(...xs(front));
}

test("there are curved ramps among the designs", () => expect(curved.length).toBeGreaterThan(15));

describe("the mouth at any height of the sole", () => {
  test("is the gap between the blocks' outlines less the iron, on the wear and on the curve", () => {
    for (const { design } of designs) {
      const plane = elevation(design);
      // The feather chamfer is no bed: above it only.
      const low = Math.max(0, design.bed.featherChamfer - design.sole.allowance) + 0.01;
      for (const share of [0, 0.2, 0.5, 0.9]) {
        const y = low + share * 0.5 * design.body.height;
        expect(mouthOpeningAt(plane, y)).toBeCloseTo(openingByOutlines(plane, y), 3);
      }
    }
  });

  test("comes back when it is turned round, and grows as it says", () => {
    for (const { design } of designs) {
      const plane = elevation(design);
      for (const off of [-design.sole.allowance, -0.3, 0, 0.4, 3, 12, 25, 50]) {
        const opening = mouthOpeningAt(plane, off);
        expect(removalForOpening(plane, opening)).toBeCloseTo(off, 8);
        const step = 1e-5;
        const rise = (mouthOpeningAt(plane, off + step) - mouthOpeningAt(plane, off - step)) / (2 * step);
        expect(mouthGrowthAt(plane, off)).toBeCloseTo(rise, 4);
      }
    }
  });

  test("grows faster above a wear than on it", () => {
    for (const { design } of curved) {
      const plane = elevation(design);
      const { begin, end } = plane.ramp.curve!;
      expect(mouthGrowthAt(plane, begin.y)).toBeCloseTo(mouthGrowthAt(plane, 0), 12);
      expect(mouthGrowthAt(plane, (begin.y + end.y) / 2)).toBeGreaterThan(mouthGrowthAt(plane, begin.y) + 0.01);
    }
  });
});

describe("what to take off", () => {
  test("is (wanted − seen) / mouthGrowth of the worked set, computed apart from the project", () => {
    const { takeOff, growth, verdict } = mouthReading(worked, { seen: 0.05 });
    expect(growth).toBeCloseTo(1.5099, 4);
    expect(takeOff).toBeCloseTo(0.1 / 1.5099, 5);
    expect(verdict).toBe("narrow");
  });

  test("brings the mouth to the one wanted, when the elevation is computed again with the lower sole", () => {
    for (const { changes, design } of designs) {
      const plane = elevation(design);
      for (const [seen, more] of [
        [design.mouth.opening, 0.3],
        [design.mouth.opening + 0.1, 1.2],
      ] as const) {
        const wanted = seen + more;
        const { takeOff } = mouthReading(plane, { seen, wanted });
        const off = removalForOpening(plane, seen) + takeOff;
        if (off > design.ramp.wearHeight - TABLE.ramp.wearHeight.min) continue;
        const after = retrued(changes, plane, off, wanted);
        // The mouth is given to the new elevation; that it is the right one shows in ramp and bed, which have not moved.
        expect(after.points.rampTop.x).toBeCloseTo(plane.points.rampTop.x, 6);
        expect(after.points.rampTop.y).toBeCloseTo(plane.points.rampTop.y - off, 6);
        expect(after.points.bedTop.x).toBeCloseTo(plane.points.bedTop.x, 6);
      }
    }
  });

  test("is exact beyond the wear, where the straight rule would take off too much", () => {
    for (const { design } of curved) {
      const plane = elevation(design);
      const { begin, end } = plane.ramp.curve!;
      const seen = mouthOpeningAt(plane, begin.y / 2);
      const wanted = mouthOpeningAt(plane, (begin.y + end.y) / 2);
      const { takeOff, growth } = mouthReading(plane, { seen, wanted });
      expect(openingByOutlines(plane, begin.y / 2 + takeOff)).toBeCloseTo(wanted, 3);
      expect(takeOff).toBeLessThan((wanted - seen) / growth);
    }
  });

  test("is counted in whole shavings, never one too many", () => {
    for (const seen of [0.01, 0.05, 0.1, 0.149]) {
      const { takeOff, shavings, shaving, opensPerShaving } = mouthReading(worked, { seen, shaving: 0.02 });
      expect(shavings * shaving).toBeLessThanOrEqual(takeOff + 1e-9);
      expect((shavings + 1) * shaving).toBeGreaterThan(takeOff);
      expect(opensPerShaving).toBeCloseTo(0.02 * 1.5099, 5);
    }
    expect(mouthReading(worked, { seen: 0, wanted: 0.302, shaving: 0.02 }).shavings).toBe(10);
  });

  test("is told as a least where no light is seen", () => {
    const reading = mouthReading(worked, { seen: 0 });
    expect(reading).toMatchObject({ verdict: "shut" });
    expect(mouthText(reading, worked).join(" ")).toMatch(/TAKE OFF at least 0\.1 mm/);
  });

  test("is nothing where the mouth is as wanted, or wider by less than a shaving opens", () => {
    for (const seen of [0.15, 0.2])
      expect(mouthReading(worked, { seen })).toMatchObject({ verdict: "as-wanted", takeOff: 0 });
    expect(mouthReading(worked, { seen: 0.23 }).verdict).toBe("wide");
  });
});

describe("a mouth that is too wide", () => {
  const wide = designs.map(({ changes, design }) => {
    const plane = elevation(design);
    const seen = design.mouth.opening + 0.9;
    return { changes, plane, now: removalForOpening(plane, seen), reading: mouthReading(plane, { seen }) };
  });

  test("is closed by a patch whose foot stands at the mouth wanted and whose top fades into the ramp", () => {
    for (const { plane, now, reading } of wide) {
      const { thickness, length, endAngle, growth, width } = reading.patch!;
      const foot = plane.frame.mouthX + now * cotDeg(plane.frame.bedAngle) - reading.wanted;
      const face = (up: number) => foot - up * cotDeg(endAngle);
      expect(face(thickness)).toBeCloseTo(rampXAt(plane.ramp, now + thickness), 9);
      for (const share of [0.1, 0.5, 0.9])
        expect(face(share * thickness)).toBeGreaterThan(rampXAt(plane.ramp, now + share * thickness));
      // Once the patch is gone, the mouth is the one that it would have been without.
      expect(reading.wanted + growth * thickness).toBeCloseTo(mouthOpeningAt(plane, now + thickness), 9);
      expect(growth).toBeGreaterThan(reading.growth);
      expect(foot - length).toBeLessThan(face(thickness) - 4 * thickness);
      expect(width).toBe(plane.widths.core);
    }
  });

  test("is closed by packing: the elevation of an iron so much thicker on the same bed has the mouth wanted", () => {
    for (const { changes, plane, reading } of wide) {
      const { thickness, wedgeOut, roomUnderPin } = reading.packing!;
      const by = reading.tooWide;
      const { iron, wedge, capIron } = plane.design;
      const packed = elevation(
        designWith({
          ...changes,
          "iron.thickness": iron.thickness + thickness,
          "mouth.fromToe": plane.frame.mouthX - by,
          "pin.height": plane.pin.centre.y,
          "wedge.tipFromEdge": wedge.tipFromEdge + by * cosDeg(plane.frame.bedAngle) + wedgeOut,
          "capIron.hump": capIron.hump,
        }),
      );
      expect(packed.points.bedFoot.x).toBeCloseTo(plane.points.bedFoot.x, 9);
      expect(packed.pin.centre.x).toBeCloseTo(plane.pin.centre.x, 9);
      const hump = capIron.thickness > 0 ? capIron.hump : 0;
      const under = packed.pin.v - plane.pinSize.diameter / 2 - capIron.thickness - hump;
      expect(roomUnderPin).toBeCloseTo(under, 9);
      expect(wedgeOut * tanDeg(wedge.angle)).toBeCloseTo(thickness, 9);
    }
  });

  test("by so much that packing drives the wedge from under the pin wants a thinner wedge, and says so", () => {
    // Packing of 2·sin 47 = 1.463 pushes the wedge out by 1.463 / tan 6 = 13.9; the worked set has less below the pin.
    const { packing } = mouthReading(worked, { seen: 2.15 });
    expect(packing!.wedgeBelowPin).toBeCloseTo(worked.pinMargins.wedgeBelow - (2 * sinDeg(47)) / tanDeg(6), 9);
    expect(packing!.wedgeBelowPin).toBeLessThan(0);
    const text = mouthText(mouthReading(worked, { seen: 2.15 }), worked).join("\n");
    expect(text).toMatch(/does not reach under the cross pin: make a wedge 1\.46 mm thinner/);
    expect(text).not.toMatch(/No wood is lost/);
  });

  test("is told with both ways and their costs", () => {
    const text = mouthText(mouthReading(worked, { seen: 1 }), worked).join("\n");
    expect(text).toMatch(/TOO WIDE by 0\.85 mm/);
    expect(text).toMatch(/Packing: 0\.62 mm/);
    expect(text).toMatch(/Patch: .*4 mm.*thick/);
  });
});

describe("the table of a plane's life", () => {
  test("is that of the elevation computed again at each depth", () => {
    let rows = 0;
    for (const { changes, design } of designs) {
      const plane = elevation(design);
      for (const row of mouthLife(plane, 0.7)) {
        if (row.wearLeft !== undefined && row.wearLeft < TABLE.ramp.wearHeight.min) continue;
        rows++;
        const after = retrued(changes, plane, row.takenOff, row.opening);
        expect(after.points.rampTop.x).toBeCloseTo(plane.points.rampTop.x, 6);
        expect(after.frame.mouthX).toBeCloseTo(row.edgeFromToe, 9);
        expect(figureValue(after, "mouthGrowth")).toBeCloseTo(row.growth, 9);
        expect(after.pin.centre.x).toBeCloseTo(plane.pin.centre.x, 6);
        expect(row.wedgeTipFromEdge).toBeCloseTo(after.design.wedge.tipFromEdge, 9);
        expect(row.height).toBeCloseTo(after.design.body.height, 9);
        expect(figureValue(after, "pinY")).toBeCloseTo(row.pinHeight, 9);
        const pad = figureValue(after, "recessPad");
        if (pad === undefined) expect(row.bedToRecess).toBeUndefined();
        else expect(row.bedToRecess).toBeCloseTo(pad, 9);
      }
    }
    expect(rows).toBeGreaterThan(100);
  });

  test("goes on over the wear's end, by the outlines", () => {
    const plane = elevation(designWith({ "bed.angle": 55, "ramp.wearHeight": 1, "mouth.opening": 0.8 }));
    const rows = mouthLife(plane);
    expect(rows.filter(({ wearLeft }) => wearLeft === 0).length).toBeGreaterThan(5);
    for (const { takenOff, opening } of rows) expect(openingByOutlines(plane, takenOff + 1e-7)).toBeCloseTo(opening, 3);
  });

  test("ends at 3 mm or at ten times the mouth wanted, never before 1 mm, in round steps of the maker's unit", () => {
    expect(lifeDepth(elevation(designWith({ ...WORKED, "mouth.opening": 3 })))).toBe(3);
    expect(lifeDepth(elevation(designWith({ ...WORKED, "mouth.opening": 0 })))).toBe(1);
    const at = lifeDepth(elevation(designWith({ ...WORKED, "mouth.opening": 0.25 })));
    expect(at).toBeCloseTo((9 * 0.25) / 1.5099, 4);
    expect(mouthLife(worked).map(({ takenOff }) => takenOff)).toEqual([0, 0.25, 0.5, 0.75, 1]);
    const inches = elevation({ ...worked.design, units: "in" });
    expect(mouthLifeCells(mouthLife(inches), inches.design).map(([off]) => off)).toEqual([
      "off",
      "0",
      "0.010",
      "0.020",
      "0.030",
      "0.040",
    ]);
  });

  test("counts the bed that a tall feather chamfer leaves below the bevel's heel", () => {
    const plane = elevation(designWith({ ...WORKED, "bed.featherChamfer": 4.5, "sole.allowance": 3 }));
    const whole = figureValue(plane, "unsupported")!;
    expect(mouthLifeAt(plane, 0).bedBelowHeel).toBeCloseTo(whole - 1.5 / sinDeg(47), 9);
    expect(mouthLifeAt(plane, 2).bedBelowHeel).toBeCloseTo(whole, 9);
  });
});
