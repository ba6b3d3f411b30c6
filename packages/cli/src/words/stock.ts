// Words of `stock`: how to saw the wood, in the order of the work.
import type { Units } from "@lamplane/parameters/units";
import { listText, sentence, UNIT_NAMES } from "@lamplane/parameters/words";

const INSIDE = { front: "2.42 mm", bed: "2.42 mm" };
const CORNER = { pass: "0.8 mm", height: "61 mm" };

/** A head over a table, with the unit of its lengths. */
const headText = (what: string) =>
  sentence(({ units }: { units: Units }) => `${what}, in ${UNIT_NAMES[units]}`, { units: "mm" });

export const STOCK = {
  caution:
    "Short pieces are dangerous at a machine: follow its manual, local rules and trained practice, or saw them by hand.",
  billet: sentence(
    ({ length, width, height }: { length: string; width: string; height: string }) =>
      `BILLET at least ${length} long, ${width} wide, ${height} high.`,
    { length: "255.4 mm", width: "84.2 mm", height: "64 mm" },
  ),
  needed: "needed",
  measured: "measured",
  asItLies: "as it lies",
  tooSmall: sentence(({ by }: { by: string }) => `too small by ${by}`, { by: "4" }),
  leftOver: sentence(({ by }: { by: string }) => `left over ${by}`, { by: "4" }),
  sides: { length: "length", width: "width", height: "height" },
  rule: sentence(
    ({ added, width }: { added: string; width: string }) =>
      `Rule of thumb for the width, iron plus ${added}: ${width} (common practice, no published source).`,
    { added: "38.1 mm", width: "86.1 mm" },
  ),
  noFit: "The plane does not fit this billet, either way round. Take another billet, or plan a smaller plane.",
  fitsOnSide: sentence(
    ({ rings, before }: { rings: number; before: number }) =>
      `The plane fits with the billet on its side: its height becomes the width. The rings then stand at ${rings}° to the sole, not at ${before}°.`,
    { rings: 70, before: 20 },
  ),
  fits: sentence(({ rings }: { rings: number }) => `The plane fits as measured, rings at ${rings}° to the sole.`, {
    rings: 20,
  }),
  planes: sentence(
    ({ total, along, across, up }: { total: number; along: number; across: number; up: number }) =>
      ` The billet holds ${total} planes: ${along} along, ${across} across, ${up} up.`,
    { total: 2, along: 2, across: 1, up: 1 },
  ),
  boards: sentence(
    ({ from }: { from: readonly string[] }) => `Boards are left over from its ${listText(from)}: see the stock list.`,
    {
      from: ["end", "top"],
    },
  ),
  boardFor: sentence(
    ({
      count,
      length,
      width,
      board,
      running,
    }: Record<"length" | "width" | "board" | "running", string> & { count: number }) =>
      `BOARDS ${board} thick: ${count} strips ${length} long and ${width} wide; end to end, with kerfs, ${running}.`,
    { count: 5, length: "255.4 mm", width: "64 mm", board: "20 mm", running: "1293 mm" },
  ),
  strips: headText("STRIPS, each stood on edge and planed"),
  stripHeads: ["strip", "count", "planed to"],
  strip: sentence(
    ({ piece, numbers }: { piece: "layer" | "cheek"; numbers: readonly string[] }) =>
      piece === "cheek" ? "cheek" : `${numbers.length === 1 ? "layer" : "layers"} ${listText(numbers)}`,
    { piece: "layer", numbers: ["1", "3"] },
    { piece: "cheek", numbers: [] },
  ),
  planed: sentence(
    ({ thickest }: { thickest: string }) =>
      `Planed on both faces a board gives ${thickest} at most. Layers count from the right cheek.`,
    { thickest: "18.4 mm" },
  ),
  rings: sentence(
    ({ board, sole }: { board: number; sole: number }) =>
      `A strip on edge turns its rings: ${board}° to the face of the board is ${sole}° to the sole; a flat-sawn board gives a quarter-sawn sole (common practice, no published source).`,
    { board: 70, sole: 20 },
  ),
  cutsOfLayers: headText("TWO CUTS on each layer, from its toe end"),
  saw: headText("SAW THE STRIPS, fence from the face jointed last"),
  kerfs: headText("KERFS, from the reference face before it is jointed"),
  reference: sentence(
    ({ pass, height }: typeof CORNER) =>
      `Joint the reference face first (${pass} at most): the outside of the left cheek.\nPlane the sole square to it, the top ${height} from the sole.`,
    CORNER,
  ),
  jointBetween: "After each cut joint the sawn face of what is left, then set the fence.",
  sawHeads: ["strip", "fence", "milled to"],
  rest: "the rest",
  kerfHeads: ["strip", "lies at", "kerf behind it"],
  span: sentence(({ from, to }: { from: string; to: string }) => `${from} to ${to}`, { from: "11.8", to: "15" }),
  thickerCheek: sentence(
    ({ by }: { by: string }) => `The right cheek comes out ${by} thicker, too little to saw off. Plane it down.`,
    {
      by: "2 mm",
    },
  ),
  marks: headText("MATCHING MARKS across the top before the first cut, from the toe end"),
  marksOnStack: headText("MATCHING MARKS across layers and cheeks, clamped dry, from the toe end"),
  marksClear: sentence(
    ({ clear }: { clear: string }) =>
      `They lie at least ${clear} clear of every kerf and trim, and last until the top is shaped.`,
    {
      clear: "2 mm",
    },
  ),
  markHeads: ["", "one stroke, toe side", "two strokes, heel side"],
  noRoom: sentence(
    ({ block }: { block: string }) => `The ${block} has no room for two marks on top: keep it beside its cheeks.`,
    {
      block: "front block",
    },
  ),
  cuts: headText("TWO CUTS on the milled core, from its toe end"),
  cutHeads: ["cut", "saw from square", "mark on sole", "mark on top"],
  kerfSide: sentence(({ side }: { side: "heel" | "toe" }) => `${side} side`, { side: "heel" }),
  kerfAtSole: "kerf on sole",
  kerfSideHead: "kerf",
  kerf: sentence(
    ({ end, side }: { end: string; side: "heel" | "toe" }) => (side === "heel" ? `mark to ${end}` : `${end} to mark`),
    { end: "92.23", side: "heel" },
    { end: "89.53", side: "toe" },
  ),
  between: sentence(
    ({ room, overlaps }: { room: string; overlaps: boolean }) =>
      `The marks on the sole stand ${room} apart${overlaps ? "; the kerfs overlap in the waste between them" : ""}.`,
    {
      room: "5.38 mm",
      overlaps: true,
    },
  ),
  setIn: sentence(
    ({ front, bed }: { front: string; bed: string }) =>
      `At glue-up the blocks and their marks stand inside the cheek ends: ${front} at the toe, ${bed} at the heel.`,
    INSIDE,
  ),
  offcut: "THROAT OFFCUT",
  offcutSize: sentence(
    ({ length, height, width, allowance }: { length: string; height: string; width: string; allowance: string }) =>
      `Waste between the cuts: ${length} along the top, ${height} high, ${width} wide. Saw each part with ${allowance} on every sawn face.`,
    { length: "89.4 mm", height: "59.2 mm", width: "49.6 mm", allowance: "1.5 mm" },
  ),
  tooWide: sentence(
    ({ part, width }: { part: string; width: string }) =>
      `Offcut is too narrow for the ${part}: ${width} needed, wider than the core.`,
    {
      part: "cross pin",
      width: "15.7 mm",
    },
  ),
  partFits: sentence(
    ({ part, angle, longest }: { part: string; angle: string; longest: string }) =>
      `Offcut takes the ${part}, its length at ${angle} to the grain. Longest possible, finished: ${longest}.`,
    { part: "wedge", angle: "0°", longest: "72.9 mm" },
  ),
  noneFits: sentence(({ part }: { part: string }) => `Offcut takes no ${part}, not even a shorter one.`, {
    part: "wedge",
  }),
  partTooLong: sentence(
    ({ part, by, longest }: { part: string; by: string; longest: string }) =>
      `Offcut is ${by} too short for the ${part}. Longest possible, finished: ${longest}.`,
    { part: "wedge", by: "5.73 mm", longest: "72.9 mm" },
  ),
  grain: sentence(
    ({ runOut, source }: { runOut: number; source: string }) =>
      `The grain of a wedge may run ${runOut}° off its length (${source}); that of a pin runs along it.`,
    { runOut: 5, source: "common practice, no published source: slope of grain about 1 in 12" },
  ),
  oneOnly: "It takes one or the other, not both.",
  list: headText("STOCK LIST, rough, length × width × thickness"),
  smallPieces: headText("SMALL PIECES, rough, length × width × thickness"),
  size: sentence(
    ({ length, width, thickness }: { length: string; width: string; thickness: string }) =>
      `${length} × ${width} × ${thickness}`,
    { length: "88.5", width: "64", thickness: "52.6" },
  ),
  finished: headText("FINISHED, length × width × thickness"),
  listHeads: ["piece", "count", "length along the grain", "from"],
  finishedHeads: ["piece", "finished"],
  wood: sentence(
    ({ piece, species, grain }: { piece: string; species: string; grain: string }) => `${piece}: ${species}, ${grain}`,
    { piece: "wedge", species: "beech, american", grain: "along its length" },
  ),
  board: sentence(({ from, size }: { from: string; size: string }) => `From the ${from} of the billet: ${size}.`, {
    from: "end",
    size: "41.4 mm × 90 mm × 70 mm",
  }),
  yields: sentence(
    ({ pieces }: { pieces: readonly string[] }) => `Saw from them, in this order: ${pieces.join(", ")}.`,
    {
      pieces: ["wedge 1 of 1", "peg 4 of 4"],
    },
  ),
  yield: sentence(
    ({ piece, count, wanted }: { piece: string; count: number; wanted: number }) => `${piece} ${count} of ${wanted}`,
    {
      piece: "peg",
      count: 4,
      wanted: 4,
    },
  ),
} as const;
