// A class's set-ups: what each is called and what to do at it; the numbers that it shares; where its builds stand.

import { countText, numberSpans, sentence } from "@lamplane/parameters/words";

export const SETUP_WORDS = {
  blankLength: {
    title: "Crosscut cores and cheeks",
    task: "Set the stop to the length. Cut every core and cheek of these planes.",
  },
  blankHeight: {
    title: "Mill cores and cheeks to height",
    task: "Plane one edge straight, then the other until every piece is as high as shown.",
  },
  cheek: { title: "Mill cheeks to thickness", task: "Two to a plane. Mark pairs before they leave the machine." },
  coreWidth: { title: "Mill cores to width", task: "Sides parallel. Write the plane's number on each core." },
  sawRamp: {
    title: "Saw the ramps",
    task: "Swing the saw from square. Mark each core at its own place, kerf in the waste.",
  },
  sawBed: {
    title: "Saw the beds",
    task: "Swing the saw to the other side. Mark each core at its own place, kerf in the waste.",
  },
  recessDepth: { title: "Rout the recesses", task: "Set the router's depth. Check the screw's head of each iron." },
  pinHole: { title: "Fit the drill for the pin holes", task: "Bore a trial hole and try the tenons in it first." },
  pinHeight: { title: "Bore the pin holes", task: "Both cheeks of a plane together, at its place from the toe end." },
  wedgeAngle: { title: "Saw the wedges", task: "Set the sled or the fence to the taper; grain along the wedge." },
} as const;

/** Columns of what differs from plane to plane at a set-up. */
export const SETUP_COLUMNS = {
  rampMark: "ramp mark from toe end",
  bedMark: "bed mark from toe end",
  pinFromToe: "pin from toe end",
} as const;

export const CLASS_SHEET = {
  paper: "class",
  subject: "The class's machine set-ups, jigs, cut list, and one page for each plane",
  planes: "Planes",
  head: ["No.", "plane", "iron, width × thickness", "core", "side play"],
  setUp: sentence(({ number, title }: { number: number; title: string }) => `Set-up ${number}: ${title}`, {
    number: 4,
    title: "Mill cores to width",
  }),
  jigs: "Jigs to make",
  jigsHead: ["jig", "for planes", "print or cut"],
  jigsTask:
    "One jig does for every plane that is named beside it. Make one of each line, or more where several work at once.",
  setUps: "Set-ups of the day, in the order of the work",
  order: "Work the pages in order. Tick each plane as it is cut.",
  fromBoards:
    "Saw by this sheet, not by the billet and fences of each plane's papers. Write the plane's number on each part. Before milling lay core and cheeks side by side and draw the matching marks.",
} as const;

const planesText = (planes: readonly number[]): string =>
  `${planes.length === 1 ? "plane" : "planes"} ${numberSpans(planes)}`;

/** Numbers that a class shares. */
export const SHARED_WORDS = {
  names: { rampAngle: "Ramp angle", pinHeight: "Height of the pin over the trued sole" },
  widths: sentence(({ count }: { count: number }) => `${countText(count, "core width")}:`, { count: 2 }),
  width: sentence(
    ({ value, planes }: { value: string; planes: readonly number[] }) => `  ${value}: ${planesText(planes)}`,
    { value: "49.7 mm", planes: [3, 7, 8] },
  ),
  noWidths: "Every core is milled.",
  shared: sentence(
    ({ name, value, planes }: { name: string; value: string; planes: readonly number[] }) =>
      `${name}: ${value} for ${planesText(planes)}`,
    { name: "Height of the pin hole", value: "30.5 mm", planes: [1, 2, 3, 5] },
  ),
} as const;

/** Where one build stands. */
export const STATUS_WORDS = {
  step: sentence(({ number, of, title }: { number: number; of: number; title: string }) => `${number}/${of} ${title}`, {
    number: 4,
    of: 15,
    title: "Cut ramp and bed",
  }),
  built: "built",
  measured: sentence(
    ({ count, latest }: { count: number; latest: string | undefined }) =>
      latest === undefined ? "nothing" : `${count}, last ${latest}`,
    { count: 3, latest: "core width 49.7 mm" },
    { count: 0, latest: undefined },
  ),
  stuck: sentence(
    ({ count }: { count: number }) => `STUCK${count > 1 ? ` (${count})` : ""}`,
    { count: 1 },
    { count: 2 },
  ),
  unread: sentence(({ count }: { count: number }) => `${count} not measured`, { count: 2 }),
  doubtful: sentence(({ name, text }: { name: string; text: string }) => `${name}: ${text}`, {
    name: "core width",
    text: "59.7 mm is far from the 49.7 mm expected. Is it a slip?",
  }),
  tooWide: sentence(({ by }: { by: string }) => `Mouth ${by} too wide; no planing closes it`, { by: "0.45 mm" }),
} as const;
