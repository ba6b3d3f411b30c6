// What the page itself says: its opening, its commands, the strip of steps. Figures and checks bring their own words.
import { countText, sentence } from "@lamplane/parameters/words";

export const PURPOSE = "Plans for building a wooden plane round your iron.";
export const MY_IRON = "My iron is";

export const STRIP = {
  label: "Steps of the build",
  play: "Watch it build",
  pause: "Pause",
  back: "Back to the plane",
  picture: "Drawing of this step",
  changes: "What came out otherwise",
} as const;

export const COMMANDS = {
  more: "More: examples, design files, printing",
  examples: "examples",
  open: "open…",
  save: "save",
  writeBack: "write back",
  undo: "Undo (Ctrl+Z)",
  redo: "Redo (Ctrl+Shift+Z)",
  measure: "measure",
  theme: "light / dark",
  print: "print",
  allDimensions: "all dimensions",
  download: "Download",
  wayBack: "Way back",
  exampleDesigns: "Example designs",
  designFile: "Design file",
  openHelp: "Open a design file, or a roster with its base design; or drop them on the page",
  saveHelp: "Save the design file with its changes",
  writeBackHelp: sentence((file: string) => `Write the changes into ${file}`, "my-plane.yaml"),
  measureHelp: "Measure between two points (M)",
  themeHelp: "Light or dark",
  printHelp: "Print the sheet",
} as const;

export const WHOLE_PACK = "All drawings, solids and steps in one zip file";

/** The mouth as wood comes off the sole. */
export const FILM = {
  label: "Wood taken off the sole. Drag the sole up, or use the arrow keys.",
  reading: sentence(
    ({ off, opening, isBefore }: { off: string; opening: string | undefined; isBefore: boolean }) =>
      `${off} off the sole${isBefore ? "" : ", trued"}: mouth ${opening === undefined ? "still shut" : opening}. Drag the sole.`,
    { off: "2.9 mm", opening: "0.11 mm", isBefore: true },
    { off: "3 mm", opening: undefined, isBefore: false },
  ),
} as const;

/** What a plot says at a place. */
export const PLOT = {
  shares: "which step decides the mouth",
  sharesAxis: "share of the mouth's variance",
  help: sentence((title: string) => `${title}. Point at it, or use the arrow keys, to read it.`, "Mouth over its life"),
  reading: sentence(
    ({ what, at, values }: { what: string; at: string; values: readonly string[] }) =>
      `${what} ${at}${values.length === 0 ? "" : `: ${values.join(", ")}`}`,
    { what: "off the sole", at: "2 mm", values: ["mouth 0.3 mm"] },
  ),
} as const;

/** What a grip does, for the pointer that rests on it. */
export const GRIPS = {
  iron: "Drag: length of the iron",
  bed: "Drag: angle of the bed",
  mouth: "Drag: opening of the mouth",
  body: "Drag: length of the body",
} as const;

/** The quiet mark of the checks. */
export const CHECKS_MARK = {
  passed: sentence((passed: number) => `${countText(passed, "check")} pass`, 61),
  warnings: sentence(
    ({ findings, all }: { findings: number; all: number }) => `${countText(findings, "check")} of ${all} to look at`,
    { findings: 2, all: 61 },
  ),
  failures: sentence(
    ({ stops, all }: { stops: number; all: number }) =>
      `${countText(stops, "check")} of ${all} fail${stops === 1 ? "s" : ""}`,
    { stops: 1, all: 61 },
    { stops: 2, all: 61 },
  ),
} as const;

/** A ramp that turns from one kind into the other as the bed is changed. */
export const RAMP_KIND = {
  curved: "The ramp is curved from this bed angle on.",
  straight: "The ramp is straight again at this bed angle.",
} as const;

export const NO_SINGLE_FIX = "No single figure puts this right.";

/** The drawing sheet: its parts, and what it says where it cannot draw. */
export const SHEET = {
  elevation: "Side elevation",
  body: "Body in 3D",
  details: "Details",
  checks: "Checks",
  faults: "Not understood",
  noBody: "No body can be made of this design; the checks say why.",
  lost: sentence((why: string) => `${why}; the sheet keeps what it showed last`, "my-plane.yaml is no longer there"),
  bug: sentence(
    (message: string) => `lamplane has a bug; please report it with the design: ${message}`,
    "no section is called bed",
  ),
} as const;

export const TITLE_BLOCK = {
  labels: ["plane", "lengths", "scale on screen", "body", "revision"],
  inMillimetres: "mm, angles in degrees",
  inInches: sentence((fraction: string) => `inches by ${fraction}, angles in degrees`, "1/64"),
} as const;

export const DOWNLOADS = {
  files: "Files",
  help: "Solids, drawings and true-size sheets, the same as the command writes.",
  single: "single files",
  making: "making…",
} as const;

/** Where a number that is pointed at comes from. */
export const HINT = {
  ofFigure: sentence((source: string) => `follows from the others · source: ${source}`, "plane geometry"),
  ofParameter: sentence(({ path, source }: { path: string; source: string }) => `${path} · source: ${source}`, {
    path: "bed.angle",
    source: "maker's choice",
  }),
} as const;

export const SCHEDULE: { readonly title: string; readonly sections: Readonly<Record<string, string>> } = {
  title: "Schedule of every figure",
  sections: { capIron: "cap iron", hold: "forces on the iron", wood: "wood and climate", shop: "the shop" },
};

/** What was measured in place of a planned value of that name. */
export const MEASURED_NAME = sentence((name: string) => `measured ${name}`, "iron width");

/** A number that can be changed. */
export const NUMBER = {
  allowed: sentence((limits: string) => `allowed is ${limits}`, "40° to 65°"),
  notMeasured: "not measured yet",
  help: sentence(
    ({ help, limits, step }: { help: string; limits: string; step: string }) =>
      `${help} ${limits}; arrow keys step by ${step}.`,
    { help: "Angle of the bed.", limits: "35° to 65°", step: "0.5°" },
  ),
} as const;

export const MEASURING = {
  from: "measure from",
  to: "measure to",
  help: "or press two places on the elevation",
  result: sentence(
    ({ length, along, up, angle }: { length: string; along: string; up: string; angle: string }) =>
      `${length}; along the sole ${along}, up ${up}, at ${angle}`,
    { length: "40 mm", along: "30 mm", up: "26.46 mm", angle: "41.41°" },
  ),
} as const;

export const BODY = {
  keys: "Body in 3D: arrow keys turn it, plus and minus bring it closer, 0 fits it, 1 to 5 are the standard views",
  none: "This browser shows no 3D here (WebGL 2 is off); elevation, checks and files do not need it.",
  parts: "Parts shown",
  open: "open along the glue lines",
  cut: "cut at the centre plane",
  names: "names",
  views: "Standard views",
  fit: "fit",
} as const;

/** A file that `lamplane view` follows. */
export const FOLLOWED = {
  changed: "The file changed on disk; the sheet follows it.",
  silent: "`lamplane view` does not answer; the sheet keeps what it has and follows on when it is back.",
  notWritten: "`lamplane view` does not answer; nothing was written.",
  written: sentence((file: string) => `${file} now holds these figures; its comments are kept.`, "my-plane.yaml"),
  unreadable: "Nothing was written: the file on disk cannot be read; correct it first.",
} as const;

export const FILES = {
  unreadable: sentence((file: string) => `${file}: cannot be read; is it a file, and still there?`, "my-plane.yaml"),
  missingScript: sentence((file: string) => `${file} is missing beside the page; build the page again`, "pack.js"),
  changed: "The design has changed meanwhile, or is refused; ask again.",
  shop: "a page cannot open it; open the design with `lamplane view FILE`, or write the values of the shop file into it",
} as const;

/** What an address asks for and the sheet does not have. */
export const ADDRESS = {
  noParameter: sentence(
    (key: string) => `the address holds "${key}", which is no parameter; it was left out`,
    "bed.angel",
  ),
  noStep: sentence(
    ({ step, shown }: { step: string; shown: string }) => `there is no step "${step}"; the sheet shows "${shown}"`,
    { step: "sawn", shown: "glue-up" },
  ),
  noExample: sentence((name: string) => `there is no example "${name}"`, "my-plane"),
  unreadable: "the design in the address cannot be read: it is cut off, spoiled or too long; ask for its file",
  ofFile: "the address is of a sheet that follows a file; open the file, or ask `lamplane view` for it",
} as const;
