// What the page itself says: its opening, its commands, the strip of steps. Figures and checks bring their own words.

export const PURPOSE = "Plans for building a wooden plane round your iron.";
export const MY_IRON = "My iron is";

export const STRIP = {
  label: "Steps of the build",
  play: "Watch it build",
  pause: "Pause",
  back: "Back to the plane",
  picture: "Drawing of this step",
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
} as const;

export const WHOLE_PACK = "All drawings, solids and steps in one zip file";

/** The mouth as wood comes off the sole. */
export const FILM = {
  label: "Wood taken off the sole. Drag the sole up, or use the arrow keys.",
  reading: (off: string, opening: string | undefined, isBefore: boolean): string =>
    `${off} off the sole${isBefore ? "" : ", trued"}: mouth ${opening === undefined ? "still shut" : opening}. Drag the sole.`,
} as const;

/** What a plot says at a place. */
export const PLOT = {
  help: (title: string): string => `${title}. Point at it, or use the arrow keys, to read it.`,
  reading: (what: string, at: string, values: readonly string[]): string =>
    `${what} ${at}${values.length === 0 ? "" : `: ${values.join(", ")}`}`,
} as const;

/** What a grip does, for the pointer that rests on it. */
export const GRIPS = {
  iron: "Drag: length of the iron",
  bed: "Drag: angle of the bed",
  mouth: "Drag: opening of the mouth",
  body: "Drag: length of the body",
} as const;

const checks = (count: number): string => `${count} check${count === 1 ? "" : "s"}`;

/** The quiet mark of the checks. */
export function checksText(passed: number, findings: number, stops: number): string {
  if (findings === 0) return `${checks(passed)} pass`;
  if (stops === 0) return `${checks(findings)} of ${findings + passed} to look at`;
  return `${checks(stops)} of ${findings + passed} fail${stops === 1 ? "s" : ""}`;
}

/** A ramp that turns from one kind into the other as the bed is changed. */
export const RAMP_KIND = {
  curved: "The ramp is curved from this bed angle on.",
  straight: "The ramp is straight again at this bed angle.",
} as const;

export const NO_SINGLE_FIX = "No single figure puts this right.";
