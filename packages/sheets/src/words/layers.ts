// A core in layers: its boards and strips, its cuts, its recess, and its sheet of the layout.
import { listText, sentence } from "@lamplane/parameters/words";

interface LengthData {
  readonly length: string;
}
const THREE_TENTHS = { length: "0.3 mm" };
const DRILL = { length: "6 mm" };

export const BOARDS = {
  title: "Choose the wood",
  task: sentence(
    ({ layers }: { layers: number }) =>
      `Choose boards for ${layers} layers and two cheeks: straight in the grain, dry, free of knots and checks where bed, mouth and pin will be.`,
    { layers: 3 },
  ),
  why: "Strips out of one board move alike with the seasons.",
  strips: "Strips",
  along: "Each strip, along the grain",
  across: "Each strip, across the board",
  thickness: "Board thickness",
  running: "Board of that width, in all",
  wood: "Wood of the body",
  rings: "Rings to the face of the board (0° flat, 90° quarter sawn)",
  moisture: "Moisture of the wood when it is cut",
  rest: "Let the wood lie in the shop until its weight no longer changes. A meter should read near the moisture above.",
  onEdge: sentence(
    ({ sole, board }: { sole: string; board: string }) =>
      `Each strip stands on edge in the plane. A strip of a flat-sawn board is quarter sawn at the sole, one of a quarter-sawn board flat sawn (common practice, no published source). For rings at ${sole} to the sole they stand at ${board} to the face of the board.`,
    { sole: "90°", board: "0°" },
  ),
  grain: "Turn every strip so that the lines of the grain, seen from the side, run down toward the heel.",
  setAside: "Set aside wood for wedge, cross pin and pegs as in the stock list.",
  clear: "No knot, check or wild grain within a hand's breadth of the mouth, in the bed or where the pin will be.",
  planes: sentence(
    ({ length, needed }: LengthData & { needed: string }) =>
      `Planed on both faces the boards stay ${length} thick or more; the thickest layer needs ${needed}.`,
    { length: "18.4 mm", needed: "17.6 mm" },
  ),
} as const;

export const LAYERS = {
  strip: sentence(
    ({ numbers }: { numbers: readonly string[] }) =>
      numbers.length === 0 ? "Cheeks, planed" : `Layer${numbers.length > 1 ? "s" : ""} ${listText(numbers)}, planed`,
    { numbers: ["1", "3"] },
    { numbers: [] },
  ),
  fence: "Fence for every strip",
  stack: "Stack of all layers",
  length: "Layers and cheeks, length",
  height: "Layers and cheeks, height",
  rip: "Joint one edge of the board and rip the strips from it. Joint the fresh edge before each next one.",
  plane:
    "Let the strips lie a day with air all round. Flatten one face of each, then plane it to its thickness, faces parallel.",
  number: "Number the layers from the right cheek to the left, on their toe ends.",
  measure: sentence(
    ({ hasRecess }: { hasRecess: boolean }) =>
      `Lay all layers side by side and measure the stack before the last pass. Take what is over off the outer layers, the same off both${hasRecess ? ". The middle ones make the recess and keep their thickness" : ""}.`,
    { hasRecess: true },
    { hasRecess: false },
  ),
  surface: sentence(({ length }: LengthData) => `Surface all soles, then all tops, ${length} apart.`, {
    length: "61 mm",
  }),
  marks: sentence(
    ({ places }: { places: readonly string[] }) =>
      `Clamp layers and cheeks together dry, toe ends and soles flush. Draw the matching marks square across the whole top, from the toe end: ${places.join("; ")}.`,
    { places: ["one stroke at 22 mm (front block)", "two strokes at 41 mm and 43 mm (front block)"] },
  ),
  mark: sentence(
    ({ strokes, at, over }: { strokes: number; at: readonly string[]; over: string }) =>
      `${strokes === 1 ? "one stroke" : "two strokes"} at ${at.join(" and ")} (${over})`,
    { strokes: 2, at: ["41 mm", "43 mm"], over: "front block" },
  ),
  closes: "The stack has the same width at both ends, top and sole, with no light between the layers.",
  cheeksFlat: "Insides of the cheeks flat: no light under a straightedge along, across or corner to corner.",
} as const;

export const LAYER_CUTS = {
  why: sentence(
    ({ length }: LengthData) =>
      `Every layer has the same outline and the same holes, so that the pegs set the blocks true. ${length} is left on the bed, to true it once the glue is dry.`,
    THREE_TENTHS,
  ),
  peg: sentence(
    ({ block, number }: { block: "front" | "bed"; number: number }) =>
      `${block === "front" ? "Front" : "Bed"} block, peg ${number}: from toe end, over sole`,
    { block: "front", number: 1 },
  ),
  drillFor: "Drill for the layer pegs",
  pegLength: "Layer pegs, length",
  recessDepth: "Recess, square to the finished bed",
  recessEnd: "Lower end of the recess, up the bed as cut from its lower edge, feather off",
  allowance: "Left on the bed of the layers, to true",
  from: "Mark one layer from the layout sheet, and the others from it; or cut all by the files parts/front-layer and parts/bed-layer.",
  drill:
    "Drill the four peg holes through each layer before you cut it. Clamp it on one fence and stop, so that all layers are alike.",
  lie: "Lay the layer on its right side, sole against the fence, toe to your right. The left side with its sheet looks up.",
  testPiece: "Set the saw by the gauge or a bevel. Cut a test piece of the layer's height and measure it first.",
  ramp: sentence(
    ({ angle }: { angle: string }) =>
      `Clamp the layer. Swing the saw ${angle} from square, so that the cut runs to the right as it comes toward you. Cut the ramp in the waste and just leave the line.`,
    { angle: "30°" },
  ),
  bed: sentence(
    ({ angle, length }: { angle: string; length: string }) =>
      `Leave the layer lying as it is. Swing the saw ${angle} to the other side and cut the bed. Leave the line: it has ${length} for truing in it.`,
    { angle: "43°", length: "0.3 mm" },
  ),
  feather: sentence(
    ({ height, hasRecess }: { height: string; hasRecess: boolean }) =>
      `Cut the feather off the tip of each layer of the bed block, square to the sole, up to ${height} above it.${hasRecess ? " The recess is measured from the edge that this leaves." : ""}`,
    { height: "3 mm", hasRecess: true },
    { height: "3 mm", hasRecess: false },
  ),
  recess: sentence(
    ({ layers, hole }: { layers: readonly string[]; hole: string | undefined }) =>
      `Saw layer ${listText(layers)} of the bed block along the recess: down from the top to its lower end${hole === undefined ? "" : `, into a hole ⌀ ${hole} drilled at the corner`}, then square in from the bed.`,
    { layers: ["2"], hole: "6 mm" },
    { layers: ["2"], hole: undefined },
  ),
  glue: "Scrape the layout's paper off every layer. Glue front and bed block each by themselves: pegs in the first layer, glue on one face of each joint, the layers down in their order. Clamp between flat cauls. Leave the pegs short of both outer faces.",
  dry: sentence(
    ({ hasRecess }: { hasRecess: boolean }) =>
      `${hasRecess ? "Wipe the glue out of the recess before it sets. " : ""}Let the blocks dry a day, then plane their sides flat to the width of the stack.`,
    { hasRecess: true },
    { hasRecess: false },
  ),
  flat: "Outer faces flat and parallel, as wide as the core; no peg stands out.",
  square: "Ramp and bed square across the block: under a square no light shows but at the small steps between layers.",
  head: "The screw head goes into the recess with room at both sides.",
} as const;

export const LAYER_RECESS = {
  pare: "Pare hardened glue off floor and sides with a chisel.",
  measure: "Truing took the bed down: measure the depth from the bed as it is now.",
  tryIron:
    "Try the iron with its cap and screw. The head must slide the whole length without touching side, floor or corner. Pare the floor where it does.",
} as const;

export const LAYER_DRAWING = {
  stock: "Strips across the end of a board, and one stood on edge",
  board: "End of the board, strips ripped from it",
  face: sentence(({ angle }: { angle: string }) => `rings ${angle} to this face`, { angle: "0°" }),
  long: sentence(({ length }: LengthData) => `${length} long`, { length: "255.4 mm" }),
  onEdge: "On edge, sole below",
  sole: sentence(({ angle }: { angle: string }) => `rings ${angle} to the sole`, { angle: "90°" }),
  core: "The stack of layers between its cheeks, from the heel",
  stackView: "Layers and cheeks from the heel end, sole below",
  stack: sentence(({ length }: LengthData) => `stack ${length}`, { length: "49.6" }),
  leftCheek: "left cheek",
  rightCheek: "right cheek",
  cuts: sentence(
    ({ hasRecess }: { hasRecess: boolean }) =>
      `The layers of both blocks with their peg holes${hasRecess ? ", and the recess" : ""}`,
    { hasRecess: true },
    { hasRecess: false },
  ),
  blocks: "Layers of the front and the bed block, toe to the left",
  middle: "Middle layers of the bed block",
  finished: "dashed: finished bed",
  recess: sentence(({ length }: LengthData) => `recess ${length} deep from here up`, { length: "5 mm" }),
  left: sentence(({ length }: LengthData) => `${length} left on the bed`, THREE_TENTHS),
} as const;

export const LAYER_LAYOUT = {
  heading: "Each layer of the core, seen from your left, toe to the left",
  glue: "Glue a copy, print up, to the LEFT side of each layer: lower edge to the sole, left edge to the toe end.",
  drill: sentence(
    ({ length, left }: { length: string; left: string }) =>
      `Drill the holes ${length} through, then cut. Numbers at the holes: from toe end, over sole. The bed mark leaves ${left} to true.`,
    { ...DRILL, left: "0.3 mm" },
  ),
  marksGoOn: "toward the heel. Pencil them across layers and cheeks, clamped together dry.",
  recess: sentence(({ layers }: { layers: readonly string[] }) => `layer ${listText(layers)} only: recess`, {
    layers: ["2"],
  }),
  bedRecess: "The middle layers make the recess.",
  bedCheck: "Check it against these lines.",
} as const;
