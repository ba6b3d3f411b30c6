// What `lamplane class` prints: shared set-ups, each plane's pack, and where the builds stand.
import { countText, listText, numberSpans, sentence } from "@lamplane/parameters/words";

export const ROSTER_FILE = {
  what: "roster",
  howToStart: "write one with a row a plane: `name,iron.width,iron.thickness`",
} as const;

/** Numbers that a class shares beside the core width. */
export const SHARED_NAMES = { rampAngle: "Ramp angle", pinHeight: "Height of the pin over the trued sole" } as const;

export const CLASS = {
  noBase: sentence(({ file }: { file: string }) => `${file} names no base design; add --base DESIGN`, {
    file: "class.csv",
  }),
  measuredBase: sentence(
    ({ file }: { file: string }) =>
      `${file} holds measured values, which are of one plane; give a base design with nothing measured`,
    { file: "my-plane.yaml" },
  ),
  unnamed: sentence(({ line }: { line: number }) => `(line ${line})`, { line: 4 }),
  fileHead: sentence(
    ({ name, roster }: { name: string; roster: string }) =>
      `${name}: made by \`lamplane class\`. Measured values stay; change the others in ${roster} and run it again.`,
    { name: "anna", roster: "class.csv" },
  ),
  contradiction: sentence(
    ({
      roster,
      line,
      file,
      path,
      theirs,
      own,
    }: Record<"roster" | "file" | "path" | "theirs" | "own", string> & { line: number }) =>
      `${roster}:${line}: ${path}: ${theirs} here, ${own} in ${file}; take one of them out`,
    {
      roster: "class.csv",
      line: 3,
      file: "packs/anna.yaml",
      path: "measured.mouthSeen",
      theirs: "0.1 mm",
      own: "0.2 mm",
    },
  ),
  groups: sentence(
    ({ read, fewest }: { read: number; fewest: number }) =>
      `--groups ${read}: these irons need at least ${countText(fewest, "core width")}; write ${fewest} or more, or leave it out for the fewest`,
    { read: 1, fewest: 2 },
  ),
  head: sentence(
    ({ planes, failed }: { planes: number; failed: number }) =>
      `${countText(planes, "plane")}${failed === 0 ? "" : `, ${failed} with faults in the roster`}.`,
    { planes: 12, failed: 0 },
    { planes: 11, failed: 1 },
  ),
  widths: sentence(({ count }: { count: number }) => `${countText(count, "core width")}:`, { count: 2 }),
  width: sentence(
    ({ value, planes }: { value: string; planes: readonly number[] }) => `  ${value}: planes ${numberSpans(planes)}`,
    { value: "49.7 mm", planes: [3, 7, 8] },
  ),
  noWidths: "No core is left to mill.",
  shared: sentence(
    ({ name, value, planes }: { name: string; value: string; planes: readonly number[] }) =>
      `${name}: ${value} for planes ${numberSpans(planes)}`,
    { name: "Height of the pin hole", value: "30.5 mm", planes: [1, 2, 3, 5] },
  ),
  columns: ["", "plane", "core", "iron side play", "pack"],
  sidePlay: sentence(
    ({ now, planned }: { now: string; planned: string }) => (now === planned ? now : `${now}, planned ${planned}`),
    { now: "1.3 mm", planned: "1.6 mm" },
  ),
  made: "written",
  current: "unchanged, kept",
  planned: "not written",
  stopped: "checks fail",
  "not-written": "not written",
  failed: "faults",
  stop: sentence(({ name, text }: { name: string; text: string }) => `${name}: ${text}`, {
    name: "anna",
    text: "Gap between block tips: 0.02 mm (min 0.1). Raise the mouth.",
  }),
  changed: sentence(
    ({ file, changes }: { file: string; changes: readonly string[] }) => `${file}: ${changes.join(", ")}`,
    { file: "packs/anna.yaml", changes: ["iron.thickness 3.1 mm → 3.2 mm"] },
  ),
  change: sentence(({ path, from, to }: Record<"path" | "from" | "to", string>) => `${path} ${from} → ${to}`, {
    path: "iron.thickness",
    from: "3.1 mm",
    to: "3.2 mm",
  }),
  unset: "unset",
  foreign: "there is something that is no sheet of a class",
  foreignRemedy: "it was left as it is; move it away or choose another folder",
  progress: sentence(({ done, of }: { done: number; of: number }) => `${done} of ${countText(of, "pack")}`, {
    done: 3,
    of: 12,
  }),
  sheets: sentence(({ files }: { files: readonly string[] }) => `Wrote ${listText(files)}.`, {
    files: ["packs/class.pdf", "packs/class.csv"],
  }),
  next: sentence(
    ({ file, roster, folder }: Record<"file" | "roster" | "folder", string>) =>
      `\`lamplane next ${file}\` says what to do at one plane, \`lamplane class ${roster} --out ${folder} --status\` where all stand.`,
    { file: "packs/anna.yaml", roster: "class.csv", folder: "packs" },
  ),
} as const;

export const STATUS = {
  head: sentence(
    ({ planes, built, stuck }: { planes: number; built: number; stuck: number }) =>
      `${countText(planes, "plane")}: ${built} built, ${stuck} stuck.`,
    { planes: 12, built: 2, stuck: 1 },
  ),
  columns: ["", "plane", "next", "measured", ""],
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
  missing: sentence(({ file }: { file: string }) => `${file} is missing; the values of the roster are used`, {
    file: "packs/anna.yaml",
  }),
} as const;
