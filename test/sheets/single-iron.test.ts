// A single iron: nothing that a maker reads speaks of a cap iron or of a screw, and the wedge bears on the iron itself.
import { allFigures, mouthReading, mouthText, toleranceReport, toleranceText } from "@lamplane/bench";
import { elevation, throatSeries } from "@lamplane/parameters/elevation";
import { jigPlans, omittedJigs } from "@lamplane/parameters/jigs";
import { ironSolids, partsOf } from "@lamplane/parameters/solids";
import type { Design } from "@lamplane/parameters/table";
import { layoutPictures } from "@lamplane/sheets";
import { describe, expect, test } from "vitest";
import { sheetPlane, sheetWords } from "../../packages/viewer/src/worker/sheet-plane.ts";
import { designWith, WORKED } from "../support/designs.ts";
import { drawnTraveller } from "../support/travellers.ts";

const SINGLE = { ...WORKED, "capIron.thickness": 0, "capIron.hump": 1 };
const FOREIGN = /cap ?iron|screw|hump\b(?!ed)/i;
/** The bed itself is judged for humps: no cap iron's. */
const OF_THE_BED = /never humped|chatters on a hump|hollow or humped/;

function* textsIn(value: unknown): Generator<string> {
  if (typeof value === "string") yield value;
  else if (value && typeof value === "object") for (const each of Object.values(value)) yield* textsIn(each);
}
const foreign = (value: unknown) => [...textsIn(value)].filter((text) => FOREIGN.test(text) && !OF_THE_BED.test(text));

const readBy = (design: Design) => {
  const plane = elevation(design);
  const stages = ["billet", "bed", "trued"] as const;
  return {
    traveller: drawnTraveller(design),
    layout: layoutPictures(plane),
    jigs: jigPlans(plane).map(({ title, use, registersAgainst, printed, bodies }) => ({
      title,
      use,
      registersAgainst,
      printed,
      labels: bodies.map(({ labels }) => labels),
    })),
    figures: allFigures(plane),
    page: stages.map((stage) => [sheetPlane(design, plane, stage).views, sheetWords(design, plane, stage)]),
    tolerance: toleranceText(toleranceReport(design), design, true),
  };
};

describe("a single iron", () => {
  const design = designWith(SINGLE);
  const plane = elevation(design);
  test.each(Object.entries(readBy(design)))("%s speaks of nothing that it does not have", (_, read) =>
    expect(foreign(read)).toEqual([]),
  );
  test("nor does the mouth's reading where packing leaves the iron no room", () => {
    const packed = { ...mouthReading(plane, { seen: 9, wanted: 0.15 }) };
    const text = mouthText({ ...packed, packing: { ...packed.packing!, roomUnderPin: -1 } }, plane);
    expect(text.join(" ")).toMatch(/then the iron does not pass under the cross pin/);
    expect(foreign(text)).toEqual([]);
  });
  test("a plane with a cap iron is read to speak of it", () => {
    const { traveller, layout, page, tolerance } = readBy(designWith({ ...SINGLE, "capIron.thickness": 3.2 }));
    for (const read of [traveller, layout, page, tolerance]) expect(foreign(read).length).toBeGreaterThan(0);
  });
  test("has no recess, no cap iron among its solids, and no template to rout by", () => {
    expect(plane.recess).toBeUndefined();
    expect(ironSolids(plane).map(({ name }) => name)).toEqual(["iron"]);
    expect([...jigPlans(plane), ...omittedJigs(plane)].map(({ name }) => name)).not.toContain("recess-template");
    expect(partsOf(plane, "trued").map(({ name }) => name)).toContain("wedge");
  });
  test("its wedge bears on its face from tip to butt, and a shaving meets iron and wedge only", () => {
    const [edge, , , top] = plane.iron.map(({ from }) => from);
    const [dx, dy] = [top!.x - edge!.x, top!.y - edge!.y];
    for (const { x, y } of plane.wedge.slice(0, 2).map(({ from }) => from))
      expect(((y - edge!.y) * dx - (x - edge!.x) * dy) / Math.hypot(dx, dy)).toBeCloseTo(0, 9);
    const met = new Set(throatSeries(plane).map(({ nearest }) => nearest));
    expect([...met].every((each) => each !== "cap iron")).toBe(true);
  });
});
