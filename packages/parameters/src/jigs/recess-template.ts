// Recess template: a plate on the bed whose opening leads the router; fences centre it on the core, a stop finds the bed's tip.
// Drawn as it is printed: x across, y up the bed from the iron's edge, the router's side down on the table.

import { cosDeg, type Outline, point, sinDeg } from "@lamplane/geometry";
import type { Drawing } from "../drawings/drawing.ts";
import type { Elevation } from "../elevation/elevation.ts";
import { bedToPlane } from "../elevation/frame.ts";
import { formatBareLength, formatLength } from "../units.ts";
import { RECESS_TEMPLATE } from "../words/jigs.ts";
import { printedRoom, SHEET_ROOM } from "./clearance.ts";
import type { JigBlock, JigBody, JigPlan, JigResult, Pose } from "./jig.ts";
import { boxOutline, cutEntry, markEntry, nameLabel, noteEntry, roundedBoxOutline } from "./lines.ts";
import { type PlateChoice, plateOf, plateTotal } from "./plate.ts";
import {
  BELOW_TOP,
  CORNER_GAP,
  FENCE_HEIGHT,
  fenceSlots,
  looseFenceBody,
  looseFences,
  SLOT_TRAVEL,
  slotTravel,
  slottedHalfWidth,
} from "./template-fences.ts";
import {
  type TemplateLayout,
  templateLayout,
  templateObstacle,
  templateOpening,
  templatePlateRange,
} from "./template-layout.ts";

/** Width of a fixed fence and of the stop, and plate beyond them, mm. */
const FENCE = 10;
const LIP = 2;
/** Plate beyond the opening's upper end, mm: the router stands on it while its cutter runs out of the wood. */
const END_BAR = 34;

/** The template for the recess, with fixed or adjustable fences. */
export function recessTemplate(plane: Elevation): JigResult {
  const { design } = plane;
  const places = templateLayout(plane);
  const fault = templateObstacle(plane, places);
  if (fault) return { none: { name: "recess-template", ...fault } };
  const isSlotted = design.jigs.fence === "slotted";
  const room = printedRoom(design).flanks;
  const plateRange = templatePlateRange(plane, places);
  const loose = isSlotted ? looseFences(plane, places) : [];
  const form = { name: "recess-template", bodies: [plateBlock(plane, places, room), ...loose], plateRange } as const;
  const plan = (): JigPlan => {
    const main = plateBody(plane, places, room);
    const sheet = plateOf(plateRange, design);
    return {
      ...form,
      title: `Recess template, ${guideText(plane)}`,
      bodies: [main, ...loose.map((fence) => looseFenceBody(fence, places, main.pose))],
      drawing: templateDrawing(plane, places, sheet),
      registersAgainst: RECESS_TEMPLATE.against({ chamfered: design.bed.featherChamfer > 0 }),
      use: templateUseText(plane, places, isSlotted) + (sheet ? ` ${fromSheetText(plane, plateTotal(sheet))}` : ""),
      printed: RECESS_TEMPLATE.printed({ guide: places.guide === places.cutter ? "bearing" : "bush" }),
    };
  };
  return { form, plan };
}

function templateDrawing(plane: Elevation, places: TemplateLayout, sheet: PlateChoice | undefined): Drawing {
  const { design } = plane;
  const cut = plateBody(plane, places, SHEET_ROOM.flanks);
  const label = [guideText(plane), formatBareLength(plane.recess!.width, design)];
  return {
    title: "recess-template",
    entries: [
      cutEntry(cut.boundary),
      ...cut.holes.map((hole) => cutEntry(hole.outline)),
      ...cut.risers.map((riser) => markEntry(riser.outline)),
      noteEntry(`recess template, ${label.join(", ")}, ${design.name}`, point(-places.halfCore + 3, places.stop + 3)),
      noteEntry(
        RECESS_TEMPLATE.note({
          plate: formatBareLength(sheet ? plateTotal(sheet) : places.plate, design),
          stop: formatBareLength(places.stopDepth, design),
        }),
        point(-places.halfCore + 3, places.stop + 8),
      ),
    ],
  };
}

const guideText = ({ design }: Elevation): string =>
  design.jigs.bush === 0
    ? `BEARING ${formatBareLength(design.recess.cutter, design)}`
    : `CUTTER ${formatBareLength(design.recess.cutter, design)} BUSH ${formatBareLength(design.jigs.bush, design)}`;

function templateUseText(plane: Elevation, places: TemplateLayout, slotted: boolean): string {
  const { design, recess } = plane;
  const depth = formatLength(recess!.depth, design);
  const cutter = formatLength(places.cutter, design);
  const reach = formatLength(design.jigs.cutterLength, design);
  const made =
    design.jigs.bush === 0
      ? RECESS_TEMPLATE.bearing({ cutter, reach, first: formatLength(places.firstPass, design), depth })
      : RECESS_TEMPLATE.bush({ cutter, bush: formatLength(design.jigs.bush, design), reach, depth });
  const fences = slotted
    ? RECESS_TEMPLATE.slotted({
        least: formatLength(2 * (places.halfCore - slotTravel(plane, places).inward), design),
        most: formatLength(2 * (places.halfCore + SLOT_TRAVEL), design),
      })
    : RECESS_TEMPLATE.fixed({
        core: formatLength(2 * places.halfCore, design),
        room: formatLength(printedRoom(design).flanks, design),
      });
  return RECESS_TEMPLATE.use({ made, fences, plate: formatLength(places.plate, design), depth });
}

const fromSheetText = ({ design, recess }: Elevation, plate: number): string =>
  RECESS_TEMPLATE.fromSheet({ plate: formatLength(plate, design), depth: formatLength(recess!.depth, design) });

/** y of the plate's upper end. mm */
const plateEnd = (opening: Outline): number => Math.max(...opening.map((s) => s.from.y)) + END_BAR;

function plateBlock(plane: Elevation, places: TemplateLayout, room: number): JigBlock {
  const { stop, bedTop, halfCore, stopDepth, plate } = places;
  const slotted = plane.design.jigs.fence === "slotted";
  const inner = halfCore + room;
  const high = plateEnd(templateOpening(plane, places));
  const fences = [-1, 1].map((side) => {
    const [a, b] = [side * inner, side * (inner + FENCE)];
    return {
      outline: boxOutline(Math.min(a, b), stop + CORNER_GAP, Math.max(a, b), bedTop - BELOW_TOP),
      height: FENCE_HEIGHT,
    };
  });
  const reach = slotted ? slottedHalfWidth(plane) : inner + FENCE + LIP;
  const stopHalf = halfCore - CORNER_GAP - (slotted ? slotTravel(plane, places).inward : 0);
  return {
    boundary: roundedBoxOutline(-reach, stop - FENCE - LIP, reach, high, 4),
    thickness: plate,
    risers: [
      { outline: boxOutline(-stopHalf, stop - FENCE, stopHalf, stop), height: stopDepth },
      ...(slotted ? [] : fences),
    ],
  };
}

function plateBody(plane: Elevation, places: TemplateLayout, room: number): JigBody {
  const { jigs } = plane.design;
  const opening = templateOpening(plane, places);
  return {
    ...plateBlock(plane, places, room),
    holes: [{ outline: opening }, ...(jigs.fence === "slotted" ? fenceSlots(plane, places) : [])],
    lightening: [],
    labels: [nameLabel(guideText(plane).split(/(?<=\d) /), plane.design, point(0, plateEnd(opening) - END_BAR / 2))],
    pose: platePose(plane, places.plate),
  };
}

/** Plate on the bed: its printed lower face is the router's side, one plate off the bed; its printed up points into the wood. */
function platePose({ frame }: Elevation, plate: number): Pose {
  const [c, s] = [cosDeg(frame.bedAngle), sinDeg(frame.bedAngle)];
  const { x, y } = bedToPlane(frame, 0, plate - frame.thickness);
  return { x: [0, 0, -1], y: [c, s, 0], z: [s, -c, 0], origin: [x, y, 0] };
}
