// Steps 11 to 15: the sole, the mouth, the shape, the first shaving, and the look back after a season.
import type { Units } from "@lamplane/parameters/units";
import { sentence } from "@lamplane/parameters/words";

export const SOLE = {
  why: "The wedge bends the body a little. A sole trued slack is no longer flat when the plane works.",
  toTake: "Wood under the planned sole",
  stopShort: "Of it, leave for the mouth",
  coarse: "First, iron out, jack or jointer: take off",
  fine: "Then, iron and wedge in, fine shavings: take off",
  edge: "The mouth begins to open once this is off the sole",
  trimNothing: "Trim nothing yet but what is in the way. Leave the pegs until the sole is true.",
  coarsePass: sentence(
    ({ coarse, fine, height }: { coarse: string; fine: string; height: string }) =>
      `Iron and wedge out: take ${coarse} off with a jack or jointer plane, toe to heel, flat and square, to a height of ${height} beside the mouth. Stop there: the next ${fine} and the last of the mouth are for fine shavings.`,
    { coarse: "2.4 mm", fine: "0.5 mm", height: "58.6 mm" },
  ),
  wedgeIn: "Put in iron and wedge, drive the wedge as tight as for work, and draw the edge back well above the sole.",
  finePass:
    "Plane the sole from toe to heel with a sharp, fine-set plane, or on abrasive on a flat plate. Try it with a straightedge along, across and corner to corner, and with winding sticks at the ends.",
  touch:
    "Toe, the wood just in front of the mouth, just behind it, and heel lie in one plane. A little hollow between them does no harm.",
  stop: sentence(
    ({ stopShort, height, first }: { stopShort: string; height: string; first: string | undefined }) =>
      `Stop with at least ${stopShort} of wood still to come off${first === undefined ? ", the mouth still closed" : `; the mouth is then about ${first} open, narrower than wanted`}. Measure the height beside the mouth: what it has over ${height} is the wood still left. Write it down.`,
    { stopShort: "0.1 mm", height: "58 mm", first: undefined },
    { stopShort: "0.1 mm", height: "58 mm", first: "0.66 mm" },
  ),
  flat: "Flat with the wedge at working tension: no light before and behind the mouth.",
  square: "Sole square to the outsides of the cheeks.",
  edgeStayed: "The edge never came below the sole.",
} as const;

export const OPEN_MOUTH = {
  wanted: "Mouth wanted",
  opens: sentence(
    ({ units }: { units: Units }) => `It opens, for ${units === "mm" ? "1 mm" : "0.001 in"} off the sole`,
    { units: "mm" },
    { units: "in" },
  ),
  growth: sentence(
    ({ growth, units }: { growth: string; units: Units }) => `${growth} ${units === "mm" ? "mm" : "thousandths"}`,
    { growth: "1.51", units: "mm" },
    { growth: "1.51", units: "in" },
  ),
  oneShaving: sentence(({ shaving }: { shaving: string }) => `One shaving of ${shaving} opens it by`, {
    shaving: "0.05 mm",
  }),
  differ: sentence(
    ({ isRead }: { isRead: boolean }) =>
      isRead ? "Left and right cheek differ by" : "Left and right cheek may at first differ by",
    { isRead: true },
    { isRead: false },
  ),
  room: "Side play left, the iron tilted to cut even",
  left: "Wood left under the planned sole",
  leftNotMeasured: "Wood left under the planned sole: not measured, so taken as planned",
  set: "Set: with the wedge tight, tap the iron until its edge is just felt in the plane of the sole, then a hair back.",
  read: "Read: try feeler leaves between the edge and the ramp, at both sides and in the middle. The leaf that just goes in is the mouth seen.",
  takeOff: sentence(
    ({ growth }: { growth: string }) =>
      `Work out what is to come off: (wanted − seen) / ${growth}. “lamplane mouth FILE --seen …” gives it in shavings.`,
    { growth: "1.51" },
  ),
  takeOffCurve:
    "“lamplane mouth FILE --seen …” says what is to come off. Beyond the wear of the ramp the mouth follows the curve, and no one factor holds.",
  repeat:
    "Draw the edge back and take off half of that. Set the edge, read again, and go on like this until the mouth is right. A mouth that is too wide cannot be planed closed.",
  right: sentence(
    ({ opening }: { opening: string }) =>
      `Mouth ${opening} with the edge at the sole, the same at both sides. Tap the iron sideways until its edge is even with the sole. If the mouth is then wider at one side, take wood off the ramp at the other, not off the iron.`,
    { opening: "0.15 mm" },
  ),
  flat: "Sole still flat when the mouth is right.",
} as const;

export const SHAPING = {
  length: "Finished length",
  edgeFromToe: "Edge from the finished toe",
  toeHeight: "Height at the toe",
  heelHeight: "Height at the heel",
  crown: "Crown from the toe",
  ends: sentence(
    ({ toMouth, length, hasPegs }: { toMouth: string; length: string; hasPegs: boolean }) =>
      `With the edge at the sole draw the finished toe ${toMouth} in front of it and the finished heel ${length} behind the toe: the mouth governs, not the ends of the blank. Take iron and wedge out and trim both ends square${hasPegs ? "; the pegs go with the waste" : ""}.`,
    { toMouth: "76.67 mm", length: "230 mm", hasPegs: true },
    { toMouth: "76.67 mm", length: "230 mm", hasPegs: false },
  ),
  arch: "Draw the arch on both sides and cut it down with bandsaw, spokeshave or rasp. The right cheek's sheet, printed anew, fits the outside of the left cheek, and the left one's the right: finished sole and ends on those of the plane. Keep clear of the pin hole.",
  chamfer: "Break the long edges of the sole: a small chamfer, a little more at toe and heel.",
  round: "Round what the hands hold. Leave the sides of the throat and the ramp smooth and waxed, without a ledge.",
  overPin: "Wood above the pin hole as drawn, on both sides.",
  again: "Sole looked at once more: shaping lets wood move.",
} as const;

export const FIRST_SHAVING = {
  title: "Oil it, set it, take the first shaving",
  task: "Oil the outside, wax the sole, put the iron in sharp, and take shavings from a board whose grain you know.",
  mouth: "Mouth",
  oil: "Oil the outside and the ends thinly and wipe them dry. No oil on bed, wedge or in the throat: it would make the wedge slip. Wax the sole.",
  ironIn: "Put the iron in, its edge just above the sole. Push the wedge home by hand, then tap it once, lightly.",
  tap: "Tap as drawn: the end of the iron (1) for a deeper cut, the wedge (2) to hold it, the heel (3) to draw the iron back and free the wedge. Tap the sides of the iron to level the edge.",
  light: "Take light shavings first, on easy wood. Stand so that nothing is in front of the plane but the bench.",
  whole: "A whole, even shaving that leaves the throat by itself.",
  stays: "The iron stays where it is after ten strokes; else the wedge does not bear over its length: back to step 8.",
  noTear: "No chatter, and no tear-out that the mouth should have stopped.",
} as const;

export const SEASON = {
  title: "Look again after a season",
  task: "After the first dry and the first damp season look at sole, mouth, sides of the iron, wedge and pin. True the sole only as much as it needs.",
  why: "Across the grain the body moves; iron and pin do not. The figures say how far.",
  whyUnknown: "The movement of this wood is not in the tables, so there are no figures: look the more closely.",
  moisture: "Moisture of the wood, driest and dampest days",
  range: sentence(({ from, to }: { from: string; to: string }) => `${from} to ${to}`, { from: "6.2 %", to: "12 %" }),
  indicative: sentence(({ label }: { label: string }) => `${label} (indicative)`, {
    label: "Core width over the year",
  }),
  tapWedge: "In the dry season tap the wedge in by, at most (indicative)",
  mouthAfter: sentence(({ off }: { off: string }) => `Mouth once ${off} more is off the sole`, { off: "0.1 mm" }),
  sizes: {
    coreWidth: "Core width over the year",
    sideGap: "Side play of the iron, both sides together",
    wedgeGap: "Side play of the wedge, both sides together",
    pinEndGap: "Gap at each shoulder of the pin",
    bodyHeight: "Body height over the year",
  },
  straightedge:
    "With the wedge at working tension and the edge drawn back, lay the straightedge on the sole as at its first truing.",
  sides:
    "Try the sides of the iron: a tap must still move it sideways a little. Try that wedge and pin move. Write down the room you find.",
  wedge: "Tap the wedge in again in the dry season. Before the damp one back it out a little, or it may crush the pin.",
  tenons: "Pare tenons that stand out of the cheeks flush. Shorten a pinched pin at its shoulders.",
  trueing:
    "If the sole is no longer flat, true it in fine shavings, and no more than it needs: each opens the mouth as above, for good. Read the mouth after it and write it down.",
  grinding: sentence(
    ({ ground, way, by }: { ground: string; way: "opens" | "closes"; by: string }) =>
      `The iron tapers: each ${ground} ground off its edge ${way} the mouth by ${by}.`,
    { ground: "5 mm", way: "opens", by: "0.04 mm" },
  ),
  good: "Flat before and behind the mouth. Iron, wedge and pin free. The mouth as wanted or not far over it.",
} as const;
