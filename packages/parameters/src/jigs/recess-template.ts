// Recess template: a plate on the bed whose opening leads the router; fences centre it on the core, a stop finds the bed's tip.
// Drawn as it is printed: x across, y up the bed from the iron's edge, the router's side down on the table.

import { cosDeg, point, sinDeg } from "@lamplane/geometry";
import type { Elevation } from "../elevation/elevation.ts";
import { fromIron } from "../elevation/frame.ts";
import { type Body, CAUTION, type Planned, type Standing } from "./jig.ts";
import {
  box,
  cutEntry,
  figureText,
  lengthWords,
  markEntry,
  nameLabel,
  noteEntry,
  roundedBox,
  sizeWords,
} from "./lines.ts";
import {
  BELOW_TOP,
  CORNER_GAP,
  FENCE_HEIGHT,
  fenceSlots,
  looseFences,
  SLOT_TRAVEL,
  slotTravel,
  slottedReach,
} from "./template-fences.ts";
import { type TemplatePlaces, templateOpening, templatePlaces, whyNoTemplate } from "./template-places.ts";

/** Width of a fixed fence and of the stop, and plate beyond them, mm. */
const FENCE = 10;
const LIP = 2;
/** Plate beyond the opening's upper end, mm: the router stands on it while its cutter runs out of the wood. */
const END_BAR = 34;

/** The template for the recess, with fixed or adjustable fences. */
export function recessTemplate(plane: Elevation): Planned {
  const { design } = plane;
  const places = templatePlaces(plane);
  const fault = whyNoTemplate(plane, places);
  if (fault) return { none: { name: "recess-template", ...fault } };
  const slotted = design.jigs.fence === "slotted";
  const main = plateBody(plane, places, slotted);
  const drawn = main.risers.map((riser) => markEntry(riser.outline));
  const { guide, cutter } = places;
  const label = [guideWords(plane), figureText(plane.recess!.width)];
  return {
    plan: {
      name: "recess-template",
      title: `Recess template, ${guideWords(plane)}`,
      bodies: slotted ? [main, ...looseFences(plane, places, main.standing)] : [main],
      drawing: {
        title: "recess-template",
        entries: [
          cutEntry(main.boundary),
          ...main.holes.map((hole) => cutEntry(hole.outline)),
          ...drawn,
          noteEntry(
            `recess template, ${label.join(", ")}, ${design.name}`,
            point(-places.halfCore + 3, places.stop + 3),
          ),
          noteEntry(
            `plate ${figureText(places.plate)} thick; fences and stop on the marks, stop ${figureText(places.stopDepth)} high`,
            point(-places.halfCore + 3, places.stop + 8),
          ),
        ],
      },
      registersAgainst: `The plate lies on the trued bed, fences on both sides of the core, the stop against the bed's tip: ${design.bed.featherChamfer > 0 ? "the foot of its feather chamfer, which is cut before" : "its edge on the blank's sole"}.`,
      use: templateUse(plane, places, slotted),
      printed: `Print it as it lies, router's side on the table, fences up, without supports, four walls or more, so that the ${guide === cutter ? "bearing" : "bush"} does not dent it. The letters are on the side that lies on the wood.`,
    },
  };
}

const guideWords = ({ design }: Elevation): string =>
  design.jigs.bush === 0
    ? `BEARING ${figureText(design.recess.cutter)}`
    : `CUTTER ${figureText(design.recess.cutter)} BUSH ${figureText(design.jigs.bush)}`;

function templateUse(plane: Elevation, places: TemplatePlaces, slotted: boolean): string {
  const { design, recess } = plane;
  const { clearance } = design.jigs;
  const depth = lengthWords(design, recess!.depth);
  const cutter = lengthWords(design, places.cutter);
  const reach = lengthWords(design, design.jigs.cutterLength);
  const made =
    design.jigs.bush === 0
      ? `a straight cutter of ${cutter} with a bearing of the same diameter on its shank, ${reach} from tip to bearing. First pass ${lengthWords(design, places.firstPass)} deep or more, so that the bearing runs on the plate; then ${depth}`
      : `a straight cutter of ${cutter} in a guide bush of ${lengthWords(design, design.jigs.bush)} outside, the bush's collar shorter than the plate, the cutter reaching ${reach} under the router's base for the full ${depth}`;
  const fences = slotted
    ? `Its fences are screwed on with countersunk M5 screws from the router's side and wing nuts, for cores of ${lengthWords(design, 2 * (places.halfCore - slotTravel(plane, places).inward))} to ${lengthWords(design, 2 * (places.halfCore + SLOT_TRAVEL))}: set both against the core, the opening's middle on the core's centre line.`
    : `Its fences are made for a core of ${lengthWords(design, 2 * places.halfCore)}, with ${sizeWords(design, clearance)} of room on each side.`;
  return `Made for ${made}. ${fences} Clamp block and template together in the vise or the cradle, clear of the router's base. Set the depth from the plate's face: ${lengthWords(design, places.plate)} of plate and ${depth} of recess. Rout from the top of the bed inward and round the end, a scrap behind the top's edge against tearing out. Let the cutter stop before you lift the router. ${CAUTION}`;
}

function plateBody(plane: Elevation, places: TemplatePlaces, slotted: boolean): Body {
  const { stop, bedTop, halfCore, stopDepth, plate } = places;
  const inner = halfCore + plane.design.jigs.clearance;
  const opening = templateOpening(plane, places);
  const high = Math.max(...opening.map((s) => s.from.y)) + END_BAR;
  const fences = [-1, 1].map((side) => {
    const [a, b] = [side * inner, side * (inner + FENCE)];
    return {
      outline: box(Math.min(a, b), stop + CORNER_GAP, Math.max(a, b), bedTop - BELOW_TOP),
      height: FENCE_HEIGHT,
    };
  });
  const slots = slotted ? fenceSlots(plane, places) : [];
  const reach = slotted ? slottedReach(plane) : inner + FENCE + LIP;
  const stopHalf = halfCore - CORNER_GAP - (slotted ? slotTravel(plane, places).inward : 0);
  return {
    boundary: roundedBox(-reach, stop - FENCE - LIP, reach, high, 4),
    holes: [{ outline: opening }, ...slots],
    thickness: plate,
    risers: [{ outline: box(-stopHalf, stop - FENCE, stopHalf, stop), height: stopDepth }, ...(slotted ? [] : fences)],
    lightening: [],
    labels: [nameLabel(guideWords(plane).split(/(?<=\d) /), plane.design, point(0, high - END_BAR / 2))],
    standing: plateStanding(plane, plate),
  };
}

/** Plate on the bed: its printed lower face is the router's side, one plate off the bed; its printed up points into the wood. */
function plateStanding({ frame, design }: Elevation, plate: number): Standing {
  const [c, s] = [cosDeg(frame.bedAngle), sinDeg(frame.bedAngle)];
  const { x, y } = fromIron(frame, 0, plate - design.iron.thickness);
  return { x: [0, 0, -1], y: [c, s, 0], z: [s, -c, 0], origin: [x, y, 0] };
}
