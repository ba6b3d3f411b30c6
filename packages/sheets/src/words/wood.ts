// Steps 1 to 3: choosing the wood, measuring the iron, sawing and milling core and cheeks.
import { sentence } from "@lamplane/parameters/words";

export const STOCK = {
  title: "Choose the wood",
  task: "Choose one billet for core and cheeks: straight in the grain, dry, and free of knots and checks where bed, mouth and pin will be.",
  why: "Cheeks and core out of one billet move alike with the seasons, and the grain matches when they are put together again.",
  length: "Billet length needed, along the grain",
  width: "Billet width needed, across the sole",
  height: "Billet height needed",
  byRule: sentence(({ over }: { over: string }) => `Width by the rule of thumb: iron and ${over}`, { over: "38.1 mm" }),
  wood: "Wood of the body",
  rings: "Rings to the sole (0° flat, 90° quarter sawn)",
  moisture: "Moisture of the wood when it is cut",
  atHand: sentence(({ side }: { side: string }) => `Billet at hand, ${side}`, { side: "length" }),
  rest: "Let the wood lie in the shop until its weight no longer changes. A meter should read near the moisture above.",
  turn: sentence(
    ({ rings }: { rings: string }) =>
      `Turn the billet so that the rings lie at about ${rings} to the sole. Flat or rift sawn reads smoother on the sole than quarter sawn (common practice, no published source).`,
    { rings: "20°" },
  ),
  grain:
    "Turn it end for end until the lines of the grain, seen from the side, run down toward the heel. Then the sole is planed with the grain from toe to heel, and the work strokes it the right way. Write SOLE and TOE on the wood.",
  onSide: sentence(
    ({ rings }: { rings: string }) =>
      `Your billet holds the plane only on its side: its height becomes the width, and the rings stand at ${rings}.`,
    { rings: "70°" },
  ),
  fits: "Your billet holds the plane as measured.",
  setAside:
    "Set aside wood for wedge, cross pin and pegs as in the stock list. Keep every offcut until the plane cuts.",
  clear: "No knot, check or wild grain within a hand's breadth of the mouth, in the bed or where the pin will be.",
  least: sentence(
    ({ length, width, height }: { length: string; width: string; height: string }) =>
      `The billet is at least ${length} long, ${width} wide and ${height} high.`,
    { length: "255.4 mm", width: "84.2 mm", height: "64 mm" },
  ),
  marked: "SOLE and TOE are written on the wood.",
} as const;

export const IRON = {
  why: "Bed, mouth and wedge all follow the iron. Cut nothing from a catalogue's figure.",
  thickness: "Iron thickness as planned",
  width: "Iron width as planned",
  bevel: "Bevel",
  clearance: "Clearance under the bevel at this bed",
  capIron: "Cap iron thickness",
  hump: "Cap iron hump, above its flat",
  headDiameter: "Screw head diameter",
  headHeight: "Screw head height",
  headFromEdge: "Screw head: its middle from the edge",
  thicknessAt: sentence(({ where }: { where: string }) => `Iron thickness as planned, ${where}`, {
    where: "40 mm from the edge",
  }),
  taper: "Taper, back to face",
  atEdge: "Thickness at the edge itself, from both",
  face: "Angle of the face from the sole: bed less taper",
  edge: "at the edge",
  fromEdge: sentence(({ length }: { length: string }) => `${length} from the edge`, { length: "40 mm" }),
  measureThickness:
    "Measure the thickness where the iron lies on the bed, at three places up its length and on both sides. Write down the greatest.",
  measureTaper: sentence(
    ({ thickEnd, low, high }: { thickEnd: "edge" | "top"; low: string; high: string }) =>
      `This iron tapers, thicker at its ${thickEnd}. Measure its thickness ${low} and ${high}, on both sides. Write down the greater at each place.`,
    { thickEnd: "edge", low: "10 mm from the edge", high: "150 mm from the edge" },
  ),
  aboveBevel: sentence(
    ({ heel }: { heel: string }) =>
      `The bevel ends ${heel} from the edge: a caliper reaches the back only above it. Measure there, and enter that place as iron.thicknessFromEdge.`,
    { heel: "9.2 mm" },
  ),
  measureWidth: "Measure the width just above the edge and at the top. Write down the greater of the two.",
  flatBack:
    "Lay the back of the iron on a flat plate. Where it rocks or is hollow, first flatten the part that lies on the bed, then measure.",
  measureCap:
    "Screw the cap iron on where it will work. Measure its thickness, its hump and the screw head, and correct the file where they differ.",
  entered: sentence(
    ({ count }: { count: "Both" | "All three" }) =>
      `${count} values are entered before the billet is marked: every number after this step follows them.`,
    { count: "Both" },
    { count: "All three" },
  ),
} as const;

interface MarkData {
  readonly strokes: 1 | 2;
  readonly places: readonly string[];
  readonly over: string;
}
const markText = ({ strokes, places, over }: MarkData): string =>
  `${strokes === 1 ? "one stroke" : "two strokes"} at ${places.join(" and ")} (${over})`;

export const CORE = {
  billetWidth: "Billet width needed",
  fence: sentence(({ cut, frees }: { cut: number; frees: string }) => `Fence for cut ${cut}, frees the ${frees}`, {
    cut: 1,
    frees: "left cheek",
  }),
  coreMilled: "Core, milled",
  cheekMilled: "Each cheek, milled",
  length: "Core and cheeks, length",
  height: "Core and cheeks, height",
  square: sentence(
    ({ pass, height, length }: { pass: string; height: string; length: string }) =>
      `Joint the outside of the left cheek: the reference face. Take no more than ${pass} off it. Plane the sole square to it, then the top parallel to the sole, ${height} apart. Cut the billet to ${length}, ends square.`,
    { pass: "0.8 mm", height: "61 mm", length: "255.4 mm" },
  ),
  marks: sentence(
    ({ marks }: { marks: readonly MarkData[] }) =>
      `Draw the matching marks square across the whole top, from the toe end: ${marks.map(markText).join("; ")}. They stand clear of every kerf and tell front from back on every piece. Beside them write L, C and R on the strips from the left, as you look from the heel to the toe.`,
    {
      marks: [
        { strokes: 1, places: ["22 mm"], over: "front block" },
        { strokes: 2, places: ["42 mm", "44 mm"], over: "front block" },
      ],
    },
  ),
  noMarks: sentence(
    ({ block }: { block: string }) =>
      `The top of the ${block} has no room for two marks: keep its pieces together by hand.`,
    { block: "front block" },
  ),
  cut: sentence(
    ({ cut, frees, fence }: { cut: number; frees: string; fence: string }) =>
      `Cut ${cut}, fence at ${fence}: ${cut === 1 ? "reference face against the fence, sole on the table" : "the face just jointed against the fence"}; it frees the ${frees}.`,
    { cut: 1, frees: "left cheek", fence: "12 mm" },
    { cut: 2, frees: "core", fence: "57.4 mm" },
  ),
  jointRest: "Joint the fresh face of what is left.",
  restIsCheek: "What is left is the right cheek; joint its fresh face.",
  restIsThicker: sentence(
    ({ by }: { by: string }) =>
      `What is left is the right cheek, ${by} too thick and too little to saw off: joint its fresh face, and plane the other down.`,
    { by: "1 mm" },
  ),
  restIsSpare: sentence(
    ({ board }: { board: string }) =>
      `What is left is a spare board, ${board} thick as sawn: keep it for the small parts.`,
    { board: "7 mm" },
  ),
  mill: "Let the three pieces lie a day with air all round. Then joint the sawn faces that are still rough, and mill each piece to its width, taking about the same off both faces: insides flat, sides parallel.",
  caliper: "Mill the core to the caliper, not to the rule: iron, wedge and pin all follow it.",
  sameWidth: "Core the same width at both ends, at top and sole.",
  flat: "Insides of the cheeks flat: no light under a straightedge along, across or corner to corner.",
  marksThere: "Marks still there on all three pieces.",
} as const;
