// Recess template: a plate on the bed whose opening leads the router; fences centre it on the core, a stop finds the bed's tip.
// Drawn as it is printed: x across, y up the bed from the iron's edge, the router's side down on the table.
import { blocksAt } from "../elevation/blocks.ts";
import type { Elevation } from "../elevation/elevation.ts";
import { fromIron, toIron } from "../elevation/frame.ts";
import { type Outline, point } from "../elevation/outline.ts";
import { cosDeg, sinDeg } from "../trig.ts";
import {
  type Body,
  CAUTION,
  type Hole,
  LEAST_WALL,
  type NoJig,
  type Planned,
  type Standing,
  TABLE_CHAMFER,
} from "./jig.ts";
import { box, cutEntry, figureText, lengthWords, markEntry, nameLabel, noteEntry, roundedBox } from "./lines.ts";

const FENCE = 10;
const FENCE_HEIGHT = 12;
/** Plate beyond fences and stop, mm. */
const LIP = 2;
/** Between the ends of fence and stop, mm: no inner corner that could hold the block's arris off. */
const CORNER_GAP = 3;
/** How deep the first of two passes goes, at most, mm. */
const FIRST_PASS = 3;
/** How much of a bearing must run on the plate, mm. */
const BEARING_ON = 3;
/** Thinnest plate that does not bend under a router, mm. */
const LEAST_PLATE = 5;
/** Plate beyond the opening's upper end, mm: the router stands on it while its cutter runs out of the wood. */
const END_BAR = 34;

/** What decides the template, read off the plane. All mm, along the bed from the iron's edge where it is a place. */
export interface TemplatePlaces {
  readonly cutter: number;
  /** Diameter of what runs along the opening: a bearing of the cutter's size, or the bush. */
  readonly guide: number;
  /** By how much the opening is larger than the recess, all round: (bush − cutter) / 2. */
  readonly grown: number;
  readonly plate: number;
  readonly firstPass: number;
  /** Where the stop touches the block: the lowest place of its bed end, which is the chamfer's foot. */
  readonly stop: number;
  readonly stopDepth: number;
  /** Where the bed comes out of the blank's top. */
  readonly bedTop: number;
  readonly halfCore: number;
}

export function templatePlaces(plane: Elevation): TemplatePlaces {
  const { design, frame, recess } = plane;
  const { bush, cutterLength } = design.jigs;
  const { cutter } = design.recess;
  const depth = recess?.depth ?? 0;
  const guide = bush === 0 ? cutter : bush;
  const chain = blocksAt(plane, "blank").bedChain;
  const foot = toIron(frame, chain[0]!.from);
  const firstPass = Math.min(FIRST_PASS, depth / 2);
  return {
    cutter,
    guide,
    grown: (guide - cutter) / 2,
    plate: bush === 0 ? Math.max(cutterLength - firstPass + BEARING_ON, LEAST_PLATE) : cutterLength - depth,
    firstPass,
    stop: foot.s,
    stopDepth: Math.max(-design.iron.thickness - foot.v + 4, 8),
    bedTop: toIron(frame, chain.at(-1)!.to).s,
    halfCore: plane.widths.core / 2,
  };
}

/** The template for the recess, with fixed or adjustable fences. */
export function recessTemplate(plane: Elevation): Planned {
  const { design } = plane;
  const places = templatePlaces(plane);
  const fault = whyNot(plane, places);
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
      bodies: slotted ? [main, ...looseFences(plane, places)] : [main],
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
    : `Its fences are made for a core of ${lengthWords(design, 2 * places.halfCore)}, with ${figureText(clearance)} mm of room on each side.`;
  return `Made for ${made}. ${fences} Clamp block and template together in the vise or the cradle, clear of the router's base. Set the depth from the plate's face: ${lengthWords(design, places.plate)} of plate and ${depth} of recess. Rout from the top of the bed inward and round the end, a scrap behind the top's edge against tearing out. Let the cutter stop before you lift the router. ${CAUTION}`;
}

/** What keeps a template from being made: a bush too small or too large, a cutter too short, lands too narrow. */
function whyNot(plane: Elevation, places: TemplatePlaces): Omit<NoJig, "name"> | undefined {
  const { recess, design } = plane;
  if (!recess)
    return {
      what: "The recess's width",
      value: 0,
      limit: 0,
      unit: "mm",
      parameters: ["capIron.screwHead.diameter"],
      advice: "There is no recess to rout.",
    };
  const { bush } = design.jigs;
  if (bush > 0 && bush < places.cutter + 2 * LEAST_WALL)
    return {
      what: "The guide bush's diameter",
      value: bush,
      limit: places.cutter + 2 * LEAST_WALL,
      unit: "mm",
      parameters: ["jigs.bush", "recess.cutter"],
      advice: "The cutter must turn inside its bush: take a larger bush, a smaller cutter, or a bearing (0).",
    };
  if (places.plate < LEAST_PLATE)
    return {
      what: "The plate that cutter and recess leave",
      value: places.plate,
      limit: LEAST_PLATE,
      unit: "mm",
      parameters: ["jigs.cutterLength", "recess.depth"],
      advice: "Take a longer cutter.",
    };
  const beside = places.halfCore + design.jigs.clearance - recess.width / 2 - places.grown;
  if (beside < LEAST_WALL)
    return {
      what: "The plate between opening and fence",
      value: beside,
      limit: LEAST_WALL,
      unit: "mm",
      parameters: ["jigs.bush", "recess.width"],
      advice: "Take a smaller bush, or a bearing (0).",
    };
  const below = recess.low - places.grown - places.stop;
  if (design.jigs.fence === "slotted" && slotTravel(plane, places).inward < 0)
    return {
      what: "The plate between the opening and the fences' slots",
      value: slotTravel(plane, places).inward + LEAST_WALL,
      limit: LEAST_WALL,
      unit: "mm",
      parameters: ["jigs.fence", "jigs.bush", "recess.width"],
      advice: "Have the fences fixed.",
    };
  if (below < CORNER_GAP)
    return {
      what: "The plate between stop and opening",
      value: below,
      limit: CORNER_GAP,
      unit: "mm",
      parameters: ["jigs.bush", "recess.travel"],
      advice: "Take a smaller bush, or a bearing (0).",
    };
  return undefined;
}

/** The opening: the recess grown all round, run on past the bed's top until the cutter is clear of the wood. */
export function templateOpening(plane: Elevation, places: TemplatePlaces): Outline {
  const { width, low } = plane.recess!;
  const half = width / 2 + places.grown;
  const end = places.bedTop + places.cutter / 2 + places.guide / 2 + 1;
  return roundedBox(-half, low - places.grown, half, end, Math.min(places.guide / 2, half));
}

/** Room for the screw in a slot, its head's edge, how far fences can be set either way, mm. M5 countersunk: ISO 10642, head 10. */
const SCREW = 5.5;
const HEAD_CHAMFER = 2.8;
const SLOT_TRAVEL = 8;
const LOOSE_FENCE = 16;
const BESIDE = 6;

function plateBody(plane: Elevation, places: TemplatePlaces, slotted: boolean): Body {
  const { stop, bedTop, halfCore, stopDepth, plate } = places;
  const inner = halfCore + plane.design.jigs.clearance;
  const opening = templateOpening(plane, places);
  const high = Math.max(...opening.map((s) => s.from.y)) + END_BAR;
  const fences = [-1, 1].map((side) => {
    const [a, b] = [side * inner, side * (inner + FENCE)];
    return { outline: box(Math.min(a, b), stop + CORNER_GAP, Math.max(a, b), bedTop - 4), height: FENCE_HEIGHT };
  });
  const slots = slotted ? fenceSlots(plane, places) : [];
  const reach = slotted ? screwX(plane) + SLOT_TRAVEL + SCREW / 2 + HEAD_CHAMFER + 4 : inner + FENCE + LIP;
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

/** How far each fence can be set in from this core's side, and out from it, mm. */
function slotTravel(plane: Elevation, { grown }: TemplatePlaces): { inward: number; outward: number } {
  const room = screwX(plane) - SCREW / 2 - HEAD_CHAMFER - plane.recess!.width / 2 - grown - LEAST_WALL - TABLE_CHAMFER;
  return { inward: Math.min(SLOT_TRAVEL, room), outward: SLOT_TRAVEL };
}

/** x of a screw when the fences stand at the core's sides. */
const screwX = (plane: Elevation): number => plane.widths.core / 2 + plane.design.jigs.clearance + LOOSE_FENCE / 2;

/** Heights up the bed of the screws of each loose fence. */
const screwHeights = ({ stop, bedTop }: TemplatePlaces): readonly number[] => [stop + 16, bedTop - 16];

function fenceSlots(plane: Elevation, places: TemplatePlaces): Hole[] {
  const x = screwX(plane);
  const { inward, outward } = slotTravel(plane, places);
  return [-1, 1].flatMap((side) =>
    screwHeights(places).map((y) => {
      const [a, b] = [side * (x - inward), side * (x + outward)];
      const [left, right] = [Math.min(a, b) - SCREW / 2, Math.max(a, b) + SCREW / 2];
      return {
        outline: roundedBox(left, y - SCREW / 2, right, y + SCREW / 2, SCREW / 2 - 0.05),
        chamfer: HEAD_CHAMFER,
      };
    }),
  );
}

/** Two bars printed beside the plate, which stand under it at the core's sides. */
function looseFences(plane: Elevation, places: TemplatePlaces): Body[] {
  const { stop, bedTop, plate } = places;
  const [low, high] = [stop + CORNER_GAP, bedTop - 4];
  const reach = screwX(plane) + SLOT_TRAVEL + SCREW / 2 + HEAD_CHAMFER + 4;
  return [0, 1].map((i) => {
    const middle = reach + BESIDE + LOOSE_FENCE / 2 + i * (LOOSE_FENCE + BESIDE);
    const target = (i === 0 ? 1 : -1) * screwX(plane);
    const holes = screwHeights(places).map((y) => ({
      outline: roundedBox(middle - SCREW / 2, y - SCREW / 2, middle + SCREW / 2, y + SCREW / 2, SCREW / 2 - 0.05),
    }));
    const standing = plateStanding(plane, plate);
    const shift = target - middle;
    const move = (k: 0 | 1 | 2) => standing.origin[k] + shift * standing.x[k] + plate * standing.z[k];
    return {
      boundary: roundedBox(middle - LOOSE_FENCE / 2, low, middle + LOOSE_FENCE / 2, high, 2),
      holes,
      thickness: FENCE_HEIGHT,
      risers: [],
      lightening: [],
      labels: [],
      standing: { ...standing, origin: [move(0), move(1), move(2)] },
    };
  });
}

/** Plate on the bed: its printed lower face is the router's side, one plate off the bed; its printed up points into the wood. */
function plateStanding({ frame, design }: Elevation, plate: number): Standing {
  const [c, s] = [cosDeg(frame.bedAngle), sinDeg(frame.bedAngle)];
  const { x, y } = fromIron(frame, 0, plate - design.iron.thickness);
  return { x: [0, 0, -1], y: [c, s, 0], z: [s, -c, 0], origin: [x, y, 0] };
}
