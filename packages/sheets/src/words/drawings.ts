// Words in the drawings of the steps.
import { sentence } from "@lamplane/parameters/words";

/** Of a long plane's drawing. */
const ENDS_OFF = ", the ends of the body left off";

export const BILLET_DRAWING = {
  stock: "The billet: rings at its end, grain along its side",
  core: "The end of the billet with its saw lines and the widths of the pieces",
  heelEnd: "Heel end, sole below",
  rings: sentence(({ angle }: { angle: string }) => `rings ${angle} to the sole`, { angle: "20°" }),
  sole: "sole",
  side: "Left side, toe to the left: the grain runs down toward the heel",
  planeThisWay: "plane the sole this way",
  heel: "heel",
  asItComes: "Heel end of the billet as it comes; each fence from the face jointed last",
  coreName: "core",
  fence: sentence(({ cut, length }: { cut: number; length: string }) => `fence, cut ${cut}: ${length}`, {
    cut: 1,
    length: "11",
  }),
  needed: sentence(({ length }: { length: string }) => `needed ${length}`, { length: "84.2" }),
  asMeasured: sentence(({ length }: { length: string }) => `billet ${length}`, { length: "95" }),
  spareBoard: sentence(({ board }: { board: string }) => `spare board ${board}`, { board: "7" }),
  leftCheek: "left cheek",
  referenceFace: "reference face",
  rightCheek: "right cheek",
  kerf: sentence(({ kerf }: { kerf: string }) => `kerf ${kerf}`, { kerf: "3.2 mm" }),
  milled: "dashed: after milling",
} as const;

export const IRON_DRAWING = {
  withCap: "Iron and cap iron: what is measured on them",
  alone: "Iron: what is measured on it",
  side: "Iron from the side, edge to the left",
  face: "Face of the iron",
  edge: "edge",
  capIron: sentence(({ thickness }: { thickness: string }) => `cap iron ${thickness}`, { thickness: "3.2 mm" }),
} as const;

export const CUTS_DRAWING = {
  title: "The two cuts with their kerfs, and how the saw is set",
  core: "Core from its left side, toe to the left",
  saws: "The saw from above",
  youStandHere: "you stand here",
  toe: "toe",
  frontBlock: "FRONT BLOCK",
  bedBlock: "BED BLOCK",
  waste: "waste",
  ramp: sentence(({ length }: { length: string }) => `ramp ${length}`, { length: "88.53" }),
  bed: sentence(({ length }: { length: string }) => `bed ${length}`, { length: "93.91" }),
  blank: sentence(({ length }: { length: string }) => `blank ${length}`, { length: "255.4" }),
  kerfs: "kerfs in the waste",
  marks: "dashes: matching marks",
  fence: "fence",
  fromSquare: sentence(({ name, angle }: { name: "ramp" | "bed"; angle: string }) => `${name}: ${angle} from square`, {
    name: "ramp",
    angle: "30°",
  }),
} as const;

export const BED_DRAWING = {
  survey: "The bed with the places for the straightedge",
  recess: "The recess, seen square to the bed and cut along the middle",
  face: "Bed, seen square to it, tip below",
  bears: "iron bears above",
  block: "Bed block, the bed level",
  straightedge: "straightedge here",
  left: "left",
  right: "right",
  land: sentence(({ width }: { width: string }) => `land ${width}`, { width: "15.3" }),
  truedSole: "trued sole",
  lowerEdge: "lower edge of the bed",
  cut: "Cut along the middle",
  deep: sentence(({ depth }: { depth: string }) => `${depth} deep, square to the bed`, { depth: "5 mm" }),
  head: "screw head at work",
  pad: "pad, bears the iron",
} as const;

export const CHEEK_DRAWING = {
  title: "A cheek with the pin hole, and where the pegs go later",
  inside: "Right cheek from its inside, toe to the left; the left one mirrors it",
  drill: sentence(({ drill }: { drill: string }) => `⌀ ${drill}, both cheeks at once`, { drill: "9.7 mm" }),
  peg: sentence(({ diameter }: { diameter: string }) => `peg ⌀ ${diameter}, bored at the dry fit`, {
    diameter: "6 mm",
  }),
  heel: "finished heel",
  sole: "sole of the blank",
} as const;

export const WEDGE_DRAWING = {
  title: "The wedge and the cross pin",
  side: "Wedge, from the side",
  taper: sentence(({ angle }: { angle: string }) => `${angle}, grain along it`, { angle: "6°" }),
  face: "Wedge, face to the pin",
  bears: sentence(({ length }: { length: string }) => `pin bears ${length}`, { length: "16.52" }),
  pin: "Pin, from above",
  tenons: sentence(({ diameter }: { diameter: string }) => `tenons ⌀ ${diameter}, turn freely`, { diameter: "9.5 mm" }),
  endFlat: "Pin, from its end, flat below",
  end: "Pin, from its end",
} as const;

export const GLUE_DRAWING = {
  dryFit: "The blank put together dry, the iron clamped at its height",
  fromSide: "From the side, the near cheek left off",
  bedFoot: sentence(({ length }: { length: string }) => `foot of the bed ${length}`, { length: "94.2" }),
  setIn: sentence(({ length }: { length: string }) => `set in ${length}`, { length: "2.42 mm" }),
  ironAlone: "iron alone, clamped to the bed",
  iron: "iron, clamped to the bed",
  edge: sentence(({ height }: { height: string }) => `Edge ${height} above the sole of the blank`, {
    height: "2.9 mm",
  }),
  glueUp: "The glue-up from above: clamps, matching marks, wax; where no glue goes",
  fromAbove: "From above, toe to the left",
  noGlue: "grey: no glue, wax",
  leftCheek: "left cheek",
  clamp: "clamp, a caul under each jaw",
  bedBlock: "bed block",
  frontBlock: "front block",
  marks: "dashes: matching marks",
  pin: "cross pin, waxed",
  inside: "Inside of a cheek: no glue on the grey",
  bare: sentence(({ width }: { width: string }) => `bare: ${width}`, { width: "3 to 5 mm" }),
} as const;

export const SOLE_DRAWING = {
  truing: "Truing the sole, the iron wedged and drawn back",
  blank: "The glued blank, iron and wedge at working tension",
  edgeBack: "edge drawn back above the sole",
  plannedSole: "planned sole",
  toeToHeel: "plane from toe to heel",
  closeUp: "The sole, close up",
  stopHere: "stop here first",
  blankSole: "sole of the blank",
  mouth: "The mouth close up, the edge set to the sole",
  mouthView: "The mouth, the edge set to the trued sole",
  opening: sentence(({ opening }: { opening: string }) => `mouth ${opening}`, { opening: "0.15 mm" }),
  iron: "iron",
} as const;

export const SHAPING_DRAWING = {
  title: "The finished outline over the blank",
  fromSide: "From the side, toe to the left; grey comes off",
  mouth: sentence(({ length }: { length: string }) => `mouth ${length}`, { length: "76.67" }),
  crown: sentence(({ length, height }: { length: string; height: string }) => `crown ${length}, ${height} high`, {
    length: "108.63",
    height: "58",
  }),
} as const;

export const SEASON_DRAWING = {
  title: "Across the plane at the pin: where wood moves",
  across: "Across the plane at the pin, from behind",
  pinGap: "gap at the pin's shoulder",
  sideGap: "gap beside the iron",
  tenon: "tenon, inside the cheek",
  rightCheek: "right cheek",
} as const;

export const SECTION_DRAWING = {
  title: "The plane cut along its middle, its parts named",
  cut: sentence(
    ({ endsOff }: { endsOff: boolean }) => `Cut along the middle, toe to the left${endsOff ? ENDS_OFF : ""}`,
    { endsOff: true },
  ),
  crossPin: "cross pin, turns in the cheeks",
  curvedRamp: "ramp: wear, then curve",
  ramp: "ramp",
  frontBlock: "front block",
  mouth: "mouth",
  wedge: "wedge",
  capIron: "cap iron",
  iron: "iron, bevel down",
  recess: "recess for the screw",
  bed: "bed",
  bedBlock: "bed block",
  tapping: "Where to tap the plane, and what each tap does",
  tap: sentence(({ endsOff }: { endsOff: boolean }) => `Where to tap${endsOff ? ENDS_OFF : ""}`, { endsOff: false }),
  tapIron: "1  on the iron: a deeper cut",
  tapHeel: "3  on the heel: back and loose",
  tapWedge: "2  on the wedge: hold",
  shavings: "shavings leave here",
} as const;

export const JIG_DRAWING = {
  inUse: sentence(({ title }: { title: string }) => `${title}, where it is used`, {
    title: "Pin guide for a 9.7 mm drill",
  }),
} as const;
