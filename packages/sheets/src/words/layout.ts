// Words on the layout at true size.
import { sentence } from "@lamplane/parameters/words";

export const CORE_LAYOUT = {
  heading: "Core, seen from your left, toe to the left",
  glue: "Glue this paper, print up, to the LEFT side of the core before it is sawn: lower edge to the sole, left edge to the toe end.",
  saw: sentence(
    ({ kerf }: { kerf: string }) =>
      `Saw with the kerf (dark, ${kerf}) in the waste, beside the line, square across. Scrape the paper off before the glue-up.`,
    { kerf: "3.2 mm" },
  ),
  marks: "Dashes at the top edge are the matching marks, on each block one stroke toward the toe and two",
  marksGoOn: "toward the heel, pencilled across the top before the billet was ripped: check them here.",
  description:
    "The core as one piece: the cuts of ramp and bed with their kerfs shaded on the waste side, distances from the toe end along sole and top, matching marks clear of both kerfs.",
  title: "Layout of the two cuts in the core, full size",
  ramp: "ramp",
  bed: "bed",
  blank: "blank",
  frontBlock: "FRONT BLOCK",
  frontSide: "toe ←  left side",
  bedBlock: "BED BLOCK",
  bedSide: "left side  → heel",
  truedSole: sentence(({ off }: { off: string }) => `trued sole: ${off} off after glue-up`, { off: "3 mm" }),
  waste: "waste",
  rampSaw: sentence(({ angle, saw }: { angle: string; saw: string }) => `ramp ${angle} · saw at ${saw} from square`, {
    angle: "60°",
    saw: "30°",
  }),
  bedSaw: sentence(({ angle, saw }: { angle: string; saw: string }) => `bed ${angle} · saw at ${saw} from square`, {
    angle: "47°",
    saw: "43°",
  }),
  feather: sentence(({ height }: { height: string }) => `feather off, square, ${height} high`, { height: "3 mm" }),
  shape: sentence(({ radius }: { radius: string }) => `then shape: R ${radius}`, { radius: "60 mm" }),
} as const;

export const BED_LAYOUT = {
  rout: sentence(({ depth }: { depth: string }) => `Rout the recess ${depth} deep, square to the bed,`, {
    depth: "5 mm",
  }),
  open: "open at the top of the bed. Then scrape the paper off.",
  none: "A single iron: the bed needs no recess.",
  top: "top of the bed",
  heading: "Bed, seen from the iron",
  glue: "Glue to the trued bed: lower edge",
  glueGoesOn: "to the lower edge of the bed, middle to middle.",
  description: "The bed face with its centre line, the outline of the recess, the end of the bevel and the screw head.",
  descriptionWhole: "The bed face with its centre line and where the bevel ends.",
  title: "Layout of the bed and its recess, full size",
  truedSole: "trued sole",
  bears: "iron bears above, mouth below",
  head: "screw head",
  cutter: sentence(({ diameter }: { diameter: string }) => `corners by cutter ⌀ ${diameter}`, { diameter: "12.7 mm" }),
} as const;

export const CHEEK_LAYOUT = {
  pegs: sentence(
    ({ diameter, from }: { diameter: string; from: string }) =>
      `Pegs (dashed) ⌀ ${diameter}, ${from} in from the ends: bore them at the dry fit, not now, through cheeks and block together.`,
    { diameter: "6 mm", from: "7.5 mm" },
  ),
  heading: sentence(
    ({ hand }: { hand: "left" | "right" }) =>
      hand === "left" ? "Left cheek, inside up, toe to the right" : "Right cheek, inside up, toe to the left",
    { hand: "left" },
    { hand: "right" },
  ),
  glue: sentence(
    ({ hand }: { hand: "left" | "right" }) =>
      `Glue this paper, print up, to the INSIDE of the ${hand} cheek: cut it out along the edges of the blank and lay its sole along the sole of the cheek, its toe end at the toe end.`,
    { hand: "left" },
  ),
  drill: sentence(
    ({ hole, hand }: { hole: string; hand: "left" | "right" }) =>
      `${hand === "left" ? "No pin guide: drill a pilot hole through this cheek at the pin first. " : ""}Bore the pin hole ⌀ ${hole} square through both cheeks at once, clamped inside to inside, the left one on top.`,
    { hole: "9.7 mm", hand: "left" },
    { hole: "9.7 mm", hand: "right" },
  ),
  prick:
    "Prick the lines through, then scrape the paper off: it must not stay in the glue joint. Dashes at the top: the matching marks.",
  description: sentence(
    ({ irons }: { irons: string }) =>
      `Seen from the core: bed, ramp, ${irons}, wedge and cross pin where they lie against the cheek, with the holes, the finished ends, top and sole.`,
    { irons: "iron, cap iron" },
  ),
  title: sentence(({ hand }: { hand: "left" | "right" }) => `Layout of the ${hand} cheek, inside up, full size`, {
    hand: "left",
  }),
  withCap: "iron, cap iron",
  iron: "iron",
  ramp: "ramp",
  bed: "bed",
  blank: "blank",
  finished: "finished ",
  pin: "pin ",
  bedAngle: sentence(({ angle }: { angle: string }) => `bed ${angle}`, { angle: "47°" }),
  insideOf: sentence(({ hand }: { hand: "left" | "right" }) => `${hand.toUpperCase()} CHEEK, INSIDE`, { hand: "left" }),
  cheek: sentence(({ hand }: { hand: "left" | "right" }) => `${hand.toUpperCase()} CHEEK`, { hand: "left" }),
  bedBlock: "bed block lies here",
  frontBlock: "front block lies here",
  toe: "finished toe",
  heel: "finished heel",
  top: "finished top",
  truedSole: sentence(({ off }: { off: string }) => `trued sole: ${off} off after glue-up`, { off: "3 mm" }),
  curved: sentence(({ angle, radius }: { angle: string; radius: string }) => `ramp ${angle}, then R ${radius}`, {
    angle: "75°",
    radius: "60 mm",
  }),
  rampAngle: sentence(({ angle }: { angle: string }) => `ramp ${angle}`, { angle: "60°" }),
} as const;

export const STACK_LAYOUT = {
  iron: "iron",
  capIron: "cap iron",
  wedge: "wedge",
  crossPin: "cross pin",
} as const;

export const WEDGE_LAYOUT = {
  side: sentence(
    ({ angle, on }: { angle: string; on: "cap iron" | "iron" }) => `side · ${angle} · lower edge lies on the ${on}`,
    { angle: "6°", on: "cap iron" },
  ),
  heading: "Wedge",
  cut: "Grain along its length. Cut the blank to length and width first. Take the taper",
  cutGoesOn: "off it in the sled or the vise, never in the fingers.",
  description: "Side view with tip, butt and angle, and the face with the line on which the cross pin bears.",
  title: "Layout of the wedge, full size",
  bears: "cross pin bears here",
  tip: "tip",
  butt: "butt",
} as const;

export const PIN_LAYOUT = {
  flatted: "flat below, half round above",
  round: "round",
  above: "from above",
  heading: "Cross pin",
  body: sentence(
    ({ size, shape, tenon }: { size: string; shape: string; tenon: string }) =>
      `Body ${size} ${shape}. Tenons ⌀ ${tenon}, turning freely in the cheeks.`,
    { size: "12.7 mm", shape: "flat below, half round above", tenon: "9.5 mm" },
  ),
  grain: "Grain along its length.",
  description: "From above with shoulders and tenons, and the end with the section and the tenon.",
  title: "Layout of the cross pin, full size",
  tenon: sentence(({ diameter }: { diameter: string }) => `tenon ⌀ ${diameter}`, { diameter: "9.5 mm" }),
  end: "end",
} as const;

export const PICTURE = {
  size: sentence(
    ({ width, height }: { width: string; height: string }) => `Drawn ${width} mm wide and ${height} mm high.`,
    { width: "276.4", height: "104.2" },
  ),
  grain: "grain",
  drawing: "Full lines are cut or drilled, dashes with two dots routed, short dashes marked. Lengths are in mm.",
  fullSize: sentence(({ what }: { what: string }) => `${what}, full size`, { what: "bed block" }),
} as const;
