// Words of the jigs: what each stands against, how it is used, how it is printed.
import { sentence } from "./sentence.ts";

const FLAT =
  "Print it flat, the lettered face up, without supports, three walls or more; it needs no brim where the first layer holds.";
const THICK = { thick: "30 mm" };
const ANGLES = { angle: "60°", fromSquare: "30°" };

export const JIG = {
  flatPrint: FLAT,
  layered: sentence(
    ({ thick }: typeof THICK) => `${FLAT} Cut from sheet, it takes several layers to make ${thick}.`,
    THICK,
  ),
  plate: sentence(
    ({ layers, thick }: { layers: number; thick: string }) =>
      layers === 1 ? `From sheet: ${thick} thick.` : `From sheet: ${layers} of ${thick}, glued face to face.`,
    { layers: 2, thick: "12 mm" },
  ),
  noPlate: sentence(
    ({ least, most }: { least: string; most: string }) =>
      `None of the shop's plates serves it from sheet: it must be ${least} to ${most} thick.`,
    { least: "13.3 mm", most: "19.3 mm" },
  ),
} as const;

export const CRADLE = {
  title: sentence(({ angle }: { angle: string }) => `Bed cradle ${angle}`, { angle: "47°" }),
  against:
    "The bed block's sole lies on the long seat, its heel end against the short one. The base stands on the bench, and the bed above it is level.",
  use: sentence(
    ({ narrower }: { narrower: string }) =>
      `Survey the bed in it on a flat bench. To plane, grip block and cradle together in the vise, jaws on the block's sides (the cradle is ${narrower} narrower), and plane up the bed, toward the heel. Never cut against a loose block.`,
    { narrower: "9.6 mm" },
  ),
  fromSheet: sentence(
    ({ narrower }: { narrower: string }) => `Cut from sheet it is ${narrower} narrower than the block.`,
    { narrower: "20 mm" },
  ),
} as const;

export const FIT_TEST = {
  title: sentence(({ shank }: { shank: string }) => `Fit test for a ${shank} shank`, { shank: "6 mm" }),
  against: sentence(({ shank }: { shank: string }) => `The shank of a ${shank} drill.`, { shank: "6 mm" }),
  use: sentence(
    ({ shank, most, long }: Record<"shank" | "most" | "long", string>) =>
      `Print it first. Push the shank of a ${shank} drill (never its flutes) into the holes from 0 up: the first that it slides through without wobble is the printer's allowance. Up to ${most} (half of what the pin hole may be off) enter its number as jigs.holeClearance; if it is more, leave that at auto and open the guide's holes with the drill. The piece is ${long} long: measure it, and correct the printer's scale before you print gauges.`,
    { shank: "6 mm", most: "0.08 mm", long: "100 mm" },
  ),
} as const;

export const GAUGE = {
  title: sentence(
    ({ what, angle }: { what: "bed" | "ramp"; angle: string }) => `${what === "bed" ? "Bed" : "Ramp"} gauge ${angle}`,
    { what: "bed", angle: "47°" },
  ),
  against: sentence(
    ({ what, angle, fromSquare }: typeof ANGLES & { what: string }) =>
      `Its base lies along the saw's fence, where the core's sole will lie. The flank marked ${angle} is the ${what}'s angle from the sole, the one marked ${fromSquare} the saw's from square.`,
    { what: "ramp", ...ANGLES },
  ),
  use: sentence(
    ({ fromSquare }: { fromSquare: string }) =>
      `Power off: bring blade, disc or sliding bevel to the flank until no light shows. A saw that reads from square is set to the flank marked ${fromSquare}.`,
    ANGLES,
  ),
} as const;

export const PIN_GUIDE = {
  title: sentence(({ content }: { content: string }) => `Pin guide for ${content}`, { content: "a 9.8 mm drill" }),
  against:
    "It registers on both cheek blanks, before glue-up and truing: two pegs under the soles, one before the toe ends.",
  bush: sentence(({ outside }: { outside: string }) => `a drill bush ${outside} outside`, { outside: "14 mm" }),
  drill: sentence(({ drill }: { drill: string }) => `a ${drill} drill`, { drill: "9.8 mm" }),
  use: sentence(
    ({ peg, below, content }: Record<"peg" | "below" | "content", string>) =>
      `Put three pegs of ${peg} (dowels or drill shanks) through the small holes, standing out ${below} or more below it. Lay it on the outside of the left cheek, slide it toward the top and the heel until all three pegs touch both cheeks, and clamp it. Bore both at once with ${content}. Open a tight printed hole with the drill itself.`,
    { peg: "6 mm", below: "16 mm", content: "a 9.8 mm drill" },
  ),
  printed: `${FLAT} The holes stand upright as it lies.`,
} as const;

export const RECESS_TEMPLATE = {
  note: sentence(
    ({ plate, stop }: Record<"plate" | "stop", string>) =>
      `plate ${plate} thick; fences and stop on the marks, stop ${stop} high`,
    { plate: "8", stop: "12" },
  ),
  against: sentence(
    ({ chamfered }: { chamfered: boolean }) =>
      `The plate lies on the trued bed, its fences on both sides of the core, its stop against the lower edge of the bed${chamfered ? ", the feather taken off before" : ", at the blank's sole"}.`,
    { chamfered: true },
    { chamfered: false },
  ),
  bearing: sentence(
    ({ cutter, reach, first, depth }: Record<"cutter" | "reach" | "first" | "depth", string>) =>
      `a straight cutter of ${cutter} with a bearing of the same diameter on its shank, ${reach} from tip to bearing. First pass ${first} deep or more, so that the bearing runs on the plate; then ${depth}`,
    { cutter: "12.7 mm", reach: "25 mm", first: "17 mm", depth: "5.6 mm" },
  ),
  bush: sentence(
    ({ cutter, bush, reach, depth }: Record<"cutter" | "bush" | "reach" | "depth", string>) =>
      `a straight cutter of ${cutter} in a guide bush of ${bush} outside, the bush's collar shorter than the plate, the cutter reaching ${reach} under the router's base for the full ${depth}`,
    { cutter: "12.7 mm", bush: "17 mm", reach: "25 mm", depth: "5.6 mm" },
  ),
  slotted: sentence(
    ({ least, most }: Record<"least" | "most", string>) =>
      `Its fences are screwed on with countersunk M5 screws from the router's side and wing nuts, for cores of ${least} to ${most}: set both against the core, the opening's middle on the core's centre line.`,
    { least: "45 mm", most: "61 mm" },
  ),
  fixed: sentence(
    ({ core, room }: Record<"core" | "room", string>) =>
      `Its fences are made for a core of ${core}, printed with ${room} of room on each side, cut from sheet with none.`,
    { core: "49.6 mm", room: "0.2 mm" },
  ),
  use: sentence(
    ({ made, fences, plate, depth }: Record<"made" | "fences" | "plate" | "depth", string>) =>
      `Made for ${made}. ${fences} Clamp block and template together in vise or cradle, clear of the router's base. Set the depth from the plate's face: ${plate} of plate and ${depth} of recess. Rout from the top of the bed inward, a scrap behind its edge. Let the cutter stop before you lift the router.`,
    { made: "a straight cutter of 12.7 mm", fences: "Its fences are fixed.", plate: "8 mm", depth: "5.6 mm" },
  ),
  fromSheet: sentence(
    ({ plate, depth }: Record<"plate" | "depth", string>) =>
      `Cut from sheet it is ${plate} thick: then set the depth by ${plate} of plate and ${depth} of recess.`,
    { plate: "15 mm", depth: "5.6 mm" },
  ),
  printed: sentence(
    ({ guide }: { guide: "bearing" | "bush" }) =>
      `Print it as it lies, router's side on the table, fences up, without supports, four walls or more, so that the ${guide} does not dent it. The letters are on the side that lies on the wood.`,
    { guide: "bush" },
  ),
} as const;

export const SPACER = {
  title: sentence(({ gap }: { gap: string }) => `Throat spacer for a gap of ${gap}`, { gap: "3.34 mm" }),
  against:
    "Its flange lies on the flat tops of both blocks, one flank on the bed, the other on the ramp; its slot clears the cross pin.",
  checks:
    "It checks the front block's place; contact with the iron sets it. At the dry fit, iron out and pin in its holes, let it down over the pin, midway between the cheeks. Both flanks touch and the flange lies flat: the throat is as planned. If the flange stands off the tops, the throat is too narrow; if the flanks rattle, it is too wide. Find out why before you glue",
  sets: "It sets the blocks where the iron does not. With the cross pin in its holes, let it down over the pin midway between the cheeks and slide both blocks to its flanks, flange down on their tops",
  use: sentence(
    ({
      set,
      gap,
      hasFeatherOff,
      bedFoot,
      front,
      bed,
    }: Record<"set" | "gap" | "bedFoot" | "front" | "bed", string> & { hasFeatherOff: boolean }) =>
      `${set}. As planned, the blocks stand ${gap} apart on the sole of the blank${hasFeatherOff ? ", feather off" : ""}, the foot of the bed ${bedFoot} from the toe end of the cheeks, the front block's end ${front} and the bed block's ${bed} inside the ends of the cheeks.`,
    {
      set: "It checks the front block's place",
      gap: "3.34 mm",
      hasFeatherOff: true,
      bedFoot: "95.62 mm",
      front: "2.4 mm",
      bed: "2.4 mm",
    },
  ),
} as const;

export const SLED = {
  title: sentence(({ angle }: { angle: string }) => `Wedge sled ${angle}`, { angle: "6°" }),
  against:
    "Its straight side runs along the saw's fence. The wedge blank lies on its edge in the pocket, planed side in, butt against the thick end.",
  use: sentence(
    ({ length, wide }: Record<"length" | "wide", string>) =>
      `Plane the blank's lower side and cut it to ${length} × ${wide}. By hand: hold the sled in the vise and plane down to its open side, from butt to tip. At the saw: set the fence so that the blade just clears the open side; push sled and blank past together, a dowel in the hole and a push block on top, hands behind the blade. Leave a shaving for fitting.`,
    { length: "78.7 mm", wide: "48 mm" },
  ),
} as const;
