// Words of `stock`: how to saw the wood, in the order of the work.
import { listText, sentence } from "@lamplane/parameters/words";

const A = "2.42 mm";

export const STOCK = {
  caution:
    "Short and small pieces are dangerous at a machine. Follow its manual, local rules and trained practice, or saw them by hand.",
  billet: "BILLET",
  needed: "needed",
  measured: "measured",
  asItLies: "as it lies",
  notEntered: "not entered",
  tooSmall: sentence(({ by }: { by: string }) => `too small by ${by}`, { by: "4 mm" }),
  leftOver: sentence(({ by }: { by: string }) => `left over ${by}`, { by: "4 mm" }),
  rule: sentence(
    ({ added, width }: { added: string; width: string }) =>
      `Rule of thumb for the width, iron plus ${added}: ${width} (common practice, no published source).`,
    { added: "38.1 mm", width: "86.1 mm" },
  ),
  noBillet: "No billet entered: look for these sizes.",
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
    ({ from }: { from: readonly string[] }) => `Boards left over from its ${listText(from)}: see below.`,
    {
      from: ["end", "top"],
    },
  ),
  sawLines: "SAW LINES ACROSS THE WIDTH",
  reference: sentence(
    ({ pass }: { pass: string }) =>
      `Joint the reference face first: it becomes the outside of the left cheek. Take off at most ${pass}.`,
    { pass: "0.8 mm" },
  ),
  surface: sentence(
    ({ height }: { height: string }) =>
      `Before the first cut, surface the sole square to it and the top parallel to the sole, ${height} apart.`,
    { height: "61 mm" },
  ),
  kerfs: "Kerfs are measured from the reference face before jointing; set the fence from the face jointed last.",
  jointBetween: "After every cut, joint the fresh face of what is left.",
  sawHeads: ["", "frees", "kerf", "fence"],
  stripHeads: ["strip", "as sawn", "rough", "finished"],
  span: sentence(({ from, to }: { from: string; to: string }) => `${from} to ${to}`, { from: "11.8 mm", to: "15 mm" }),
  thickerCheek: sentence(
    ({ by }: { by: string }) => `The right cheek comes out ${by} thicker, too little to saw off. Plane it down.`,
    {
      by: "2 mm",
    },
  ),
  marks: "MATCHING MARKS",
  drawMarks:
    "Draw them square across the whole top once it is surfaced, before the first cut: one stroke toward the toe, two toward the heel.",
  marksClear: sentence(
    ({ clear }: { clear: string }) =>
      `They lie at least ${clear} clear of every kerf and trim, and last until the top is shaped.`,
    {
      clear: "2 mm",
    },
  ),
  markHeads: ["over the", "mark", "from the toe end"],
  strokes: { 1: "one stroke", 2: "two strokes" },
  noRoom: sentence(
    ({ block }: { block: string }) => `The ${block} has no room for two marks on top: keep it beside its cheeks.`,
    {
      block: "front block",
    },
  ),
  shift: sentence(
    ({ front, bed }: { front: string; bed: string }) =>
      `At glue-up the strokes of the front block stand ${front} nearer the heel than those of the cheeks, those of the bed block ${bed} nearer the toe.`,
    { front: A, bed: A },
  ),
  cuts: "THE TWO CUTS ON THE MILLED CORE, from its toe end",
  cutHeads: ["cut", "saw from square", "mark on the sole", "mark on the top", "kerf on the sole"],
  kerf: sentence(({ span, side }: { span: string; side: string }) => `${span}, to the ${side}`, {
    span: "88.5 mm to 92.2 mm",
    side: "heel",
  }),
  between: sentence(
    ({ room, overlaps }: { room: string; overlaps: boolean }) =>
      `Between the marks on the sole: ${room}.${overlaps ? " The kerfs overlap there, in the waste; neither reaches the other block." : ""}`,
    {
      room: "5.38 mm",
      overlaps: true,
    },
  ),
  setIn: sentence(
    ({ front, bed }: { front: string; bed: string }) =>
      `At glue-up the front block stands ${front} inside the toe ends of the cheeks, the bed block ${bed} inside their heel ends.`,
    { front: A, bed: A },
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
      `Offcut holds the ${part}, its length at ${angle} to the grain. Longest possible: ${longest}.`,
    { part: "wedge", angle: "0°", longest: "72.9 mm" },
  ),
  noneFits: sentence(({ part }: { part: string }) => `Offcut holds no ${part}, not even a shorter one.`, {
    part: "wedge",
  }),
  partTooLong: sentence(
    ({ part, by, longest }: { part: string; by: string; longest: string }) =>
      `Offcut is ${by} too short for the ${part}. Longest possible: ${longest}.`,
    { part: "wedge", by: "5.73 mm", longest: "72.9 mm" },
  ),
  grain: sentence(
    ({ runOut, source }: { runOut: number; source: string }) =>
      `Never across the grain. The grain of a wedge may run ${runOut}° off its length (${source}); that of a pin runs along it.`,
    { runOut: 5, source: "common practice, no published source: slope of grain about 1 in 12" },
  ),
  oneOnly: "It yields one or the other, not both.",
  list: "STOCK LIST, length along the grain",
  listHeads: ["piece", "count", "rough", "finished", "from", "species", "grain"],
  board: sentence(({ from, size }: { from: string; size: string }) => `From the ${from} of the billet: ${size}.`, {
    from: "end",
    size: "41.4 mm × 90 mm × 70 mm",
  }),
  yields: sentence(({ pieces }: { pieces: readonly string[] }) => `They yield, in this order: ${pieces.join(", ")}.`, {
    pieces: ["wedge 1 of 1", "peg 4 of 4"],
  }),
  yield: sentence(
    ({ piece, count, wanted }: { piece: string; count: number; wanted: number }) => `${piece} ${count} of ${wanted}`,
    {
      piece: "peg",
      count: 4,
      wanted: 4,
    },
  ),
} as const;
