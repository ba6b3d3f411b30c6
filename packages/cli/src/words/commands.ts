// What `--help` prints: one line for each command, argument and option.
import { sentence } from "@lamplane/parameters/words";

export const USAGE = "$0 COMMAND: plan and build a laminated wooden hand plane";
export const EXIT_CODES =
  "`lamplane COMMAND --help` lists its options.\nExit codes: 0 done, 1 a check failed, 2 bad input, 3 could not write, 4 our bug.";

export const COMMANDS = {
  new: "write a design to start from, and check it",
  check: "what fails, and how to fix it",
  figures: "every figure",
  stock: "how to saw the wood",
  build: "write everything needed at the bench",
  class: "many planes from one roster",
  sweep: "many designs as a table",
  explain: "what a parameter, figure, check or step is",
  view: "the page in your browser",
  mouth: "how much to take off the sole",
  survey: "whether the bed is flat, and where to work",
  next: "what to do now",
  measured: "note what you measured",
  tolerance: "how well each step must be done",
} as const;

export const ARGUMENTS = {
  file: "design file (YAML); - reads the standard input",
  ownFile: "design file (YAML)",
  fileOrExamples: "design file (YAML) or roster; the examples if left out",
  readings: "readings file (YAML)",
  roster: "roster (CSV or YAML): one row for each plane",
  values: "KEY=VALUE, such as coreWidth=49.7; coreWidth= takes it back",
  key: "such as bed.angle, bed, mouthGrowth or pin-bending",
} as const;

export const OPTIONS = {
  json: "print JSON, in mm and degrees",
  with: "change a parameter for this run: KEY=VALUE",
  shop: "shop file (YAML), in place of the one that the design names; values in the design itself stay",
  newWith: "a value that goes into the file, such as capIron.screwHead.height=6",
  newShop: "write a shop file instead",
  for: "what the plane is for; default smoother",
  allParameters: "write every parameter",
  units: "unit of bare lengths; default mm",
  all: "list passed checks and sources too",
  formulas: "formulas and sources too",
  allErrors: "every error, worst case, trial and sources too",
  allRows: "every row and column, and sources too",
  allRanges: "how sure each figure is, and sources too",
  allPieces: "kerfs, every piece, offcut, wood and grain too",
  allNames: "what each of them is",
  out: "folder for the pack",
  only: "parts, jigs, sheets, router, jigs/pin-guide",
  vary: "KEY=FROM..TO:STEP or KEY=VALUE,VALUE; repeat for more",
  base: "design that the rows differ from; default: the roster's own",
  viewBase: "of a roster: its base design; default: the roster's own",
  viewOut: "of a roster: folder with the planes' design files",
  classOut: "folder for design files, packs and sheets",
  groups: "number of core widths; default: the fewest",
  plan: "design files and class sheets only, no packs",
  status: "where every build stands",
  figure: "figure to show; repeat for more",
  table: "file for the table (CSV)",
  plots: "folder for plots (SVG)",
  port: "port on 127.0.0.1; 0: a free one",
  seen: "mouth as read, edge at the sole; 0: closed",
  left: "the same beside the left cheek; with --right",
  right: "the same beside the right cheek; with --left",
  wanted: "mouth wanted; default: the design's",
  shaving: "shaving thickness; default 0.05 mm",
  blank: "print a readings file to fill in",
  skip: "earlier steps are done, as planned",
  undo: "take back the last change",
  readTwice: "measured again, and it is right",
  seed: "same seed, same trial",
  runs: "planes in the trial",
} as const;

/** Last line of a report in short: what more there is. */
export const MORE = {
  tolerance: "--all: every error, the worst case, the trial, sources.",
  mouth: "--all: every row, what else moves, sources.",
  survey: "--all: every figure, how sure it is, sources.",
  stock: "--all: kerfs, every piece, throat offcut, finished sizes, wood and grain.",
  explain: "`lamplane explain KEY` explains one, --all every one.",
} as const;

/** Near names behind one that is not known, and the end of the sentence. */
const meantText = (near: readonly string[]): string =>
  near.length === 0 ? "." : `; did you mean ${near.join(" or ")}?`;

/** What is wrong with the arguments. */
export const ARGUMENT_FAULT = {
  noCommand: "Name a command.",
  noFile: "Name the design file.",
  help: "`lamplane --help` lists the commands.",
  twice: sentence(
    ({ name, count }: { name: string; count: number }) => `--${name}: written ${count} times; write it once`,
    {
      name: "seen",
      count: 2,
    },
  ),
  keyValue: sentence(({ given }: { given: string }) => `--with ${given}: write KEY=VALUE, such as bed.angle=50`, {
    given: "nonsense",
  }),
  option: sentence(({ option, fault }: { option: string; fault: string }) => `${option}: ${fault}`, {
    option: "--with bed.angle",
    fault: "this is not a number; write one such as 47 or 47°",
  }),
  limits: sentence(
    ({ option, read, is, min, max }: { option: string; read: string; is: string; min: string; max: string }) =>
      `${option}: read ${read}${is && `, that is ${is}`}; allowed: ${min} to ${max}`,
    { option: "--with: body.cheek", read: "4", is: "4 in (101.6 mm)", min: "0.079 in (2 mm)", max: "1.575 in (40 mm)" },
  ),
  wholeNumber: sentence(
    ({ option, read, least, most }: { option: string; read: number; least: number; most: number }) =>
      `${option}: ${Number.isNaN(read) ? "not a number" : `read ${read}`}; write a whole number from ${least} to ${most}`,
    { option: "--runs", read: 1.5, least: 100, most: 1_000_000 },
  ),
  freePort: "0 finds a free one",
  unknownName: sentence(
    ({ name, near }: { name: string; near: readonly string[] }) =>
      `${name}: no such parameter, figure, check or step${meantText(near)} \`lamplane explain\` lists them.`,
    { name: "bed.agle", near: ["bed.angle"] },
    { name: "colour", near: [] },
  ),
  notWithShop: sentence(({ option }: { option: string }) => `${option}: is for a design; leave it out with --shop`, {
    option: "--for",
  }),
  unknownFigure: sentence(
    ({ name, near }: { name: string; near: readonly string[] }) =>
      `--figure ${name}: no such figure${meantText(near)} \`lamplane figures FILE\` lists them.`,
    { name: "mouthGrow", near: ["mouthGrowth"] },
  ),
  unknownMeasured: sentence(
    ({ name, near, known }: { name: string; near: readonly string[]; known: readonly string[] }) =>
      `${name}: nothing of that name is measured${meantText(near)} Write one of ${known.join(", ")}.`,
    { name: "coreWith", near: ["coreWidth"], known: ["coreWidth", "bedAngle"] },
  ),
  notWritten: sentence(
    ({ command }: { command: string }) =>
      `${command} -: the standard input can be read but not written; name the design file`,
    { command: "measured" },
  ),
  oneStandardInput: "survey - -: the standard input holds one file; name the other",
  mouthReading: "Write the mouth as read: --seen 0.05, or --left 0.05 --right 0.10 beside the cheeks, or all three.",
  emptyFile: sentence(
    ({ what, howToStart }: { what: string; howToStart: string }) => `No file name. Name the ${what}; ${howToStart}.`,
    { what: "design file", howToStart: "`lamplane new FILE` writes one to start from" },
  ),
  emptyNew: "No file name. Name the file to write, such as my-plane.yaml.",
  emptyOption: sentence(({ name }: { name: string }) => `--${name} "": an empty text; write a value`, {
    name: "out",
  }),
  sections: sentence(
    ({ list, word, known }: { list: string; word: string; known: readonly string[] }) =>
      `--only ${list}: "${word}" is none of ${known.join(", ")}; write some of these with commas`,
    { list: "jigs,jigs2", word: "jigs2", known: ["parts", "jigs", "sheets", "router"] },
  ),
} as const;

/** What is wrong with a file that was named. */
export const FILE_FAULTS = {
  brokenOff: sentence(
    ({ file, whole }: { file: string; whole: string }) =>
      `${file}: an earlier run was stopped while writing. Its text is whole in ${whole}: copy it back.`,
    { file: "my-plane.yaml", whole: ".my-plane.yaml.whole" },
  ),
  brokeOff: "writing was stopped midway",
  copyBack: sentence(({ whole }: { whole: string }) => `its new text is whole in ${whole}: copy it back`, {
    whole: ".my-plane.yaml.whole",
  }),
  leftWhole: sentence(
    ({ whole }: { whole: string }) => `an earlier run was stopped while writing and left the whole text in ${whole}`,
    {
      whole: ".my-plane.yaml.whole",
    },
  ),
  compare: "compare the two, then move it away or delete it",
  tooLarge: sentence(
    ({ file, size, what, most }: { file: string; size: string; what: string; most: number }) =>
      `${file}:1:1: ${size}; a ${what} has at most ${most}. Is it the right file?`,
    { file: "plane.yaml", size: "300000 bytes", what: "design file", most: 262_144 },
  ),
  bytes: sentence(({ size, more }: { size: number; more: boolean }) => `${more ? "more than " : ""}${size} bytes`, {
    size: 300_000,
    more: false,
  }),
  ENOENT: sentence(({ howToStart }: { howToStart: string }) => `no such file; ${howToStart}`, {
    howToStart: "`lamplane new FILE` writes one to start from",
  }),
  EISDIR: sentence(({ what }: { what: string }) => `this is a folder; name the ${what} in it`, { what: "design file" }),
  EACCES: "you may not read this file; change its permissions",
  ERR_INVALID_ARG_VALUE: "this is not a file name",
  other: sentence(({ code }: { code: string }) => `could not be read (${code})`, { code: "EIO" }),
} as const;

export const DESIGN_FILE = { what: "design file", howToStart: "`lamplane new FILE` writes one to start from" } as const;
export const SHOP_FILE = {
  what: "shop file",
  howToStart: "`lamplane new --shop FILE` writes one to start from",
} as const;
export const READINGS_FILE = {
  what: "readings file",
  howToStart: "`lamplane survey FILE --blank` prints one to fill in",
} as const;

/** A question that was left unanswered. */
export const BROKEN_OFF = "No answer. Nothing was written.";

export const BUG = sentence(
  ({ version, message }: { version: string; message: string }) =>
    `lamplane ${version} has a bug: ${message}\nPlease report it with the design file. No file is half written.`,
  { version: "0.2.0", message: "no section is called bed" },
);
